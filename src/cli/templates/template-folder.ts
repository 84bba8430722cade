/** Reading templates: the shipped ones, and in their place those of a folder of the user's own. */
import { readdir, readFile, realpath, stat } from 'node:fs/promises';
import { join, resolve, sep } from 'node:path';
import { fixedTemplates } from '../../index.js';
import { EngineError } from '../../issues/issue.js';
import { kindOf, reasonOf } from '../system-reason.js';

/** Text of templates by path below the folder, with forward slashes and without ending: `sections/weights`. */
export type TemplateTexts = Readonly<Record<string, string>>;

/** The templates to fill, and which of them the program ships. */
export interface TemplateSet {
  readonly all: TemplateTexts;
  readonly shipped: TemplateTexts;
}

const ENDING = '.hbs';
const LIMIT_FILES = 200;
/** Most names looked at, whatever they are. */
const LIMIT_ENTRIES = 5000;
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
  const names = [
    ...(await namesBelow({ root, folder, below: '', above: [root], looked: { entries: 0 } })),
  ].sort();
  if (names.length > LIMIT_FILES) throw tooMany(folder);
  const entries = names.map(
    async (name) => [name.slice(0, -ENDING.length), await readTemplate(root, name, folder)] as const,
  );
  return Object.fromEntries(await Promise.all(entries));
}

interface Walk {
  readonly root: string;
  /** Folder as named, for messages. */
  readonly folder: string;
  /** Path from the root, with forward slashes, empty or ending in one. */
  readonly below: string;
  /** Where the folders above it really lie: a link to one of them would never end. */
  readonly above: readonly string[];
  /** How much was looked at so far. */
  readonly looked: { entries: number };
}

/** Names of templates at a folder and below; folders behind links as well, as long as they lie inside. */
async function namesBelow({ root, folder, below, above, looked }: Walk): Promise<readonly string[]> {
  const names: string[] = [];
  for (const entry of await readdir(join(root, below), { withFileTypes: true })) {
    looked.entries += 1;
    if (looked.entries > LIMIT_ENTRIES) throw tooMany(folder);
    const name = below + entry.name;
    if (entry.isDirectory() || (entry.isSymbolicLink() && (await leadsToFolder(join(root, name))))) {
      const real = await insideOf(root, name, folder);
      if (above.includes(real)) continue;
      names.push(...(await namesBelow({ root, folder, below: `${name}/`, above: [...above, real], looked })));
    } else if (name.endsWith(ENDING)) names.push(name);
  }
  return names;
}

const tooMany = (folder: string) =>
  new EngineError('cli.arguments.too-many-templates', { folder, limit: LIMIT_FILES });

/** A link that leads nowhere is found out when it is read. */
async function leadsToFolder(path: string): Promise<boolean> {
  return stat(path).then(
    (found) => found.isDirectory(),
    () => false,
  );
}

/** Links are followed, but only inside the folder: a template set from elsewhere must not print other files. */
async function insideOf(root: string, name: string, folder: string): Promise<string> {
  const path = await realpath(join(root, name));
  if (!path.startsWith(root.endsWith(sep) ? root : root + sep) && path !== root)
    throw new EngineError('cli.arguments.template-outside', { file: join(folder, name), folder });
  return path;
}

async function readTemplate(root: string, name: string, folder: string): Promise<string> {
  const path = await insideOf(root, name, folder);
  const shown = join(folder, name);
  const found = await stat(path);
  // A pipe would be waited for without end.
  if (!found.isFile())
    throw new EngineError('cli.read.failed', { file: shown, reason: `it is ${kindOf(found)}, and no file` });
  if (found.size > LIMIT_BYTES) {
    throw new EngineError('cli.arguments.template-too-large', {
      file: shown,
      limit: `${LIMIT_BYTES / 1024} KiB`,
    });
  }
  return readFile(path, 'utf8');
}
