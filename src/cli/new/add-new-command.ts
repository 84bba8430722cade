/** The options of `pipeborne new`, one a question. */
import { type Command, Option } from 'commander';
// Straight to the tables: the index would load what works a file out.
import { askedQuestions } from '../../starter/asked-questions.js';
import { furtherQuestions } from '../../starter/further-questions.js';
import type { Question } from '../../starter/question.js';
import type { Environment } from '../environment.js';
import type { ExitStatus } from '../exit-status.js';
import { helpText } from '../help/help-text.js';

/**
 * Adds the command.
 *
 * @param program - the tree of commands
 * @param environment - where to ask and write
 * @param settle - receives the status
 */
export function addNewCommand(
  program: Command,
  environment: Environment,
  settle: (status: ExitStatus) => void,
): void {
  const command = program
    .command('new')
    .summary('begin a file from a few answers')
    .description(
      'Asks a few questions at the terminal and writes a commented FILE that can be checked at once. Every answer ' +
        'may be given as an option instead; only what is missing is asked.',
    )
    .usage('[options] [FILE]')
    .argument('[FILE]', 'file to be, ending in .yaml; - is standard output; by the mark otherwise')
    .addHelpText('after', helpText.new)
    .action(async (file: string | undefined, _options, ran: Command) => {
      const { newCommand } = await import('./new-command.js');
      settle(await newCommand(file, ran.optsWithGlobals(), environment));
    });
  for (const question of askedQuestions) command.addOption(optionOf(question).helpGroup('Answers:'));
  for (const question of furtherQuestions)
    command.addOption(optionOf(question).helpGroup('Further answers, never asked:'));
}

function optionOf(question: Question): Option {
  const { key, asks, kind, example, only, otherwise } = question;
  const shown = typeof example === 'string' ? example : `${example.us} or ${example.si}`;
  const words =
    kind.is === 'choice' ? kind.choices.map(({ value }) => value).join(', ') : `for example ${shown}`;
  const where = only === undefined ? '' : ` [${only.join(', ')}]`;
  const left = otherwise === undefined ? '' : `; left out: ${otherwise}`;
  return new Option(
    `--${key} <${kind.is === 'choice' ? 'WORD' : 'TEXT'}>`,
    `${asks}${where}: ${words}${left}`,
  );
}
