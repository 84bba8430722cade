import { numberIn } from '../../readings/read-box.js';
import type { FieldComparison, Judge } from '../judge.js';

/** Supports stand where they are drawn, to what a tape can show. */
export const supportMoved: Judge = {
  id: 'support-moved',
  title: 'Support as drawn',
  part: 'supports',
  trade: 'pipe fitter',
  compare: ({ asFound }) =>
    asFound.compared.map(
      ({ mark, what, box, drawn, found, tolerance }): FieldComparison => ({
        kind: 'measured',
        at: `${mark}, ${what}`,
        boxes: [box],
        demand: Math.abs(found - drawn),
        measured: 'distance',
        read: found,
        expected: drawn,
        limit: {
          value: tolerance,
          measured: 'distance',
          words: 'within',
          citation: { source: 'input', clause: 'as drawn, to what a tape shows', confidence: 'read' },
        },
        data: { mark, what },
      }),
    ),
};

/** A difference that all heights have is the mark they were read from, or the pipe: the height of the pump tells which. */
export const levelDatum: Judge = {
  id: 'level-datum',
  title: 'Heights off by one amount',
  part: 'supports',
  trade: 'commissioning agent',
  compare: ({ asFound, readings, write }) => {
    const { datum } = asFound;
    if (datum === undefined) return [];
    const offset = write.quantity(Math.abs(datum.offset), 'length', { feetInches: write.system === 'us' });
    const isKnown = numberIn(readings, 'supports.port-height') !== undefined;
    return [
      {
        kind: 'stated',
        at: 'supports',
        boxes: ['supports.port-height'],
        holds: isKnown ? true : undefined,
        told: isKnown ? `the pump too, by ${offset}` : undefined,
        wanted: 'the height of the pump from the same mark',
        noAnswer: {
          code: 'fieldwork.level-datum.asked',
          data: { offset, way: datum.offset < 0 ? 'lower' : 'higher' },
        },
      },
    ];
  },
};
