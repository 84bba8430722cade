/**
 * Writing files so that an interrupted run leaves no half file and never harms the old one: each is written in
 * full under a temporary name in the same folder, and only when all are there are they given their names.
 */
import { randomBytes } from 'node:crypto';
import { rmSync } from 'node:fs';
import { mkdir, open, realpath, rename, rm, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { EngineError } from '../../issues/issue.js';
import { isMissing, reasonOf } from '../system-reason.js';

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
    for (const file of files) {
      await reportingFailure(file, async () => {
        const to = await finalPath(file.path);
        await mkdir(dirname(to), { recursive: true });
        const from = join(dirname(to), `.${basename(to)}.${randomBytes(6).toString('hex')}.part`);
        temporary.add(from);
        await writeThrough(from, file.content);
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

/** Where a symbolic link points to is replaced, not the link; a folder is found out before anything is renamed. */
async function finalPath(path: string): Promise<string> {
  try {
    const real = await realpath(path);
    if ((await stat(real)).isDirectory()) throw Object.assign(new Error('folder'), { code: 'EISDIR' });
    return real;
  } catch (error) {
    if (isMissing(error)) return path;
    throw error;
  }
}

async function writeThrough(path: string, content: Uint8Array | string): Promise<void> {
  const handle = await open(path, 'wx');
  try {
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
