/** Measure step for lines to fill in that stand beside each other: each as small as its boxes let it be. */
import { textExtents } from './break-lines.js';
import { measureCard } from './measure-card.js';
import { type Item, moved, type Piece, type Tag } from './piece.js';
import { cardPlan } from './plan-card.js';
import type { Space } from './space.js';
import { GAP } from './style-sheet.js';
import type { StyledReading, StyledReadings } from './styled.js';

/** Thirds and halves of a line stand on sixths. */
const SIXTHS = 6;
const CARD_GAP = 10;
/** Room above and below what stands in a line of rows [points]. */
const LINE_TOP = 3;
/** Longest words of a row beside others, as lines of its width. */
const MOST_LINES = 2.6;

interface Placed {
  readonly row: StyledReading;
  sixths: number;
}

/**
 * Measures lines to fill in that stand beside each other.
 *
 * @param block - rows, and how many stand beside each other at most
 * @param space - where they may stand
 * @returns one piece a line of rows
 */
export function measureAbreast(block: StyledReadings, space: Space): readonly Piece[] {
  const table: Tag = { role: 'Table', parent: space.parent };
  const width = (sixths: number): number => (sixths / SIXTHS) * (space.width + CARD_GAP) - CARD_GAP;
  const lines = linesOf(block, width, space);
  const known = new Set<string>();
  return lines.map((line, i): Piece => {
    let taken = 0;
    const cards = line.map(({ row, sixths }) => {
      const x = space.x + (taken / SIXTHS) * (space.width + CARD_GAP);
      taken += sixths;
      return measureCard(row, { x, width: width(sixths) }, space, table, known);
    });
    const height = Math.max(...cards.map((card) => card.height)) + 2 * LINE_TOP;
    const isLast = i === lines.length - 1;
    const rule = (y: number, weight: number, ink: 'black' | 'hairline'): Item => ({
      kind: 'fill',
      x: space.x,
      y,
      width: space.width,
      height: weight,
      ink,
    });
    return {
      before: i === 0 ? GAP.block : 0,
      height,
      // The last line is mostly that of remarks, and belongs to what it remarks on.
      hold: i === lines.length - 2 && lines[i + 1]?.length === 1 ? 'weak' : 'free',
      items: [
        ...(i === 0 ? [rule(0, 0.9, 'black')] : []),
        ...cards.flatMap(({ items }) => items.map((item) => moved(item, 0, LINE_TOP))),
        isLast ? rule(height - 0.9, 0.9, 'black') : rule(height - 0.3, 0.3, 'hairline'),
      ],
    };
  });
}

function linesOf(
  { rows, abreast }: StyledReadings,
  width: (sixths: number) => number,
  space: Space,
): readonly (readonly Placed[])[] {
  const lines: Placed[][] = [];
  let taken = SIXTHS;
  rows.forEach((row, i) => {
    const isRemark = i === rows.length - 1 && row.leftOut.length === 0;
    const least = SIXTHS / abreast;
    const free = SIXTHS - taken;
    // Remarks take what the last line has left.
    const sixths = row.alone
      ? SIXTHS
      : isRemark
        ? free > 0
          ? free
          : SIXTHS
        : sixthsOf(row, least, width, space);
    if (taken + sixths > SIXTHS) {
      widen(lines.at(-1), SIXTHS - taken);
      lines.push([]);
      taken = 0;
    }
    lines.at(-1)?.push({ row, sixths });
    taken += sixths;
  });
  widen(lines.at(-1), SIXTHS - taken);
  return lines;
}

/** What a line has left goes to its last row. */
function widen(line: Placed[] | undefined, free: number): void {
  const last = line?.at(-1);
  if (last) last.sixths += free;
}

function sixthsOf(
  row: StyledReading,
  least: number,
  width: (sixths: number) => number,
  space: Space,
): number {
  const words = [row.label, ...row.asides.map(({ spans }) => spans)].map(
    (spans) => textExtents(spans, space.measure).natural,
  );
  const fits = (sixths: number): boolean =>
    cardPlan(row, width(sixths), space).lines.length === 1 &&
    words.every((natural) => natural <= MOST_LINES * width(sixths));
  return [2, 3, SIXTHS].find((sixths) => sixths >= least && fits(sixths)) ?? SIXTHS;
}
