/** Many files: shared out over threads, told in order, one line each, and a summary at the end. */

import { type Environment, LINE_WIDTH, mayColour } from '../environment.js';
import { type ExitStatus, worstStatus } from '../exit-status.js';
import { paintFor } from '../terminal/paint.js';
import { column, columns, wrapped } from '../terminal/text-columns.js';
import type { FoundInput } from './find-inputs.js';
import type { FileOutcome, FileRow, FileTask } from './one-of-many.js';
import { readInput, STANDARD_INPUT } from './read-input.js';

/** How to tell. */
export interface ManyOptions {
  /** False when `--no-color` was given. */
  readonly color?: boolean;
  /** True where the output is data, and nothing else may stand in it. */
  readonly isData: boolean;
}

/**
 * Works through many files.
 *
 * @param inputs - files in order
 * @param taskOf - what to do with each
 * @param options - how to tell
 * @param environment - where to read and print
 * @returns the worst status
 */
export async function manyFiles(
  inputs: readonly FoundInput[],
  taskOf: (index: number) => FileTask,
  options: ManyOptions,
  environment: Environment,
): Promise<ExitStatus> {
  const { folder, packageFolder, output, messages, variables } = environment;
  const place = { folder, packageFolder, messagesOnTerminal: messages.isTerminal };
  const orders = [];
  for (const [index, { file }] of inputs.entries()) {
    // Only this thread has a standard input.
    const own = file === STANDARD_INPUT ? { standardInput: (await readInput(file, environment)).text } : {};
    orders.push({ file, task: taskOf(index), place: { ...place, ...own } });
  }
  const paint = paintFor(mayColour(output, variables, options.color !== false));
  const rows: FileRow[] = [];
  const statuses: ExitStatus[] = [];
  const tell = ({ row, status, output: data, messages: words }: FileOutcome): void => {
    rows.push(row);
    statuses.push(status);
    if (words !== '') messages.write(words);
    if (options.isData) output.write(data);
    else output.write(`${paint.word(row.verdict, lineOf(row))}\n`);
  };
  if (!options.isData) output.write(`${paint.dim(lineOf(HEAD))}\n`);
  const { openWorkers } = await import('../workers/open-workers.js');
  const workers = openWorkers();
  try {
    await workers.runEach('one-of-many', orders, {
      onOutcome: (outcome, index) => {
        if (outcome.ok) tell(outcome.value);
        else tell(brokenThread(inputs[index]?.file ?? '', outcome.error));
      },
    });
  } finally {
    await workers.close();
  }
  if (!options.isData) output.write(summaryOf(rows));
  return worstStatus(statuses);
}

const HEAD: FileRow = {
  file: 'file',
  mark: 'pump',
  verdict: 'verdict',
  ratio: 'ratio',
  worst: 'worst finding',
};

function lineOf({ file, mark, verdict, ratio, worst }: FileRow): string {
  const rest = LINE_WIDTH - 11 - 5 - 10 - 4 - FILE_WIDTH;
  // The end of a path says more than its beginning.
  const end = file.length > FILE_WIDTH ? `…${file.slice(1 - FILE_WIDTH)}` : file;
  return columns([verdict, ratio, mark, end, worst], [11, -5, 10, FILE_WIDTH, rest]).trimEnd();
}

const FILE_WIDTH = 24;

/** How many files came out how, and which pumps they are. */
function summaryOf(rows: readonly FileRow[]): string {
  const order = ['exceeds', 'cannot tell', 'meets', 'does not apply', 'unusable', 'unreadable', 'failed'];
  const lines = order.flatMap((verdict) => {
    const own = rows.filter((row) => row.verdict === verdict);
    if (own.length === 0) return [];
    const names = own.map(({ mark, file }) => (mark === '–' ? file : mark)).join(', ');
    const [first = '', ...more] = wrapped(names, LINE_WIDTH - 18);
    return [
      `${column(verdict, 11)} ${column(String(own.length), -5)} ${first}`,
      ...more.map((line) => `${' '.repeat(18)}${line}`),
    ];
  });
  return `\n${columns(['verdict', 'files', 'pumps'], [11, -5, 20]).trimEnd()}\n${lines.map((line) => `${line}\n`).join('')}`;
}

function brokenThread(file: string, error: Error): FileOutcome {
  return {
    status: 70,
    row: { file, mark: '–', verdict: 'failed', ratio: '–', worst: 'see the messages' },
    output: '',
    messages: `${file}: ${error.message}\n`,
  };
}
