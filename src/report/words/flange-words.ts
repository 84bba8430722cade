import type { Vec3 } from '../../model/conventions.js';
import { createWriter, type Writer } from '../writer.js';

const METRIC = createWriter('si');
const INCHES = createWriter('us');

/** A small length in both units: what a feeler gauge or a rule shows, whatever the units of the review. */
export interface BothUnits {
  readonly mm: string;
  readonly inches: string;
}

/**
 * A small length in millimetres and in inches.
 *
 * @param value - length; its size alone is printed [m]
 * @returns both numbers; dashes where there is none
 */
export function bothUnits(value: number | undefined): BothUnits {
  const size = value === undefined ? undefined : Math.abs(value);
  return {
    mm: METRIC.number(size, 'length', { decimals: 1 }),
    inches: INCHES.number(size, 'length', { decimals: 3 }),
  };
}

/**
 * The same in one phrase.
 *
 * @param value - length; its size alone is printed [m]
 * @returns for example `1.6 mm (0.063 in)`
 */
export function bothText(value: number | undefined): string {
  const { mm, inches } = bothUnits(value);
  return `${mm} mm (${inches} in)`;
}

/** Below this a movement is not named by a direction: a twentieth of a millimetre [m]. */
const STILL = 5e-5;

/**
 * Which way something moved, in one of two words.
 *
 * @param value - movement [m]
 * @param words - for more and for less
 * @returns the word, or `stays` where it is too small to be measured
 */
export function wayWord(value: number, words: readonly [string, string]): string {
  if (Math.abs(value) < STILL) return 'stays';
  return value > 0 ? words[0] : words[1];
}

/**
 * Which way something moved in plan.
 *
 * @param moved - movement [m]
 * @param write - writer
 * @returns for example `east`; `stays` where it is too small to be measured
 */
export function planWord(moved: Vec3, write: Writer): string {
  const level = Math.hypot(moved[0], moved[1]);
  return level < STILL ? 'stays' : write.bearing([moved[0] / level, moved[1] / level, 0]);
}

/** Share of a unit vector from which a side is named: within 67.5 degrees of it [-]. */
const NAMED = 0.3827;

/**
 * Side of a flange face by word.
 *
 * @param towards - unit vector from the centre of the face; zero for none
 * @param write - writer
 * @returns for example `bottom` or `top, east`
 */
export function faceSide(towards: Vec3, write: Writer): string {
  const [east, north, up] = towards;
  const words = [
    ...(Math.abs(up) > NAMED ? [up > 0 ? 'top' : 'bottom'] : []),
    ...(Math.hypot(east, north) > NAMED ? [write.bearing([east, north, 0])] : []),
  ];
  return words.length === 0 ? 'nowhere' : words.join(', ');
}
