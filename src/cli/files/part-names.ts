/**
 * Names of files that are being written. A run that is killed leaves its own behind; the next run that writes into the
 * folder takes those away whose process is no more, and nothing else.
 */
import { createHash, randomBytes } from 'node:crypto';
import { lstat, readdir, rm } from 'node:fs/promises';
import { hostname } from 'node:os';
import { join } from 'node:path';

/** The same process number on another machine that shares the folder is another process. */
const HOST = createHash('sha256').update(hostname()).digest('hex').slice(0, 8);
const PART = /^\..+\.([0-9a-f]{8})-(\d{1,10})-[0-9a-f]{12}\.part$/u;

/**
 * A name to write under until the file is whole: hidden, and saying which process of which machine writes it.
 *
 * @param name - name the file will have, without its folder
 * @returns a name that no other run takes
 */
export function partName(name: string): string {
  return `.${name}.${HOST}-${process.pid}-${randomBytes(6).toString('hex')}.part`;
}

/**
 * Takes away what killed runs left in a folder. What cannot be looked at or taken away stays.
 *
 * @param folder - absolute path
 */
export async function removeLeftParts(folder: string): Promise<void> {
  const names = await readdir(folder).catch(() => []);
  for (const name of names) {
    const [, host, number] = PART.exec(name) ?? [];
    if (host !== HOST || number === undefined || isRunning(Number(number))) continue;
    const path = join(folder, name);
    const isFile = await lstat(path).then(
      (found) => found.isFile(),
      () => false,
    );
    if (isFile) await rm(path, { force: true }).catch(() => {});
  }
}

/** A process that belongs to someone else runs too: only a number that stands for none is dead. */
function isRunning(number: number): boolean {
  try {
    process.kill(number, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code !== 'ESRCH';
  }
}
