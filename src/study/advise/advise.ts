/** Advice: the smallest changes that make an installation meet its limits, each reviewed in full before it is given. */

import type { Subject } from '../../analysis/subject.js';
import { openForTrials } from '../../input/open-for-trials.js';
import { IssuesError } from '../../issues/issue.js';
import type { Finding } from '../../judging/finding.js';
import { overallVerdict, type Verdict } from '../../judging/verdict.js';
import type { Kept } from './all-changes.js';
import { type Change, effortOf } from './change.js';
import { compareFindings, type FindingPair } from './compare-findings.js';
import { isReachable, searchPlan } from './plan.js';
import { refine } from './refine.js';
import { findingKey, ratioOf, type ScreenOutcome, screen } from './screen.js';
import { type Combination, distinct, type SearchOptions, search, type Trials } from './search.js';
import { writeEdits } from './write-edits.js';

/** The findings of a text, as the full review gives them. */
export interface ReviewedText {
  readonly findings: readonly Finding[];
  readonly verdict: Verdict;
}

/** What the search is given to work with. */
export interface AdviseTools extends Trials {
  /** Full reviews of whole files, in the order asked; undefined for one that cannot be worked out. */
  readonly reviewMany: (texts: readonly string[]) => Promise<readonly (ReviewedText | undefined)[]>;
}

export interface AdviseOptions {
  /** Most alternatives given. */
  readonly alternatives?: number;
  /** Most changes made together. */
  readonly changes?: number;
  /** Most trials. */
  readonly trials?: number;
  readonly kept?: Kept;
  readonly efforts?: SearchOptions['efforts'];
}

/** One way to change the installation. */
export interface Alternative {
  readonly changes: readonly Change[];
  readonly effort: number;
  /** The changed file. */
  readonly text: string;
  readonly verdict: Verdict;
  /** True where nothing that supports and legs can reach exceeds any more, and nothing got worse than before. */
  readonly solves: boolean;
  /** Every finding before and after. */
  readonly pairs: readonly FindingPair[];
}

/** A finding that no change made meet, and why. */
export interface Unsolved {
  readonly finding: Finding;
  readonly why: 'beyond supports' | 'data missing' | 'not enough';
  /** The least ratio that any trial left, where it has one [-]. */
  readonly best?: number;
}

export interface Advice {
  readonly verdict: Verdict;
  readonly findings: readonly Finding[];
  /** By growing effort; those that do not solve everything come last, those that mend most first. */
  readonly alternatives: readonly Alternative[];
  /** What the first alternative leaves, or what is there already. */
  readonly unsolved: readonly Unsolved[];
  /** How many findings exceed that a change of supports or legs may mend. */
  readonly reachable: number;
  readonly trials: number;
  readonly ended: 'done' | 'cancelled' | 'out of trials';
}

const USUAL = { alternatives: 5, changes: 4, trials: 3000 } as const;
const NOTHING_KEPT: Kept = { marks: [], kinds: [] };
/** Full reviews for each alternative wanted; the look before them is close, so few fail. */
const ATTEMPTS = 3;
/** Ways that do not solve everything, given where none does. */
const PARTIAL = 3;

/**
 * Searches for the smallest changes that make a file meet its limits.
 *
 * @param text - the file
 * @param reviewed - its full review
 * @param tools - how trials and reviews are run
 * @param options - how far to search, what must stay as it is, and the user's efforts
 * @returns alternatives with their findings before and after, and what none of them mends
 * @throws IssuesError where the text cannot be read
 */
