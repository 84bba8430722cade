/**
 * The verdicts, told once: what each weighs, whether something is to be done about it. A verdict that is added here is
 * asked for by the compiler wherever one is told apart from another.
 */

/** Every verdict, in the order in which the published schemas list them. */
export const VERDICTS = ['meets', 'exceeds', 'cannot-tell', 'does-not-apply'] as const;

/** Outcome of one comparison at one place. Only `meets` is a pass. */
export type Verdict = (typeof VERDICTS)[number];

/** What is known of a verdict. */
interface VerdictFacts {
  /** Which of several stands for all of them: the larger, the graver [-]. */
  readonly gravity: number;
  /** Whether it leaves something to be done. */
  readonly isOpen: boolean;
  /** Whether something was judged: what does not apply is no pass. */
  readonly isJudged: boolean;
}

const FACTS = {
  exceeds: { gravity: 3, isOpen: true, isJudged: true },
  'cannot-tell': { gravity: 2, isOpen: true, isJudged: true },
  meets: { gravity: 1, isOpen: false, isJudged: true },
  'does-not-apply': { gravity: 0, isOpen: false, isJudged: false },
} as const satisfies Record<Verdict, VerdictFacts>;

/** Something with a verdict. */
export interface WithVerdict {
  readonly verdict: Verdict;
}

/**
 * Which of two verdicts is graver.
 *
 * @param one - a verdict
 * @param other - another
 * @returns above 0 where the first is graver, below 0 where the other is, 0 where they are the same [-]
 */
export function graverBy(one: Verdict, other: Verdict): number {
  return FACTS[one].gravity - FACTS[other].gravity;
}

/** Whether something is to be done: it exceeds its limit, or cannot be told. */
export function isOpen({ verdict }: WithVerdict): boolean {
  return FACTS[verdict].isOpen;
}

/**
 * The one verdict over findings, readings or both: the gravest of what was judged. Comparisons never count, and what
 * does not apply is no pass: where nothing at all was judged, it cannot be told.
 *
 * @param all - whatever has a verdict and says whether it decides
 * @returns exceeds before cannot-tell before meets
 */
export function overallVerdict(all: readonly (WithVerdict & { readonly comparison: boolean })[]): Verdict {
  const judged = all.filter(({ comparison, verdict }) => !comparison && FACTS[verdict].isJudged);
  const verdicts = judged.map(({ verdict }) => verdict);
  return verdicts.length === 0
    ? 'cannot-tell'
    : verdicts.reduce((worst, next) => (graverBy(next, worst) > 0 ? next : worst));
}
