/** Measure step for tables: column widths from their content, then one piece a row. */
import type { Measure } from '../font/typeface.js';
import type { ColumnKind } from '../judge-markup.js';
import { CONTINUED } from '../words.js';
import { breakLines } from './break-lines.js';
import { type Grid, type GridCell, type GridRow, measureRow } from './measure-rows.js';
import { heldTogether, moved, type Piece, stackHeight, type Tag } from './piece.js';
import { paragraphPieces } from './place-lines.js';
import { GAP, STYLES } from './style-sheet.js';
import type { RowRole, Span, StyledRow, StyledTable } from './styled.js';
import { fitTable, gridOf, type PlacedCell, placeCells, type TableSpace } from './table-grid.js';

/** A table of no more rows than this stays on one page. */
const FEW_ROWS = 8;
/** Tallest head that is repeated, as a share of the page. */
const TALLEST_REPEAT = 0.34;
/** Room left for a heading above a table [points]. */
const ROOM_FOR_HEADING = 90;

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
  const tag: Tag = { role: 'Table', parent: space.parent };
  const fit = fitTable(table, space.width, measure);
  const fitted = fit.table;
  const grid = gridOf(fit, space, measure);

  const caption = captionPieces(table, space, tag, measure);
  const headTag: Tag = { role: 'THead', parent: tag };
  const bodyTag: Tag = fitted.head.length > 0 ? { role: 'TBody', parent: tag } : tag;
  const kinds = fitted.columns.map((column) => column.kind);
  const head = fitted.head.flatMap((row, i) => {
    const isLast = i === fitted.head.length - 1;
    const pieces = measureRow(headRow(row, kinds, headTag, i === 0, isLast), grid, measure);
    return pieces.map((piece) => ({ ...underSpans(piece, row, grid, isLast), headOf: tag }));
  });
  // A head that would fill much of every page is printed once.
  const isRepeated = stackHeight(head) <= TALLEST_REPEAT * grid.tallest;
  const goingOn = captionPieces({ ...table, caption: continued(table.caption, true) }, space, tag, measure);
  const repeated = (isRepeated ? [...goingOn, ...head] : []).map(asDecoration);
  const headHeight = stackHeight(head);
  // A row parted because it is taller than a page leaves room for what must stand above it.
  const above = headHeight + stackHeight(caption) + ROOM_FOR_HEADING;
  const rowGrid: Grid = { ...grid, tallest: Math.max(grid.tallest - above, grid.tallest / 3) };
  let group: readonly Piece[] = [];
  const body = fitted.rows.flatMap((row, i) => {
    const pieces = measureRow(bodyRow(row, fitted, i, bodyTag), rowGrid, measure);
    if (row.role === 'group') group = [];
    const repeat = { table: tag, pieces: [...repeated, ...group] };
    if (row.role === 'group' && isRepeated) {
      const again = { ...row, cells: row.cells.map((cell) => ({ ...cell, spans: continued(cell.spans) })) };
      group = measureRow(bodyRow(again, fitted, i, bodyTag), rowGrid, measure).map(asDecoration);
    }
    return pieces.map((piece, k): Piece => {
      const anchors = k === 0 && row.id !== undefined ? { anchors: [row.id] } : {};
      return { ...piece, repeat, ...anchors };
    });
  });
  // A head with a single row at the foot of a page would look like all there is.
  const first = Math.min(2, body.length);
  const opening = heldTogether([...caption, ...head, ...body.slice(0, first)], 'strong');
  const all = [...opening, ...body.slice(first)];
  const pieces = fitted.rows.length <= FEW_ROWS ? heldTogether(all, 'weak') : all;
  return pieces.map((piece, i) => ({
    ...piece,
    before: i === 0 ? GAP.block : piece.before,
    ...(i === 0 && table.id !== undefined ? { anchors: [table.id, ...(piece.anchors ?? [])] } : {}),
  }));
}

/** What is printed again is not read out again, and leads nowhere. */
const asDecoration = (piece: Piece): Piece => ({ ...piece, items: piece.items.map(untagged) });

/** Words with `continued` behind the title they begin with; what follows the title is not said again. */
function continued(spans: readonly Span[], isCaption = false): readonly Span[] {
  const end = spans.findIndex((span) => span.kind !== 'text' || span.style.face !== 'bold');
  const title = end <= 0 ? spans : spans.slice(0, end);
  const last = title.at(-1);
  if (last?.kind !== 'text') return title;
  const style = { ...last.style, face: isCaption ? ('regular' as const) : last.style.face };
  return [
    ...title.slice(0, -1),
    { ...last, text: last.text.trimEnd() },
    { kind: 'text', text: `, ${CONTINUED}`, style, rise: 0 },
  ];
}

