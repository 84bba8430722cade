/** What `as-installed` prints: go or hold, the counts, and the open items, 80 wide, readable without colour. */
import type { AsInstalledSummary } from '../../index.js';
import { LINE_WIDTH } from '../environment.js';
import { type Paint, paintFor } from '../terminal/paint.js';
import { brokenColumns, columns, wrapped } from '../terminal/text-columns.js';
import type { Kept } from './store-folder.js';

/** How to print. */
export interface VisitPictureOptions {
  /** Files that were written. */
  readonly files: readonly string[];
  /** What became of the readings, where a store was named. */
  readonly kept: readonly Kept[];
  readonly colour: boolean;
}

/** Items listed; the review has all of them. */
const MOST_ITEMS = 12;
const WIDTHS = [6, 20, 15, 36] as const;

/**
 * The picture of one visit.
 *
 * @param seen - decision, counts, open items
 * @param options - files, and whether to colour
 * @returns lines that end with a line feed
 */
export function asInstalledPicture(seen: AsInstalledSummary, options: VisitPictureOptions): string {
  const paint = paintFor(options.colour);
  const { meets, exceeds } = seen.counts;
  const lines = [
    ...wrapped(`${paint.bold(seen.mark)} as installed: ${decisionWords('start', seen, paint)}`, LINE_WIDTH),
    ...wrapped(`running, acceptance: ${decisionWords('run', seen, paint)}`, LINE_WIDTH),
    `${meets} meet, ${exceeds} exceed, ${seen.counts['cannot-tell']} cannot be told; ${seen.items.length} open`,
    ...itemLines(seen, paint),
    '',
    ...wrapped(`written to ${options.files.join(', ')}`, LINE_WIDTH),
    ...options.kept.flatMap((kept) => wrapped(keptLine(kept), LINE_WIDTH)),
  ];
  return lines.map((line) => `${line.trimEnd()}\n`).join('');
}

/** A decision in a line: the word, what stands against it, or who has decided. */
function decisionWords(key: 'start' | 'run', { decisions }: AsInstalledSummary, paint: Paint): string {
  const { word, against, by } = decisions[key];
  const count = `${against} open ${against === 1 ? 'item' : 'items'}`;
  const what = key === 'start' ? 'the start' : 'acceptance';
  switch (word) {
    case 'go':
      return paint.verdict('meets', `GO: nothing read stands against it; decided by ${by}`);
    case 'stop':
      return paint.verdict('exceeds', `STOP: do not run it; ${count}`);
    case 'hold':
      return against === 0
        ? paint.verdict(
            'cannot-tell',
            `HOLD: nothing read stands against ${what}; nobody is named who decides`,
          )
        : paint.verdict('exceeds', `HOLD: ${count} ${against === 1 ? 'blocks' : 'block'} ${what}`);
  }
}

/** What an item keeps from happening, in a short word. */
const SHORT = { running: 'stop', start: 'blocks', acceptance: 'accept', nothing: '' } as const;

function itemLines({ items }: AsInstalledSummary, paint: Paint): readonly string[] {
  if (items.length === 0) return [];
  const rows = items
    .slice(0, MOST_ITEMS)
    .flatMap(({ blocksStart, bars, trade, at, finding }) =>
      brokenColumns([SHORT[bars], trade, at, finding], WIDTHS).map((line) =>
        blocksStart ? paint.verdict('exceeds', line) : line,
      ),
    );
  const more = items.length - MOST_ITEMS;
  return [
    '',
    paint.dim(columns(['start', 'trade', 'at', 'finding'], WIDTHS)),
    ...rows,
    ...(more > 0 ? [`       and ${more} more; the review lists them`] : []),
  ];
}

function keptLine({ shown, isNew }: Kept): string {
  return isNew ? `readings kept in ${shown}` : `the same readings were kept already, in ${shown}`;
}
