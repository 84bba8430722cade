/** Which of several outcomes governs, and the order in which findings are listed. */

import { isPlainlyLarger, type Outcome } from './compare-with-limit.js';
import type { Finding } from './finding.js';
import { graverBy } from './verdict.js';

/** Something judged, with what parts it from others that are as bad. */
interface Ranked {
  readonly outcome: Outcome;
  /** Condition and label: of equal ones the first by name stands for all, whatever their order. */
  readonly name: string;
}

/**
 * The one that stands for all: gravest verdict, then largest ratio, ties by name.
 *
 * @param all - in any order
 * @returns nothing for an empty list
 */
export function governing<One extends Ranked>(all: readonly One[]): One | undefined {
  const named = [...all].sort((a, b) => byText(a.name, b.name));
  return named.reduce<One | undefined>((worst, next) => {
    if (worst === undefined) return next;
    const graver = graverBy(next.outcome.verdict, worst.outcome.verdict);
    if (graver !== 0) return graver > 0 ? next : worst;
    return isPlainlyLarger(weightOf(next.outcome), weightOf(worst.outcome)) ? next : worst;
  }, undefined);
}

/** Above any ratio that a review can hold [-]. */
const FORBIDDEN = 1e9;

/**
 * What must not happen and does is worse than any ratio. Where it cannot be told, the largest demand is still the one
 * to report.
 */
function weightOf({ verdict, ratio, demand = 0, limit = 0 }: Outcome): number {
  if (ratio !== undefined) return ratio;
  if (verdict === 'exceeds') return FORBIDDEN * (1 + Math.max(0, demand));
  if (verdict !== 'cannot-tell') return 0;
  return limit > 0 ? demand / limit : demand;
}

/**
 * Findings from the gravest to the lightest: verdict, then ratio, then check and place.
 *
 * @param findings - findings in any order
 * @returns the same findings in order; comparisons after everything that counts
 */
export function worstFirst(findings: readonly Finding[]): readonly Finding[] {
  const ratio = (finding: Finding): number =>
    finding.ratio ?? (finding.verdict === 'exceeds' ? Number.MAX_VALUE : 0);
  return [...findings].sort(
    (a, b) =>
      Number(a.comparison) - Number(b.comparison) ||
      graverBy(b.verdict, a.verdict) ||
      ratio(b) - ratio(a) ||
      byText(`${a.check} ${a.at}`, `${b.check} ${b.at}`),
  );
}

/** Order by code units, the same on every machine. */
function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
