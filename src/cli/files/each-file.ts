/** Doing one thing to each file, so that a file that fails does not keep the others from being done. */

import type { Environment } from '../environment.js';
import { type ExitStatus, worstStatus } from '../exit-status.js';
import { showFailure } from '../terminal/show-failure.js';

/**
 * Works through the files in order.
 *
 * @param files - names as given
 * @param environment - where failures are told
 * @param work - what to do with one file; its place in the list comes second
 * @returns the worst status
 */
export async function eachFile(
  files: readonly string[],
  environment: Environment,
  work: (file: string, index: number) => Promise<ExitStatus>,
): Promise<ExitStatus> {
  const statuses: ExitStatus[] = [];
  for (const [index, file] of files.entries()) {
    try {
      statuses.push(await work(file, index));
    } catch (error) {
      statuses.push(showFailure(error, file, environment));
    }
  }
  return worstStatus(statuses);
}
