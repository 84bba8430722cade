/** Measure step for tables: column widths from their content, then one piece a row. */
import { EngineError } from '../../issues/issue.js';
import type { Measure } from '../font/typeface.js';
import type { ColumnKind } from '../judge-markup.js';
import { breakLines, textExtents } from './break-lines.js';
import { type ColumnNeed, columnWidths } from './column-widths.js';
import { decimalCell } from './decimal-column.js';
import { type Grid, type GridCell, type GridRow, measureRow } from './measure-rows.js';
import { heldTogether, moved, type Piece, stackHeight, type Tag } from './piece.js';
import { paragraphPieces } from './place-lines.js';
import { GAP, STYLES, TABLE_SIZES } from './style-sheet.js';
import type { RowRole, Span, StyledCell, StyledRow, StyledTable } from './styled.js';

/** A table of no more rows than this stays on one page. */
const FEW_ROWS = 8;
/** Narrowest column that still takes a word or two [points]. */
const NARROWEST_COLUMN = 14;

export interface TableSpace {
  readonly x: number;
  readonly width: number;
  readonly tallest: number;
  readonly parent: Tag;
}

interface PlacedCell extends StyledCell {
  readonly first: number;
}

/**
 * Measures a table.
 *
 * @param table - styled table
 * @param space - where it may stand
 * @param measure - width of a text
 * @returns pieces: caption, head, rows; rows carry the head to repeat on the next page
 * @throws EngineError `render.table-too-wide` when the columns are too many for the page
 */
export function measureTable(table: StyledTable, space: TableSpace, measure: Measure): readonly Piece[] {
  const count = table.columns.length;
  if (count * NARROWEST_COLUMN > space.width)
    throw new EngineError('render.table-too-wide', { columns: count, most: Math.floor(space.width / NARROWEST_COLUMN) });
  const tag: Tag = { role: 'Table', parent: space.parent };
  const fitted = fitSize(table, space.width, measure);
  const grid = gridOf(fitted, space, measure);

  const caption = captionPieces(table, space, tag, measure);
  const headRows = fitted.head.map((row, i) => ({ row, isLast: i === fitted.head.length - 1, isFirst: i === 0 }));
  const head = headRows.flatMap(({ row, isFirst, isLast }) =>
    measureRow(headRow(row, fitted.columns.map((column) => column.kind), tag, isFirst, isLast), grid, measure).map((piece) => underSpans(piece, row, grid, isLast)),
  );
  const repeated = head.map((piece) => ({ ...piece, items: piece.items.map(untagged) }));
  const headHeight = stackHeight(head);
  const rowGrid: Grid = { ...grid, tallest: grid.tallest - headHeight };
  const body = fitted.rows.flatMap((row, i) =>
    measureRow(bodyRow(row, fitted, i, tag), rowGrid, measure).map((piece) => ({ ...piece, repeat: { table: tag, pieces: repeated } })),
  );
  const opening = heldTogether([...caption, ...head, ...body.slice(0, 1)], 'strong');
  const all = [...opening, ...body.slice(1)];
  const pieces = fitted.rows.length <= FEW_ROWS ? heldTogether(all, 'weak') : all;
  return pieces.map((piece, i) => ({
    ...piece,
    before: i === 0 ? GAP.block : piece.before,
    ...(i === 0 && table.id !== undefined ? { anchors: [table.id] } : {}),
  }));
}

const untagged = (item: Piece['items'][number]): Piece['items'][number] => {
  if (item.kind !== 'text') return item;
  const { tag: _tag, link: _link, ...rest } = item;
  return rest;
};

function captionPieces(table: StyledTable, space: TableSpace, tag: Tag, measure: Measure): readonly Piece[] {
  const lines = breakLines(table.caption, space.width, measure);
  const pieces = paragraphPieces(lines, { x: space.x, width: space.width, style: STYLES.caption, before: 0, tag: { role: 'Caption', parent: tag } });
  return pieces.map((piece, i) => (i === pieces.length - 1 ? { ...piece, height: piece.height + 3 } : piece));
}

/** Sets the table in the largest size in which no word needs to be broken. */
function fitSize(table: StyledTable, width: number, measure: Measure): StyledTable {
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
  const row = (one: StyledRow): StyledRow => ({ ...one, cells: one.cells.map((cell) => ({ ...cell, spans: cell.spans.map(span) })) });
  return { ...table, head: table.head.map(row), rows: table.rows.map(row) };
}

