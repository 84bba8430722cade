/** An as-installed review at a summary, for a terminal. */
import type { Verdict } from '../judging/verdict.js';
import type { AsInstalled } from './as-installed.js';
import type { Decision } from './decisions/decide.js';

/** Finished text. */
export interface AsInstalledSummary {
  readonly mark: string;
  readonly project: string;
  /** Day of the last visit, where one is told. */
  readonly date?: string;
  readonly decision: 'go' | 'hold';
  /** Both decisions: the word, how much stands against it, who decides. */
  readonly decisions: Readonly<
    Record<
      'start' | 'run',
      { readonly word: 'go' | 'hold' | 'stop'; readonly against: number; readonly by: string }
    >
  >;
  readonly verdict: Verdict;
  readonly counts: Readonly<Record<'meets' | 'exceeds' | 'cannot-tell', number>>;
  readonly items: readonly {
    readonly trade: string;
    readonly at: string;
    readonly finding: string;
    readonly evidence: string;
    readonly consequence: string;
    readonly fix: string;
    readonly blocksStart: boolean;
    readonly bars: 'running' | 'start' | 'acceptance' | 'nothing';
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
    project: visit.review.installation.review.project,
    ...(visit.date !== undefined && { date: visit.date }),
    decision: visit.decision,
    verdict: visit.verdict,
    counts,
    decisions: { start: shortly(visit.decisions.start), run: shortly(visit.decisions.run) },
    items: visit.items.map(({ trade, at, finding, evidence, consequence, fix, blocksStart, bars }) => ({
      trade,
      at,
      finding,
      evidence,
      consequence,
      fix,
      blocksStart,
      bars,
    })),
  };
}

function shortly({ word, against, by, on, nameless }: Decision) {
  const named = nameless === undefined ? `${by}, ${on}` : '';
  return { word, against: against.length, by: named };
}
