/** Advice on paper. */
import { basename, join } from 'node:path';
import { advicePdf } from '../../app/advice-words.js';
import type { AdvisedFile } from '../../app/advise.js';
import type { UnitSystem } from '../../index.js';
import { lineDifference } from '../compare/line-difference.js';
import type { Environment } from '../environment.js';
import { readFonts } from '../templates/shipped-fonts.js';
import { readTemplates } from '../templates/template-folder.js';

/**
 * The PDF of some advice.
 *
 * @param advised - review and advice
 * @param input - name and text of the file, and the units to print in
 * @param environment - where the shipped templates and fonts are
 * @returns the bytes
 */
export async function advicePaper(
  advised: AdvisedFile,
  input: { readonly name: string; readonly text: string; readonly units: UnitSystem },
  environment: Environment,
): Promise<Uint8Array> {
  const shipped = join(environment.packageFolder, 'templates');
  const templates = await readTemplates(shipped, undefined, environment.folder);
  return advicePdf(advised, {
    templates: templates.all,
    fonts: await readFonts(join(shipped, 'fonts')),
    page: input.units === 'us' ? 'letter' : 'a4',
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
