/** Advice on paper. */
import { basename } from 'node:path';
import { advicePdf } from '../../app/advice-words.js';
import type { AdvisedFile } from '../../app/advise.js';
import type { UnitSystem } from '../../index.js';
import { lineDifference } from '../compare/line-difference.js';
import type { Environment } from '../environment.js';
import { readFirmStyle, readPaperHead } from '../templates/firm-style.js';

/**
 * The PDF of some advice.
 *
 * @param advised - review and advice
 * @param input - name and text of the file, units to print in, folder of the firm's templates
 * @param environment - where the shipped templates and fonts are
 * @returns the bytes
 */
export async function advicePaper(
  advised: AdvisedFile,
  input: {
    readonly file: string;
    readonly name: string;
    readonly text: string;
    readonly units: UnitSystem;
    /** Folder of the firm's own templates. */
    readonly templates?: string | undefined;
  },
  environment: Environment,
): Promise<Uint8Array> {
  const style = await readFirmStyle(input.templates, environment);
  const { letterhead } = advised.review.installation.review;
  const firm = { style, folder: input.templates };
  const head = await readPaperHead({ file: input.file, letterhead }, firm, environment);
  return advicePdf(advised, {
    templates: style.templates,
    fonts: style.fonts,
    ...head,
    units: input.units,
    // The folder is the writer's own affair, and the page the same wherever it is written.
    file: basename(input.name),
    // The head of the difference names files that a reader of paper does not have.
    patches: advised.advice.alternatives.map(({ text }) =>
      lineDifference(input.text, text, { before: '', after: '' })
        .slice(2)
        .filter((line) => /^[-+]/.test(line))
        .map((line) => line.replace(/^([-+])\s+/, '$1 ')),
    ),
  });
}
