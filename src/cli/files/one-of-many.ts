/** What is told of one file among many, and how many files are shared out over threads. */
import { type Review, reviewSummary, studyBands, type UnitSystem } from '../../index.js';
import type { CheckOptions } from '../check/check-one.js';
import type { Environment } from '../environment.js';
import { type ExitStatus, statusOfVerdict } from '../exit-status.js';
import type { OutputNames } from '../review/output-names.js';
import type { ReviewOptions } from '../review/review-one.js';
import { captured, type ThreadPlace } from '../terminal/captured.js';
import { showFailure } from '../terminal/show-failure.js';

/** One line of the list. */
export interface FileRow {
  readonly file: string;
  readonly mark: string;
  /** A verdict in words, or why there is none. */
  readonly verdict: string;
  readonly ratio: string;
  readonly worst: string;
}

/** How one file ended; plain data. */
export interface FileOutcome {
  readonly status: ExitStatus;
  readonly row: FileRow;
  /** What goes to the output, such as a line of JSON. */
  readonly output: string;
  readonly messages: string;
}

/** What is done to one file. */
export type FileTask =
  | { readonly kind: 'check'; readonly options: CheckOptions }
  | { readonly kind: 'review'; readonly options: ReviewOptions; readonly names: OutputNames };

/** One file for a thread: plain data. */
export interface FileOrder {
  readonly file: string;
  readonly task: FileTask;
  readonly place: ThreadPlace;
}

/**
 * Does the work of one file, wherever it is called. It never throws: what goes wrong is told in the messages.
 *
 * @param order - the file and what to do
 * @returns how it ended
 */
export async function oneOfMany({ file, task, place }: FileOrder): Promise<FileOutcome> {
  const { environment, said } = captured(place);
  try {
    const review = await doTask(file, task, environment);
    const row = rowOf(file, review, task.options.units);
    return { status: statusOfVerdict(review.verdict), row, ...said() };
  } catch (error) {
    const status = showFailure(error, file, environment);
    const row = {
      file,
      mark: '–',
      verdict: unusable[status] ?? 'failed',
      ratio: '–',
      worst: 'see the messages',
    };
    return { status, row, ...said() };
  }
}

async function doTask(file: string, task: FileTask, environment: Environment): Promise<Review> {
  if (task.kind === 'check') {
    const { checkOne } = await import('../check/check-one.js');
    return checkOne(file, task.options, environment);
  }
  const { reviewOne } = await import('../review/review-one.js');
  return reviewOne(file, task.names, task.options, environment, withBands);
}

/** In this very thread: the others have files of their own. */
async function withBands(review: Review): Promise<Review> {
  return { ...review, bands: await studyBands(review) };
}

const unusable: Readonly<Record<number, string>> = { 2: 'unusable', 3: 'unreadable', 70: 'failed' };

function rowOf(file: string, review: Review, units: UnitSystem | undefined): FileRow {
  const seen = reviewSummary(review, units ?? review.installation.review.units);
  const [worst] = seen.findings;
  return {
    file,
    mark: seen.pump,
    verdict: seen.verdict.replaceAll('-', ' '),
    ratio: worst?.ratio ?? '–',
    worst: worst === undefined ? '' : `${worst.title}, ${worst.at}`,
  };
}
