/** `pipeborne templates`: names the shipped templates, copies them out to start from, and checks a folder of templates. */
import { existsSync } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { checkTemplates, fixedTemplates, readInstallation, review } from '../../index.js';
import { EngineError, IssuesError } from '../../issues/issue.js';
import type { Environment } from '../environment.js';
import { type ExitStatus, exitStatus } from '../exit-status.js';
import { writeFiles } from '../files/write-files.js';
import { addBands } from '../review/add-bands.js';
import { reasonOf } from '../system-reason.js';
import { showFailure } from '../terminal/show-failure.js';
import { readFirmFile, readLetterheadLogo } from './firm-folder.js';
import { starterFirm } from './starter-firm.js';
import { readTemplates, type TemplateTexts } from './template-folder.js';

/** Options of the command as the parser of arguments gives them. */
export interface TemplatesOptions {
  readonly copy?: string;
  readonly check?: string;
}

/** Readers a review is written for. */
const READERS = 3;

/**
 * Runs `templates`.
 *
 * @param options - options of the command
 * @param environment - where to read and write
 * @returns 0; 2 for a folder that cannot be used; 3 where something cannot be read or written
 */
export async function templatesCommand(
  options: TemplatesOptions,
  environment: Environment,
): Promise<ExitStatus> {
  const { copy, check } = options;
  try {
    const shippedFolder = join(environment.packageFolder, 'templates');
    const { shipped } = await readTemplates(shippedFolder, undefined, environment.folder);
    if (copy !== undefined) await copyOut(shipped, copy, environment);
    if (check !== undefined) await checkFolder(check, environment);
    if (copy === undefined && check === undefined) environment.output.write(listOf(shipped));
    return exitStatus.meets;
  } catch (error) {
    return showFailure(error, check ?? copy ?? 'the templates', environment);
  }
}

const isFixed = (name: string): boolean => (fixedTemplates as readonly string[]).includes(name);

function listOf(shipped: TemplateTexts): string {
  return Object.keys(shipped)
    .sort()
    .map((name) => `${name}.hbs${isFixed(name) ? '  (stands in every review, cannot be replaced)' : ''}\n`)
    .join('');
}

async function copyOut(shipped: TemplateTexts, folder: string, environment: Environment): Promise<void> {
  const names = Object.keys(shipped).filter((name) => !isFixed(name));
  const files = [
    ...names.map((name) => ({ name: `${name}.hbs`, content: shipped[name] ?? '' })),
    { name: 'firm.yaml', content: starterFirm },
  ].map(({ name, content }) => ({
    path: resolve(environment.folder, folder, name),
    shown: join(folder, name),
    content,
  }));
  // Work of the firm is never written over.
  const there = files.find(({ path }) => existsSync(path));
  if (there) throw new EngineError('cli.arguments.already-there', { file: there.shown });
  await writeFiles(files);
  environment.output.write(
    `${files.length} files written to ${folder}; keep what you change and delete the rest\n`,
  );
}

/** Fills every template with every shipped sample for every reader, and looks up names in branches none of them takes. */
async function checkFolder(folder: string, environment: Environment): Promise<void> {
  const { packageFolder } = environment;
  const templates = await readTemplates(join(packageFolder, 'templates'), folder, environment.folder);
  const firm = await readFirmFile(folder, environment.folder, templates);
  const logo = await readLetterheadLogo(firm?.letterhead, resolve(environment.folder, folder));
  const samples = await shippedSamples(join(packageFolder, 'samples'));
  const reviews = samples.map(({ name, text }) => {
    const reading = readInstallation(text, { file: name });
    if (reading.ok) return review(reading.installation);
    throw new EngineError('cli.read.shipped-missing', { file: name, reason: 'it is damaged' });
  });
  // The section of bands is there in one review only: they take as long as the review itself.
  if (reviews[0]) reviews[0] = await addBands(reviews[0]);
  const { all, shipped } = templates;
  const issues = await checkTemplates(reviews, {
    templates: all,
    shipped,
    ...(firm && { firm }),
    ...(logo && { logo }),
  });
  if (issues.length > 0) throw new IssuesError(issues);
  const own = Object.keys(all).filter((name) => all[name] !== shipped[name]);
  const replaced = own.filter((name) => Object.hasOwn(shipped, name));
  const added = own.filter((name) => !Object.hasOwn(shipped, name));
  const line = (what: string, names: readonly string[]): string =>
    `  ${what}: ${names.length > 0 ? names.join(', ') : 'none'}\n`;
  environment.output.write(
    `${folder}: sound in ${samples.length * READERS} reviews of ${samples.length} installations\n` +
      line('templates replaced', replaced) +
      line('templates added', added) +
      line('firm.yaml', firm === undefined ? [] : Object.keys(firm)),
  );
}

async function shippedSamples(
  folder: string,
): Promise<readonly { readonly name: string; readonly text: string }[]> {
  try {
    const names = (await readdir(folder)).filter((name) => name.endsWith('.yaml')).sort();
    return await Promise.all(
      names.map(async (name) => ({ name, text: await readFile(join(folder, name), 'utf8') })),
    );
  } catch (error) {
    throw new EngineError('cli.read.shipped-missing', { file: folder, reason: reasonOf(error) });
  }
}
