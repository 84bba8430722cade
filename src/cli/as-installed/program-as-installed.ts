/** The command `as-installed`: its options and its help. */
import { type Command, Option } from 'commander';
import type { Environment } from '../environment.js';
import type { ExitStatus } from '../exit-status.js';
import { caution } from '../help/help-text.js';

const help = `
FILE is the input the sheet was made from. A SHEET is a filled field sheet (PDF,
whoever's viewer filled it) or a file of the same readings (YAML, JSON, CSV).
Several are put together in any order: a reading stands until a sheet of a later
day by a named person, or one that says so, corrects it; what is in conflict is
judged both ways and the worse counts. A sheet made from another input is refused
with both fingerprints.

Two decisions: may it be started; may it run and be accepted. Neither is GO
without the name of who decides, which is no signature.

Examples:
  pipeborne as-installed pump.yaml sheet.pdf
  pipeborne as-installed pump.yaml fitter.pdf agent.yaml -o handover.pdf
  pipeborne as-installed pump.yaml sheet.pdf --sheet next.pdf --store readings/
  pipeborne as-installed pump.yaml old-sheet.pdf --other-revision
  pipeborne as-installed plant/ --store readings/ --board board.xlsx \\
    --punch-list items.csv --html board.html

Without a SHEET the board is printed: every pump of FILE, a folder or a pattern,
decided from its record in --store, with what blocks it, what is open by trade and
the last visit. A folder below the folder has its record in the folder of the same
name below the store. A pump without readings is held.

The folder of --store is the record of the unit: one plain file a sheet, as it was
filled in, none ever changed, each naming those before it. Everything in it is
decided from; one that was changed or is gone is an error. Readings are given in
the unit printed beside the box or with their own.

Exit status:
  0   everything that was asked for was read and meets its limit
  1   something exceeds its limit, or the agent left an item open
  2   the input, a sheet or the arguments cannot be used
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
export function addAsInstalled(
  program: Command,
  environment: Environment,
  settle: (status: ExitStatus) => void,
): void {
  program
    .command('as-installed')
    .summary('judge what was read at the installed pump')
    .description('Judges readings taken at the installed pump and writes the as-installed review.')
    .usage('[options] FILE [SHEET...]')
    .argument('<FILE>', 'description of the installation; a folder or pattern for a board')
    .argument('[SHEET...]', 'filled sheets (PDF) or readings (YAML, JSON, CSV)')
    .option('-o, --output <PDF>', 'file or folder for the as-installed review')
    .option('--results <JSON>', 'file for the results, for machines')
    .option('--sheet <PDF>', 'file for the next sheet, with what is still open')
    .option('--store <FOLDER>', 'folder that keeps the readings of every visit')
    .option('--html <HTML>', 'file for decisions and open items as a page for a telephone')
    .option('--board <FILE>', 'without SHEETs: file for the board, .csv or .xlsx')
    .option('--punch-list <FILE>', 'without SHEETs: file for all open items, .csv or .xlsx')
    .option('--other-revision', 'take sheets made from another input all the same')
    .option('--templates <DIR>', "folder of the firm's own templates")
    .addOption(new Option('--page <SIZE>', 'letter or a4; by the units otherwise').choices(['letter', 'a4']))
    .addHelpText('after', help)
    .action(async (file: string, sheets: string[], _options, command: Command) => {
      if (sheets.length === 0) {
        const { boardCommand } = await import('./board-command.js');
        settle(await boardCommand(file, command.optsWithGlobals(), environment));
        return;
      }
      const { asInstalledCommand } = await import('./as-installed-command.js');
      settle(await asInstalledCommand(file, sheets, command.optsWithGlobals(), environment));
    });
}
