import { type OfCheck, ruleOf } from '../../checks/all-checks.js';
import { CONSEQUENCES } from '../../checks/rule-facts.js';
import { sentenceOf } from '../../issues/print.js';
import type { Sentence } from '../../issues/sentences/sentence.js';
import { type Finding, restsOnMemory } from '../../judging/finding.js';
import { isOpen } from '../../judging/verdict.js';
import { worstFirst as gravestFirst } from '../../judging/worst-first.js';
import { conditionTitle } from '../../model/conditions/condition-roles.js';
import { citationText } from '../../sources/index.js';
import type { Dimension } from '../../units/index.js';
import type { ReportContext, View } from '../context.js';
import type { Writer } from '../writer.js';
import { tradeOf } from './trades.js';

/**
 * What a finding's numbers are, so that they print in the unit a reader expects.
 *
 * @param finding - finding with its SI unit
 * @returns dimension for the writer
 */
export function findingDimension(finding: Pick<Finding, 'unit' | 'check'>): Dimension {
  switch (finding.unit) {
    case 'Pa':
      return ruleOf(finding)?.pascals ?? 'stress';
    case 'N':
      return 'force';
    case 'N·m':
      return 'moment';
    case 'm':
      return 'length';
    case 'm/s':
      return 'velocity';
    case 'W':
      return 'power';
    case 'rad':
      return 'angle';
    case 'K':
      return 'temperature';
    case 'Hz':
      return 'frequency';
    case '-':
      return 'ratio';
  }
}

/**
 * Sentence that goes with the reason of a finding.
 *
 * @param finding - finding
 * @returns the sentence, or undefined where the finding carries no reason or the code has none
 */
export function findingSentence(finding: Finding): Sentence | undefined {
  return finding.reason && sentenceOf(finding.reason);
}

/**
 * One finding as printed: place, demand, limit, ratio, verdict, basis, and what to do.
 *
 * @param finding - finding
 * @param context - writer and calculations
 * @returns strings and flags of one row
 */
export function findingRow(finding: Finding, context: ReportContext) {
  const sentence = findingSentence(finding);
  const { write } = context;
  return {
    check: finding.check,
    title: finding.title,
    at: finding.at,
    condition: finding.condition === undefined ? '–' : conditionTitle(finding.condition),
    hasCondition: finding.condition !== undefined,
    demand: together(numberOf(finding, finding.demand, write, 3)),
    limit: limitText(finding, write),
    isLeast: finding.sense === 'at least',
    ratio: write.ratio(finding.ratio),
    trade: tradeOf(finding),
    verdict: finding.verdict,
    exceeds: finding.verdict === 'exceeds',
    unjudged: finding.verdict === 'cannot-tell',
    comparison: finding.comparison,
    fromMemory: restsOnMemory(finding),
    hasRatio: finding.ratio !== undefined,
    hasNumbers: finding.demand !== undefined && finding.limit !== undefined,
    basis: citationText(finding.basis),
    number: findingNumber(finding, context),
    anchor: findingAnchor(finding, context),
    what: startSentence(sentence?.message),
    todo: sentence?.wanted ?? '',
    hint: startSentence(sentence?.hint),
    section: placeOf(finding, context),
  } satisfies View;
}

/** A least that is required says so: what stands before it is then what is provided. */
function limitText(finding: Finding, write: Writer): string {
  const text = together(numberOf(finding, finding.limit, write, 4));
  return finding.sense === 'at least' && finding.limit !== undefined ? `at least ${text}` : text;
}

/** A number and its unit stay on one line. */
function together(text: string): string {
  return text.replaceAll(' ', '\u00a0');
}

/** Sentences are kept without a capital, so that they can follow a colon. */
function startSentence(words: string | undefined): string {
  return words === undefined ? '' : words.charAt(0).toUpperCase() + words.slice(1);
}

/** Number of a finding: its place among all of the review, so that it is the same for every reader. */
function findingNumber(finding: Finding, context: ReportContext): string {
  return String(context.findings.indexOf(finding) + 1);
}

/**
 * Id of the row a finding is printed in.
 *
 * @param finding - finding
 * @param context - all findings
 * @returns id for links
 */
