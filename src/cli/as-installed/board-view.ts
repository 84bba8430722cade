/** A board on the terminal: one line a unit, 80 wide, readable without colour. */
import { LINE_WIDTH } from '../environment.js';
import { paintFor } from '../terminal/paint.js';
import { brokenColumns, columns, wrapped } from '../terminal/text-columns.js';
import type { BoardUnit } from './board-one.js';
import { boardRow } from './board-table.js';

const WIDTHS = [12, 6, 6, 9, 5, 24, 13] as const;

/**
 * The picture of a board.
 *
 * @param units - of all files
 * @param options - files that were written, and whether to colour
 * @returns lines that end with a line feed
 */
export function boardPicture(
  units: readonly BoardUnit[],
  { files, colour }: { readonly files: readonly string[]; readonly colour: boolean },
): string {
  const paint = paintFor(colour);
  const rows = units.map(boardRow);
  const held = rows.filter(({ start }) => start !== 'go').length;
  const stopped = rows.filter(({ run }) => run === 'stop').length;
  const lines = [
    paint.dim(columns(['pump', 'start', 'run', 'blocking', 'open', 'open by trade', 'last visit'], WIDTHS)),
    ...rows.flatMap(({ mark, start, run, blocking, open, trades, lastVisit, file }) => {
      const name = mark === '?' ? file : mark;
      const cells = [name, start.toUpperCase(), run.toUpperCase(), String(blocking), String(open)];
      const verdict = run === 'stop' ? 'exceeds' : start === 'go' && run === 'go' ? 'meets' : 'cannot-tell';
      return brokenColumns([...cells, trades, lastVisit], WIDTHS).map((line) => paint.verdict(verdict, line));
    }),
    '',
    `${rows.length} ${rows.length === 1 ? 'pump' : 'pumps'}: ${rows.length - held} may be started, ${held} held, ${stopped} to be stopped`,
    ...(files.length === 0 ? [] : wrapped(`written to ${files.join(', ')}`, LINE_WIDTH)),
  ];
  return lines.map((line) => `${line.trimEnd()}\n`).join('');
}
