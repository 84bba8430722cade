/** Measure step for blocks with a frame or two columns: notes, cautions, worked calculations and facts. */

import { NOTE_WORDS } from '../words.js';
import { breakLines } from './break-lines.js';
import { type Grid, type GridRow, measureRow } from './measure-rows.js';
import { heldTogether, type Item, moved, type Piece, stackHeight, type Tag } from './piece.js';
import { paragraphPieces } from './place-lines.js';
import type { MeasureBlocks, Space } from './space.js';
import { plain } from './style-inline.js';
import { GAP, type InkName, STYLES, WIDEST_TEXT } from './style-sheet.js';
import type { NoteKind, Span, StepRole, StyledBlock } from './styled.js';

/** How a frame looks: the weight of its left rule, and whether the rest is drawn. */
interface FrameLook {
  readonly bar: number;
  readonly barInk: InkName;
  readonly fill?: InkName;
  readonly border?: InkName;
}

const NOTE_LOOKS: Readonly<Record<NoteKind, FrameLook>> = {
  caution: { bar: 4, barInk: 'accent', border: 'accent' },
  information: { bar: 1.2, barInk: 'grey', fill: 'tint' },
  assumption: { bar: 1.2, barInk: 'grey', border: 'hairline' },
};

/** A frame taller than this share of the page may be parted. */
const KEPT_SHARE = 0.4;

/**
 * Draws a frame round pieces. The gaps between them become part of them, so that the frame has no holes; at a page
 * break it is left open.
 */
function framed(pieces: readonly Piece[], look: FrameLook, space: Space, width: number): readonly Piece[] {
  const boxed = pieces.map((piece, i): Piece => {
    const isFirst = i === 0;
    const isLast = i === pieces.length - 1;
    const above = isFirst ? GAP.noteTop : piece.before;
    const height = above + piece.height + (isLast ? GAP.noteTop : 0);
    const items = [
      ...sides(look, space.x, width, height, isFirst, isLast),
      ...piece.items.map((item) => moved(item, 0, above)),
    ];
    const repeat = piece.repeat && {
      table: piece.repeat.table,
      pieces: piece.repeat.pieces.map((head) => ({
        ...head,
        items: [...sides(look, space.x, width, head.height, false, false), ...head.items],
      })),
    };
    return { ...piece, before: isFirst ? GAP.block : 0, height, items, ...(repeat ? { repeat } : {}) };
  });
  return stackHeight(boxed) <= KEPT_SHARE * space.tallest ? heldTogether(boxed, 'weak') : boxed;
}

function sides(
  look: FrameLook,
  left: number,
  width: number,
  height: number,
  isFirst: boolean,
  isLast: boolean,
): readonly Item[] {
  const items: Item[] = [];
  const fill = (x: number, y: number, w: number, h: number, ink: InkName): void => {
    items.push({ kind: 'fill', x: left + x, y, width: w, height: h, ink });
  };
  if (look.fill) fill(0, 0, width, height, look.fill);
  if (look.border) {
    fill(width - 0.6, 0, 0.6, height, look.border);
    if (isFirst) fill(0, 0, width, 0.6, look.border);
    if (isLast) fill(0, height - 0.6, width, 0.6, look.border);
  }
  fill(0, 0, look.bar, height, look.barInk);
  return items;
}

/** A note: a frame, a word that says what it is, and blocks. */
export function measureNote(
  block: Extract<StyledBlock, { kind: 'note' }>,
  space: Space,
  measureBlocks: MeasureBlocks,
): readonly Piece[] {
  const tag: Tag = { role: 'Note', parent: space.parent };
  const look = NOTE_LOOKS[block.note];
  const width = space.width;
  const inner: Space = {
    ...space,
    x: space.x + look.bar + GAP.noteSide,
    width: width - look.bar - 2 * GAP.noteSide,
    // The gap above a block becomes part of it.
    tallest: space.tallest - 2 * GAP.noteTop - GAP.section1,
    parent: tag,
  };
  const lines = breakLines(block.title, inner.width, space.measure);
  const title = paragraphPieces(lines, {
    x: inner.x,
    width: inner.width,
    style: STYLES.noteTitle,
    before: 0,
    tag: { role: 'P', parent: tag },
  });
  const inside = measureBlocks(block.blocks, inner).map((piece, i) =>
    i === 0 ? { ...piece, before: 1.5 } : piece,
  );
  const pieces =
    inside.length > 0
      ? [...heldTogether([...title, ...inside.slice(0, 1)], 'strong'), ...inside.slice(1)]
      : title;
  return framed(pieces, look, space, width);
}

