/**
 * The folder that keeps the readings of every visit: plain files, one a visit, never changed once they are there.
 *
 * A file is written in full under another name and then linked to its own, which fails where the name is taken: two
 * runs at once cannot overwrite each other, and an interrupted one leaves nothing that counts.
 */
import { link, mkdir, open, readdir, readFile, rm, stat } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { type EarlierVisit, earlierVisit, type Review, type StoredReadings } from '../../index.js';
import { EngineError } from '../../issues/issue.js';
import type { Environment } from '../environment.js';
import { partName, removeLeftParts } from '../files/part-names.js';
import { isMissing, kindOf, reasonOf } from '../system-reason.js';

/** Most files looked at; a pump is seldom visited a thousand times. */
const MOST_FILES = 5000;
/** Largest stored file [bytes]. */
const LARGEST = 1024 * 1024;
const ENDING = '.yaml';

/** What became of the readings of a visit. */
export interface Kept {
  /** Name for messages. */
  readonly shown: string;
  /** False where the same readings were there already. */
  readonly isNew: boolean;
}

/**
 * The earlier visits of a pump, oldest first.
 *
 * @param folder - folder as given; one that is not there yet holds none
 * @param review - the review of today
 * @param environment - working folder
 * @returns visits; files that are no readings of this pump are left alone
 * @throws EngineError `cli.read.failed`, `fieldwork.store.too-many`
 */
export async function readStore(
  folder: string,
  review: Review,
  environment: Environment,
): Promise<readonly EarlierVisit[]> {
  const visits: EarlierVisit[] = [];
  for (const name of await namesIn(folder, environment)) {
    const text = await textOf(folder, name, environment);
    const visit = text === undefined ? undefined : earlierVisit(text, join(folder, name), review);
    if (visit !== undefined) visits.push(visit);
  }
  return visits.sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
}

/**
 * Keeps the readings of a visit under its day and the next free number.
 *
 * @param folder - folder as given; made where it is not there
 * @param stored - first words of the name, and the text
 * @param environment - working folder
 * @returns the file, and whether it is new
 * @throws EngineError `cli.write.failed`
 */
export async function keepReadings(
  folder: string,
  { name, text }: StoredReadings,
  environment: Environment,
): Promise<Kept> {
  const root = resolve(environment.folder, folder);
  const shownOf = (number: number) => join(folder, `${name}-${number}${ENDING}`);
  const temporary = join(root, partName(name));
  try {
    await mkdir(root, { recursive: true });
    await removeLeftParts(root);
    await writeThrough(temporary, text);
    for (let number = 1; ; number++) {
      const own = join(root, `${name}-${number}${ENDING}`);
      if (await linked(temporary, own)) return { shown: shownOf(number), isNew: true };
      if ((await readFile(own, 'utf8')) === text) return { shown: shownOf(number), isNew: false };
    }
  } catch (error) {
    throw new EngineError('cli.write.failed', { file: shownOf(1), reason: reasonOf(error) });
  } finally {
    await rm(temporary, { force: true });
  }
}

async function writeThrough(path: string, text: string): Promise<void> {
  const handle = await open(path, 'wx');
  try {
    await handle.writeFile(text);
    await handle.sync();
  } finally {
    await handle.close();
  }
}

/** Gives a file a second name; false where the name is taken. */
async function linked(from: string, to: string): Promise<boolean> {
  try {
    await link(from, to);
    return true;
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'EEXIST') return false;
    throw error;
  }
}

async function namesIn(folder: string, environment: Environment): Promise<readonly string[]> {
  let names: readonly string[];
  try {
    names = await readdir(resolve(environment.folder, folder));
  } catch (error) {
    if (isMissing(error)) return [];
    throw new EngineError('cli.read.failed', { file: folder, reason: reasonOf(error) });
  }
  const stored = names.filter((name) => name.endsWith(ENDING) && !name.startsWith('.')).sort();
  if (stored.length > MOST_FILES)
    throw new EngineError('fieldwork.store.too-many', { folder, most: MOST_FILES });
  return stored;
}

/** Text of a stored file; nothing for one that is too large to be a visit. */
async function textOf(folder: string, name: string, environment: Environment): Promise<string | undefined> {
  const path = join(resolve(environment.folder, folder), name);
  try {
    const found = await stat(path);
    // A pipe would be waited for without end.
    if (!found.isFile()) throw new Error(`it is ${kindOf(found)}, and no file`);
    if (found.size > LARGEST) return undefined;
    const bytes = await readFile(path);
    return bytes.byteLength > LARGEST ? undefined : new TextDecoder('utf-8').decode(bytes);
  } catch (error) {
    throw new EngineError('cli.read.failed', { file: join(folder, name), reason: reasonOf(error) });
  }
}
