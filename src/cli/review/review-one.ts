/** Reviewing one file. */
import {
  type Reader,
  type RenderOptions,
  type Review,
  renderReviewHtml,
  renderReviewPdf,
  reviewResults,
  type UnitSystem,
} from '../../index.js';
import { type Environment, LINE_WIDTH } from '../environment.js';
import { type NewFile, writeFiles } from '../files/write-files.js';
import { readFirmStyle, readPaperHead } from '../templates/firm-style.js';
import type { OutputNames } from './output-names.js';
import { reviewFile } from './review-file.js';

/** Options of the command as the parser of arguments gives them. */
export interface ReviewOptions {
  readonly output?: string;
  readonly results?: string;
  readonly html?: string;
  readonly for: Reader;
  readonly units?: UnitSystem;
  /** False when `--no-bands` was given. */
  readonly bands?: boolean;
  readonly templates?: string;
  readonly page?: 'letter' | 'a4';
}

/** Templates, fonts and what else reviews of one run have in common. */
export type ReviewLook = Pick<RenderOptions, 'templates' | 'fonts' | 'reader' | 'page' | 'units' | 'firm'>;

/**
 * Reads what reviews of one run have in common.
 *
 * @param options - options of the command
 * @param environment - folders
 * @returns templates, fonts, reader, page, units, and what the firm changes
 * @throws EngineError, IssuesError for a folder of templates that cannot be used
 */
export async function readLook(options: ReviewOptions, environment: Environment): Promise<ReviewLook> {
  return {
    ...(await readFirmStyle(options.templates, environment)),
    reader: options.for,
    ...(options.page === undefined ? {} : { page: options.page }),
    ...(options.units === undefined ? {} : { units: options.units }),
  };
}

/**
 * Reviews one file and writes what was asked for.
 *
 * @param file - as given
 * @param name - where everything goes
 * @param options - options of the command
 * @param environment - where to read and print
 * @param addBands - works the bands out, here or in threads
 * @returns the review
 * @throws IssuesError, EngineError when it cannot be read, worked out, or written
 */
export async function reviewOne(
  file: string,
  name: OutputNames,
  options: ReviewOptions,
  environment: Environment,
  addBands: (review: Review) => Promise<Review>,
): Promise<Review> {
  const look = await readLook(options, environment);
  const { input, review: plain } = await reviewFile(file, environment);
  const review = options.bands === false ? plain : await addBands(plain);
  const { logo } = await readPaperHead(
    { file, letterhead: review.installation.review.letterhead },
    { style: look, folder: options.templates },
    environment,
  );
  const rendering = { ...look, input, ...(logo === undefined ? {} : { logo }) };
  const written: NewFile[] = [{ ...name.pdf, content: await renderReviewPdf(review, rendering) }];
  if (name.html) written.push({ ...name.html, content: await renderReviewHtml(review, rendering) });
  if (name.results) written.push({ ...name.results, content: resultsText(reviewResults(review)) });
  await writeFiles(written);
  environment.output.write(closingLines(input.name, review.verdict, written));
  return review;
}

function resultsText(results: unknown): string {
  return `${JSON.stringify(results, null, 2)}\n`;
}

/** What was written, in one line where it fits. */
function closingLines(input: string, verdict: string, written: readonly NewFile[]): string {
  const first = `${input}: ${verdict.replace('-', ' ')}`;
  const names = written.map(({ shown }) => shown);
  const oneLine = `${first}, written to ${names.join(', ')}`;
  return oneLine.length <= LINE_WIDTH
    ? `${oneLine}\n`
    : `${first}\n${names.map((name) => `  ${name}\n`).join('')}`;
}
