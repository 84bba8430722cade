/** Writing a file that must not be there yet: whole or not at all, and never over another. */
import { existsSync } from 'node:fs';
import { link, open, rm } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { EngineError } from '../../issues/issue.js';
import { partName, removeLeftParts } from '../files/part-names.js';
import { reasonOf } from '../system-reason.js';

/**
 * Writes a new file.
 *
 * @param path - absolute path
 * @param shown - name for messages
 * @param text - content
 * @throws EngineError `cli.write.exists` where something of that name is there, `cli.write.failed`
 */
export async function writeNewFile(path: string, shown: string, text: string): Promise<void> {
  refuseExisting(path, shown);
  await removeLeftParts(dirname(path));
  const temporary = join(dirname(path), partName(basename(path)));
  try {
    const handle = await open(temporary, 'wx');
    try {
      await handle.writeFile(text);
      await handle.sync();
    } finally {
      await handle.close();
    }
    // A second name for the same file: unlike renaming it fails where something took the name in the meantime.
    await link(temporary, path).catch(async (error: unknown) => {
      if (isThere(error)) throw error;
      await writeDirectly(path, text);
    });
  } catch (error) {
    if (isThere(error)) throw new EngineError('cli.write.exists', { file: shown });
    throw new EngineError('cli.write.failed', { file: shown, reason: reasonOf(error) });
  } finally {
    await rm(temporary, { force: true });
  }
}

/**
 * Refuses a name that is taken, before anyone is asked anything.
 *
 * @param path - absolute path
 * @param shown - name for messages
 * @throws EngineError `cli.write.exists`
 */
export function refuseExisting(path: string, shown: string): void {
  if (existsSync(path)) throw new EngineError('cli.write.exists', { file: shown });
}

/** Some disks know no second names. */
async function writeDirectly(path: string, text: string): Promise<void> {
  const handle = await open(path, 'wx');
  try {
    await handle.writeFile(text);
  } finally {
    await handle.close();
  }
}

function isThere(error: unknown): boolean {
  return (error as NodeJS.ErrnoException).code === 'EEXIST';
}
