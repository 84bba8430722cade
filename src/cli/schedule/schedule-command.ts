/** `pipeborne schedule`: every support of many files in one table, to order from. */
import { extname, resolve } from 'node:path';
import { scheduleUnits, type UnitSystem } from '../../index.js';
import { EngineError } from '../../issues/issue.js';
import type { Environment } from '../environment.js';
import { type ExitStatus, worstStatus } from '../exit-status.js';
import { findInputs } from '../files/find-inputs.js';
import { readInput, STANDARD_INPUT } from '../files/read-input.js';
import { writeFiles } from '../files/write-files.js';
import { showFailure } from '../terminal/show-failure.js';
import { commaSeparated, workbook } from './schedule-files.js';
import type { ScheduledFile, ScheduleOrder } from './schedule-one.js';
import { type FiledRow, rodTable, supportTable } from './schedule-table.js';

/** Options of the command as the parser of arguments gives them. */
export interface ScheduleOptions {
  readonly output?: string;
  readonly units?: UnitSystem;
}

/**
 * Runs `schedule`.
 *
 * @param files - inputs as given
 * @param options - options of the command
 * @param environment - where to read and write
 * @returns 0, or the worst status of the files that could not be used; the others are in the schedule
 */
export async function scheduleCommand(
  files: readonly string[],
  options: ScheduleOptions,
  environment: Environment,
): Promise<ExitStatus> {
  const { output, messages, folder } = environment;
  try {
    refuseName(options.output);
    const scheduled = await scheduleAll(files, environment);
    for (const { messages: words } of scheduled) if (words !== '') messages.write(words);
    const usable = scheduled.flatMap(({ file, supports }) =>
      supports === undefined ? [] : [{ file, supports }],
    );
    const units = options.units ?? usable[0]?.supports.units ?? 'us';
    const rows = usable.flatMap(({ file, supports }) =>
      supports.rows[units].map(
        (row): FiledRow => ({ ...row, file: file === STANDARD_INPUT ? 'standard input' : file }),
      ),
    );
    const [supports, rods] = [supportTable(rows, scheduleUnits(units)), rodTable(rows, scheduleUnits(units))];
    const { output: shown } = options;
    if (shown === undefined) output.write(await commaSeparated([supports, rods]));
    else if (usable.length > 0) {
      const content = isWorkbook(shown)
        ? await workbook([
            { name: 'Supports', table: supports },
            { name: 'Rods', table: rods },
          ])
        : // Spreadsheets take the text for UTF-8 only where this mark says so.
          `\uFEFF${await commaSeparated([supports, rods])}`;
      await writeFiles([{ path: resolve(folder, shown), shown, content }]);
      const count = `${rows.length} ${rows.length === 1 ? 'support' : 'supports'} of ${usable.length}`;
      output.write(`${count} ${usable.length === 1 ? 'pump' : 'pumps'} written to ${shown}\n`);
    }
    return worstStatus(scheduled.map(({ status }) => status));
  } catch (error) {
    return showFailure(error, files.join(' '), environment);
  }
}

async function scheduleAll(
  files: readonly string[],
  environment: Environment,
): Promise<readonly ScheduledFile[]> {
  const { folder, packageFolder, messages } = environment;
  const place = { folder, packageFolder, messagesOnTerminal: messages.isTerminal };
  const orders: ScheduleOrder[] = [];
  for (const { file } of await findInputs(files, environment)) {
    const own = file === STANDARD_INPUT ? { standardInput: (await readInput(file, environment)).text } : {};
    orders.push({ file, place: { ...place, ...own } });
  }
  const { openWorkers } = await import('../workers/open-workers.js');
  const workers = openWorkers();
  try {
    const outcomes = await workers.runEach('schedule-one', orders);
    return outcomes.map((outcome, index) => {
      if (outcome.ok) return outcome.value;
      const file = orders[index]?.file ?? '';
      return { file, status: showFailure(outcome.error, file, environment), messages: '' };
    });
  } finally {
    await workers.close();
  }
}

function refuseName(name: string | undefined): void {
  if (name === undefined || ['.csv', '.xlsx'].includes(extname(name).toLowerCase())) return;
  throw new EngineError('cli.arguments.wrong-ending', { option: '-o', found: name, ending: '.csv or .xlsx' });
}

function isWorkbook(name: string): boolean {
  return extname(name).toLowerCase() === '.xlsx';
}
