/**
 * The folder that keeps the readings of every visit: plain files, one a visit, never changed once they are there.
 *
 * A file is written in full under another name and then linked to its own, which fails where the name is taken: two
 * runs at once cannot overwrite each other, and an interrupted one leaves nothing that counts.
 */
import { link, mkdir, open, readdir, readFile, rm, stat } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import {
  type Answers,
  contentDigest,
  type EarlierVisit,
  earlierVisit,
  type KeptSheet,
  keptSheet,
  lastOf,
  type StoredReadings,
  sheetToKeep,
} from '../../app/as-installed.js';
import type { Review } from '../../index.js';
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

/** What a store holds of one pump. */
export interface Store {
  readonly kept: readonly KeptSheet[];
  /** The same as earlier visits, oldest first, for the trend. */
  readonly visits: readonly EarlierVisit[];
}

/**
 * Everything a store has kept of a pump.
 *
 * @param folder - folder as given; one that is not there yet holds none
 * @param review - the review of today
 * @param environment - working folder
 * @returns entries and visits; files that are no entry by their name, and those of other pumps, are left alone
 * @throws EngineError `cli.read.failed`, `fieldwork.store.too-many`, `fieldwork.store.corrupt`
 */
export async function readStore(folder: string, review: Review, environment: Environment): Promise<Store> {
  const kept: KeptSheet[] = [];
  const visits: EarlierVisit[] = [];
  for (const name of await namesIn(folder, environment)) {
    if (!ENTRY.test(name)) continue;
    const shown = join(folder, name);
    const text = await textOf(folder, name, environment);
    const entry = keptSheet(text, shown, review);
    if (entry === undefined) continue;
    kept.push(entry);
    const visit = earlierVisit(text, shown, review);
    if (visit !== undefined) visits.push(visit);
  }
  lastOf(kept);
  return { kept, visits: visits.sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0)) };
}

/** Names of entries: pump, day, number. */
const ENTRY = /-\d{4}-\d{2}-\d{2}-\d+\.yaml$/u;

/**
 * Keeps sheets that are not there yet, each after those before it.
 *
 * @param folder - folder as given; made where it is not there
 * @param sheets - as filled in
 * @param store - what it holds
 * @param review - the review of today
 * @param environment - working folder
 * @returns for each sheet its file, and whether it is new
 * @throws EngineError `cli.write.failed`, `fieldwork.store.no-date`
 */
export async function keepSheets(
  folder: string,
  sheets: readonly Answers[],
  { kept }: Store,
  review: Review,
  environment: Environment,
): Promise<readonly Kept[]> {
  let last = lastOf(kept);
  const done: Kept[] = [];
  for (const answers of sheets) {
    const content = contentDigest(answers, review);
    const same = kept.find((each) => each.content === content);
    if (same !== undefined) done.push({ shown: same.file, isNew: false });
    else {
      const entry = sheetToKeep(answers, review, last);
      done.push(await keepReadings(folder, entry, environment));
      last = [entry.digest];
    }
  }
  return done;
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

/** Text of a stored file. */
async function textOf(folder: string, name: string, environment: Environment): Promise<string> {
  const path = join(resolve(environment.folder, folder), name);
  try {
    const found = await stat(path);
    // A pipe would be waited for without end.
    if (!found.isFile()) throw new Error(`it is ${kindOf(found)}, and no file`);
    if (found.size > LARGEST)
      throw new EngineError('fieldwork.store.corrupt', {
        file: join(folder, name),
        reason: 'it is too large to be a sheet',
      });
    return await readFile(path, 'utf8');
  } catch (error) {
    if (error instanceof EngineError) throw error;
    throw new EngineError('cli.read.failed', { file: join(folder, name), reason: reasonOf(error) });
  }
}
