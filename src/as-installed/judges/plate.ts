import { numberIn } from '../../readings/read-box.js';
import type { ReadingsById } from '../../readings/reading.js';
import type { Measured } from '../../sheet/field-context.js';
import type { FieldComparison, Judge } from '../judge.js';

/** What a file and a plate print alike is equal: half a unit of the third digit [-]. */
const THREE_DIGITS = 0.005;

/** A plate is compared no finer than it is printed, and the file no finer than three digits. */
const REVIEW = {
  source: 'input',
  clause: 'as reviewed, to the digits of the plate',
  confidence: 'read',
} as const;

/** What a plate says, and what the review was made with [SI]. */
type PlateRow = readonly [key: string, at: string, measured: Measured, expected: number | undefined];

/**
 * Half a unit of the last digit that was copied from a plate, as a share of the number: `25` is 24.5 to 25.5.
 *
 * @param text - as written
 * @returns share [-]; nothing for what is no plain number
 */
export function halfOfLastDigit(text: string): number | undefined {
  const [, whole, fraction = ''] = /^(\d+)(?:[.,](\d+))?(?!\S*[/'])/u.exec(text.trim()) ?? [];
  if (whole === undefined) return undefined;
  const value = Number(`${whole}.${fraction}`);
  return value > 0 ? (0.5 * 10 ** -fraction.length) / value : undefined;
}

/**
 * The same for a weight, which makers round: a whole number of three digits or more that ends in zero is one of tens, so
 * that `300` is 295 to 305. Common practice; plates are often rounder still, which nobody can tell from the number.
 *
 * @param text - as written
 * @returns share [-]; nothing for what is no plain number
 */
export function halfOfRoundedWeight(text: string): number | undefined {
  const [, whole] = /^(\d{2,}0)(?![\d.,]|\S*[/'])/u.exec(text.trim()) ?? [];
  const tens = Number(whole);
  return whole === undefined || tens <= 0 ? halfOfLastDigit(text) : 5 / tens;
}

function comparisonsOf(
  rows: readonly PlateRow[],
  readings: ReadingsById,
  half: (text: string) => number | undefined,
): readonly FieldComparison[] {
  return rows.flatMap(([key, at, measured, expected]): readonly FieldComparison[] => {
    if (expected === undefined) return [];
    const box = `identity.${key}`;
    const read = numberIn(readings, box);
    const printed = half(readings.get(box)?.text ?? '') ?? 0;
    return [
      {
        kind: 'measured',
        at,
        boxes: [box],
        demand: read === undefined ? undefined : Math.abs(read - expected),
        measured,
        read,
        expected,
        limit: {
          value: Math.max(THREE_DIGITS * expected, printed * (read ?? 0)),
          measured,
          words: 'within',
          citation: REVIEW,
        },
        data: { what: at },
      },
    ];
  });
}

/** The rating plate of the motor says what the review was made with. */
export const plate: Judge = {
  id: 'plate',
  title: 'Plate and review',
  part: 'identity',
  trade: 'engineer',
  compare: ({ readings, review }) => {
    const { motor } = review.installation.pump;
    return comparisonsOf(
      [
        ['motor-power', 'motor power', 'power', motor.power],
        ['motor-speed', 'full-load speed', 'speed', motor.speed],
        ['motor-voltage', 'rated voltage', 'voltage', motor.voltage?.value],
        ['motor-current', 'full-load current', 'current', motor.fullLoadCurrent?.value],
      ],
      readings,
      halfOfLastDigit,
    );
  },
};

/** The plates weigh what was reviewed: every load rests on it. */
export const plateWeight: Judge = {
  id: 'plate-weight',
  title: 'Weight on the plate and in the review',
  part: 'identity',
  trade: 'engineer',
  compare: ({ readings, review }) => {
    const { motor, casing } = review.installation.pump;
    return comparisonsOf(
      [
        ['motor-weight', 'motor weight', 'mass', motor.mass.value],
        ['pump-weight', 'pump weight', 'mass', casing.mass.value],
      ],
      readings,
      halfOfRoundedWeight,
    );
  },
};
