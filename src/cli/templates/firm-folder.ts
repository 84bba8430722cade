/** The firm's own style in a folder of templates: `firm.yaml`, and the logo that it or the input names. */
import { readFile, realpath, stat } from 'node:fs/promises';
import { join, resolve, sep } from 'node:path';
import { type Firm, type Logo, readFirm, readLogo } from '../../index.js';
import { EngineError, IssuesError } from '../../issues/issue.js';
import { isMissing, kindOf, reasonOf } from '../system-reason.js';
import type { TemplateSet } from './template-folder.js';

const NAME = 'firm.yaml';
const LIMIT_BYTES = 64 * 1024;
/** A little over what a logo may have, so that the reader of logos says by how much it is too large. */
const LOGO_LIMIT_BYTES = 4 * 1024 * 1024;

/**
 * Reads `firm.yaml` of a folder of templates.
 *
 * @param folder - folder as given
 * @param workingFolder - folder that its name starts from
 * @param templates - the templates there are
 * @returns the style; undefined where the folder has none
 * @throws IssuesError with everything wrong in it; EngineError when it cannot be read
 */
export async function readFirmFile(
  folder: string,
  workingFolder: string,
  templates: TemplateSet,
): Promise<Firm | undefined> {
  const shown = join(folder, NAME);
  const bytes = await readInside(resolve(workingFolder, folder), NAME, shown, LIMIT_BYTES);
  if (bytes === undefined) {
    refuseUnused(folder, templates, {});
    return undefined;
  }
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new EngineError('cli.input.not-text', { file: shown });
  }
  const sections = Object.keys(templates.all)
    .filter((name) => name.startsWith('sections/'))
    .map((name) => name.slice('sections/'.length));
  const reading = readFirm(text, { file: shown, sections });
  if (!reading.ok) throw new IssuesError(reading.issues);
  refuseUnused(folder, templates, reading.firm.outline);
  return reading.firm;
}

/** A template that nothing puts in is a name with a slip in it, and the change meant would silently not be made. */
function refuseUnused(folder: string, { all, shipped }: TemplateSet, outline: Firm['outline']): void {
  const called = Object.values(all).flatMap((text) =>
    [...text.matchAll(/\{\{~?>\s*([\w./-]+)/g)].map(([, name]) => name),
  );
  const sections = Object.values(outline).flatMap((ids) => (ids ?? []).map((id) => `sections/${id}`));
  const used = new Set([...Object.keys(shipped), ...called, ...sections]);
  const unused = Object.keys(all).find((name) => !used.has(name));
  if (unused === undefined) return;
  throw new EngineError('cli.arguments.template-unused', {
    file: join(folder, `${unused}.hbs`),
    available: Object.keys(shipped),
  });
}

/**
 * Reads the logo a letterhead names.
 *
 * @param letterhead - name of the firm, and of the logo
 * @param folder - absolute path of the folder of the file that names it
 * @returns the logo; undefined where none is named
 * @throws EngineError `cli.arguments.logo-outside` | `cli.read.failed` | `render.logo.…`
 */
export async function readLetterheadLogo(
  letterhead: { readonly name: string; readonly logo?: string; readonly logoText?: string } | undefined,
  folder: string,
): Promise<Logo | undefined> {
  if (letterhead?.logo === undefined) return undefined;
  const file = letterhead.logo;
  const bytes = await readInside(folder, file, file, LOGO_LIMIT_BYTES);
  if (bytes === undefined)
    throw new EngineError('cli.read.failed', { file: `the logo ${file}`, reason: 'there is no such file' });
  return readLogo(bytes, { file, alt: letterhead.logoText ?? `Logo of ${letterhead.name}` });
}

/** Reads a file that must lie in a folder, links followed: a file from elsewhere must not show other files. */
async function readInside(
  folder: string,
  name: string,
  shown: string,
  limit: number,
): Promise<Uint8Array | undefined> {
  try {
    const root = await realpath(folder);
    const path = resolve(root, name);
    if (!path.startsWith(root.endsWith(sep) ? root : root + sep)) throw outside(shown);
    const real = await realpath(path);
    if (!real.startsWith(root.endsWith(sep) ? root : root + sep)) throw outside(shown);
    const found = await stat(real);
    // A pipe would be waited for without end.
    if (!found.isFile())
      throw new EngineError('cli.read.failed', {
        file: shown,
        reason: `it is ${kindOf(found)}, and no file`,
      });
    if (found.size > limit)
      throw new EngineError('cli.input.too-large', { file: shown, limit: `${limit / 1024} KiB` });
    return await readFile(real);
  } catch (error) {
    if (error instanceof EngineError) throw error;
    if (isMissing(error)) return undefined;
    throw new EngineError('cli.read.failed', { file: shown, reason: reasonOf(error) });
  }
}

const outside = (file: string) => new EngineError('cli.arguments.outside-folder', { file });
