/** `pipeborne as-installed` without sheets: where many units stand, from their records. */
import { extname, join, resolve } from 'node:path';
import { EngineError } from '../../issues/issue.js';
import { type Environment, mayColour } from '../environment.js';
import { type ExitStatus, worstStatus } from '../exit-status.js';
import { findInputs } from '../files/find-inputs.js';
import { STANDARD_INPUT } from '../files/read-input.js';
import { realPath } from '../files/real-path.js';
import { type NewFile, writeFiles } from '../files/write-files.js';
import { commaSeparated, workbook } from '../schedule/schedule-files.js';
import { showFailure } from '../terminal/show-failure.js';
import type { BoardOrder, BoardUnit } from './board-one.js';
import { boardTable, punchTable } from './board-table.js';
import { boardPicture } from './board-view.js';
import { boardPage } from './visit-page.js';

/** Options that a board listens to. */
export interface BoardOptions {
  readonly color: boolean;
  readonly store?: string;
  readonly board?: string;
  readonly punchList?: string;
  readonly html?: string;
}

/**
 * Prints the board.
 *
 * @param name - file, folder or pattern as given
 * @param options - record and outputs
 * @param environment - where to read, print and write
 * @returns the worst status of all units
 */
export async function boardCommand(
  name: string,
  options: BoardOptions,
  environment: Environment,
): Promise<ExitStatus> {
  try {
    const { store } = options;
    if (store === undefined || name === STANDARD_INPUT) throw new EngineError('cli.arguments.no-record');
    refuse('--board', options.board, ['.xlsx', '.csv']);
    refuse('--punch-list', options.punchList, ['.xlsx', '.csv']);
    refuse('--html', options.html, ['.html', '.htm']);
    const units = await unitsOf(name, store, environment);
    for (const { messages } of units) if (messages !== '') environment.messages.write(messages);
    const written = await outputs(units, options, environment.folder);
    refuseOver(written, units, environment.folder);
    if (written.length > 0) await writeFiles(written);
    const colour = mayColour(environment.output, environment.variables, options.color);
    environment.output.write(boardPicture(units, { files: written.map(({ shown }) => shown), colour }));
    return worstStatus(units.map(({ status }) => status));
  } catch (error) {
    return showFailure(error, name, environment);
  }
}

/** Units of one folder of the record are those of the folder of the same name below it: marks may be alike elsewhere. */
async function unitsOf(name: string, store: string, environment: Environment): Promise<readonly BoardUnit[]> {
  const { folder, packageFolder, messages } = environment;
  const place = { folder, packageFolder, messagesOnTerminal: messages.isTerminal };
  const record = resolve(folder, store);
  const found = await findInputs([name], environment);
  const orders = found
    // The sheets in the record are no units, wherever it lies.
    .filter(({ file }) => !resolve(folder, file).startsWith(join(record, '/')))
    .map(({ file, below }): BoardOrder => ({ file, store: join(store, below), place }));
  const { openWorkers } = await import('../workers/open-workers.js');
  const workers = openWorkers();
  try {
    const outcomes = await workers.runEach('board-one', orders);
    return outcomes.map((outcome, index) => {
      if (outcome.ok) return outcome.value;
      const file = orders[index]?.file ?? '';
      return { file, status: showFailure(outcome.error, file, environment), messages: '', sheets: 0 };
    });
  } finally {
    await workers.close();
  }
}

async function outputs(
  units: readonly BoardUnit[],
  { board, punchList, html }: BoardOptions,
  folder: string,
): Promise<readonly NewFile[]> {
  const [boards, items] = [boardTable(units), punchTable(units)];
  const sheets = [
    { name: 'Board', table: boards },
    { name: 'Punch list', table: items },
  ];
  const files: NewFile[] = [];
  const add = (shown: string, content: string | Uint8Array) =>
    void files.push({ path: resolve(folder, shown), shown, content });
  // Spreadsheets take the text for UTF-8 only where this mark says so.
  const text = async (table: typeof boards) => `\uFEFF${await commaSeparated([table])}`;
  if (board !== undefined) add(board, isWorkbook(board) ? await workbook(sheets) : await text(boards));
  if (punchList !== undefined) {
    add(punchList, isWorkbook(punchList) ? await workbook(sheets.slice(1)) : await text(items));
  }
  if (html !== undefined) add(html, boardPage(units));
  return files;
}

const isWorkbook = (name: string) => extname(name).toLowerCase() === '.xlsx';

function refuse(option: string, name: string | undefined, endings: readonly string[]): void {
  if (name === undefined || endings.includes(extname(name).toLowerCase())) return;
  throw new EngineError('cli.arguments.wrong-ending', { option, found: name, ending: endings.join(' or ') });
}

/** No output is written over an input, and none twice. */
function refuseOver(written: readonly NewFile[], units: readonly BoardUnit[], folder: string): void {
  const taken = new Set(units.map(({ file }) => realPath(resolve(folder, file))));
  for (const { path, shown } of written) {
    const real = realPath(path);
    if (taken.has(real)) throw new EngineError('cli.arguments.same-output', { file: shown });
    taken.add(real);
  }
}
