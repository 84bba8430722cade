/** `pipeborne review`: writes the review of each file as PDF, and its results and its page where asked. */
import { dirname, join, resolve } from 'node:path';
import {
  type Letterhead,
  type Logo,
  type Reader,
  type RenderOptions,
  renderReviewHtml,
  renderReviewPdf,
  reviewResults,
  type UnitSystem,
} from '../index.js';
import { addBands } from './add-bands.js';
import { eachFile } from './each-file.js';
import { type ExitStatus, statusOfVerdict } from './exit-status.js';
import { readFirmFile, readLetterheadLogo } from './firm-folder.js';
import { nameOutputs, type OutputNames } from './output-names.js';
import { STANDARD_INPUT } from './read-input.js';
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
  /** False when `--no-bands` was given. */
  readonly bands?: boolean;
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
  let look: Pick<RenderOptions, 'templates' | 'fonts' | 'reader' | 'page' | 'units' | 'firm'>;
  try {
    names = nameOutputs(files, askedNames(options), surroundings.folder);
    const shipped = join(surroundings.packageFolder, 'templates');
    const templates = await readTemplates(shipped, options.templates, surroundings.folder);
    const firm =
      options.templates === undefined
        ? undefined
        : await readFirmFile(options.templates, surroundings.folder, templates);
    look = {
      templates: templates.all,
      ...(firm === undefined ? {} : { firm }),
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
    const { input, review: plain } = await reviewFile(file, surroundings);
    const review = options.bands === false ? plain : await addBands(plain);
    const logo = await readLogoOf(review.installation.review.letterhead, look.firm?.letterhead, {
      input: file === STANDARD_INPUT ? surroundings.folder : dirname(resolve(surroundings.folder, file)),
      firm: resolve(surroundings.folder, options.templates ?? '.'),
    });
    const rendering = { ...look, input, ...(logo === undefined ? {} : { logo }) };
    const written: NewFile[] = [{ ...name.pdf, content: await renderReviewPdf(review, rendering) }];
    if (name.html) written.push({ ...name.html, content: await renderReviewHtml(review, rendering) });
    if (name.results) written.push({ ...name.results, content: resultsText(reviewResults(review)) });
    await writeFiles(written);
    surroundings.output.write(closingLines(input.name, review.verdict, written));
    return statusOfVerdict(review.verdict);
  });
}

/** The letterhead of the input comes before that of the firm; each names its logo from its own folder. */
function readLogoOf(
  own: Letterhead | undefined,
  firm: Letterhead | undefined,
  folders: { readonly input: string; readonly firm: string },
): Promise<Logo | undefined> {
  return own === undefined ? readLetterheadLogo(firm, folders.firm) : readLetterheadLogo(own, folders.input);
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
