/** Measure step for rows of cells: used by tables and by facts. */
import { EngineError } from '../../issues/issue.js';
import type { Measure } from '../font/typeface.js';
import type { ColumnKind } from '../judge-markup.js';
import { breakLines, type Line } from './break-lines.js';
import { decimalCell } from './decimal-column.js';
import type { Hold, Item, Piece, Tag } from './piece.js';
import { type Align, placeLine } from './place-lines.js';
import type { InkName, TextStyle } from './style-sheet.js';
import type { Span } from './styled.js';

/** A cell that knows its place. */
export interface GridCell {
  readonly spans: readonly Span[];
  readonly first: number;
  readonly columns: number;
  readonly kind: ColumnKind;
  /** Makes the structure element of the cell, or none for decoration. */
  readonly tag: Tag | undefined;
}

export interface GridRow {
  readonly cells: readonly GridCell[];
  readonly style: Pick<TextStyle, 'size' | 'leading'>;
  readonly hold: Hold;
  readonly before: number;
  /** Lines hang from the top of a row, or stand on its foot as in a head. */
  readonly stands: 'top' | 'foot';
  readonly fill?: InkName;
  /** Heavy bar at the left edge. */
  readonly bar?: InkName;
  readonly ruleAbove?: Rule;
  readonly ruleBelow?: Rule;
}

export interface Rule {
  readonly weight: number;
  readonly ink: InkName;
}

/** Where the columns stand. */
export interface Grid {
  readonly x: number;
  readonly widths: readonly number[];
  /** Extra room before the words of each column [points]. */
  readonly leads: readonly number[];
  /** Room right of the decimal sign in each decimal column [points]. */
  readonly afterDecimal: readonly number[];
  /** Room left and right of the words of a cell, and above and below them [points]. */
  readonly cellSide: number;
  readonly cellTop: number;
  /** Tallest piece a page can take [points]. */
  readonly tallest: number;
}

const ALIGN: Readonly<Record<ColumnKind, Align>> = {
  left: 'left',
  right: 'right',
  centre: 'centre',
  decimal: 'right',
};

interface SetCell {
  readonly cell: GridCell;
  readonly lines: readonly Line[];
  readonly x: number;
  readonly width: number;
  readonly align: Align;
  /** Distance of the line's left edge from the column's, for aligned numbers. */
  readonly indent: number | undefined;
}

/**
 * Measures one row: usually one piece; a row taller than a page is parted between lines.
 *
 * @param row - cells and decoration
 * @param grid - where the columns stand
 * @param measure - width of a text
 * @returns pieces from the top down
 */
export function measureRow(row: GridRow, grid: Grid, measure: Measure): readonly Piece[] {
  const cells = row.cells.map((cell) => setCell(cell, grid, measure));
  const lineCount = Math.max(1, ...cells.map((set) => set.lines.length));
  const { leading } = row.style;
  const most = Math.floor((grid.tallest - 2 * grid.cellTop) / leading);
  if (most < 1)
    throw new EngineError('render.block-too-tall', {
      block: 'row',
      height: leading,
      available: grid.tallest,
    });
  const pieces: Piece[] = [];
  for (let from = 0; from < lineCount; from += most) {
    const count = Math.min(most, lineCount - from);
    const height = count * leading + 2 * grid.cellTop;
    const items: Item[] = [...decorate(row, grid, height, from === 0, from + count >= lineCount)];
    for (const set of cells) {
      const lines = set.lines.slice(from, from + count);
      if (set.lines.length === 0 && from === 0 && set.cell.tag) items.push(emptyCell(set, row.style));
      const drop = row.stands === 'foot' ? (count - lines.length) * leading : 0;
      lines.forEach((line, i) => {
        const y = grid.cellTop + drop + i * leading;
        const at = set.indent === undefined ? set : { x: set.x + set.indent, width: line.width };
        items.push(
          ...placeLine(
            line,
            { x: at.x, y, width: at.width },
            row.style,
            set.indent === undefined ? set.align : 'left',
            set.cell.tag,
          ),
        );
      });
    }
    const isLast = from + count >= lineCount;
    pieces.push({
      before: from === 0 ? row.before : 0,
      height,
      hold: isLast ? row.hold : 'free',
      items,
    });
  }
  return pieces;
}

/** A cell without words is a cell all the same: it keeps its place in the structure. */
const emptyCell = (set: SetCell, style: GridRow['style']): Item => ({
  kind: 'text',
  x: set.x,
  y: style.leading,
  width: 0,
  text: '',
  style: { ...style, face: 'regular', ink: 'black' },
  ...(set.cell.tag ? { tag: set.cell.tag } : {}),
});

function setCell(cell: GridCell, grid: Grid, measure: Measure): SetCell {
  const left = grid.x + total(grid.widths.slice(0, cell.first));
  const outer = total(grid.widths.slice(cell.first, cell.first + cell.columns));
  const lead = grid.leads[cell.first] ?? 0;
  const x = left + grid.cellSide + lead;
  const width = Math.max(1, outer - 2 * grid.cellSide - lead);
  const align = ALIGN[cell.kind];
  const decimal =
    cell.kind === 'decimal' && cell.columns === 1 ? decimalCell(cell.spans, measure) : undefined;
  if (decimal) {
    const after = grid.afterDecimal[cell.first] ?? 0;
    const indent = width - after - decimal.before;
    if (indent >= -0.001 && after >= decimal.after - 0.001)
      return { cell, lines: [decimal.line], x, width, align, indent };
  }
  return { cell, lines: breakLines(cell.spans, width, measure), x, width, align, indent: undefined };
}

function decorate(
  row: GridRow,
  grid: Grid,
  height: number,
  isFirst: boolean,
  isLast: boolean,
): readonly Item[] {
  const items: Item[] = [];
  const width = total(grid.widths);
  if (row.fill) items.push({ kind: 'fill', x: grid.x, y: 0, width, height, ink: row.fill });
  if (row.bar) items.push({ kind: 'fill', x: grid.x, y: 0, width: 2.2, height, ink: row.bar });
  if (row.ruleAbove && isFirst)
    items.push({
      kind: 'fill',
      x: grid.x,
      y: 0,
      width,
      height: row.ruleAbove.weight,
      ink: row.ruleAbove.ink,
    });
  if (row.ruleBelow && isLast) {
    const { weight, ink } = row.ruleBelow;
    items.push({ kind: 'fill', x: grid.x, y: height - weight, width, height: weight, ink });
  }
  return items;
}

const total = (numbers: readonly number[]): number => numbers.reduce((sum, number) => sum + number, 0);
