import type { Citation } from '../sources/index.js';

/** A number from a table, with the row it stands in and how sure it is. The unit is that of the field, SI. */
export interface Catalogued {
  readonly value: number;
  /** Name of the table, in words for the reader. */
  readonly table: string;
  /** Row of the table: `NPS 6 STD`. */
  readonly row: string;
  readonly citation: Citation;
  /** How it was worked out, where the value is not printed in the table itself. */
  readonly how?: string;
}

/** Pairs of an argument and a value, rising in the argument. */
export type Pairs = readonly (readonly [number, number])[];

/**
 * Value between two rows by straight line; outside the first and last row there is none.
 *
 * @param pairs - argument and value, rising in the argument [-]
 * @param at - argument [-]
 * @returns value in the unit of the pairs, or undefined outside them [-]
 * @source common-practice
 */
export function betweenRows(pairs: Pairs, at: number): number | undefined {
  const after = pairs.findIndex(([argument]) => argument >= at);
  const upper = pairs[after];
  if (upper === undefined || !Number.isFinite(at)) return undefined;
  if (upper[0] === at) return upper[1];
  const lower = pairs[after - 1];
  if (lower === undefined) return undefined;
  return lower[1] + ((upper[1] - lower[1]) * (at - lower[0])) / (upper[0] - lower[0]);
}
