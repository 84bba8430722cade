/** Reading templates: the shipped ones, and in their place those of a folder of the user's own. */
import { readdir, readFile, realpath, stat } from 'node:fs/promises';
import { join, resolve, sep } from 'node:path';
import { fixedTemplates } from '../../index.js';
import { EngineError } from '../../issues/issue.js';
import { reasonOf } from '../system-reason.js';

/** Text of templates by path below the folder, with forward slashes and without ending: `sections/weights`. */
export type TemplateTexts = Readonly<Record<string, string>>;

/** The templates to fill, and which of them the program ships. */
export interface TemplateSet {
  readonly all: TemplateTexts;
  readonly shipped: TemplateTexts;
}

const ENDING = '.hbs';
const LIMIT_FILES = 200;
const LIMIT_BYTES = 256 * 1024;

/**
 * The templates to fill.
 *
 * @param shipped - folder of the package's templates
 * @param own - folder named by `--templates`, if any; each file in it replaces the shipped one of the same name
 * @param workingFolder - folder that the name of `own` starts from
 * @returns all templates by name, those of the folder in the place of the shipped ones, and the shipped ones
 * @throws EngineError `cli.arguments.…` for a folder that cannot be used or a template that stands in every review, `cli.read.shipped-missing`
 */
export async function readTemplates(
  shipped: string,
  own: string | undefined,
  workingFolder: string,
): Promise<TemplateSet> {
  const texts = await readFolder(shipped).catch((error: unknown) => {
    throw new EngineError('cli.read.shipped-missing', { file: shipped, reason: reasonOf(error) });
  });
  if (own === undefined) return { all: texts, shipped: texts };
  const ours = await readOwnFolder(own, workingFolder);
  const fixed = fixedTemplates.find((name) => Object.hasOwn(ours, name) && ours[name] !== texts[name]);
  if (fixed !== undefined)
    throw new EngineError('cli.arguments.template-fixed', { file: join(own, `${fixed}${ENDING}`) });
  return { all: { ...texts, ...ours }, shipped: texts };
}

async function readOwnFolder(folder: string, workingFolder: string): Promise<TemplateTexts> {
  try {
    return await readFolder(resolve(workingFolder, folder));
  } catch (error) {
    if (error instanceof EngineError) throw error;
    throw new EngineError('cli.arguments.templates-not-folder', { folder, reason: reasonOf(error) });
  }
}

async function readFolder(folder: string): Promise<TemplateTexts> {
  const root = await realpath(folder);
  const names = (await readdir(root, { recursive: true }))
    .filter((name) => name.endsWith(ENDING))
    .map((name) => name.split(sep).join('/'))
    .sort();
  if (names.length > LIMIT_FILES) {
    throw new EngineError('cli.arguments.too-many-templates', { folder, limit: LIMIT_FILES });
  }
  const entries = names.map(
    async (name) => [name.slice(0, -ENDING.length), await readTemplate(root, name, folder)] as const,
  );
  return Object.fromEntries(await Promise.all(entries));
}

/** Links are followed, but only inside the folder: a template set from elsewhere must not print other files. */
async function readTemplate(root: string, name: string, folder: string): Promise<string> {
  const path = await realpath(join(root, name));
  const shown = join(folder, name);
  if (!path.startsWith(resolve(root) + sep)) {
    throw new EngineError('cli.arguments.template-outside', { file: shown, folder });
  }
  if ((await stat(path)).size > LIMIT_BYTES) {
    throw new EngineError('cli.arguments.template-too-large', {
      file: shown,
      limit: `${LIMIT_BYTES / 1024} KiB`,
    });
  }
  return readFile(path, 'utf8');
}
