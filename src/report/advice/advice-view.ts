import { isOf } from '../../checks/all-checks.js';
/** Advice as finished text, for a terminal, a page or a file for machines. */

import type { UnitSystem } from '../../input/installation.js';
import { coded, type IssueCode } from '../../issues/issue.js';
import { sentenceOf } from '../../issues/print.js';
import type { Finding } from '../../judging/finding.js';
import type { Verdict } from '../../judging/verdict.js';
import type { Advice, Alternative, Unsolved } from '../../study/advise/advise.js';
import type { FindingPair } from '../../study/advise/compare-findings.js';
import { findingDimension, findingSentence } from '../words/finding-row.js';
import { createWriter, type Writer } from '../writer.js';

/** One finding before and after, in words. */
export interface AdviceRow {
  readonly became: FindingPair['became'];
  readonly title: string;
  readonly at: string;
  readonly before: string;
  readonly after: string;
  readonly verdict: Verdict;
  readonly comparison: boolean;
}

/** One alternative, in words. */
export interface AlternativeView {
  readonly number: string;
  readonly effort: string;
  /** Where the effort comes from: one entry a change. */
  readonly steps: readonly string[];
  readonly solves: boolean;
  readonly verdict: Verdict;
  readonly mended: string;
  /** How near the nearest of what it mended is to its limit. */
  readonly inHand: string;
  readonly cautions: readonly string[];
  /** Every finding, those that changed first; none is left out. */
  readonly rows: readonly AdviceRow[];
}

export interface AdviceView {
  readonly verdict: Verdict;
  readonly alternatives: readonly AlternativeView[];
  readonly unsolved: readonly {
    readonly at: string;
    readonly title: string;
    readonly verdict: Verdict;
    readonly why: string;
    readonly todo: string;
  }[];
}

/** In the order a reader wants them. */
const ORDER: readonly FindingPair['became'][] = [
  'exceeds now',
  'doubtful now',
  'mended',
  'gone',
  'new',
  'told now',
  'worse',
  'better',
  'same',
];

/**
 * Advice in words.
 *
 * @param advice - what the search gave
 * @param units - system to print in
 * @returns finished text
 */
export function adviceView(advice: Advice, units: UnitSystem): AdviceView {
  const write = createWriter(units);
  return {
    verdict: advice.verdict,
    alternatives: advice.alternatives.map((one, index) => alternativeView(one, index, write)),
    unsolved: advice.unsolved.map((one) => unsolvedView(one, write)),
  };
}

function alternativeView(one: Alternative, index: number, write: Writer): AlternativeView {
  const codes = [
    ...new Set(['advise.caution.lock-out' as const, ...one.changes.flatMap(({ cautions }) => cautions)]),
  ];
  const counted = one.pairs.filter(({ before, after }) => !((after ?? before)?.comparison ?? true));
  // Where a long span is divided, the place that exceeded is no more.
  const mended = counted.filter(
    ({ before, became }) => became === 'mended' || (became === 'gone' && before?.verdict === 'exceeds'),
  );
  const closest = Math.max(...mended.flatMap(({ after }) => after?.ratio ?? []));
  return {
    number: String(index + 1),
    effort: write.plain(one.effort),
    steps: one.changes.map((change) => sentenceOf(change).message),
    solves: one.solves,
    verdict: one.verdict,
    mended: String(mended.length),
    inHand: Number.isFinite(closest) ? write.ratio(closest) : '',
    cautions: [...codes.map((code) => sentenceOf(coded(code, {})).message), ...noLongerAsked(one)],
    rows: [...one.pairs]
      .map((pair) => rowOf(pair, write))
      .sort(
        (a, b) =>
          Number(a.comparison) - Number(b.comparison) || ORDER.indexOf(a.became) - ORDER.indexOf(b.became),
      ),
  };
}

/** A new hanger can push an old one out of those that the review takes to be slack; the trials still asked. */
function noLongerAsked({ pairs, solves }: Alternative): readonly string[] {
  return pairs.flatMap(({ before, became }) =>
    solves &&
    became === 'gone' &&
    before !== undefined &&
    isOf(before, 'slack-hanger') &&
    before.verdict === 'exceeds'
      ? [sentenceOf({ code: 'advise.caution.no-longer-asked', data: { at: before.at } }).message]
      : [],
  );
}

function rowOf({ before, after, became }: FindingPair, write: Writer): AdviceRow {
  const finding = after ?? before;
  return {
    became,
    title: finding?.title ?? '',
    at: finding?.at ?? '',
    before: outcomeText(before, write),
    after: outcomeText(after, write),
    verdict: after?.verdict ?? 'does-not-apply',
    comparison: finding?.comparison ?? false,
  };
}

/** A ratio and its verdict; where there is no ratio, the demand. */
function outcomeText(finding: Finding | undefined, write: Writer): string {
  if (finding === undefined) return 'not judged';
  const { ratio, demand, verdict } = finding;
  const word = verdict.replaceAll('-', ' ');
  if (ratio !== undefined) return `${write.ratio(ratio)} ${word}`;
  return demand === undefined || verdict === 'does-not-apply'
    ? word
    : `${write.quantity(demand, findingDimension(finding))} ${word}`;
}

const WHY = {
  'beyond supports': 'advise.beyond-supports',
  'data missing': 'advise.data-missing',
  'not enough': 'advise.not-enough',
} as const satisfies Readonly<Record<Unsolved['why'], IssueCode>>;

function unsolvedView({ finding, why, best }: Unsolved, write: Writer): AdviceView['unsolved'][number] {
  const sentence = findingSentence(finding);
  const todo = sentence?.wanted ?? sentence?.hint ?? '';
  const hasRatio = finding.ratio !== undefined && best !== undefined;
  const told = sentenceOf(coded(WHY[why], { todo, best: hasRatio ? write.ratio(best) : '' }));
  return {
    at: finding.at,
    title: finding.title,
    verdict: finding.verdict,
    why: told.message,
    todo: told.wanted ?? '',
  };
}

/**
 * What was found, in a sentence or two.
 *
 * @param advice - what the search gave
 * @param view - the same in words
 * @returns text with full stops; a colon at the end where alternatives follow
 */
export function summaryOf(advice: Advice, view: AdviceView): string {
  const counted = advice.findings.filter(({ comparison }) => !comparison);
  const exceeding = counted.filter(({ verdict }) => verdict === 'exceeds').length;
  if (exceeding === 0) {
    return view.verdict === 'meets'
      ? 'Everything meets its limit: nothing needs to be changed.'
      : 'Nothing exceeds: no change of supports or legs is needed. What cannot be told needs data.';
  }
  const { reachable, trials } = advice;
  const places = `${exceeding} ${exceeding === 1 ? 'place exceeds' : 'places exceed'} a limit`;
  if (reachable === 0) return `${places}; none of them by anything that supports or legs can change.`;
  const within = `${places}, ${reachable === exceeding ? 'all' : reachable} by what supports and legs can change`;
  const whole = view.alternatives.filter(({ solves }) => solves).length;
  if (whole > 0)
    return `${within}. ${trials} trials found ${whole === 1 ? 'one way' : `${whole} ways`} to make ${reachable === 1 ? 'it' : 'these'} meet:`;
  if (view.alternatives.length > 0)
    return `${within}. None of ${trials} trials made all of these meet; the most they mend:`;
  return `${within}. None of ${trials} trials mended one of them without harm elsewhere.`;
}
