/** An as-installed review at a summary, for a terminal. */
import type { Verdict } from '../judging/verdict.js';
import type { AsInstalled } from './as-installed.js';
import { openItems } from './open-item.js';

/** Finished text. */
export interface AsInstalledSummary {
  readonly mark: string;
  readonly decision: 'go' | 'hold';
  readonly verdict: Verdict;
  readonly counts: Readonly<Record<'meets' | 'exceeds' | 'cannot-tell', number>>;
  readonly items: readonly {
    readonly trade: string;
    readonly at: string;
    readonly finding: string;
    readonly evidence: string;
    readonly blocksStart: boolean;
  }[];
}

/**
 * Takes a summary.
 *
 * @param visit - what came of the visit
 * @returns decision, counts and open items
 */
export function asInstalledSummary(visit: AsInstalled): AsInstalledSummary {
  const counts = { meets: 0, exceeds: 0, 'cannot-tell': 0, 'does-not-apply': 0 };
  for (const { comparison, verdict } of visit.judgements) if (!comparison) counts[verdict] += 1;
  return {
    mark: visit.review.installation.pump.mark,
    decision: visit.decision,
    verdict: visit.verdict,
    counts,
    items: openItems(visit).map(({ trade, at, finding, evidence, blocksStart }) => ({
      trade,
      at,
      finding,
      evidence,
      blocksStart,
    })),
  };
}
