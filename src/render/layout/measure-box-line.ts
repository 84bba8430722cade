/** Measure step for one line of boxes: words above, the frame or the buttons, what is expected below. */
import { breakLines, type Line } from './break-lines.js';
import type { Item, Tag } from './piece.js';
import { placeLine } from './place-lines.js';
import type { Space } from './space.js';
import { STYLES, type TextStyle } from './style-sheet.js';
import type { Span, StyledBox } from './styled.js';

/** Height of a box: a finger of 7.5 mm, and room for a pen [points]. */
const BOX_HEIGHT = 21;
/** Further height for every further line to write on. */
const NEXT_LINE = 15;
/** A signature takes room. */
const SIGNING_HEIGHT = 34;
/** Side of the square that is pressed for a button or a tick, and the gap to its words [points]. */
export const BUTTON = 20;
export const BUTTON_GAP = 2;
/** Gap behind the words of a button. */
export const WORD_GAP = 8;
/** Gap between a unit and the end of its box. */
export const UNIT_GAP = 4;

/** The boxes of a row at their places from the top of the row. */
export interface MeasuredBoxes {
  readonly items: readonly Item[];
  readonly height: number;
  /** Top of the first box below the top of the row: words may stand above it. */
  readonly firstBox: number;
}

/** A box at its place in the line. */
export interface PlacedBox {
  readonly box: StyledBox;
  readonly x: number;
  readonly width: number;
  /** The answers of a list stand above already. */
  readonly isListKnown?: boolean;
}

/**
 * Measures boxes that stand beside each other.
 *
 * @param line - boxes with their places
 * @param space - measure of a text
 * @param tag - table cell they belong to; or that of each
 * @returns items from the top of the line, and its height
 */
export function measureBoxLine(
  line: readonly PlacedBox[],
  space: Space,
  tag: Tag | ((box: StyledBox) => Tag),
): MeasuredBoxes {
  const tagOf = typeof tag === 'function' ? tag : () => tag;
  const set = line.map(({ box, x, width, isListKnown = false }) => {
    // The words of a tick stand behind it.
    const above = box.field.kind === 'tick' ? [] : breakLines(box.label, width, space.measure);
    return { box, x, width, above, below: belowOf(box, width, isListKnown, space) };
  });
  const { leading } = STYLES.boxLabel;
  const top = Math.max(...set.map(({ above }) => above.length)) * leading;
  const items: Item[] = [];
  let height = 0;
  for (const { box, x, width, above, below } of set) {
    const own = tagOf(box);
    const words = place(above, x, top - above.length * leading, width, STYLES.boxLabel, own);
    const body = bodyOf(box, x, top, width, space, own);
    items.push(...words, ...body.items);
    items.push(...place(below, x, top + body.height + 1, width, STYLES.boxSource, own));
    const under = below.length === 0 ? 0 : 1 + below.length * STYLES.boxSource.leading;
    height = Math.max(height, top + body.height + under);
  }
  return { items, height, firstBox: top };
}

/** What stands below a box: what is expected, and the answers of a list, which paper does not open. */
function belowOf(box: StyledBox, width: number, isListKnown: boolean, space: Space): readonly Line[] {
  const answers: readonly Span[] =
    box.field.isList && !isListKnown
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
