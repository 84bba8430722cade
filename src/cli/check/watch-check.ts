/** `check --watch`: checks again whenever the file is saved, until it is interrupted. */

import { basename, dirname, resolve } from 'node:path';
import { watch } from 'chokidar';
import type { Environment } from '../environment.js';
import { type ExitStatus, exitStatus } from '../exit-status.js';
import type { CheckOptions } from './check-one.js';

/** How long a file must have been left alone before it is read: editors write in several steps [ms]. */
const SETTLE = 80;
/** Home, and everything below and above it away. */
const CLEAR = '\u001B[H\u001B[2J\u001B[3J';

/**
 * Checks the files, and again after each change.
 *
 * @param files - files as named
 * @param options - options of the command
 * @param environment - where to print, and who tells of an interrupt
 * @param check - checks all of them once
 * @returns the status of the last check, once interrupted
 */
export async function watchCheck(
  files: readonly string[],
  options: CheckOptions,
  environment: Environment,
  check: () => Promise<ExitStatus>,
): Promise<ExitStatus> {
  const { output, messages, folder, onInterrupt } = environment;
  let status: ExitStatus = exitStatus.meets;
  const checkOnce = async (): Promise<void> => {
    if (output.isTerminal && options.json !== true) output.write(CLEAR);
    status = await check();
    const names = files.length === 1 ? files[0] : `${files.length} files`;
    messages.write(`watching ${names}; Ctrl-C ends\n`);
  };

  // Whole folders are watched: an editor that renames a new file over the old one would take a watched file away.
  const paths = new Set(files.map((file) => resolve(folder, file)));
  const folders = [...new Set([...paths].map((path) => dirname(path)))];
  const watcher = watch(folders, {
    depth: 0,
    ignoreInitial: true,
    ignored: (path) => !folders.includes(path) && !paths.has(path) && basename(path) !== '',
  });
  let timer: NodeJS.Timeout | undefined;
  let running: Promise<void> = Promise.resolve();
  const again = (): void => {
    clearTimeout(timer);
    timer = setTimeout(() => {
      running = running.then(checkOnce);
    }, SETTLE);
  };
  watcher.on('all', (_event, path) => {
    if (paths.has(resolve(path))) again();
  });
  try {
    await new Promise<void>((ready) => watcher.once('ready', () => ready()));
    running = running.then(checkOnce);
    await running;
    await new Promise<void>((end) => {
      onInterrupt?.(end);
    });
    return status;
  } finally {
    clearTimeout(timer);
    await watcher.close();
    await running;
  }
}
