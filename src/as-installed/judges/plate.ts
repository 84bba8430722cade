import { numberIn } from '../../readings/read-box.js';
import type { Measured } from '../../sheet/field-context.js';
import type { FieldComparison, Judge } from '../judge.js';

/** Half a unit of the third digit: what a plate and a file print alike is equal [-]. */
const THREE_DIGITS = 0.005;

const REVIEW = { source: 'input', clause: 'as reviewed, to three digits', confidence: 'read' } as const;

/** The rating plates say what the review was made with. */
export const plate: Judge = {
  id: 'plate',
  title: 'Plate and review',
  part: 'identity',
  trade: 'engineer',
  blocksStart: false,
  compare: ({ readings, review }) => {
    const { motor, casing } = review.installation.pump;
    const rows: readonly (readonly [string, string, Measured, number | undefined])[] = [
      ['motor-power', 'motor power', 'power', motor.power],
      ['motor-speed', 'full-load speed', 'speed', motor.speed],
      ['motor-voltage', 'rated voltage', 'voltage', motor.voltage?.value],
      ['motor-current', 'full-load current', 'current', motor.fullLoadCurrent?.value],
      ['motor-weight', 'motor weight', 'mass', motor.mass.value],
      ['pump-weight', 'pump weight', 'mass', casing.mass.value],
    ];
    return rows.flatMap(([key, at, measured, expected]): readonly FieldComparison[] => {
      if (expected === undefined) return [];
      const box = `identity.${key}`;
      const read = numberIn(readings, box);
      return [
        {
          kind: 'measured',
          at,
          boxes: [box],
          demand: read === undefined ? undefined : Math.abs(read - expected),
          measured,
          read,
          expected,
          limit: { value: THREE_DIGITS * expected, measured, words: 'within', citation: REVIEW },
          data: { what: at },
        },
      ];
    });
  },
};