export function findingAnchor(finding: Finding, context: ReportContext): string {
  return `finding-${findingNumber(finding, context)}`;
}

/** Where a finding is printed: its row, or the section as a whole where the reader's review has no row of it. */
function placeOf(finding: Finding, context: ReportContext): string {
  const isPracticeRow = isToldApart(finding, context);
  const full = context.reader === 'engineer';
  const hasRow = isPracticeRow
    ? !isScope(finding) && (full || isOpen(finding))
    : full
      ? finding.verdict !== 'does-not-apply'
      : isOpen(finding) && isWorthReading(finding);
  if (hasRow) return findingAnchor(finding, context);
  return isPracticeRow ? 'practice' : 'findings';
}

/** Whether a finding says what the review is meant for: printed apart, without a row. */
export function isScope(finding: OfCheck): boolean {
  return ruleOf(finding)?.section === 'scope';
}

/** Whether a finding is one of good installation practice, or of what the review is meant for. */
export function isPractice(finding: OfCheck): boolean {
  return isScope(finding) || ruleOf(finding)?.section === 'practice';
}

/** Demand or limit with its unit; a number without one stands alone. A limit is a given number, a demand an estimate. */
function numberOf(finding: Finding, value: number | undefined, write: Writer, significant: 3 | 4): string {
  if (finding.unit === '-') return write.plain(value, significant);
  if (finding.unit === 'm') return write.distance(value);
  return write.quantity(value, findingDimension(finding), { significant });
}

/**
 * Findings in the order in which they are to be read: what can hurt or break, first what exceeds by how much, then what
 * cannot be told and so blocks the verdict; then room; then practice; then what comes nearest.
 *
 * @param findings - findings in any order
 * @returns judged findings (no comparisons, nothing that does not apply), worst first; within each, distances last
 */
export function worstFirst(findings: readonly Finding[]): readonly Finding[] {
  const judged = gravestFirst(
    findings.filter((finding) => !finding.comparison && finding.verdict !== 'does-not-apply'),
  );
  const open = CONSEQUENCES.flatMap((consequence) => {
    const own = judged.filter((one) => (ruleOf(one)?.consequence ?? 'hurt or break') === consequence);
    const beyond = own.filter((finding) => finding.verdict === 'exceeds');
    return [
      ...beyond.filter((one) => !isLesser(one)),
      ...beyond.filter(isLesser),
      ...own.filter((finding) => finding.verdict === 'cannot-tell'),
    ];
  });
  return [...open, ...judged.filter((finding) => finding.verdict === 'meets')];
}

/** A ratio of distances is not a ratio of strength: five times too far is a lesser thing than half as strong again. */
function isLesser(finding: Finding): boolean {
  return finding.unit === 'm' && finding.ratio !== undefined;
}

/**
 * Whether a finding stands in the section on installation practice rather than among the findings.
 *
 * @param finding - finding
 * @param context - sections that are printed
 * @returns true for installation practice, for readers who have that section
 */
export function isToldApart(finding: Finding, { printed }: Pick<ReportContext, 'printed'>): boolean {
  return printed.has('practice') && isPractice(finding);
}

/** From this share of its limit on, something that meets is worth a fitter's reading [-]. */
const NEAR_LIMIT = 0.8;

/**
 * Whether a finding is advice of the trade that is not followed, or of which nothing is said: no verdict, and still
 * something to be done on site.
 *
 * @param finding - finding
 * @returns true for installation practice that is compared and is open
 */
export function isAdvice(finding: Finding): boolean {
  return (
    finding.comparison &&
    isOpen(finding) &&
    ruleOf(finding)?.standing === 'practice' &&
    ruleOf(finding)?.section === 'practice'
  );
}

/**
 * Whether a finding belongs in a short review: what has to be acted on, and what comes near its limit.
 *
 * @param finding - finding
 * @returns true for what exceeds, cannot be told, is within a fifth of its limit, or is advice not followed
 */
export function isWorthReading(finding: Finding): boolean {
  if (isAdvice(finding)) return true;
  if (finding.comparison || finding.verdict === 'does-not-apply') return false;
  return finding.verdict !== 'meets' || (finding.ratio ?? 0) > NEAR_LIMIT;
}
