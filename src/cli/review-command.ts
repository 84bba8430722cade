/** `pipeborne review`: writes the review of each file as PDF, and its results and its page where asked. */
import { join } from 'node:path';
import {
  type Reader,
  type RenderOptions,
  renderReviewHtml,
  renderReviewPdf,
  reviewResults,
  type UnitSystem,
} from '../index.js';
import { eachFile } from './each-file.js';
import { type ExitStatus, statusOfVerdict } from './exit-status.js';
import { nameOutputs, type OutputNames } from './output-names.js';
import { reviewFile } from './review-file.js';
import { readFonts } from './shipped-fonts.js';
import { showFailure } from './show-failure.js';
import { LINE_WIDTH, type Surroundings } from './surroundings.js';
import { readTemplates } from './template-folder.js';
import { type NewFile, writeFiles } from './write-files.js';

/** Options of the command as the parser of arguments gives them. */
export interface ReviewOptions {
  readonly output?: string;
  readonly results?: string;
  readonly html?: string;
  readonly for: Reader;
  readonly units?: UnitSystem;
  readonly templates?: string;
  readonly page?: 'letter' | 'a4';
}

/**
 * Runs `review`.
 *
 * @param files - inputs as given
 * @param options - options of the command
 * @param surroundings - where to read and write
 * @returns the worst status of all files
 */
export async function reviewCommand(
  files: readonly string[],
  options: ReviewOptions,
  surroundings: Surroundings,
): Promise<ExitStatus> {
  let names: readonly OutputNames[];
  let look: Pick<RenderOptions, 'templates' | 'fonts' | 'reader' | 'page' | 'units'>;
  try {
    names = nameOutputs(files, askedNames(options), surroundings.folder);
    const shipped = join(surroundings.packageFolder, 'templates');
    look = {
      templates: await readTemplates(shipped, options.templates, surroundings.folder),
      fonts: await readFonts(join(shipped, 'fonts')),
      reader: options.for,
      ...(options.page === undefined ? {} : { page: options.page }),
      ...(options.units === undefined ? {} : { units: options.units }),
    };
  } catch (error) {
    return showFailure(error, 'the arguments', surroundings);
  }
  return eachFile(files, surroundings, async (file, index) => {
    const name = names[index] as OutputNames;
    const { input, review } = await reviewFile(file, surroundings);
    const rendering = { ...look, input };
    const written: NewFile[] = [{ ...name.pdf, content: await renderReviewPdf(review, rendering) }];
    if (name.html) written.push({ ...name.html, content: await renderReviewHtml(review, rendering) });
    if (name.results) written.push({ ...name.results, content: resultsText(reviewResults(review)) });
    await writeFiles(written);
    surroundings.output.write(closingLines(input.name, review.verdict, written));
    return statusOfVerdict(review.verdict);
  });
}

function askedNames({ output, results, html }: ReviewOptions) {
  return {
    ...(output === undefined ? {} : { pdf: output }),
    ...(results === undefined ? {} : { results }),
    ...(html === undefined ? {} : { html }),
  };
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
