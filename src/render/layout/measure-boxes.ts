/** Measure step for the boxes of one row: on a grid, so that boxes of different rows stand below each other. */
import type { FieldKind } from '../form/field.js';
import { breakLines, type Line, textExtents } from './break-lines.js';
import type { Item, Tag } from './piece.js';
import { placeLine } from './place-lines.js';
import type { Space } from './space.js';
import { STYLES, type TextStyle } from './style-sheet.js';
import type { Span, StyledBox } from './styled.js';

/** Columns of the grid: halves, thirds and quarters stand on it. A narrow room has a single column [points]. */
const GRID = 12;
const NARROW = 120;
/** How many columns a box may take. */
const SPANS = [3, 4, 6, 8, GRID] as const;
const GRID_GAP = 5;
/** Gap between boxes one below the other [points]. */
const LINE_GAP = 4;
/** Height of a box: a finger of 7.5 mm, and room for a pen [points]. */
const BOX_HEIGHT = 21;
/** Further height for every further line to write on. */
const NEXT_LINE = 15;
/** A signature takes room. */
const SIGNING_HEIGHT = 34;
/** Side of the square that is pressed for a button or a tick, and the gap to its words [points]. */
const BUTTON = 20;
const BUTTON_GAP = 2;
/** Gap behind the words of a button. */
const WORD_GAP = 8;
/** Least room to write a number in beside its unit [points]. */
const WRITING_ROOM = 38;
const UNIT_GAP = 4;

/** The boxes of a row at their places from the top of the row. */
export interface MeasuredBoxes {
  readonly items: readonly Item[];
  readonly height: number;
  /** Top of the first box below the top of the row: words may stand above it. */
  readonly firstBox: number;
}

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
    const set = measureLine(line, room.x, step, space, tag);
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

function measureLine(
  line: readonly Spanned[],
  left: number,
  step: number,
  space: Space,
  tag: Tag,
): MeasuredBoxes {
  let column = 0;
  const set = line.map(({ box, columns }) => {
    const x = left + column * step;
    column += columns;
    const width = columns * step - GRID_GAP;
    // The words of a tick stand behind it.
    const above = box.field.kind === 'tick' ? [] : breakLines(box.label, width, space.measure);
    return { box, x, width, above, below: belowOf(box, width, space) };
  });
  const { leading } = STYLES.boxLabel;
  const top = Math.max(...set.map(({ above }) => above.length)) * leading;
  const items: Item[] = [];
  let height = 0;
  for (const { box, x, width, above, below } of set) {
    const words = place(above, x, top - above.length * leading, width, STYLES.boxLabel, tag);
    const body = bodyOf(box, x, top, width, space, tag);
    items.push(...words, ...body.items);
    items.push(...place(below, x, top + body.height + 1, width, STYLES.boxSource, tag));
    const under = below.length === 0 ? 0 : 1 + below.length * STYLES.boxSource.leading;
    height = Math.max(height, top + body.height + under);
  }
  return { items, height, firstBox: top };
}

/** What stands below a box: what is expected, and the answers of a list, which paper does not open. */
function belowOf(box: StyledBox, width: number, space: Space): readonly Line[] {
  const answers: readonly Span[] = box.field.isList
    ? [{ kind: 'text', text: box.field.choices.join(' · '), style: STYLES.boxSource, rise: 0 }]
    : [];
  return [box.expected, answers].flatMap((spans) => breakLines(spans, width, space.measure));
}

function place(
  lines: readonly Line[],
  x: number,
  y: number,
  width: number,
  style: TextStyle,
  tag: Tag,
): readonly Item[] {
  return lines.flatMap((line, i) =>
    placeLine(line, { x, y: y + i * style.leading, width }, style, 'left', tag),
  );
}

function bodyOf(
  box: StyledBox,
  x: number,
  y: number,
  width: number,
  space: Space,
  tag: Tag,
): { readonly items: readonly Item[]; readonly height: number } {
  const { field } = box;
  if (field.kind === 'tick') {
    const lines = breakLines(box.label, width - BUTTON - BUTTON_GAP, space.measure);
    return buttons([lines], x, y, width, box, tag);
  }
  if (field.kind === 'choice' && !field.isList) {
    const each = box.choices.map((choice) => breakLines(choice, width - BUTTON - BUTTON_GAP, space.measure));
    return buttons(each, x, y, width, box, tag);
  }
  const height = field.kind === 'signature' ? SIGNING_HEIGHT : BOX_HEIGHT + (field.lines - 1) * NEXT_LINE;
  const unit = breakLines(box.unit, width, space.measure)[0];
  const taken = unit ? unit.width + UNIT_GAP : 0;
  const style = STYLES.boxUnit;
  const unitY = y + (BOX_HEIGHT - style.leading) / 2;
  return {
    height,
    items: [
      { kind: 'box', x, y, width, height, field, taken, tag: { role: 'Form', parent: tag } },
      ...(unit ? placeLine(unit, { x, y: unitY, width: width - UNIT_GAP }, style, 'right', tag) : []),
    ],
  };
}

/** Buttons with their words, as many on a line as there is room for. */
function buttons(
  words: readonly (readonly Line[])[],
  left: number,
  top: number,
  width: number,
  box: StyledBox,
  tag: Tag,
): { readonly items: readonly Item[]; readonly height: number } {
  const style = STYLES.choice;
  const items: Item[] = [];
  let x = left;
  let y = top;
  let tallest = BUTTON;
  words.forEach((lines, choice) => {
    const wide = BUTTON + BUTTON_GAP + Math.max(0, ...lines.map((line) => line.width)) + WORD_GAP;
    if (x > left && x + wide - WORD_GAP > left + width + 0.01) {
      x = left;
      y += tallest;
      tallest = BUTTON;
    }
    items.push({
      kind: 'box',
      x,
      y,
      width: BUTTON,
      height: BUTTON,
      field: box.field,
      ...(box.field.kind === 'choice' ? { choice } : {}),
      taken: 0,
      tag: { role: 'Form', parent: tag },
    });
    const first = y + (BUTTON - style.leading) / 2;
    items.push(...place(lines, x + BUTTON + BUTTON_GAP, first, width, style, tag));
    tallest = Math.max(tallest, (BUTTON - style.leading) / 2 + lines.length * style.leading);
    x += wide;
  });
  return { items, height: y + tallest - top };
}