/** Cells with the number of their first column; a group row of one cell runs over all columns. */
function placeCells(row: StyledRow, columns: number): readonly PlacedCell[] {
  let first = 0;
  return row.cells.map((cell) => {
    const span = row.role === 'group' && row.cells.length === 1 ? columns : cell.columns;
    const placed = { ...cell, columns: span, first };
    first += span;
    return placed;
  });
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
    const decimal = table.columns[cell.first]?.kind === 'decimal' ? decimalCell(cell.spans, measure) : undefined;
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
  return table.columns.map((column, i) => ({
    narrowest: narrowest[i] ?? 0,
    natural: Math.max(natural[i] ?? 0, narrowest[i] ?? 0),
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

function gridOf(table: StyledTable, space: TableSpace, measure: Measure): Grid {
  return {
    x: space.x,
    widths: columnWidths(needsOf(table, measure), space.width),
    afterDecimal: afterDecimals(table, measure),
    cellTop: GAP.cellTop,
    tallest: space.tallest,
  };
}

function gridCells(row: StyledRow, kinds: readonly ColumnKind[], tag: Tag, isHead: boolean): readonly GridCell[] {
  return placeCells(row, kinds.length).map((cell) => ({
    spans: cell.spans,
    first: cell.first,
    columns: cell.columns,
    kind: cell.columns > 1 ? (isHead ? 'centre' : 'left') : isHead && kinds[cell.first] === 'decimal' ? 'right' : (kinds[cell.first] ?? 'left'),
    tag: { role: isHead ? 'TH' : 'TD', parent: tag, columns: cell.columns, ...(isHead ? { scope: 'Column' as const } : {}) },
  }));
}

function headRow(row: StyledRow, kinds: readonly ColumnKind[], table: Tag, isFirst: boolean, isLast: boolean): GridRow {
  return {
    cells: gridCells(row, kinds, { role: 'TR', parent: table }, true),
    style: STYLES.tableHead,
    hold: 'strong',
    before: 0,
    stands: 'foot',
    ...(isFirst ? { ruleAbove: { weight: 0.9, ink: 'black' as const } } : {}),
    ...(isLast ? { ruleBelow: { weight: 0.5, ink: 'black' as const } } : {}),
  };
}

/** A thin rule under a head that spans columns, a little short of its neighbours. */
function underSpans(piece: Piece, row: StyledRow, grid: Grid, isLast: boolean): Piece {
  if (isLast) return piece;
  const rules = placeCells(row, grid.widths.length)
    .filter((cell) => cell.columns > 1 && cell.spans.length > 0)
    .map((cell) => {
      const x = grid.x + grid.widths.slice(0, cell.first).reduce((sum, width) => sum + width, 0);
      const width = grid.widths.slice(cell.first, cell.first + cell.columns).reduce((sum, one) => sum + one, 0);
      return { kind: 'fill' as const, x: 3, y: piece.height - 0.4, width: width - 6, height: 0.4, ink: 'grey' as const, left: x };
    })
    .map(({ left, ...rule }) => moved(rule, left, 0));
  return { ...piece, items: [...piece.items, ...rules] };
}

function bodyRow(row: StyledRow, table: StyledTable, index: number, tag: Tag): GridRow {
  const last = index === table.rows.length - 1;
  const next = table.rows[index + 1]?.role;
  const role: RowRole = row.role;
  const kinds = table.columns.map((column) => column.kind);
  return {
    cells: gridCells(row, kinds, { role: 'TR', parent: tag }, false),
    style: STYLES.cell,
    // A group row holds to what it heads; a total holds to what it adds up.
    hold: role === 'group' || next === 'total' ? 'strong' : 'free',
    before: 0,
    stands: 'top',
    ...(role === 'group' ? { fill: 'tint' as const } : {}),
    ...(role === 'exceeds' ? { fill: 'accent-tint' as const, bar: 'accent' as const } : {}),
    ...(role === 'total' ? { ruleAbove: { weight: 0.5, ink: 'black' as const } } : {}),
    ruleBelow: last ? { weight: 0.9, ink: 'black' } : { weight: 0.3, ink: 'hairline' },
  };
}