export async function adviseWith(
  text: string,
  reviewed: Subject & { readonly findings: readonly Finding[] },
  tools: AdviseTools,
  options: AdviseOptions = {},
): Promise<Advice> {
  const opening = openForTrials(text);
  if (!opening.ok) throw new IssuesError(opening.issues);
  const { opened } = opening;
  const wanted = options.alternatives ?? USUAL.alternatives;
  const limits: SearchOptions = {
    changes: options.changes ?? USUAL.changes,
    trials: options.trials ?? USUAL.trials,
    kept: options.kept ?? NOTHING_KEPT,
    efforts: options.efforts ?? {},
  };
  const plan = searchPlan(reviewed);
  const { findings } = reviewed;
  const common = { verdict: overallVerdict(findings), findings, reachable: plan.reachable.length };
  const beyond: readonly Unsolved[] = [
    ...plan.beyond.map((finding): Unsolved => ({ finding, why: 'beyond supports' })),
    ...plan.uncertain.map((finding): Unsolved => ({ finding, why: 'data missing' })),
  ];
  const base = plan.reachable.length === 0 ? undefined : screen(opened, plan.quick, []);
  if (base === undefined) {
    return { ...common, alternatives: [], unsolved: beyond, trials: 0, ended: 'done' };
  }
  const found = await search(opened, plan.quick, base, limits, tools);
  // What was found so far is still reviewed after a stop, so that nothing unreviewed is advised.
  const least: Combination[] = [];
  for (const one of distinct(found.solved).slice(0, wanted * ATTEMPTS)) {
    if (least.length >= wanted + 1 || (found.ended === 'cancelled' && least.length > 0)) break;
    const smaller = await refine(opened, plan.close, base, one, limits, tools);
    if (smaller !== undefined) least.push(smaller);
  }
  const ordered = distinct([...least].sort((a, b) => a.effort - b.effort));
  const solving = await reviewedOnes(ordered, text, findings, limits, tools);
  const whole = solving.filter(({ solves }) => solves).slice(0, wanted);
  const rest =
    whole.length > 0
      ? []
      : [
          ...solving,
          ...(await reviewedOnes(distinct(found.partial).slice(0, PARTIAL), text, findings, limits, tools)),
        ];
  const alternatives = [...whole, ...mendingMost(rest).slice(0, PARTIAL)];
  const unsolved = [...notEnough(plan.reachable, alternatives[0], base, found), ...beyond];
  return { ...common, alternatives, unsolved, trials: found.trials, ended: found.ended };
}

async function reviewedOnes(
  combinations: readonly Combination[],
  text: string,
  findings: readonly Finding[],
  { efforts }: SearchOptions,
  tools: AdviseTools,
): Promise<readonly Alternative[]> {
  const written = combinations.flatMap(({ changes }) => {
    const changed = writeEdits(
      text,
      changes.flatMap(({ edits }) => edits),
    );
    return changed === undefined ? [] : [{ changes, changed }];
  });
  const reviews = await tools.reviewMany(written.map(({ changed }) => changed));
  return written.flatMap(({ changes, changed }, index): readonly Alternative[] => {
    const review = reviews[index];
    if (review === undefined) return [];
    const pairs = compareFindings(findings, review.findings);
    const counted = pairs.filter(({ before, after }) => (after ?? before)?.comparison === false);
    const trouble = counted.some(({ became }) => became === 'exceeds now' || became === 'doubtful now');
    const effort = effortOf(changes, efforts);
    return [
      {
        changes,
        effort,
        text: changed,
        verdict: review.verdict,
        solves: !trouble && !counted.some(isLeft),
        pairs,
      },
    ];
  });
}

/** Whether a finding that supports and legs reach is left as it was: exceeding. */
function isLeft({ before, after, became }: FindingPair): boolean {
  if (before?.verdict !== 'exceeds' || after?.verdict !== 'exceeds') return false;
  return isReachable(before) || became === 'exceeds now';
}

/** Ways that solve not everything: those that mend most first, then the easiest. */
function mendingMost(ways: readonly Alternative[]): readonly Alternative[] {
  const worth = ({ pairs }: Alternative): number =>
    pairs.reduce(
      (sum, { became, before, after }) =>
        (after ?? before)?.comparison === true
          ? sum
          : became === 'mended'
            ? sum + 1
            : became === 'exceeds now' || became === 'doubtful now'
              ? sum - 1
              : sum,
      0,
    );
  return [...ways].filter((way) => worth(way) > 0).sort((a, b) => worth(b) - worth(a) || a.effort - b.effort);
}

function notEnough(
  reachable: readonly Finding[],
  first: Alternative | undefined,
  base: ScreenOutcome,
  { solved, partial }: { readonly solved: readonly Combination[]; readonly partial: readonly Combination[] },
): readonly Unsolved[] {
  const left = reachable.filter(
    (finding) =>
      first === undefined ||
      first.pairs.some(({ before, after }) => before === finding && (after?.verdict ?? 'meets') !== 'meets'),
  );
  return left.map((finding): Unsolved => {
    const key = findingKey(finding);
    const excesses = [...solved, ...partial].map(({ outcome }) => outcome.excess[key] ?? 0);
    const best = Math.min(base.excess[key] ?? Number.POSITIVE_INFINITY, ...excesses.filter((one) => one > 0));
    return { finding, why: 'not enough', ...(Number.isFinite(best) && { best: ratioOf(best) }) };
  });
}