const untagged = (item: Piece['items'][number]): Piece['items'][number] => {
  if (item.kind !== 'text') return item;
  const { tag: _tag, link: _link, ...rest } = item;
  return rest;
};

function captionPieces(table: StyledTable, space: TableSpace, tag: Tag, measure: Measure): readonly Piece[] {
  const lines = breakLines(table.caption, space.width, measure);
  const pieces = paragraphPieces(lines, {
    x: space.x,
    width: space.width,
    style: STYLES.caption,
    before: 0,
    tag: { role: 'Caption', parent: tag },
  });
  return pieces.map((piece, i) => (i === pieces.length - 1 ? { ...piece, height: piece.height + 3 } : piece));
}

/** What a cell heads, if anything: its columns, its row, or, for the row that names a group, the rows below. */
function scopeOf(
  cell: PlacedCell,
  row: StyledRow,
  kinds: readonly ColumnKind[],
  isHead: boolean,
): Tag['scope'] {
  if (cell.spans.length === 0) return undefined;
  if (isHead) return 'Column';
  if (row.role === 'group') return cell.first === 0 ? 'Row' : undefined;
  return cell.first === 0 && kinds[0] === 'left' && cell.columns < kinds.length ? 'Row' : undefined;
}

function gridCells(
  row: StyledRow,
  kinds: readonly ColumnKind[],
  tag: Tag,
  isHead: boolean,
): readonly GridCell[] {
  return placeCells(row, kinds.length).map((cell) => ({
    spans: cell.spans,
    first: cell.first,
    columns: cell.columns,
    kind:
      cell.columns > 1
        ? isHead
          ? 'centre'
          : 'left'
        : isHead && kinds[cell.first] === 'decimal'
          ? 'right'
          : (kinds[cell.first] ?? 'left'),
    tag: cellTag(cell, tag, scopeOf(cell, row, kinds, isHead)),
  }));
}

const cellTag = (cell: PlacedCell, parent: Tag, scope: Tag['scope']): Tag => ({
  role: scope ? 'TH' : 'TD',
  parent,
  columns: cell.columns,
  ...(scope ? { scope } : {}),
});

function headRow(
  row: StyledRow,
  kinds: readonly ColumnKind[],
  table: Tag,
  isFirst: boolean,
  isLast: boolean,
): GridRow {
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
      const width = grid.widths
        .slice(cell.first, cell.first + cell.columns)
        .reduce((sum, one) => sum + one, 0);
      return {
        kind: 'fill' as const,
        x: 3,
        y: piece.height - 0.4,
        width: width - 6,
        height: 0.4,
        ink: 'grey' as const,
        left: x,
      };
    })
    .map(({ left, ...rule }) => moved(rule, left, 0));
  return { ...piece, items: [...piece.items, ...rules] };
}

function bodyRow(row: StyledRow, table: StyledTable, index: number, tag: Tag): GridRow {
  const last = index === table.rows.length - 1;
  const next = table.rows[index + 1]?.role;
  const role = lookOf(table.rows, index);
  // The last row does not stand alone on a page.
  const isBeforeLast = index > 0 && index === table.rows.length - 2;
  const kinds = table.columns.map((column) => column.kind);
  return {
    cells: gridCells(row, kinds, { role: 'TR', parent: tag }, false),
    style: STYLES.cell,
    // A group row holds to what it heads, a total to what it adds up, a remark to its row.
    hold: role === 'group' || next === 'total' || next === 'remark' || isBeforeLast ? 'strong' : 'free',
    before: 0,
    stands: 'top',
    ...(role === 'group' ? { fill: 'tint' as const } : {}),
    ...(role === 'exceeds' ? { fill: 'accent-tint' as const, bar: 'accent' as const } : {}),
    ...(role === 'total' ? { ruleAbove: { weight: 0.5, ink: 'black' as const } } : {}),
    ...(next === 'remark' && !last
      ? {}
      : {
          ruleBelow: last
            ? { weight: 0.9, ink: 'black' as const }
            : { weight: 0.3, ink: 'hairline' as const },
        }),
  };
}

/** A remark looks like the row it belongs to. */
function lookOf(rows: readonly StyledRow[], index: number): RowRole {
  for (let i = index; i >= 0; i--) {
    const role = rows[i]?.role ?? 'plain';
    if (role !== 'remark') return i === index || role === 'exceeds' ? role : 'plain';
  }
  return 'plain';
}
