/** `pipeborne review`: writes the review of each file as PDF, and its results and its page where asked. */
import { addBands } from './add-bands.js';
import { type ExitStatus, statusOfVerdict } from './exit-status.js';
import { findInputs } from './find-inputs.js';
import type { FileTask } from './one-of-many.js';
import { nameOutputs } from './output-names.js';
import { type ReviewOptions, readLook, reviewOne } from './review-one.js';
import { showFailure } from './show-failure.js';
import type { Surroundings } from './surroundings.js';

/**
 * Runs `review`.
 *
 * @param files - inputs as given
 * @param options - options of the command
 * @param surroundings - where to read and write
 * @returns the worst status of all files
 */
export async function reviewCommand(
  files: readonly string[],
  options: ReviewOptions,
  surroundings: Surroundings,
): Promise<ExitStatus> {
  try {
    const inputs = await findInputs(files, surroundings);
    const names = nameOutputs(inputs, askedNames(options), surroundings.folder);
    const [first] = inputs;
    const [name] = names;
    if (inputs.length === 1 && first !== undefined && name !== undefined)
      return statusOfVerdict((await reviewOne(first.file, name, options, surroundings, addBands)).verdict);
    // A folder of templates that cannot be used is told once, and not with every file.
    await readLook(options, surroundings);
    const { manyFiles } = await import('./many-files.js');
    const taskOf = (index: number) =>
      ({ kind: 'review', options: { ...options }, names: { ...names[index] } }) as FileTask;
    return await manyFiles(inputs, taskOf, { isData: false }, surroundings);
  } catch (error) {
    return showFailure(error, files.join(' '), surroundings);
  }
}

function askedNames({ output, results, html }: ReviewOptions) {
  return {
    ...(output === undefined ? {} : { pdf: output }),
    ...(results === undefined ? {} : { results }),
    ...(html === undefined ? {} : { html }),
  };
}
