/** One run: arguments in, exit status out, everything between through the environment. */
import { CommanderError } from 'commander';
import type { Environment } from './environment.js';
import { type ExitStatus, exitStatus } from './exit-status.js';
import { buildProgram } from './program.js';

/**
 * Runs the command line.
 *
 * @param args - arguments without the program's own name
 * @param environment - where to read and write
 * @returns the status to end with
 */
export async function run(args: readonly string[], environment: Environment): Promise<ExitStatus> {
  let status: ExitStatus = exitStatus.meets;
  const program = buildProgram(environment, (settled) => {
    status = settled;
  });
  try {
    await program.parseAsync(args, { from: 'user' });
    return status;
  } catch (error) {
    if (!(error instanceof CommanderError)) {
      const { showFailure } = await import('./terminal/show-failure.js');
      return showFailure(error, 'the command line', environment);
    }
    // Help and version that were asked for end with 0; help for want of a command was already printed.
    if (error.exitCode === 0) return exitStatus.meets;
    if (error.code === 'commander.help') return exitStatus.unusable;
    const { refusedArguments } = await import('./terminal/refused-arguments.js');
    const { showIssues } = await import('./terminal/show-failure.js');
    showIssues(
      [
        refusedArguments(
          error,
          args,
          program.commands.map((command) => command.name()),
        ),
      ],
      environment,
    );
    return exitStatus.unusable;
  }
}
