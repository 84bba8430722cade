/** Measure step for lines to fill in: what is read at the left, its boxes on a grid, why it was not read at the right. */
import { breakLines } from './break-lines.js';
import { measureAbreast } from './measure-abreast.js';
import { measureBoxes } from './measure-boxes.js';
import { heldTogether, type Item, moved, type Piece, type Tag } from './piece.js';
import { placeLine } from './place-lines.js';
import type { Space } from './space.js';
import { GAP, STYLES, type TextStyle } from './style-sheet.js';
import type { Span, StyledReading, StyledReadings } from './styled.js';

/** Shares of the width of the three columns; between them stands a gap. */
const SHARES = [0.32, 0.51, 0.17] as const;
const COLUMN_GAP = 9;
/** Room above and below what stands in a row [points]. */
const ROW_TOP = 3;
/** Narrowest column at the right: a reason takes a few words [points]. */
const NARROWEST_LEFT_OUT = 66;

interface Column {
  readonly x: number;
  readonly width: number;
}

/**
 * Measures lines to fill in.
 *
 * @param block - heads and rows
 * @param space - where they may stand
 * @returns a head that is repeated on every page, and one piece a row
 */
export function measureReadings(block: StyledReadings, space: Space): readonly Piece[] {
  if (block.abreast > 1) return measureAbreast(block, space);
  const table: Tag = { role: 'Table', parent: space.parent };
  const columns = columnsOf(space);
  const head = { ...headPiece(block, columns, space, table), headOf: table };
  const repeated: Piece = { ...head, items: head.items.map(untagged) };
  const rows = block.rows.map((row, i): Piece => {
    const isLast = i === block.rows.length - 1;
    return {
      ...rowPiece(row, columns, space, table, isLast),
      repeat: { table, pieces: [repeated] },
      // The last row never stands alone under a repeated head.
      hold: i === block.rows.length - 2 ? 'weak' : 'free',
    };
  });
  const [first, ...rest] = rows;
  return first ? [...heldTogether([head, first], 'strong'), ...rest] : [];
}

function columnsOf(space: Space): readonly [Column, Column, Column] {
  const room = space.width - 2 * COLUMN_GAP;
  const last = Math.max(NARROWEST_LEFT_OUT, SHARES[2] * room);
  const first = (SHARES[0] / (SHARES[0] + SHARES[1])) * (room - last);
  const middle = room - last - first;
  return [
    { x: space.x, width: first },
    { x: space.x + first + COLUMN_GAP, width: middle },
    { x: space.x + space.width - last, width: last },
  ];
}

const untagged = (item: Item): Item => {
  if (item.kind !== 'text') return item;
  const { tag: _tag, ...rest } = item;
  return rest;
};

/** Words of a column one below the other. */
function stack(
  parts: readonly { readonly spans: readonly Span[]; readonly style: TextStyle }[],
  column: Column,
  space: Space,
  tag: Tag,
): { readonly items: readonly Item[]; readonly height: number } {
  const items: Item[] = [];
  let y = 0;
  for (const { spans, style } of parts) {
    for (const line of breakLines(spans, column.width, space.measure)) {
      items.push(...placeLine(line, { x: column.x, y, width: column.width }, style, 'left', tag));
      y += style.leading;
    }
  }
  return { items, height: y };
}

function headPiece(block: StyledReadings, columns: readonly Column[], space: Space, table: Tag): Piece {
  const row: Tag = { role: 'TR', parent: table };
  const set = columns.map((column, i) =>
    stack([{ spans: block.heads[i] ?? [], style: STYLES.columnHead }], column, space, {
      role: 'TH',
      parent: row,
      scope: 'Column',
    }),
  );
  const height = Math.max(...set.map((one) => one.height)) + 4.5;
  const rule = (y: number, weight: number): Item => ({
    kind: 'fill',
    x: space.x,
    y,
    width: space.width,
    height: weight,
    ink: 'black',
  });
  const items = set.flatMap((one) =>
    // Heads of several lines stand on a common foot.
    one.items.map((item) => moved(item, 0, height - 2 - one.height)),
  );
  return {
    before: GAP.block,
    height,
    hold: 'strong',
    items: [rule(0, 0.9), ...items, rule(height - 0.5, 0.5)],
  };
}

function rowPiece(
  reading: StyledReading,
  [what, filled, leftOut]: readonly [Column, Column, Column],
  space: Space,
  table: Tag,
  isLast: boolean,
): Piece {
  const row: Tag = { role: 'TR', parent: table };
  const head: Tag = { role: 'TH', parent: row, scope: 'Row' };
  const styles = { expected: STYLES.expected, limit: STYLES.limit, source: STYLES.boxSource };
  const words = stack(
    [
      { spans: reading.label, style: STYLES.reading },
      ...reading.asides.map(({ role, spans }) => ({ spans, style: styles[role] })),
    ],
    what,
    space,
    head,
  );
  // A row without a place for reasons gives that room to its boxes: a remark is long.
  const wide = { x: filled.x, width: leftOut.x + leftOut.width - filled.x };
  const room = reading.leftOut.length > 0 ? filled : wide;
  const cell: Tag = { role: 'TD', parent: row, columns: reading.leftOut.length > 0 ? 1 : 2 };
  const boxes = measureBoxes(reading.boxes, room, space, cell);
  const reasons = measureBoxes(reading.leftOut, leftOut, space, { role: 'TD', parent: row });
  // A reason has no words above it: its box stands level with the first boxes of the row.
  const drop = Math.max(0, boxes.firstBox - reasons.firstBox);
  const height = Math.max(words.height, boxes.height, reasons.height + drop) + 2 * ROW_TOP;
  const rule = isLast ? { height: 0.9, ink: 'black' as const } : { height: 0.3, ink: 'hairline' as const };
  return {
    before: 0,
    height,
    hold: 'free',
    items: [
      ...words.items.map((item) => moved(item, 0, ROW_TOP)),
      ...boxes.items.map((item) => moved(item, 0, ROW_TOP)),
      ...reasons.items.map((item) => moved(item, 0, ROW_TOP + drop)),
      { kind: 'fill', x: space.x, y: height - rule.height, width: space.width, ...rule },
    ],
  };
}