/** A caution of one paragraph: heavy left rule, and the word in front. */
export function measureCaution(spans: readonly Span[], space: Space): readonly Piece[] {
  const look: FrameLook = { bar: 4, barInk: 'accent' };
  const width = Math.min(space.width, WIDEST_TEXT);
  const inner = width - look.bar - GAP.noteSide;
  const first = spans.find((span) => span.kind === 'text');
  const named =
    first?.kind === 'text' && first.text.toLowerCase().startsWith(NOTE_WORDS.caution.toLowerCase());
  const word = named
    ? []
    : plain(`${NOTE_WORDS.caution}:\u00a0`, { ...STYLES.caution, face: 'bold', ink: 'accent' });
  const lines = breakLines([...word, ...spans], inner, space.measure);
  const tag: Tag = { role: 'P', parent: space.parent };
  const pieces = paragraphPieces(lines, {
    x: space.x + look.bar + GAP.noteSide,
    width: inner,
    style: STYLES.caution,
    before: 0,
    tag,
  });
  return heldTogether(
    pieces.map((piece, i) => ({
      ...piece,
      before: i === 0 ? GAP.block : 0,
      items: [
        { kind: 'fill', x: space.x, y: 0, width: look.bar, height: piece.height, ink: look.barInk },
        ...piece.items,
      ],
    })),
    'weak',
  );
}

const STEP_GAP: Readonly<Record<StepRole, number>> = {
  formula: 3,
  numbers: 0,
  result: 0,
  where: 3,
  source: 2,
};

/** A worked calculation: title, formula, numbers, result, where and source, beside a thin rule. */
export function measureCalculation(
  block: Extract<StyledBlock, { kind: 'calculation' }>,
  space: Space,
): readonly Piece[] {
  const tag: Tag = { role: 'Div', parent: space.parent };
  const x = space.x + GAP.noteSide + 1;
  const width = space.width - GAP.noteSide - 1;
  const { measure } = space;
  const p = (): Tag => ({ role: 'P', parent: tag });
  const title = paragraphPieces(breakLines(block.title, width, measure), {
    x,
    width,
    style: STYLES.calculationTitle,
    before: 0,
    tag: p(),
  });
  const steps = block.steps.flatMap((step) => {
    const indent = step.role === 'formula' || step.role === 'numbers' || step.role === 'result' ? 14 : 0;
    const lines = breakLines(step.spans, width - indent, measure);
    return paragraphPieces(lines, {
      x: x + indent,
      width: width - indent,
      style: STYLES[step.role],
      before: STEP_GAP[step.role],
      tag: p(),
    });
  });
  const pieces = heldTogether([...title, ...steps], 'weak');
  return pieces.map((piece, i) => {
    const above = i === 0 ? 0 : piece.before;
    const height = piece.height + above;
    const rule: Item = { kind: 'fill', x: space.x, y: 0, width: 0.8, height, ink: 'grey' };
    return {
      ...piece,
      before: i === 0 ? GAP.block : 0,
      height,
      items: [rule, ...piece.items.map((item) => moved(item, 0, above))],
      ...(i === 0 ? { anchors: [block.id] } : {}),
    };
  });
}

/** Label and value in two columns. */
export function measureFacts(
  facts: readonly { readonly label: readonly Span[]; readonly value: readonly Span[] }[],
  space: Space,
): readonly Piece[] {
  const tag: Tag = { role: 'Table', parent: space.parent };
  const { measure } = space;
  const natural = facts.map(
    (fact) => breakLines(fact.label, Number.POSITIVE_INFINITY, measure)[0]?.width ?? 0,
  );
  const label = Math.min(Math.max(60, ...natural) + 2 * GAP.cellSide + 6, 0.4 * space.width);
  // The words of the first column start at the edge of the text.
  const x = space.x - GAP.cellSide;
  const grid: Grid = {
    x,
    widths: [label, space.width - label + GAP.cellSide],
    leads: [0, 0],
    cellSide: GAP.cellSide,
    afterDecimal: [0, 0],
    cellTop: 1,
    tallest: space.tallest,
  };
  const pieces = facts.flatMap((fact, i) => {
    const row: Tag = { role: 'TR', parent: tag };
    const shape: GridRow = {
      cells: [
        {
          spans: fact.label,
          first: 0,
          columns: 1,
          kind: 'left',
          tag: { role: 'TH', parent: row, scope: 'Row' },
        },
        { spans: fact.value, first: 1, columns: 1, kind: 'left', tag: { role: 'TD', parent: row } },
      ],
      style: STYLES.fact,
      hold: 'free',
      before: i === 0 ? GAP.block : 0,
      stands: 'top',
    };
    return measureRow(shape, grid, measure);
  });
  return facts.length <= 12 ? heldTogether(pieces, 'weak') : pieces;
}
