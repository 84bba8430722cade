/** Turns what the parser of arguments says into an issue of our own form. */
import type { CommanderError } from 'commander';
import type { Issue } from '../../issues/issue.js';

/**
 * The issue for arguments that were refused.
 *
 * @param error - error of the parser; its message may end with a near miss in parentheses
 * @param args - the arguments as given, to say whose help to read
 * @param commands - names of the commands
 * @returns an error without a place
 */
export function refusedArguments(
  error: CommanderError,
  args: readonly string[],
  commands: readonly string[],
): Issue {
  const [first = '', ...rest] = error.message.replace(/^error: /, '').split('\n');
  const nearMiss = /\((Did you mean .*\?)\)/.exec(rest.join(' '))?.[1];
  const command = args.find((arg) => commands.includes(arg));
  const hint = nearMiss?.replace('Did you', 'did you') ?? forgottenCommand(error, args);
  return {
    code: 'cli.arguments.unusable',
    severity: 'error',
    data: {
      found: first.replace(/\.$/, ''),
      help: command === undefined ? 'pipeborne --help' : `pipeborne ${command} --help`,
      ...(hint === undefined ? {} : { hint }),
    },
  };
}

/** A file where a command is wanted. */
function forgottenCommand(error: CommanderError, args: readonly string[]): string | undefined {
  const file = args.find((arg) => /\.(ya?ml|json)$/i.test(arg));
  if (error.code !== 'commander.unknownCommand' || file === undefined) return undefined;
  return `to review it: pipeborne review ${file}`;
}
