/** Commands and options. Loads nothing but the parser of arguments: each command's work is imported when it runs. */
import { Command, Option } from 'commander';
import { version } from '../app/version.js';
import { addAdvise } from './advise/program-advise.js';
import { addAsInstalled } from './as-installed/program-as-installed.js';
import { type Environment, LINE_WIDTH, mayColour } from './environment.js';
import type { ExitStatus } from './exit-status.js';
import { addFieldSheet } from './field-sheet/program-field-sheet.js';
import { helpText } from './help/help-text.js';
import { addNewCommand } from './new/add-new-command.js';

/**
 * The tree of commands.
 *
 * @param environment - where help and the commands' output go
 * @param settle - receives the status of the command that ran
 * @returns the program, ready to parse
 */
export function buildProgram(environment: Environment, settle: (status: ExitStatus) => void): Command {
  const program = new Command('pipeborne')
    .usage('COMMAND [options]')
    .description(
      'Reviews the installation of a vertical in-line pump that its pipe carries: loads on hangers and ' +
        'nozzles, stresses, joints. One file describes the installation.',
    )
    .version(version, '-V, --version', 'print the version')
    .helpOption('-h, --help', 'print this help')
    .helpCommand(false)
    .option('--no-color', 'print no colour, as with NO_COLOR')
    .configureHelp({
      showGlobalOptions: true,
      optionDescription: ({ description }) => description,
      // What a command takes stands in its own help; here it would push the descriptions off the line.
      subcommandTerm: (command) => command.name(),
    })
    .configureOutput(outputOf(environment))
    .addHelpText('after', helpText.program)
    .exitOverride();

  addNewCommand(program, environment, settle);

  program
    .command('review')
    .summary('write the review as PDF')
    .description('Writes the review of each FILE as PDF, and its results for machines where asked.')
    .usage('[options] FILE...')
    .argument('<FILE...>', 'description of the installation')
    .option('-o, --output <PDF>', 'file or folder for the review')
    .option('--results <JSON>', 'file or folder for the results, for machines')
    .option('--html <HTML>', 'file or folder for the review as a page')
    .addOption(
      new Option('--for <READER>', 'contractor, engineer or commissioning; engineer otherwise')
        .choices(['contractor', 'engineer', 'commissioning'])
        .default('engineer'),
    )
    .addOption(unitsOption())
    .option('--no-bands', 'leave out how sure the verdicts are, which takes some time')
    .option('--templates <DIR>', "folder of the firm's own templates")
    .addOption(new Option('--page <SIZE>', 'letter or a4; by the units otherwise').choices(['letter', 'a4']))
    .addHelpText('after', helpText.review)
    .action(async (files: string[], _options, command: Command) => {
      const { reviewCommand } = await import('./review/review-command.js');
      settle(await reviewCommand(files, command.optsWithGlobals(), environment));
    });

  program
    .command('check')
    .summary('print the verdict and the worst findings')
    .description('Prints the verdict, the worst findings and the load on each support. Writes no file.')
    .usage('[options] FILE...')
    .argument('<FILE...>', 'description of the installation')
    .option('--json', 'print the results for machines instead')
    .option('--watch', 'check again whenever the file is saved, until Ctrl-C')
    .addOption(unitsOption())
    .addHelpText('after', helpText.check)
    .action(async (files: string[], _options, command: Command) => {
      const { checkCommand } = await import('./check/check-command.js');
      settle(await checkCommand(files, command.optsWithGlobals(), environment));
    });

  program
    .command('compare')
    .summary('print what changed between two revisions')
    .description('Prints what changed from OLD to NEW: input, loads, verdicts, findings, assumptions.')
    .usage('[options] OLD NEW')
    .argument('<OLD>', 'the older revision: an input, or the results of its review')
    .argument('<NEW>', 'the newer revision')
    .option('-o, --output <PDF>', 'file for the comparison on paper')
    .option('--json', 'print what differs for machines instead')
    .addOption(unitsOption())
    .option('--templates <DIR>', "folder of the firm's own templates")
    .addOption(new Option('--page <SIZE>', 'letter or a4; by the units otherwise').choices(['letter', 'a4']))
    .addHelpText('after', helpText.compare)
    .action(async (before: string, after: string, _options, command: Command) => {
      const { compareCommand } = await import('./compare/compare-command.js');
      settle(await compareCommand([before, after], command.optsWithGlobals(), environment));
    });

  program
    .command('templates')
    .summary('list, copy out or check templates of reviews')
    .description(
      'Lists the templates reviews are made from, copies them to start from, or checks a folder of your own.',
    )
    .usage('[options]')
    .option('--copy <DIR>', 'new folder to copy the templates to')
    .option('--check <DIR>', 'folder to check with every shipped sample and reader')
    .addHelpText('after', helpText.templates)
    .action(async (options: { copy?: string; check?: string }) => {
      const { templatesCommand } = await import('./templates/templates-command.js');
      settle(await templatesCommand(options, environment));
    });

  addAdvise(program, environment, settle);
  addFieldSheet(program, environment, settle);
  addAsInstalled(program, environment, settle);

  program
    .command('schedule')
    .summary('list the supports of many files, to order from')
    .description(
      'Lists every support of each FILE with its rods, springs and loads, and what to order of each size of rod.',
    )
    .usage('[options] FILE...')
    .argument('<FILE...>', 'description of the installation, a folder of them, or a pattern')
    .option('-o, --output <FILE>', 'file to write, ending in .csv or .xlsx; printed as CSV otherwise')
    .addOption(unitsOption())
    .addHelpText('after', helpText.schedule)
    .action(async (files: string[], _options, command: Command) => {
      const { scheduleCommand } = await import('./schedule/schedule-command.js');
      settle(await scheduleCommand(files, command.optsWithGlobals(), environment));
    });

  program
    .command('schema')
    .summary('print the JSON Schema of the input')
    .description('Prints the JSON Schema of the input, with which an editor completes and checks.')
    .addOption(
      new Option('--results', 'the schema of the results instead').conflicts(['readings', 'asInstalled']),
    )
    .addOption(new Option('--readings', 'the schema of a file of readings instead').conflicts('asInstalled'))
    .option('--as-installed', 'the schema of the results of as-installed instead')
    .addHelpText('after', helpText.schema)
    .action(async (options: { results?: boolean; readings?: boolean; asInstalled?: boolean }) => {
      const { schemaCommand } = await import('./schema/schema-command.js');
      settle(schemaCommand(options, environment));
    });

  program
    .command('help')
    .summary('print the help of a command, or what an input may hold')
    .description(
      'Prints the help of a command; with "input", what an input may hold, as a whole or a part of it.',
    )
    .usage('[COMMAND | input [PART]]')
    .argument('[COMMAND]', 'a command, or input')
    .argument('[PART]', 'a key of the input, or supports, parts, fittings')
    .addHelpText('after', helpText.help)
    .action(async (topic: string | undefined, part: string | undefined) => {
      const { helpCommand } = await import('./help/help-command.js');
      settle(await helpCommand(topic, part, program, environment));
    });

  return program;
}

function unitsOption(): Option {
  return new Option('--units <SYSTEM>', 'us or si; the units of the file otherwise').choices(['us', 'si']);
}

function outputOf({ output, messages, variables }: Environment) {
  return {
    writeOut: output.write,
    writeErr: messages.write,
    // Wrong arguments are shown in the same form as every other error, by `run`.
    outputError: () => {},
    getOutHelpWidth: () => LINE_WIDTH,
    getErrHelpWidth: () => LINE_WIDTH,
    getOutHasColors: () => mayColour(output, variables, true),
    getErrHasColors: () => mayColour(messages, variables, true),
  };
}
