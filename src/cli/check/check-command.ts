/** `pipeborne check`: prints what a review would say, and writes nothing. */
import { EngineError } from '../../issues/issue.js';
import type { Environment } from '../environment.js';
import { type ExitStatus, statusOfVerdict } from '../exit-status.js';
import { findInputs } from '../files/find-inputs.js';
import { STANDARD_INPUT } from '../files/read-input.js';
import { showFailure } from '../terminal/show-failure.js';
import { type CheckOptions, checkOne } from './check-one.js';

/**
 * Runs `check`.
 *
 * @param files - inputs as given
 * @param options - options of the command
 * @param environment - where to read and print
 * @returns the worst status of all files
 */
export async function checkCommand(
  files: readonly string[],
  options: CheckOptions,
  environment: Environment,
): Promise<ExitStatus> {
  if (options.watch !== true) return checkOnce(files, options, environment);
  if (files.includes(STANDARD_INPUT)) {
    return showFailure(new EngineError('cli.arguments.watch-input'), 'the arguments', environment);
  }
  const { watchCheck } = await import('./watch-check.js');
  return watchCheck(files, options, environment, () => checkOnce(files, options, environment));
}

async function checkOnce(
  files: readonly string[],
  options: CheckOptions,
  environment: Environment,
): Promise<ExitStatus> {
  try {
    const inputs = await findInputs(files, environment);
    const [first] = inputs;
    if (first !== undefined && inputs.length === 1)
      return statusOfVerdict((await checkOne(first.file, options, environment)).verdict);
    const { manyFiles } = await import('../files/many-files.js');
    const { json = false } = options;
    const how = { color: options.color, isData: json };
    return await manyFiles(inputs, () => ({ kind: 'check', options: { ...options } }), how, environment);
  } catch (error) {
    return showFailure(error, files.join(' '), environment);
  }
}
