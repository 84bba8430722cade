/** Measure step for one row of several beside each other: its words above its boxes. */
import { breakLines, textExtents } from './break-lines.js';
import { measureBoxLine } from './measure-box-line.js';
import { type Item, moved, type Tag } from './piece.js';
import { placeLine } from './place-lines.js';
import { BOX_GAP, cardPlan, REASON } from './plan-card.js';
import type { Space } from './space.js';
import { STYLES } from './style-sheet.js';
import type { StyledBox, StyledReading } from './styled.js';

/** Gap between lines of boxes, and between words and boxes [points]. */
const LINE_GAP = 3;
/** Room for a number before the boxes [points]. */
const GUTTER = 14;

/**
 * Measures one row.
 *
 * @param row - words and boxes
 * @param whole - left end and width
 * @param space - measure of a text
 * @param table - table it belongs to
 * @param known - lists whose answers are printed already; those of this row are added
 * @returns items from the top of the row, and its height
 */
export function measureCard(
  row: StyledReading,
  whole: { readonly x: number; readonly width: number },
  space: Space,
  table: Tag,
  known: Set<string>,
): { readonly items: readonly Item[]; readonly height: number } {
  const line: Tag = { role: 'TR', parent: table };
  const head: Tag = { role: 'TH', parent: line, scope: 'Row' };
  const cell: Tag = { role: 'TD', parent: line, columns: row.leftOut.length > 0 ? 1 : 2 };
  const why: Tag = { role: 'TD', parent: line };
  const tagOf = (box: StyledBox): Tag => (row.leftOut.includes(box) ? why : cell);
  // A number alone stands before its boxes.
  const isShort = row.asides.length === 0 && textExtents(row.label, space.measure).natural < GUTTER - 2;
  const gutter = isShort ? GUTTER : 0;
  const place = { x: whole.x + gutter, width: whole.width - gutter };
  const plan = cardPlan(row, place.width, space);
  const beside = row.leftOut.length > 0 && !plan.reasonInLine;
  const reasonWidth = Math.max(REASON, Math.min(110, place.width / 3));
  const words = wordsOf(
    row,
    isShort ? whole : { ...place, width: place.width - (beside ? reasonWidth + BOX_GAP : 0) },
    space,
    head,
  );
  const reason = beside
    ? measureBoxLine(
        row.leftOut.map((box) => ({ box, x: place.x + place.width - reasonWidth, width: reasonWidth })),
        space,
        tagOf,
      )
    : undefined;
  const items: Item[] = [...words.items];
  let y = Math.max(isShort ? 0 : words.height, reason?.height ?? 0);
  for (const [i, boxes] of plan.lines.entries()) {
    if (i > 0) y += LINE_GAP;
    let x = place.x;
    const placed = boxes.map(({ box, width }) => {
      const list = box.field.choices.join('|');
      const at = { box, x, width, isListKnown: box.field.isList && known.has(list) };
      if (box.field.isList) known.add(list);
      x += width + BOX_GAP;
      return at;
    });
    const set = measureBoxLine(placed, space, tagOf);
    items.push(...set.items.map((item) => moved(item, 0, y)));
    y += set.height;
  }
  return { items: [...items, ...(reason?.items ?? [])], height: y };
}

/** Words of the row one below the other. */
function wordsOf(
  row: StyledReading,
  place: { readonly x: number; readonly width: number },
  space: Space,
  tag: Tag,
): { readonly items: readonly Item[]; readonly height: number } {
  const styles = { expected: STYLES.expected, limit: STYLES.limit, source: STYLES.boxSource };
  const parts = [
    { spans: row.label, style: STYLES.reading },
    ...row.asides.map(({ role, spans }) => ({ spans, style: styles[role] })),
  ];
  const items: Item[] = [];
  let y = 0;
  for (const { spans, style } of parts)
    for (const line of breakLines(spans, place.width, space.measure)) {
      items.push(...placeLine(line, { ...place, y }, style, 'left', tag));
      y += style.leading;
    }
  return { items, height: y };
}
