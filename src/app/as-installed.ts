/**
 * The unit as installed: readings brought back, judged, and printed.
 *
 *     PDF, YAML, JSON, CSV ─ readReadings ─▶ Answers ─ asInstalled ─▶ AsInstalled ─ renderAsInstalledPdf ─▶ PDF
 */

import {
  type AsInstalled,
  type AsInstalledOptions,
  asInstalled as judged,
} from '../as-installed/as-installed.js';
import { nextSheet } from '../as-installed/next-sheet.js';
import { readPartOfForm } from '../forms/read-form.js';
import { EngineError, IssuesError } from '../issues/issue.js';
import type { Answers } from '../readings/answers.js';
import { answersOfForm } from '../readings/answers.js';
import { readReadingsTable } from '../readings/readings-table.js';
import { readReadingsText } from '../readings/readings-text.js';
import { buildSheet } from '../sheet/build-sheet.js';
import type { AsInstalledPrint } from './render-as-installed.js';
import type { Review } from './review.js';

export type { AsInstalled, AsInstalledOptions, EarlierVisit } from '../as-installed/as-installed.js';
export { asInstalledResults } from '../as-installed/as-installed-results.js';
export { type AsInstalledFile, asInstalledJsonSchema } from '../as-installed/as-installed-schema.js';
export { type AsInstalledSummary, asInstalledSummary } from '../as-installed/as-installed-summary.js';
export { contentDigest, type KeptSheet, keptSheet, lastOf, sheetToKeep } from '../as-installed/kept-sheet.js';
export { earlierVisit, type StoredReadings, storedReadings } from '../as-installed/stored-readings.js';
export type { Answer, AnswerPlace, Answers } from '../readings/answers.js';
export { readingsJsonSchema } from '../readings/readings-schema.js';
export type { AsInstalledPrint } from './render-as-installed.js';

/**
 * Reads what was brought back: a filled sheet, or a file of readings, told apart by what is in it.
 *
 * @param bytes - the file
 * @param file - its name, for places in messages; `.csv` is a table
 * @param review - the review its sheet was made from
 * @returns answers as filled
 * @throws IssuesError, EngineError `fieldwork.…`, `input.…`, for a file that is no such thing
 */
export async function readReadings(bytes: Uint8Array, file: string, review: Review): Promise<Answers> {
  if (isPdf(bytes) || /\.pdf$/iu.test(file)) {
    return answersOfForm(await readPartOfForm(bytes, buildSheet(review)), file);
  }
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new EngineError('cli.input.not-text', { file });
  }
  const read = /\.csv$/iu.test(file) ? readReadingsTable(text, file) : readReadingsText(text, file);
  if (!read.ok) throw new IssuesError(read.issues);
  return read.answers;
}

/** The signs a PDF begins with, within the first kilobyte. */
function isPdf(bytes: Uint8Array): boolean {
  return String.fromCharCode(...bytes.subarray(0, 1024)).includes('%PDF-');
}

/**
 * Judges what was read at an installed unit.
 *
 * @param review - the review of its input
 * @param answers - one or more sheets
 * @param options - whether sheets of another revision are taken, and earlier visits
 * @returns judgements, the line as found, go or hold
 * @throws IssuesError `fieldwork.sheet.…` for sheets of another pump or input
 */
export function asInstalled(
  review: Review,
  answers: readonly Answers[],
  options: AsInstalledOptions = {},
): AsInstalled {
  return judged(review, answers, options);
}

/**
 * The as-installed review as PDF.
 *
 * @param visit - what came of the visit
 * @param options - templates, fonts, page
 * @returns the bytes; the same for the same visit and options
 * @throws EngineError, IssuesError `render.…` for a template that cannot be used
 */
export async function renderAsInstalledPdf(
  visit: AsInstalled,
  options: AsInstalledPrint,
): Promise<Uint8Array> {
  const { asInstalledPdf } = await import('./render-as-installed.js');
  return asInstalledPdf(visit, options);
}

/**
 * The sheet of the next visit as a PDF to fill in: only what is still open.
 *
 * @param visit - what came of this visit
 * @param options - templates, fonts, page
 * @returns the bytes
 * @throws EngineError, IssuesError `render.…` for a template that cannot be used
 */
export async function renderNextSheetPdf(visit: AsInstalled, options: AsInstalledPrint): Promise<Uint8Array> {
  const { fieldSheetPdf } = await import('./render-field-sheet.js');
  const page = options.page ?? (visit.write.system === 'us' ? 'letter' : 'a4');
  return fieldSheetPdf(nextSheet(visit), { ...options, page });
}
