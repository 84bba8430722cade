/** Where the columns of a table stand: type size, widths, room for decimals and gutters, from what is in the cells. */
import { EngineError } from '../../issues/issue.js';
import type { Measure } from '../font/typeface.js';
import type { Column } from '../judge-markup.js';
import { textExtents } from './break-lines.js';
import { type ColumnNeed, columnWidths } from './column-widths.js';
import { decimalCell } from './decimal-column.js';
import type { Grid } from './measure-rows.js';
import type { Tag } from './piece.js';
import { GAP, TABLE_SIZES } from './style-sheet.js';
import type { Span, StyledCell, StyledRow, StyledTable } from './styled.js';

/** Narrowest column that still takes a word or two [points]. */
const NARROWEST_COLUMN = 14;
/** Room between numbers set flush right and words set flush left beside them [points]. */
const GUTTER = 9;

/** A cell that knows its first column. */
export interface PlacedCell extends StyledCell {
  readonly first: number;
}

/** Sets the table in the largest size in which no word needs to be broken. */
export function fitSize(table: StyledTable, width: number, measure: Measure): StyledTable {
  for (const size of TABLE_SIZES) {
    const scaled = size === TABLE_SIZES[0] ? table : resized(table, size / (TABLE_SIZES[0] ?? size));
    const least = needsOf(scaled, measure).reduce((sum, need) => sum + need.narrowest, 0);
    if (least <= width || size === TABLE_SIZES.at(-1)) return least <= width ? scaled : table;
  }
  return table;
}

function resized(table: StyledTable, factor: number): StyledTable {
  const span = (one: Span): Span =>
    one.kind === 'break' ? one : { ...one, style: { ...one.style, size: one.style.size * factor } };
  const row = (one: StyledRow): StyledRow => ({
    ...one,
    cells: one.cells.map((cell) => ({ ...cell, spans: cell.spans.map(span) })),
  });
  return { ...table, head: table.head.map(row), rows: table.rows.map(row) };
}

/** Cells with the number of their first column; a group row of one cell runs over all columns. */
export function placeCells(row: StyledRow, columns: number): readonly PlacedCell[] {
  let first = 0;
  return row.cells.map((cell) => {
    const span = row.role === 'group' && row.cells.length === 1 ? columns : cell.columns;
    const placed = { ...cell, columns: span, first };
    first += span;
    return placed;
  });
}

/** Room inside each column before its words: wider where words stand beside numbers. */
function leadsOf(columns: readonly Column[]): readonly number[] {
  const isNumbers = (column: Column | undefined): boolean =>
    column?.kind === 'decimal' || column?.kind === 'right';
  return columns.map((column, i) => (isNumbers(columns[i - 1]) && !isNumbers(column) ? GUTTER : 0));
}

function needsOf(table: StyledTable, measure: Measure): readonly ColumnNeed[] {
  const side = 2 * GAP.cellSide;
  const count = table.columns.length;
  const narrowest = new Array<number>(count).fill(NARROWEST_COLUMN);
  const natural = new Array<number>(count).fill(NARROWEST_COLUMN);
  const rows = [...table.head, ...table.rows].map((row) => placeCells(row, count));
  const after = afterDecimals(table, measure);
  for (const cell of rows.flat()) {
    if (cell.columns !== 1) continue;
    const extents = textExtents(cell.spans, measure);
    const decimal =
      table.columns[cell.first]?.kind === 'decimal' ? decimalCell(cell.spans, measure) : undefined;
    // Aligned numbers need room on both sides of the sign, on one line.
    const least = decimal ? decimal.before + (after[cell.first] ?? 0) : extents.narrowest;
    const wish = decimal ? least : extents.natural;
    narrowest[cell.first] = Math.max(narrowest[cell.first] ?? 0, least + side);
    natural[cell.first] = Math.max(natural[cell.first] ?? 0, wish + side);
  }
  for (const cell of rows.flat()) {
    if (cell.columns === 1 || cell.columns === count) continue;
    const extents = textExtents(cell.spans, measure);
    for (let i = cell.first; i < cell.first + cell.columns; i++) {
      narrowest[i] = Math.max(narrowest[i] ?? 0, (extents.narrowest + side) / cell.columns);
      natural[i] = Math.max(natural[i] ?? 0, (extents.natural + side) / cell.columns);
    }
  }
  const leads = leadsOf(table.columns);
  return table.columns.map((column, i) => ({
    narrowest: (narrowest[i] ?? 0) + (leads[i] ?? 0),
    natural: Math.max(natural[i] ?? 0, narrowest[i] ?? 0) + (leads[i] ?? 0),
    share: column.share,
  }));
}

function afterDecimals(table: StyledTable, measure: Measure): readonly number[] {
  const after = new Array<number>(table.columns.length).fill(0);
  for (const row of table.rows)
    for (const cell of placeCells(row, table.columns.length)) {
      if (cell.columns !== 1 || table.columns[cell.first]?.kind !== 'decimal') continue;
      after[cell.first] = Math.max(after[cell.first] ?? 0, decimalCell(cell.spans, measure)?.after ?? 0);
    }
  return after;
}

/** Room a table may take. */
export interface TableSpace {
  readonly x: number;
  readonly width: number;
  readonly tallest: number;
  readonly parent: Tag;
}

/**
 * Columns of a table that has its type size.
 *
 * @param table - table in its size
 * @param space - where it may stand [points]
 * @param measure - width of a text
 * @returns widths and what is needed to place cells
 * @throws EngineError `render.table-too-wide` when the columns are too many for the page
 */
export function gridOf(table: StyledTable, space: TableSpace, measure: Measure): Grid {
  const columns = table.columns.length;
  const leads = leadsOf(table.columns);
  const most = Math.floor(space.width / NARROWEST_COLUMN);
  if (columns > most) throw new EngineError('render.table-too-wide', { columns, most });
  return {
    x: space.x,
    widths: columnWidths(needsOf(table, measure), space.width),
    leads,
    afterDecimal: afterDecimals(table, measure),
    cellTop: GAP.cellTop,
    tallest: space.tallest,
  };
}
