/** Where the columns of a table stand: type size, widths, room for decimals and gutters, from what is in the cells. */
import { EngineError } from '../../issues/issue.js';
import type { Measure } from '../font/typeface.js';
import { type Column, runsOver } from '../judge-markup.js';
import { textExtents } from './break-lines.js';
import { type ColumnNeed, columnWidths } from './column-widths.js';
import { type DecimalCell, decimalCell } from './decimal-column.js';
import type { Grid } from './measure-rows.js';
import type { Tag } from './piece.js';
import { GAP, TABLE_SIZES } from './style-sheet.js';
import type { Span, StyledCell, StyledRow, StyledTable } from './styled.js';

/** Narrowest room for words [points]. */
const NARROWEST_TEXT = 6;
/** Sizes and padding for tables whose numbers would not fit otherwise. */
const TIGHT_SIZES: readonly number[] = [6.5, 6, 5.5, 5];
const TIGHT_SIDE = 1.8;
/** Share of the table's width that a number with what belongs to it may claim. */
const WIDEST_NUMBER = 0.3;
/** Share of the table's width that one word may claim. */
const WIDEST_WORD = 0.35;
/** Room between numbers set flush right and words set flush left beside them [points]. */
const GUTTER = 9;

/** A cell that knows its first column. */
export interface PlacedCell extends StyledCell {
  readonly first: number;
}

/** A table in the type size and with the padding that its columns need. */
export interface FittedTable {
  readonly table: StyledTable;
  /** Room left and right of the words of a cell [points]. */
  readonly side: number;
}

/**
 * Sets a table in the largest size in which no word needs to be broken; if there is none, words are broken, and the
 * size is the largest in which at least no number is.
 *
 * @param table - table in its usual size
 * @param width - room for it [points]
 * @param measure - width of a text
 * @returns the table in its size
 * @throws EngineError `render.table-too-wide` when its numbers do not fit in any size
 */
export function fitTable(table: StyledTable, width: number, measure: Measure): FittedTable {
  const usual = TABLE_SIZES[0] ?? 1;
  const fitted = [...TABLE_SIZES, ...TIGHT_SIZES].map(
    (size): FittedTable => ({
      table: size === usual ? table : resized(table, size / usual),
      side: size < (TABLE_SIZES.at(-1) ?? 0) ? TIGHT_SIDE : GAP.cellSide,
    }),
  );
  const needed = (one: FittedTable, what: 'firm' | 'narrowest'): number =>
    needsOf(one, width, measure).reduce((sum, need) => sum + need[what], 0);
  const whole = fitted.slice(0, TABLE_SIZES.length).find((one) => needed(one, 'narrowest') <= width);
  const found = whole ?? fitted.find((one) => needed(one, 'firm') <= width);
  if (!found) throw new EngineError('render.table-too-wide', { columns: table.columns.length });
  return found;
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

/** Cells with the number of their first column; a group row or remark of one cell runs over all columns. */
export function placeCells(row: StyledRow, columns: number): readonly PlacedCell[] {
  let first = 0;
  return row.cells.map((cell) => {
    const span = runsOver(row.role) && row.cells.length === 1 ? columns : cell.columns;
    const placed = { ...cell, columns: span, first };
    first += span;
    return placed;
  });
}

/** Room inside each column before its words: wider where words stand beside numbers. */
function leadsOf(columns: readonly Column[], side: number): readonly number[] {
  const isNumbers = (column: Column | undefined): boolean =>
    column?.kind === 'decimal' || column?.kind === 'right';
  return columns.map((column, i) =>
    isNumbers(columns[i - 1]) && !isNumbers(column) ? (GUTTER * side) / GAP.cellSide : 0,
  );
}

function needsOf({ table, side }: FittedTable, width: number, measure: Measure): readonly ColumnNeed[] {
  const count = table.columns.length;
  const zeros = (): number[] => new Array<number>(count).fill(0);
  const needs = { firm: zeros(), narrowest: zeros(), natural: zeros() };
  const raise = (of: 'firm' | 'narrowest' | 'natural', column: number, value: number): void => {
    needs[of][column] = Math.max(needs[of][column] ?? 0, value);
  };
  const after = afterDecimals(table, width, measure);
  for (const row of [...table.head, ...table.rows])
    for (const cell of placeCells(row, count)) {
      // What runs over the whole table wraps at its width.
      if (cell.columns === count && count > 1) continue;
      const extents = textExtents(cell.spans, measure);
      const isDecimal = cell.columns === 1 && table.columns[cell.first]?.kind === 'decimal';
      const decimal = isDecimal ? alignedCell(cell, width, measure) : undefined;
      // Aligned numbers need room on both sides of the sign, on one line.
      const aligned = decimal ? decimal.before + (after[cell.first] ?? 0) : 0;
      for (let i = cell.first; i < cell.first + cell.columns; i++) {
        raise('firm', i, Math.max(aligned, extents.firm / cell.columns));
        raise('narrowest', i, Math.max(aligned, extents.narrowest / cell.columns));
        raise('natural', i, Math.max(aligned, extents.natural / cell.columns));
      }
    }
  const leads = leadsOf(table.columns, side);
  // One very long word is broken rather than starving the columns beside it.
  const widest = Math.max(WIDEST_WORD * width, width / count);
  return table.columns.map((column, i) => {
    const padding = 2 * side + (leads[i] ?? 0);
    const firm = Math.max(needs.firm[i] ?? 0, NARROWEST_TEXT) + padding;
    const narrowest = Math.max(firm, Math.min((needs.narrowest[i] ?? 0) + padding, widest));
    return {
      firm,
      narrowest,
      natural: Math.max(narrowest, (needs.natural[i] ?? 0) + padding),
      share: column.share,
    };
  });
}

/** A cell that lines up by its decimal sign; one that begins with a number and goes on with words wraps instead. */
function alignedCell(cell: StyledCell, width: number, measure: Measure): DecimalCell | undefined {
  const decimal = decimalCell(cell.spans, measure);
  return decimal && decimal.before + decimal.after <= WIDEST_NUMBER * width ? decimal : undefined;
}

function afterDecimals(table: StyledTable, width: number, measure: Measure): readonly number[] {
  const after = new Array<number>(table.columns.length).fill(0);
  for (const row of table.rows)
    for (const cell of placeCells(row, table.columns.length)) {
      if (cell.columns !== 1 || table.columns[cell.first]?.kind !== 'decimal') continue;
      after[cell.first] = Math.max(after[cell.first] ?? 0, alignedCell(cell, width, measure)?.after ?? 0);
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
 * @param fitted - table in its size
 * @param space - where it may stand [points]
 * @param measure - width of a text
 * @returns widths and what is needed to place cells
 */
export function gridOf(fitted: FittedTable, space: TableSpace, measure: Measure): Grid {
  return {
    x: space.x,
    widths: columnWidths(needsOf(fitted, space.width, measure), space.width),
    leads: leadsOf(fitted.table.columns, fitted.side),
    afterDecimal: afterDecimals(fitted.table, space.width, measure),
    cellSide: fitted.side,
    cellTop: GAP.cellTop,
    tallest: space.tallest,
  };
}
