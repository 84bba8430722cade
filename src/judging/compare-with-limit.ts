/**
 * The one place where a demand meets its limit, for checks, for readings taken on site and for every table. What could
 * not be compared is never a pass, and a missing or impossible number is never a fail.
 */

import type { Verdict } from './verdict.js';

/** Room for the last binary digits: a hanger set exactly at its limit meets it [-]. */
const ROUNDING = 1e-9;

/** Why a comparison could not be made. */
export type Undecided =
  | 'limit-missing'
  | 'demand-missing'
  | 'limit-unusable'
  | 'demand-unusable'
  /** It comes out differently within what is not known. */
  | 'bounds-disagree';

/** What came of a comparison. A finding and a judged reading are both one, with their place and their words. */
export interface Outcome {
  readonly verdict: Verdict;
  /** As compared, where it is a number; with what is not known taken as stated [unit of the comparison]. */
  readonly demand?: number;
  readonly limit?: number;
  /** Demand over limit, or limit over demand where the limit is the least allowed [-]; over 1 exceeds. */
  readonly ratio?: number;
  /** Least and largest demand within what is not known [unit of the comparison]; absent where nothing was bounded. */
  readonly low?: number;
  readonly high?: number;
  /** Names of what is not known and turns the verdict within its bounds. */
  readonly turnedBy?: readonly string[];
}

/** An outcome that says why it could not be told. */
export interface Compared extends Outcome {
  readonly why?: Undecided;
}

/** How a demand keeps to its limit: a size that may not be above it, a number to either side of nothing, or one not below. */
export type Sense = 'at most' | 'within' | 'at least';

/** A demand and its limit, in one unit. */
export interface Comparison {
  /** Not below 0 for `at most`: a size. For `within` its size counts. */
  readonly demand: number | undefined;
  /** Above 0. */
  readonly limit: number | undefined;
  /** `at most` where it is not said. */
  readonly sense?: Sense;
}

/**
 * Compares a demand with its limit.
 *
 *     at most: demand / limit      within: |demand| / limit      at least: limit / demand        over 1 exceeds
 *
 * @param comparison - demand, limit, and how the one keeps to the other
 * @returns verdict, with the ratio where there is one; `cannot-tell` and why where a number is missing or impossible
 */
export function compareWithLimit({ demand, limit, sense = 'at most' }: Comparison): Compared {
  const numbers = {
    ...(isUsable(demand) && { demand }),
    ...(isUsable(limit) && { limit }),
  };
  const undecided = (why: Undecided): Compared => ({ ...numbers, verdict: 'cannot-tell', why });
  if (limit === undefined) return undecided('limit-missing');
  if (demand === undefined) return undecided('demand-missing');
  if (!(isUsable(limit) && limit > 0)) return undecided('limit-unusable');
  if (!isUsable(demand) || (sense === 'at most' && demand < 0)) return undecided('demand-unusable');
  // Nothing, or less, never reaches a least value, and by how much it falls short is no ratio.
  if (sense === 'at least' && !(demand > 0)) return { ...numbers, verdict: 'exceeds' };
  const ratio = sense === 'at least' ? limit / demand : Math.abs(demand) / limit;
  return { ...numbers, ratio, verdict: isWithinLimit(ratio) ? 'meets' : 'exceeds' };
}

/** Something that must not happen at all, so that there is no limit to divide by. */
export interface Forbidden {
  /** Whether it happens; undefined where that cannot be told. */
  readonly happens: boolean | undefined;
  /** How much, where that is a number [unit of the comparison]. */
  readonly demand?: number;
}

/**
 * Judges something that must not happen, or must be as it is told.
 *
 * @param forbidden - whether it happens, and how much
 * @returns verdict without a ratio
 */
export function judgeForbidden({ happens, demand }: Forbidden): Compared {
  const numbers = { ...(isUsable(demand) && { demand }) };
  if (happens === undefined || (demand !== undefined && !Number.isFinite(demand))) {
    return { ...numbers, verdict: 'cannot-tell', why: 'demand-missing' };
  }
  return { ...numbers, verdict: happens ? 'exceeds' : 'meets' };
}

/**
 * Whether a ratio keeps to its limit: not above 1, but for the last binary digits.
 *
 * @param ratio - demand over limit [-]
 * @returns false for "not a number" too
 */
export function isWithinLimit(ratio: number): boolean {
  return ratio <= 1 + ROUNDING;
}

/**
 * Whether a number is larger than another by more than the last binary digits: of equal ones the first keeps its place.
 *
 * @param next - number that may take the place, not below 0 [-]
 * @param before - number that holds it, in the same unit [-]
 * @returns true when the next takes the place
 */
export function isPlainlyLarger(next: number, before: number): boolean {
  return next > before * (1 + ROUNDING);
}

function isUsable(value: number | undefined): value is number {
  return value !== undefined && Number.isFinite(value);
}
