/** How the boxes of a row stand in a given width: which beside which, and how wide. */
import type { FieldKind } from '../form/field.js';
import { textExtents } from './break-lines.js';
import { BUTTON, BUTTON_GAP, UNIT_GAP, WORD_GAP } from './measure-box-line.js';
import type { Space } from './space.js';
import type { Span, StyledBox, StyledReading } from './styled.js';

/** Gap between boxes beside each other [points]. */
export const BOX_GAP = 5;
/** Least room to write a number in beside its unit [points]. */
const WRITING_ROOM = 27;
/** Narrowest box for why a row was not read [points]. */
export const REASON = 52;
/** Widest box for a number: more is no use, and the reason has it [points]. */
const WIDEST_NUMBER = 84;

/** A box with its width. */
export interface WideBox {
  readonly box: StyledBox;
  readonly width: number;
}

/** Boxes of a row in lines. */
export interface CardPlan {
  readonly lines: readonly (readonly WideBox[])[];
  /** Whether the reason stands behind the last box; it stands beside the words of the row otherwise. */
  readonly reasonInLine: boolean;
}

/**
 * Plans the boxes of a row.
 *
 * @param row - the row
 * @param width - of the row [points]
 * @param space - measure of a text
 * @returns lines of boxes with their widths
 */
export function cardPlan(row: StyledReading, width: number, space: Space): CardPlan {
  const lines: WideBox[][] = [];
  let taken = Number.POSITIVE_INFINITY;
  for (const box of row.boxes) {
    const least = Math.min(width, leastWidth(box, space));
    if (taken + BOX_GAP + least > width + 0.01) {
      lines.push([]);
      taken = -BOX_GAP;
    }
    lines.at(-1)?.push({ box, width: least });
    taken += BOX_GAP + least;
  }
  const [reason] = row.leftOut;
  const reasonInLine = reason !== undefined && taken + BOX_GAP + REASON <= width + 0.01;
  if (reasonInLine) lines.at(-1)?.push({ box: reason, width: REASON });
  return { lines: lines.map((line) => stretched(line, width, row)), reasonInLine };
}

/** What a line has left goes to its boxes for words; to those for numbers as far as it is of use. */
function stretched(line: readonly WideBox[], width: number, row: StyledReading): readonly WideBox[] {
  const left = width - line.reduce((sum, each) => sum + each.width + BOX_GAP, -BOX_GAP);
  const isReason = (box: StyledBox): boolean => row.leftOut.includes(box);
  const share = (box: StyledBox): number => {
    const { kind, isList, lines } = box.field;
    if (kind === 'number' || kind === 'date') return 1;
    if (kind === 'text') return isReason(box) ? 1 : lines > 1 ? 8 : 2;
    return kind === 'signature' ? 2 : isList ? 1 : 0;
  };
  const shares = line.reduce((sum, { box }) => sum + share(box), 0);
  if (shares === 0) return line;
  const first = line.map((each) => {
    const wide = each.width + (left * share(each.box)) / shares;
    const isNumber = each.box.field.kind === 'number' || each.box.field.kind === 'date';
    return { ...each, width: isNumber ? Math.min(wide, Math.max(WIDEST_NUMBER, each.width)) : wide };
  });
  const rest = width - first.reduce((sum, each) => sum + each.width + BOX_GAP, -BOX_GAP);
  const takers = first.filter(({ box }) => box.field.kind === 'text').length;
  return first.map((each) =>
    each.box.field.kind === 'text' ? { ...each, width: each.width + rest / takers } : each,
  );
}

function leastWidth(box: StyledBox, space: Space): number {
  const { field } = box;
  const natural = (spans: readonly Span[]): number => textExtents(spans, space.measure).natural;
  const pressed = (words: readonly (readonly Span[])[]): number =>
    words.reduce((sum, word) => sum + BUTTON + BUTTON_GAP + natural(word) + WORD_GAP, -WORD_GAP);
  const least: Readonly<Record<FieldKind, () => number>> = {
    number: () => Math.max(WRITING_ROOM + UNIT_GAP + natural(box.unit), Math.min(70, natural(box.expected))),
    date: () => 62,
    text: () => (field.lines > 1 ? 150 : 78),
    signature: () => 84,
    tick: () => pressed([box.label]),
    choice: () => (field.isList ? 104 : Math.max(pressed(box.choices), Math.min(90, natural(box.label)))),
  };
  return least[field.kind]();
}
