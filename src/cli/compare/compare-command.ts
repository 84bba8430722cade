/** `pipeborne compare`: what differs between two revisions, on the terminal and on paper. */
import { extname, resolve } from 'node:path';
import {
  type ComparedRevision,
  type ComparedRevisions,
  compareRevisions,
  type Installation,
  type ResultsFile,
  readInstallation,
  readResults,
  renderComparisonPdf,
  review,
  reviewResults,
  type UnitSystem,
} from '../../index.js';
import { EngineError, IssuesError } from '../../issues/issue.js';
import type { Environment } from '../environment.js';
import { type ExitStatus, statusOfVerdict, worstStatus } from '../exit-status.js';
import { readInput, STANDARD_INPUT } from '../files/read-input.js';
import { writeFiles } from '../files/write-files.js';
import { readFirmStyle, readPaperHead } from '../templates/firm-style.js';
import { showFailure, showIssues } from '../terminal/show-failure.js';
import { comparePicture } from './compare-view.js';

/** Options of the command as the parser of arguments gives them. */
export interface CompareOptions {
  readonly output?: string;
  readonly json?: boolean;
  readonly units?: UnitSystem;
  readonly templates?: string;
  readonly page?: 'letter' | 'a4';
}

/** Largest file read: results are longer than inputs. */
const LIMIT_BYTES = 16 * 1024 * 1024;

/** A revision with the installation it was made from, where the file is an input. */
interface ReadRevision extends ComparedRevision {
  readonly file: string;
  readonly installation?: Installation;
}

/**
 * Runs `compare`.
 *
 * @param files - the older and the newer file: inputs or results, as given
 * @param options - options of the command
 * @param environment - where to read, write and print
 * @returns the status of the newer revision; the worst of both where one cannot be used
 */
export async function compareCommand(
  files: readonly [string, string],
  options: CompareOptions,
  environment: Environment,
): Promise<ExitStatus> {
  const failures: ExitStatus[] = [];
  const read: ReadRevision[] = [];
  try {
    refuseArguments(files, options, environment);
  } catch (error) {
    return showFailure(error, 'the arguments', environment);
  }
  // Both are read before anything is said, so that faults of both come at once.
  for (const file of files) {
    try {
      read.push(await readRevision(file, environment));
    } catch (error) {
      failures.push(showFailure(error, file, environment));
    }
  }
  const [before, after] = read;
  if (failures.length > 0 || !before || !after) return worstStatus(failures);
  try {
    const units = options.units ?? after.results.review.units;
    const compared = await compareRevisions(before, after, units);
    if (options.output !== undefined) await writePdf(compared, after, units, options, environment);
    environment.output.write(
      options.json === true
        ? `${JSON.stringify({ format: 'pipeborne-comparison/1', ...compared.comparison })}\n`
        : comparePicture(compared.composed, options.output),
    );
    return statusOfVerdict(after.results.verdict);
  } catch (error) {
    return showFailure(error, files.join(' and '), environment);
  }
}

function refuseArguments(
  files: readonly [string, string],
  { output }: CompareOptions,
  { folder }: Environment,
): void {
  if (files.every((file) => file === STANDARD_INPUT)) throw new EngineError('cli.arguments.input-twice', {});
  if (output === undefined) return;
  if (extname(output).toLowerCase() !== '.pdf')
    throw new EngineError('cli.arguments.wrong-ending', { option: '-o', found: output, ending: '.pdf' });
  if (files.some((file) => file !== STANDARD_INPUT && resolve(folder, file) === resolve(folder, output)))
    throw new EngineError('cli.arguments.over-input', { file: output });
}

async function readRevision(file: string, environment: Environment): Promise<ReadRevision> {
  const { name, text } = await readInput(file, environment, LIMIT_BYTES);
  if (/^\s*\{/.test(text) && /"format"\s*:\s*"pipeborne-results\b/.test(text.slice(0, 4000))) {
    const reading = await readResults(text, { file: name });
    if (!reading.ok) throw new IssuesError(reading.issues);
    const { results } = reading;
    return { file, results, head: headOf(name, results) };
  }
  const reading = readInstallation(text, { file: name });
  if (!reading.ok) throw new IssuesError(reading.issues);
  showIssues(reading.warnings, environment);
  const { installation } = reading;
  const results = reviewResults(review(installation));
  return { file, input: text, installation, results, head: headOf(name, results) };
}

/** What is said of a revision beside its results. */
function headOf(name: string, { input, review }: ResultsFile): ComparedRevision['head'] {
  const { units: _, ...said } = review;
  return { name, fingerprint: input.sha256, ...said };
}

async function writePdf(
  compared: ComparedRevisions,
  after: ReadRevision,
  units: UnitSystem,
  options: CompareOptions,
  environment: Environment,
): Promise<void> {
  const { output = '', templates: folder } = options;
  const style = await readFirmStyle(folder, environment);
  const head = await readPaperHead(
    { file: after.file, letterhead: after.installation?.review.letterhead },
    { style, folder },
    environment,
  );
  const content = await renderComparisonPdf(compared, {
    templates: style.templates,
    fonts: style.fonts,
    ...head,
    page: options.page ?? (units === 'us' ? 'letter' : 'a4'),
    date: after.results.review.date,
    fingerprint: after.results.input.sha256,
  });
  await writeFiles([{ path: resolve(environment.folder, output), shown: output, content }]);
}
