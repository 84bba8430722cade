import type { Origin, Sourced } from '../../input/installation.js';
import type { RankedAssumption } from '../rows/rank-assumptions.js';

/**
 * Where a value comes from, in the word printed beside it.
 *
 * @param origin - origin of the value
 * @param assumptions - assumptions in printing order
 * @returns `given`, `given (maker)`, `catalogue`, `computed`, or `assumed, A3`
 */
export function originMark(origin: Origin, assumptions: readonly RankedAssumption[]): string {
  switch (origin.kind) {
    case 'given':
      return origin.known === undefined ? 'given' : `given (${origin.known})`;
    case 'catalogue':
      return 'catalogue';
    case 'computed':
      return 'computed';
    case 'assumed':
      return assumedMark(origin.path, assumptions);
  }
}

/**
 * Mark of the assumption that stands at a path of the file.
 *
 * @param path - path of the missing value
 * @param assumptions - assumptions in printing order
 * @returns `assumed, A3`, or `assumed` where the list does not hold the path
 */
export function assumedMark(path: string, assumptions: readonly RankedAssumption[]): string {
  const found =
    assumptions.find((ranked) => ranked.assumption.path === path) ??
    assumptions.find((ranked) => withoutNumbers(ranked.assumption.path) === withoutNumbers(path));
  return found === undefined ? 'assumed' : `assumed, ${found.mark}`;
}

/** One assumption may stand for several parts alike, and then carries the path of the first. */
function withoutNumbers(path: string): string {
  return path.replace(/\[\d+\]/gu, '');
}

/**
 * Origin of a value that is no sourced number: given, unless an assumption stands at its path.
 *
 * @param path - path in the file
 * @param assumptions - assumptions in printing order
 * @returns `given` or `assumed, A3`
 */
export function textMark(path: string, assumptions: readonly RankedAssumption[]): string {
  const found = assumptions.find((ranked) => ranked.assumption.path === path);
  return found === undefined ? 'given' : `assumed, ${found.mark}`;
}

/**
 * Origin of a sourced number, or of a value that stands in the file because nothing else can provide it.
 *
 * @param sourced - number with origin, or undefined where the file did not give it
 * @param assumptions - assumptions in printing order
 * @returns mark as printed
 */
export function sourcedMark(sourced: Sourced | undefined, assumptions: readonly RankedAssumption[]): string {
  return sourced === undefined ? 'not given' : originMark(sourced.origin, assumptions);
}
