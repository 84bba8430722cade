import { numberIn, numbersIn } from '../../readings/read-box.js';
import { currentLimit } from '../../report/limits/electrical.js';
import { PHASES } from '../../sheet/parts/electrical.js';
import type { Judge } from '../judge.js';

/** No line carries more than the plate allows. */
export const current: Judge = {
  id: 'current',
  title: 'Current against the plate',
  part: 'electrical',
  trade: 'electrician',
  compare: ({ readings, review }) => {
    const boxes = PHASES.map((phase) => `electrical.amps-${phase}`);
    const read = numbersIn(readings, boxes);
    const plate = numberIn(readings, 'identity.motor-current');
    const onPlate =
      plate === undefined
        ? undefined
        : ({
            value: plate,
            measured: 'current',
            words: 'at most',
            citation: { source: 'field-sheet', clause: 'rating plate of the motor', confidence: 'read' },
          } as const);
    return [
      {
        kind: 'measured',
        at: 'motor',
        boxes,
        demand: read === undefined ? undefined : Math.max(...read),
        measured: 'current',
        // The plate is nearer to the motor than any file.
        limit: onPlate ?? currentLimit(review.installation),
        noLimit: 'fieldwork.no-rated-current',
      },
    ];
  },
};
