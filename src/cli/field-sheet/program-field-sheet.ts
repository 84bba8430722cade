/** The command `field-sheet`: its options and its help. */
import { type Command, Option } from 'commander';
import type { Environment } from '../environment.js';
import type { ExitStatus } from '../exit-status.js';
import { caution } from '../help/help-text.js';

const help = `
A FILE is YAML or JSON, one pump each; - is standard input. Without -o the
sheet is written to the current folder as <name>-field-sheet.pdf. With several
FILEs, -o names a folder.

The sheet is a form for a tablet and for paper: what to read at this unit, the
value to expect and the limit with its source beside each box. It holds the
fingerprint of the input it was made from, and no script.

Examples:
  pipeborne field-sheet pump.yaml
  pipeborne field-sheet pump.yaml -o site/HWP-1.pdf --units si --page a4
  pipeborne field-sheet plant/*.yaml -o sheets/

Exit status:
  0   every sheet is written
  2   the input or the arguments cannot be used
  3   something could not be read or written
  70  a fault of the program

${caution}`;

/**
 * Adds the command.
 *
 * @param program - the tree of commands
 * @param environment - where to read, print and write
 * @param settle - receives the status of the command
 */
export function addFieldSheet(
  program: Command,
  environment: Environment,
  settle: (status: ExitStatus) => void,
): void {
  program
    .command('field-sheet')
    .summary('write the sheet to fill in at the installed pump')
    .description('Writes, for each FILE, the sheet of readings to take at the installed pump, as a form.')
    .usage('[options] FILE...')
    .argument('<FILE...>', 'description of the installation')
    .option('-o, --output <PDF>', 'file or folder for the sheet')
    .addOption(
      new Option('--units <SYSTEM>', 'us or si; the units of the file otherwise').choices(['us', 'si']),
    )
    .option('--templates <DIR>', "folder of the firm's own templates")
    .addOption(new Option('--page <SIZE>', 'letter or a4; by the units otherwise').choices(['letter', 'a4']))
    .addHelpText('after', help)
    .action(async (files: string[], _options, command: Command) => {
      const { fieldSheetCommand } = await import('./field-sheet-command.js');
      settle(await fieldSheetCommand(files, command.optsWithGlobals(), environment));
    });
}
