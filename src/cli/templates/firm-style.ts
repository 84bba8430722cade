/** The firm's style of every paper of a run: templates, fonts, `firm.yaml`, and the letterhead with its logo. */
import { dirname, join, resolve } from 'node:path';
import type { Firm, FontFiles, Letterhead, Logo } from '../../index.js';
import type { Environment } from '../environment.js';
import { STANDARD_INPUT } from '../files/read-input.js';
import { readFirmFile, readLetterheadLogo } from './firm-folder.js';
import { readFonts } from './shipped-fonts.js';
import { readTemplates, type TemplateTexts } from './template-folder.js';

/** What all papers of one run have in common. */
export interface FirmStyle {
  readonly templates: TemplateTexts;
  readonly fonts: FontFiles;
  readonly firm?: Firm;
}

/**
 * Reads the style of a firm, or that of the program where no folder is named.
 *
 * @param own - folder named by `--templates`, if any
 * @param environment - folders
 * @returns templates, fonts, and what the firm changes
 * @throws EngineError, IssuesError for a folder of templates that cannot be used
 */
export async function readFirmStyle(own: string | undefined, environment: Environment): Promise<FirmStyle> {
  const shipped = join(environment.packageFolder, 'templates');
  const templates = await readTemplates(shipped, own, environment.folder);
  const firm = own === undefined ? undefined : await readFirmFile(own, environment.folder, templates);
  const fonts = await readFonts(join(shipped, 'fonts'));
  return { templates: templates.all, fonts, ...(firm === undefined ? {} : { firm }) };
}

/** The head of a paper. */
export interface PaperHead {
  readonly letterhead?: Letterhead;
  readonly logo?: Logo;
}

/**
 * The letterhead of a paper: that of the input comes before that of the firm; each names its logo from its own folder.
 *
 * @param input - the file as given, and the letterhead in it
 * @param firm - the firm's style, and the folder it was read from
 * @param environment - folder that names start from
 * @returns letterhead and logo; nothing where there is none
 * @throws EngineError for a logo that cannot be used
 */
export async function readPaperHead(
  input: { readonly file: string; readonly letterhead?: Letterhead | undefined },
  firm: { readonly style: { readonly firm?: Partial<Firm> }; readonly folder?: string | undefined },
  { folder }: Environment,
): Promise<PaperHead> {
  const ours = input.letterhead;
  const letterhead = ours ?? firm.style.firm?.letterhead;
  const beside = input.file === STANDARD_INPUT ? '.' : dirname(input.file);
  const from = ours === undefined ? (firm.folder ?? '.') : beside;
  const logo = await readLetterheadLogo(letterhead, resolve(folder, from));
  return { ...(letterhead && { letterhead }), ...(logo && { logo }) };
}
