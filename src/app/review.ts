/**
 * The review as a list of steps, each a function of what the steps before it gave:
 *
 *     text ─ readInstallation ─▶ Installation
 *          ─ buildLayout ──────▶ Layout, and the Frame in it
 *          ─ findVibrations ───▶ Frequencies, and from them StartUp with its conditions
 *          ─ solveFrame ───────▶ Response
 *          ─ runChecks ────────▶ Findings
 *          ─ boundFindings ────▶ Findings that hold whatever nobody stated, within its range
 *          ─ overallVerdict ───▶ Verdict
 *          ─ resultsFile ──────▶ results for machines
 *          ─ composeReview ────▶ views and drawings ─ fill, parse, lay out, paint ─▶ PDF, page
 *
 * The last line is loaded only when it is asked for: a verdict needs neither templates nor fonts.
 */

import { solveInstallation } from '../analysis/solve-installation.js';
import type { Subject } from '../analysis/subject.js';
import { runChecks } from '../checks/all-checks.js';
import type { Installation, UnitSystem } from '../input/installation.js';
import type { Issue } from '../issues/issue.js';
import type { Finding } from '../judging/finding.js';
import { overallVerdict, type Verdict } from '../judging/verdict.js';
import type { ReadResults } from '../report/results/read-results.js';
import { resultsFile } from '../report/results/results-file.js';
import type { ResultsFile } from '../report/results/results-schema.js';
import type { Bands } from '../study/bands/bands.js';
import { boundFindings } from '../study/bounds/bound-findings.js';
import type { Bounds } from '../study/bounds/bounds.js';
import type { TemplatesToCheck } from './check-templates.js';
import type { ComparedRevisions, ComparisonRendering, Revision } from './compare-revisions.js';
import type { Logo, RenderOptions } from './render-review.js';
import { version } from './version.js';

export { solveInstallation };

/** An installation with everything that came of it. */
export interface Review extends Subject {
  readonly findings: readonly Finding[];
  readonly verdict: Verdict;
  /** What nobody stated and the verdicts rest on; verdicts hold over all of it, or say what turns them. */
  readonly bounds: Bounds;
  /** How sure the numbers are, from `studyBands`, where that was asked for. */
  readonly bands?: Bands;
}

/**
 * Reviews an installation.
 *
 * @param installation - as `readInstallation` gives it
 * @returns layout, response, frequencies, start, findings and verdict
 * @throws EngineError when the installation cannot be worked out, for example when nothing holds the line
 */
export function review(installation: Installation): Review {
  const subject = solveInstallation(installation);
  const { findings, bounds } = boundFindings(subject, runChecks(subject));
  const verdict = overallVerdict(findings);
  return { ...subject, findings, verdict, bounds };
}

/**
 * The results of a review for machines.
 *
 * @param review - the review
 * @returns plain data in SI units, of the shape of `resultsJsonSchema`
 */
export function reviewResults(review: Review): ResultsFile {
  return resultsFile(review, review.findings, { version });
}

/**
 * The review as PDF.
 *
 * @param review - the review
 * @param options - templates, fonts, reader, units, page
 * @returns the bytes; the same for the same review and options
 * @throws EngineError `render.…` for a template that cannot be used
 */
export async function renderReviewPdf(review: Review, options: RenderOptions): Promise<Uint8Array> {
  const { reviewPdf } = await import('./render-review.js');
  return reviewPdf(review, options);
}

/**
 * The review as one page of HTML that needs nothing else.
 *
 * @param review - the review
 * @param options - templates, fonts, reader, units
 * @returns the text of the page
 * @throws EngineError `render.…` for a template that cannot be used
 */
export async function renderReviewHtml(review: Review, options: RenderOptions): Promise<string> {
  const { reviewHtml } = await import('./render-review.js');
  return reviewHtml(review, options);
}

/**
 * Compares two revisions, of each its results, and its input where that is at hand.
 *
 * @param before - the older
 * @param after - the newer
 * @param units - units to print in
 * @returns what differs, as data and as text
 */
export async function compareRevisions(
  before: Revision,
  after: Revision,
  units: UnitSystem,
): Promise<ComparedRevisions> {
  const { compareRevisions: compare } = await import('./compare-revisions.js');
  return compare(before, after, units);
}

/**
 * A comparison as PDF.
 *
 * @param compared - as `compareRevisions` gives it
 * @param options - templates, fonts, page, date, letterhead
 * @returns the bytes
 * @throws EngineError `render.…` for a template that cannot be used
 */
export async function renderComparisonPdf(
  compared: ComparedRevisions,
  options: ComparisonRendering,
): Promise<Uint8Array> {
  const { comparisonPdf } = await import('./compare-revisions.js');
  return comparisonPdf(compared.composed, options);
}

/**
 * Reads a results file back.
 *
 * @param text - content of the file
 * @param options - its name, for messages
 * @returns the results, or the issues
 */
export async function readResults(text: string, options: { readonly file: string }): Promise<ReadResults> {
  const { readResults: read } = await import('../report/results/read-results.js');
  return read(text, options);
}

/**
 * Checks templates with reviews, for every reader, also in branches that none of them takes.
 *
 * @param reviews - several reviews
 * @param check - the templates, and those of the program
 * @returns names that nothing is called; empty where all is well
 * @throws EngineError, IssuesError for what cannot be filled or laid out
 */
export async function checkTemplates(
  reviews: readonly Review[],
  check: TemplatesToCheck,
): Promise<readonly Issue[]> {
  const { checkTemplates: run } = await import('./check-templates.js');
  return run(reviews, check);
}

/**
 * Reads the logo of a letterhead: PNG, JPEG, or the part of SVG that draws filled and stroked outlines.
 *
 * @param bytes - the file
 * @param options - its name for messages, and what it shows, for those who cannot see it
 * @returns the logo, checked
 * @throws EngineError `render.logo.…` for what cannot or may not be drawn
 */
export async function readLogo(
  bytes: Uint8Array,
  options: { readonly file: string; readonly alt: string },
): Promise<Logo> {
  const { readLogo: read } = await import('../render/logo/logo.js');
  return read(bytes, options);
}
