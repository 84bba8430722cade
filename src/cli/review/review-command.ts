/** `pipeborne review`: writes the review of each file as PDF, and its results and its page where asked. */

import type { Environment } from '../environment.js';
import { type ExitStatus, statusOfVerdict } from '../exit-status.js';
import { findInputs } from '../files/find-inputs.js';
import type { FileTask } from '../files/one-of-many.js';
import { showFailure } from '../terminal/show-failure.js';
import { addBands } from './add-bands.js';
import { nameOutputs } from './output-names.js';
import { type ReviewOptions, readLook, reviewOne } from './review-one.js';

/**
 * Runs `review`.
 *
 * @param files - inputs as given
 * @param options - options of the command
 * @param environment - where to read and write
 * @returns the worst status of all files
 */
export async function reviewCommand(
  files: readonly string[],
  options: ReviewOptions,
  environment: Environment,
): Promise<ExitStatus> {
  try {
    const inputs = await findInputs(files, environment);
    const names = nameOutputs(inputs, askedNames(options), environment.folder);
    const [first] = inputs;
    const [name] = names;
    if (inputs.length === 1 && first !== undefined && name !== undefined)
      return statusOfVerdict((await reviewOne(first.file, name, options, environment, addBands)).verdict);
    // A folder of templates that cannot be used is told once, and not with every file.
    await readLook(options, environment);
    const { manyFiles } = await import('../files/many-files.js');
    const taskOf = (index: number) =>
      ({ kind: 'review', options: { ...options }, names: { ...names[index] } }) as FileTask;
    return await manyFiles(inputs, taskOf, { isData: false }, environment);
  } catch (error) {
    return showFailure(error, files.join(' '), environment);
  }
}

function askedNames({ output, results, html }: ReviewOptions) {
  return {
    ...(output === undefined ? {} : { pdf: output }),
    ...(results === undefined ? {} : { results }),
    ...(html === undefined ? {} : { html }),
  };
}
