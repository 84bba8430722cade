/**
 * Writing files so that an interrupted run leaves no half file and never harms the old one: each is written in
 * full under a temporary name in the same folder, and only when all are there are they given their names.
 */
import { rmSync } from 'node:fs';
import { mkdir, open, realpath, rename, rm, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { EngineError } from '../../issues/issue.js';
import { isMissing, kindOf, reasonOf } from '../system-reason.js';
import { partName, removeLeftParts } from './part-names.js';

/** One file to be. */
export interface NewFile {
  /** Absolute path. */
  readonly path: string;
  /** Name for messages, as the user gave it. */
  readonly shown: string;
  readonly content: Uint8Array | string;
}

const STOP_SIGNALS = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

/**
 * Writes all files, or none of them.
 *
 * @param files - the files of one review
 * @throws EngineError `cli.write.failed` with the file and the reason
 */
export async function writeFiles(files: readonly NewFile[]): Promise<void> {
  const temporary = new Set<string>();
  const stopListening = removeWhenStopped(temporary);
  try {
    const ready: { readonly file: NewFile; readonly from: string; readonly to: string }[] = [];
    const looked = new Set<string>();
    for (const file of files) {
      await reportingFailure(file, async () => {
        const { path: to, mode } = await finalPath(file.path);
        const folder = dirname(to);
        await mkdir(folder, { recursive: true });
        if (!looked.has(folder)) await removeLeftParts(folder);
        looked.add(folder);
        const from = join(folder, partName(basename(to)));
        temporary.add(from);
        await writeThrough(from, file.content, mode);
        ready.push({ file, from, to });
      });
    }
    for (const { file, from, to } of ready) {
      await reportingFailure(file, () => rename(from, to));
      temporary.delete(from);
    }
  } finally {
    await Promise.all([...temporary].map((path) => rm(path, { force: true })));
    stopListening();
  }
}

/** Who may do what with a file; the rest of its mode says what it is. */
const PERMISSIONS = 0o777;

/**
 * Where a symbolic link points to is replaced, not the link. A folder, a pipe, a device or a socket is found out before
 * anything is renamed: what stands there is no file that could be given up for a new one.
 */
async function finalPath(path: string): Promise<{ readonly path: string; readonly mode?: number }> {
  try {
    const real = await realpath(path);
    const found = await stat(real);
    if (found.isDirectory()) throw Object.assign(new Error('folder'), { code: 'EISDIR' });
    if (!found.isFile()) throw new Error(`it is ${kindOf(found)}, and no file`);
    return { path: real, mode: found.mode & PERMISSIONS };
  } catch (error) {
    if (isMissing(error)) return { path };
    throw error;
  }
}

async function writeThrough(
  path: string,
  content: Uint8Array | string,
  mode: number | undefined,
): Promise<void> {
  // Until it is whole nobody else needs to read it, where nobody else could read the one before.
  const handle = await open(path, 'wx', mode);
  try {
    // What the system takes off the mode of a new file belongs to the file that is replaced.
    if (mode !== undefined) await handle.chmod(mode);
    await handle.writeFile(content);
    // Without this a power cut after the renaming could leave an empty file in place of the old one.
    await handle.sync();
  } finally {
    await handle.close();
  }
}

async function reportingFailure(file: NewFile, work: () => Promise<void>): Promise<void> {
  try {
    await work();
  } catch (error) {
    throw new EngineError('cli.write.failed', { file: file.shown, reason: reasonOf(error) });
  }
}

function removeWhenStopped(temporary: ReadonlySet<string>): () => void {
  const stop = (signal: NodeJS.Signals) => {
    for (const path of temporary) rmSync(path, { force: true });
    stopListening();
    // Ends as if the signal had not been caught, so that the caller sees what happened.
    process.kill(process.pid, signal);
  };
  const stopListening = () => {
    for (const signal of STOP_SIGNALS) process.removeListener(signal, stop);
  };
  for (const signal of STOP_SIGNALS) process.on(signal, stop);
  return stopListening;
}
