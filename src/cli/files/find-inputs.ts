/** From the names on the command line to input files: files as named, folders looked through, patterns matched. */
import { open, stat } from 'node:fs/promises';
import { join, resolve, sep } from 'node:path';
import { EngineError } from '../../issues/issue.js';
import type { Environment } from '../environment.js';
import { STANDARD_INPUT } from './read-input.js';

/** One input. */
export interface FoundInput {
  /** Name for messages and for reading, from the working folder. */
  readonly file: string;
  /** Folder of it below the folder that was named, so that what is written can be kept apart in the same way. */
  readonly below: string;
}

const ENDINGS = '*.{yaml,yml,json}';
/** Most files taken from one folder or pattern; more is a mistake. */
const MOST_FILES = 5000;
/** Where the name of the format stands, if anywhere: near the beginning. */
const HEAD_BYTES = 16 * 1024;
const FORMAT = /(?:^|[\s{,])["']?format["']?\s*:\s*["']?pipeborne\/1\b/u;

/**
 * Finds the inputs.
 *
 * @param names - as given: a file, a folder, a pattern, or `-`
 * @param environment - working folder
 * @returns inputs in the order of the names; those of one folder or pattern sorted
 * @throws EngineError `cli.arguments.nothing-found`, `cli.arguments.too-many-inputs`
 */
export async function findInputs(
  names: readonly string[],
  environment: Pick<Environment, 'folder'>,
): Promise<readonly FoundInput[]> {
  const found: FoundInput[] = [];
  for (const name of names) found.push(...(await inputsOf(name, environment.folder)));
  return found;
}

async function inputsOf(name: string, folder: string): Promise<readonly FoundInput[]> {
  const alone = [{ file: name, below: '' }];
  if (name === STANDARD_INPUT) return alone;
  const what = await stat(resolve(folder, name)).catch(() => undefined);
  if (what?.isDirectory()) return inFolder(name, folder);
  // What is there by that very name is a file, whatever signs its name has; what is not may be a pattern.
  if (what !== undefined || !/[*?[\]{}!]/.test(name)) return alone;
  return matching(name, folder);
}

/** Files of a folder that say that they are of the format. Links out of it are not followed. */
async function inFolder(name: string, folder: string): Promise<readonly FoundInput[]> {
  const { glob } = await import('tinyglobby');
  const root = resolve(folder, name);
  const below = await glob([`**/${ENDINGS}`], { cwd: root, ...LOOKING });
  const kept: FoundInput[] = [];
  for (const path of sorted(below, name)) {
    if (!(await saysFormat(join(root, path)))) continue;
    const parts = path.split('/');
    kept.push({ file: join(name, ...parts), below: join(...parts.slice(0, -1), '.') });
  }
  if (kept.length === 0) throw new EngineError('cli.arguments.nothing-found', { found: name });
  return kept;
}

async function matching(pattern: string, folder: string): Promise<readonly FoundInput[]> {
  const { glob } = await import('tinyglobby');
  const forward = sep === '\\' ? pattern.replaceAll('\\', '/') : pattern;
  const files = (await glob([forward], { cwd: folder, ...LOOKING })).filter((file) =>
    /\.(ya?ml|json)$/i.test(file),
  );
  if (files.length === 0) throw new EngineError('cli.arguments.nothing-found', { found: pattern });
  return sorted(files, pattern).map((file) => ({ file: join(...file.split('/')), below: '' }));
}

const LOOKING = {
  onlyFiles: true,
  followSymbolicLinks: false,
  ignore: ['**/node_modules/**'],
  expandDirectories: false,
};

/** By code of the letters, which is the same on every machine. */
function sorted(paths: readonly string[], found: string): readonly string[] {
  if (paths.length > MOST_FILES)
    throw new EngineError('cli.arguments.too-many-inputs', { found, limit: MOST_FILES });
  return [...paths].sort((a, b) => (a < b ? -1 : a > b ? 1 : 0));
}

async function saysFormat(path: string): Promise<boolean> {
  try {
    const handle = await open(path, 'r');
    try {
      const { buffer, bytesRead } = await handle.read(Buffer.alloc(HEAD_BYTES), 0, HEAD_BYTES, 0);
      return FORMAT.test(buffer.subarray(0, bytesRead).toString('utf8'));
    } finally {
      await handle.close();
    }
  } catch {
    // What cannot be read is told when it is read: it may well be one.
    return true;
  }
}
