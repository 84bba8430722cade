/** `pipeborne help`: the help of a command, or what an input may hold. */
import type { Command } from 'commander';
import { EngineError } from '../../issues/issue.js';
import type { Environment } from '../environment.js';
import { type ExitStatus, exitStatus } from '../exit-status.js';
import { showFailure } from '../terminal/show-failure.js';

/**
 * Runs `help`.
 *
 * @param topic - name of a command, `input`, or undefined for the program
 * @param part - part of the input
 * @param program - the tree of commands
 * @param environment - where to print
 * @returns 0, or 2 where there is no such topic
 */
export async function helpCommand(
  topic: string | undefined,
  part: string | undefined,
  program: Command,
  environment: Environment,
): Promise<ExitStatus> {
  try {
    if (topic === 'input') {
      const { inputReference, referenceParts } = await import('./input-reference.js');
      const text = inputReference(part);
      if (text === undefined)
        throw new EngineError('cli.arguments.no-part', { found: part ?? '', words: referenceParts() });
      environment.output.write(text);
      return exitStatus.meets;
    }
    const command = topic === undefined ? program : program.commands.find((each) => each.name() === topic);
    if (command === undefined) {
      const words = [...program.commands.map((each) => each.name()), 'input'];
      throw new EngineError('cli.arguments.no-topic', { found: topic ?? '', words });
    }
    command.outputHelp();
    return exitStatus.meets;
  } catch (error) {
    return showFailure(error, 'the arguments', environment);
  }
}
