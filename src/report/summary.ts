/** A review at a summary: the verdict, the findings that decide it, the load on each support, the next step. */

import type { Subject } from '../analysis/subject.js';
import type { UnitSystem } from '../input/installation.js';
import type { Finding } from '../judging/finding.js';
import type { Verdict } from '../judging/verdict.js';
import { conditionTitle, ofRole } from '../model/conditions/condition-roles.js';
import type { Vec3 } from '../model/conventions.js';
import { orderedConditions } from './words/condition-order.js';
import { findingSentence, worstFirst } from './words/finding-row.js';
import { carriesWeight, supportWord } from './words/support-word.js';
import { createWriter, NO_NUMBER, type Writer } from './writer.js';

/** What a summary is taken at. */
export interface ReviewedSubject extends Subject {
  readonly findings: readonly Finding[];
  readonly verdict: Verdict;
}

export interface SummaryFinding {
  readonly ratio: string;
  readonly verdict: Verdict;
  readonly title: string;
  readonly at: string;
  readonly condition: string;
}

export interface SummarySupport {
  readonly mark: string;
  readonly word: string;
  /** Vertical load with the line filled: `1,240 lb down`. */
  readonly filled: string;
  /** Largest resultant of all conditions, and the condition. */
  readonly largest: string;
  readonly condition: string;
}

/** Finished text, for a terminal or any other small place. */
export interface ReviewSummary {
  readonly pump: string;
  readonly project: string;
  readonly verdict: Verdict;
  /** What decides the verdict first; at least three where so many were judged. */
  readonly findings: readonly SummaryFinding[];
  /** How many more of the verdict that decides there are than are listed. */
  readonly unlisted: number;
  readonly supports: readonly SummarySupport[];
  /** How many places were judged with each outcome, comparisons left out. */
  readonly counts: Readonly<Record<Verdict, number>>;
  readonly assumptions: number;
  /** What to do about the findings listed, worst first, and where; what is done in one go stands once. */
  readonly todos: readonly { readonly at: string; readonly todo: string }[];
}

/** Most findings listed that are no pass, and fewest listed at all. */
const MOST_LISTED = 8;
const FEWEST_LISTED = 3;

/**
 * Takes a summary at a review.
 *
 * @param subject - installation, results and findings
 * @param units - system to print in
 * @returns finished text
 */
export function reviewSummary(subject: ReviewedSubject, units: UnitSystem): ReviewSummary {
  const { installation, findings, verdict } = subject;
  const write = createWriter(units);
  const judged = worstFirst(findings);
  const trouble = judged.filter((finding) => finding.verdict !== 'meets');
  const listed = judged.slice(0, Math.max(FEWEST_LISTED, Math.min(MOST_LISTED, trouble.length)));
  return {
    pump: installation.pump.mark,
    project: installation.review.project,
    verdict,
    findings: listed.map((finding) => ({
      ratio: write.ratio(finding.ratio),
      verdict: finding.verdict,
      title: finding.title,
      at: finding.at,
      condition: finding.condition === undefined ? NO_NUMBER : conditionTitle(finding.condition),
    })),
    unlisted: Math.max(0, trouble.length - listed.length),
    supports: supportRows(subject, write),
    counts: countsOf(findings),
    assumptions: installation.assumptions.length,
    todos: todosOf(trouble.slice(0, MOST_LISTED)),
  };
}

/** Most things to do that are worth reading at once. */
const MOST_TODOS = 4;

function todosOf(trouble: readonly Finding[]): ReviewSummary['todos'] {
  const places = new Map<string, string[]>();
  for (const finding of trouble) {
    const sentence = findingSentence(finding);
    const todo = sentence?.wanted ?? sentence?.hint;
    if (todo !== undefined) places.set(todo, [...(places.get(todo) ?? []), finding.at]);
  }
  return [...places].slice(0, MOST_TODOS).map(([todo, at]) => ({ at: [...new Set(at)].join(', '), todo }));
}

function countsOf(findings: readonly Finding[]): ReviewSummary['counts'] {
  const counts = { meets: 0, exceeds: 0, 'cannot-tell': 0, 'does-not-apply': 0 };
  for (const finding of findings) if (!finding.comparison) counts[finding.verdict] += 1;
  return counts;
}

function supportRows({ layout, response }: ReviewedSubject, write: Writer): readonly SummarySupport[] {
  const conditions = orderedConditions(response);
  const filled = ofRole(conditions, 'filled');
  return layout.supports.map((support) => {
    const all = conditions.flatMap(({ title: name, supports }) => {
      const force: Vec3 | undefined = supports[support.mark]?.load.force;
      return force === undefined ? [] : [{ name, size: Math.hypot(...force) }];
    });
    const largest = all.reduce((worst, next) => (next.size > worst.size * (1 + ROUNDING) ? next : worst), {
      name: NO_NUMBER,
      size: 0,
    });
    return {
      mark: support.mark,
      word: supportWord(support),
      filled: carriesWeight(support)
        ? vertical(filled?.supports[support.mark]?.load.force, write)
        : NO_NUMBER,
      largest: largest.size === 0 ? NO_NUMBER : write.quantity(largest.size, 'force'),
      condition: largest.name,
    };
  });
}

/** Conditions whose loads differ by less than this share are equal: the first in order is named. */
const ROUNDING = 1e-9;

/** As the pipe acts on the support: a weight that hangs or rests loads it down. */
function vertical(force: Vec3 | undefined, write: Writer): string {
  if (force === undefined) return NO_NUMBER;
  const up = force[2];
  const text = write.quantity(Math.abs(up), 'force');
  return up > 0 ? `${text} up` : `${text} down`;
}
