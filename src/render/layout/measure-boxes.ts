/** Measure step for the boxes of one row: on a grid, so that boxes of different rows stand below each other. */
import type { FieldKind } from '../form/field.js';
import { textExtents } from './break-lines.js';
import {
  BUTTON,
  BUTTON_GAP,
  type MeasuredBoxes,
  measureBoxLine,
  UNIT_GAP,
  WORD_GAP,
} from './measure-box-line.js';
import type { Item, Tag } from './piece.js';
import type { Space } from './space.js';
import type { Span, StyledBox } from './styled.js';

/** Columns of the grid: halves, thirds and quarters stand on it. A narrow room has a single column [points]. */
const GRID = 12;
const NARROW = 120;
/** How many columns a box may take. */
const SPANS = [3, 4, 6, 8, GRID] as const;
const GRID_GAP = 5;
/** Gap between boxes one below the other [points]. */
const LINE_GAP = 4;
/** Least room to write a number in beside its unit [points]. */
const WRITING_ROOM = 38;

interface Room {
  readonly x: number;
  readonly width: number;
}

/** A box that knows how many columns it takes. */
interface Spanned {
  readonly box: StyledBox;
  readonly columns: number;
}

/**
 * Measures the boxes of one row.
 *
 * @param boxes - in the order in which they are filled in
 * @param room - where they may stand [points]
 * @param space - measure of a text
 * @param tag - table cell they belong to
 * @returns items and height
 */
export function measureBoxes(boxes: readonly StyledBox[], room: Room, space: Space, tag: Tag): MeasuredBoxes {
  const grid = room.width < NARROW ? 1 : GRID;
  const step = (room.width + GRID_GAP) / grid;
  const lines: Spanned[][] = [];
  let taken = grid;
  for (const box of boxes) {
    const columns = columnsOf(box, boxes, grid, step, space);
    if (taken + columns > grid) {
      lines.push([]);
      taken = 0;
    }
    lines.at(-1)?.push({ box, columns });
    taken += columns;
  }
  const items: Item[] = [];
  let y = 0;
  let firstBox = 0;
  lines.forEach((line, i) => {
    if (i > 0) y += LINE_GAP;
    let column = 0;
    const placed = line.map(({ box, columns }) => {
      const x = room.x + column * step;
      column += columns;
      return { box, x, width: columns * step - GRID_GAP };
    });
    const set = measureBoxLine(placed, space, tag);
    if (i === 0) firstBox = set.firstBox;
    items.push(...set.items.map((item) => ({ ...item, y: item.y + y })));
    y += set.height;
  });
  return { items, height: y, firstBox };
}

function columnsOf(
  box: StyledBox,
  boxes: readonly StyledBox[],
  grid: number,
  step: number,
  space: Space,
): number {
  const { field } = box;
  if (grid === 1) return 1;
  const fitting = (width: number): number =>
    SPANS.find((columns) => columns * step >= width + GRID_GAP) ?? GRID;
  const natural = (spans: readonly Span[]): number => textExtents(spans, space.measure).natural;
  const pressed = (words: readonly (readonly Span[])[]): number =>
    words.reduce((sum, word) => sum + BUTTON + BUTTON_GAP + natural(word) + WORD_GAP, -WORD_GAP);
  const hasDay = boxes.some((one) => one.field.kind === 'date');
  const isAlone = boxes.length === 1;
  // Name, day and signature stand on one line.
  const isSigned = hasDay && boxes.length > 2 && boxes.some((one) => one.field.kind === 'signature');
  const least: Readonly<Record<FieldKind, () => number>> = {
    // A pair or three share the row; more stand as close as their units let them.
    number: () => Math.max(fitting(WRITING_ROOM + UNIT_GAP + natural(box.unit)), boxes.length <= 3 ? 4 : 3),
    date: () => (isSigned ? 3 : 4),
    text: () => (isAlone || field.lines > 1 ? GRID : isSigned ? 4 : hasDay ? 8 : 6),
    signature: () => (isAlone ? GRID : isSigned ? 5 : hasDay ? 8 : 6),
    tick: () => fitting(pressed([box.label])),
    choice: () => (field.isList ? 6 : fitting(pressed(box.choices))),
  };
  return least[field.kind]();
}
