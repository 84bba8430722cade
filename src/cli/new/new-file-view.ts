/** What `new` says when it has written: what was assumed, and the next command. */
import type { StartedFile } from '../../starter/start-file.js';
import { LINE_WIDTH } from '../environment.js';
import { brokenColumns, wrapped } from '../terminal/text-columns.js';

type Started = Extract<StartedFile, { ok: true }>;

const WIDTHS = [26, 22, 28] as const;

/**
 * The closing words.
 *
 * @param started - what was written
 * @param file - its name, or undefined where it went to the output
 * @returns lines that end with a line feed
 */
export function newFilePicture({ installation, assumptions }: Started, file: string | undefined): string {
  const rows = assumptions.flatMap(({ what, value, why }) =>
    brokenColumns([what, value, why], WIDTHS).map((line) => `  ${line}`),
  );
  const rest = installation.assumptions.length;
  const lines = [
    ...(file === undefined ? [] : [`${installation.pump.mark}: written to ${file}`, '']),
    'Assumed, and marked so in the file:',
    ...rows,
    '',
    ...wrapped(
      `Reading it takes ${rest} further values from the tables and customs of the trade; the review lists each. ` +
        'Compare all of them with drawings and data sheets.',
      LINE_WIDTH,
    ),
    ...(file === undefined ? [] : [`Next: pipeborne check ${file}`]),
  ];
  return lines.map((line) => `${line.trimEnd()}\n`).join('');
}
