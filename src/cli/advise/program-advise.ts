/** The command `advise`: its options and its help. */
import { type Command, InvalidArgumentError, Option } from 'commander';
import type { Environment } from '../environment.js';
import type { ExitStatus } from '../exit-status.js';
import { caution } from '../help/help-text.js';

/** Kinds of change as the search knows them; written out, so that help need not load it. */
const KINDS = [
  'set-height',
  'spring-setting',
  'rod-size',
  'remove-guide',
  'move-support',
  'add-guide',
  'add-hanger',
  'spring-rate',
  'add-stand',
  'spring-for-rod',
  'lengthen-leg',
];

const help = `
FILE is YAML or JSON; - is standard input. Single changes are tried first, then
several together. Whatever is advised was written into the file and reviewed in
full. The changed file keeps comments, order and style. Without --write nothing
is written; the difference is printed.

Kinds of change, and the usual effort of each, on a scale on which setting a
spring is 1. They order the alternatives and are no hours:
  spring-setting  1    move-support  3    spring-rate     6
  rod-size        2    add-guide     5    add-stand       7
  remove-guide    2    add-hanger    6    spring-for-rod  8
  set-height      2.5                     lengthen-leg   30
More is added by how far something moves.

Examples:
  pipeborne advise pump.yaml
  pipeborne advise pump.yaml --alternative 1 --write changed.yaml
  pipeborne advise pump.yaml -o advice.pdf
  pipeborne advise pump.yaml --keep H1 H3 --without lengthen-leg
  pipeborne advise pump.yaml --effort add-hanger=2 --together 2

Ctrl-C stops the search and gives the best so far.

Exit status, of the verdict after the alternative that is shown:
  0   everything that could be judged meets its limit
  1   something still exceeds its limit
  2   the input or the arguments cannot be used
  3   something could not be read or written
  4   nothing exceeds, but something cannot be told
  70  a fault of the program

${caution}`;

/**
 * Adds the command.
 *
 * @param program - the tree of commands
 * @param environment - where to read, print and write
 * @param settle - receives the status of the command
 */
export function addAdvise(
  program: Command,
  environment: Environment,
  settle: (status: ExitStatus) => void,
): void {
  program
    .command('advise')
    .summary('find the smallest changes that make it meet')
    .description('Searches for the smallest changes of supports and legs that make FILE meet its limits.')
    .usage('[options] FILE')
    .argument('<FILE>', 'description of the installation')
    .option('--write <FILE>', 'file for the changed description')
    .option('-o, --output <PDF>', 'file for the advice on paper, every alternative in full')
    .option('--templates <DIR>', "folder of the firm's own templates")
    .option('--alternative <N>', 'which alternative to show in full and to write', wholeNumber, 1)
    .option('--most <N>', 'most alternatives; 5 otherwise', wholeNumber, 5)
    .option('--together <N>', 'most changes made together; 4 otherwise', wholeNumber, 4)
    .option('--trials <N>', 'most trials; 3000 otherwise', wholeNumber, 3000)
    .option('--keep <MARK...>', 'supports that stay as they are')
    .addOption(new Option('--without <KIND...>', 'kinds of change that are not wanted').choices(KINDS))
    .option('--effort <KIND=NUMBER...>', 'your own effort of a kind of change')
    .option('--json', 'print everything for machines instead')
    .addOption(
      new Option('--units <SYSTEM>', 'us or si; the units of the file otherwise').choices(['us', 'si']),
    )
    .addHelpText('after', help)
    .action(async (file: string, _options, command: Command) => {
      const { adviseCommand } = await import('./advise-command.js');
      settle(await adviseCommand(file, command.optsWithGlobals(), environment));
    });
}

function wholeNumber(text: string): number {
  if (!/^[1-9]\d{0,5}$/.test(text)) throw new InvalidArgumentError('It is no whole number above 0.');
  return Number(text);
}
