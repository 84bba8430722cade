/** `pipeborne as-installed`: judges readings of the installed pump. */

import { contentDigest } from '../../app/as-installed.js';
import {
  type Answers,
  type AsInstalledPrint,
  asInstalled,
  asInstalledResults,
  asInstalledSummary,
  type Review,
  readReadings,
  renderAsInstalledPdf,
  renderNextSheetPdf,
  version,
} from '../../index.js';
import { EngineError, type Issue, IssuesError } from '../../issues/issue.js';
import { type Environment, mayColour } from '../environment.js';
import { type ExitStatus, statusOfVerdict } from '../exit-status.js';
import { readSheetBytes, STANDARD_INPUT } from '../files/read-input.js';
import { type NewFile, writeFiles } from '../files/write-files.js';
import { reviewFile } from '../review/review-file.js';
import { readFirmStyle, readPaperHead } from '../templates/firm-style.js';
import { showFailure, showIssues } from '../terminal/show-failure.js';
import { asInstalledPicture } from './as-installed-view.js';
import { nameVisit } from './name-visit.js';
import { keepSheets, readStore } from './store-folder.js';
import { visitPage } from './visit-page.js';

/** Options of the command as the parser of arguments gives them. */
export interface AsInstalledCommandOptions {
  readonly color: boolean;
  readonly output?: string;
  readonly results?: string;
  readonly sheet?: string;
  readonly html?: string;
  readonly board?: string;
  readonly punchList?: string;
  readonly store?: string;
  readonly otherRevision?: boolean;
  readonly templates?: string;
  readonly page?: 'letter' | 'a4';
}

/**
 * Runs `as-installed`.
 *
 * @param file - input as given
 * @param sheets - filled sheets and files of readings as given
 * @param options - options of the command
 * @param environment - where to read, print and write
 * @returns the status of the readings' verdict
 */
export async function asInstalledCommand(
  file: string,
  sheets: readonly string[],
  options: AsInstalledCommandOptions,
  environment: Environment,
): Promise<ExitStatus> {
  try {
    return await run(file, sheets, options, environment);
  } catch (error) {
    return showFailure(error, file, environment);
  }
}

async function run(
  file: string,
  sheets: readonly string[],
  options: AsInstalledCommandOptions,
  environment: Environment,
): Promise<ExitStatus> {
  const only =
    options.board !== undefined ? '--board' : options.punchList !== undefined ? '--punch-list' : undefined;
  if (only !== undefined) throw new EngineError('cli.arguments.board-only', { option: only });
  const names = nameVisit(file, sheets, options, environment.folder);
  const style = await readFirmStyle(options.templates, environment);
  const { review } = await reviewFile(file, environment);
  const head = await readPaperHead(
    { file, letterhead: review.installation.review.letterhead },
    { style, folder: options.templates },
    environment,
  );
  const look: AsInstalledPrint = {
    templates: style.templates,
    fonts: style.fonts,
    ...head,
    ...(options.page === undefined ? {} : { page: options.page }),
  };
  const answers = await readAll(sheets, review, environment);
  const { store: folder } = options;
  const store = folder === undefined ? undefined : await readStore(folder, review, environment);
  const own = new Set(answers.map((each) => contentDigest(each, review)));
  const judged = asInstalled(review, answers, {
    otherRevision: options.otherRevision === true,
    // A sheet that is brought again is the one that was kept.
    kept: (store?.kept ?? []).filter(({ content }) => !own.has(content)).map((each) => each.answers),
  });
  // The visit of today is not its own past, however often it is looked at again.
  const today = judged.date ?? '';
  const visit = { ...judged, earlier: (store?.visits ?? []).filter(({ date }) => date < today) };
  showIssues(visit.issues, environment);
  // The record comes first: whatever becomes of the review, the readings are not read again.
  const kept =
    folder === undefined || store === undefined
      ? []
      : await keepSheets(folder, answers, store, review, environment);
  const written: NewFile[] = [{ ...names.pdf, content: await renderAsInstalledPdf(visit, look) }];
  if (names.results) {
    const text = `${JSON.stringify(asInstalledResults(visit, version), null, 2)}\n`;
    written.push({ ...names.results, content: text });
  }
  if (names.html) written.push({ ...names.html, content: visitPage(asInstalledSummary(visit)) });
  if (names.sheet) written.push({ ...names.sheet, content: await renderNextSheetPdf(visit, look) });
  try {
    await writeFiles(written);
  } catch (error) {
    for (const { shown, isNew } of kept) if (isNew) environment.output.write(`readings kept in ${shown}\n`);
    throw error;
  }
  environment.output.write(
    asInstalledPicture(asInstalledSummary(visit), {
      files: written.map(({ shown }) => shown),
      kept,
      colour: mayColour(environment.output, environment.variables, options.color),
    }),
  );
  return statusOfVerdict(visit.verdict);
}

/** Reads every sheet; what is wrong with any of them is told for all at once. */
async function readAll(
  sheets: readonly string[],
  review: Review,
  environment: Environment,
): Promise<readonly Answers[]> {
  const answers: Answers[] = [];
  const issues: Issue[] = [];
  for (const sheet of sheets) {
    if (sheet === STANDARD_INPUT) throw new EngineError('cli.arguments.sheet-from-input');
    try {
      answers.push(await readReadings(await readSheetBytes(sheet, environment), sheet, review));
    } catch (error) {
      if (error instanceof IssuesError) issues.push(...error.issues);
      else if (error instanceof EngineError) {
        issues.push({ code: error.code, severity: 'error', data: { file: sheet, ...error.data } });
      } else throw error;
    }
  }
  if (issues.length > 0) throw new IssuesError(issues);
  return answers;
}
