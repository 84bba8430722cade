/** `pipeborne check`: prints what a review would say, and writes nothing. */
import { EngineError } from '../issues/issue.js';
import { type CheckOptions, checkOne } from './check-one.js';
import { type ExitStatus, statusOfVerdict } from './exit-status.js';
import { findInputs } from './find-inputs.js';
import { STANDARD_INPUT } from './read-input.js';
import { showFailure } from './show-failure.js';
import type { Surroundings } from './surroundings.js';

/**
 * Runs `check`.
 *
 * @param files - inputs as given
 * @param options - options of the command
 * @param surroundings - where to read and print
 * @returns the worst status of all files
 */
export async function checkCommand(
  files: readonly string[],
  options: CheckOptions,
  surroundings: Surroundings,
): Promise<ExitStatus> {
  if (options.watch !== true) return checkOnce(files, options, surroundings);
  if (files.includes(STANDARD_INPUT)) {
    return showFailure(new EngineError('cli.arguments.watch-input'), 'the arguments', surroundings);
  }
  const { watchCheck } = await import('./watch-check.js');
  return watchCheck(files, options, surroundings, () => checkOnce(files, options, surroundings));
}

async function checkOnce(
  files: readonly string[],
  options: CheckOptions,
  surroundings: Surroundings,
): Promise<ExitStatus> {
  try {
    const inputs = await findInputs(files, surroundings);
    const [first] = inputs;
    if (first !== undefined && inputs.length === 1)
      return statusOfVerdict((await checkOne(first.file, options, surroundings)).verdict);
    const { manyFiles } = await import('./many-files.js');
    const { json = false } = options;
    const how = { color: options.color, isData: json };
    return await manyFiles(inputs, () => ({ kind: 'check', options: { ...options } }), how, surroundings);
  } catch (error) {
    return showFailure(error, files.join(' '), surroundings);
  }
}
