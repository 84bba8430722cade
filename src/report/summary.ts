/** A review at a summary: the verdict, the findings that decide it, the load on each support, the next step. */

import type { Subject } from '../analysis/subject.js';
import { supportLoadIn } from '../analysis/supports/support-loads.js';
import type { UnitSystem } from '../input/installation.js';
import { englishFor, ownTexts, spelledData } from '../issues/spelling.js';
import { type Finding, restsOnMemory } from '../judging/finding.js';
import type { Verdict } from '../judging/verdict.js';
import { conditionTitle, inCondition } from '../model/conditions/condition-roles.js';
import { type LargestLoadRow, largestLoadRows } from './rows/largest-load-rows.js';
import { type LargestNozzleRow, largestNozzleRows } from './rows/largest-nozzle-rows.js';
import { askedOfManufacturer } from './words/asked-of-manufacturer.js';
import { findingSentence, worstFirst } from './words/finding-row.js';
import { ownWords } from './words/own-words.js';
import { carriesWeight } from './words/support-word.js';
import { createWriter, NO_NUMBER, type Writer } from './writer.js';

/** What a summary is taken at. */
export interface ReviewedSubject extends Subject {
  readonly findings: readonly Finding[];
  readonly verdict: Verdict;
}

export interface SummaryFinding {
  readonly ratio: string;
  readonly verdict: Verdict;
  /** Whether it rests on a value that is remembered and was not read. */
  readonly fromMemory: boolean;
  readonly title: string;
  readonly at: string;
  readonly condition: string;
}

/** Load on a support: as a number in the unit of `loadUnit`; a dash where there is none in that direction. */
export interface SummarySupport extends LargestLoadRow {
  /** Trade word of the support. */
  readonly word: string;
  /** Vertical load with the line filled: `1,240 lb down`. */
  readonly filled: string;
  /** Largest load in the direction that governs, of all conditions that come to pass: `426 lb down`. */
  readonly largest: string;
  /** Condition of that. */
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
  /** Largest loads of the pipe on both nozzles, suction first. */
  readonly nozzles: readonly LargestNozzleRow[];
  /** Unit of the numbers of `supports`. */
  readonly loadUnit: string;
  /** How many places were judged with each outcome, comparisons left out. */
  readonly counts: Readonly<Record<Verdict, number>>;
  /** How many were compared with what decides nothing, by outcome. */
  readonly compared: Readonly<Record<Verdict, number>>;
  /** What the manufacturer has to supply, each once. */
  readonly asked: readonly string[];
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
  const judged = worstFirst(findings).filter(({ chosen, verdict: own }) => !chosen || own !== 'meets');
  const trouble = judged.filter((finding) => finding.verdict !== 'meets');
  const listed = judged.slice(0, Math.max(FEWEST_LISTED, Math.min(MOST_LISTED, trouble.length)));
  const english = englishFor(units, installation.review.english);
  const summary: ReviewSummary = {
    pump: installation.pump.mark,
    project: installation.review.project,
    verdict,
    findings: listed.map((finding) => ({
      ratio: write.ratio(finding.ratio),
      verdict: finding.verdict,
      fromMemory: restsOnMemory(finding),
      title: finding.title,
      at: finding.at,
      condition: finding.condition === undefined ? NO_NUMBER : conditionTitle(finding.condition),
    })),
    unlisted: Math.max(0, trouble.length - listed.length),
    supports: supportRows(subject, write),
    nozzles: largestNozzleRows(subject, write),
    loadUnit: write.unit('force'),
    counts: countsOf(findings, false),
    compared: countsOf(findings, true),
    asked: askedOfManufacturer(findings).map(({ what }) => what),
    assumptions: installation.assumptions.length,
    todos: todosOf(trouble.slice(0, MOST_LISTED)),
  };
  return spelledData(summary, english, ownTexts(ownWords(installation)));
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

function countsOf(findings: readonly Finding[], compared: boolean): ReviewSummary['counts'] {
  const counts = { meets: 0, exceeds: 0, 'cannot-tell': 0, 'does-not-apply': 0 };
  for (const finding of findings) if (finding.comparison === compared) counts[finding.verdict] += 1;
  return counts;
}

function supportRows(subject: ReviewedSubject, write: Writer): readonly SummarySupport[] {
  const solved = inCondition(subject.response.conditions, 'filled');
  return largestLoadRows(subject, write).map((row) => {
    const support = subject.layout.supports.find(({ mark }) => mark === row.mark);
    const carries = support !== undefined && carriesWeight(support);
    return {
      ...row,
      word: row.kind,
      filled: carries ? vertical(supportLoadIn(solved, row.mark)?.downward, write) : NO_NUMBER,
      largest: row.governs === NO_NUMBER ? NO_NUMBER : `${row.governing} ${row.governs}`,
      condition: row.governingIn,
    };
  });
}

/** As the pipe acts on the support: a weight that hangs or rests loads it down. */
function vertical(downward: number | undefined, write: Writer): string {
  if (downward === undefined) return NO_NUMBER;
  return `${write.load(Math.abs(downward))} ${downward < 0 ? 'up' : 'down'}`;
}
