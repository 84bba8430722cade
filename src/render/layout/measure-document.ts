/** Measure step: styled blocks become pieces of known height with everything placed inside them. */
import type { Drawing } from '../../drawing/drawing.js';
import type { Measure } from '../font/typeface.js';
import type { Logo } from '../logo/logo-shape.js';
import { BACK_WORDS } from '../words.js';
import { breakLines } from './break-lines.js';
import { measureBeside, measureColumns } from './measure-beside.js';
import { measureContents, measureSignatures } from './measure-closing.js';
import { measureFigures } from './measure-figures.js';
import { measureCalculation, measureCaution, measureFacts, measureNote } from './measure-framed.js';
import { measureLetterhead } from './measure-letterhead.js';
import { measureReadings } from './measure-readings.js';
import { measureTable } from './measure-table.js';
import { heldTogether, heldToNext, type Piece, type Tag, withGap } from './piece.js';
import { paragraphPieces } from './place-lines.js';
import type { MeasureBlocks, Space } from './space.js';
import { baselineOf, type Frame, GAP, STYLES, type TextStyle, WIDEST_TEXT } from './style-sheet.js';
import type { StyledBlock, StyledDocument } from './styled.js';

/**
 * Measures a whole document.
 *
 * @param document - styled blocks
 * @param frame - the part of the page blocks may use [points]
 * @param measure - width of a text
 * @param drawings - drawings by name
 * @param logo - logo of the letterhead, where there is one
 * @returns pieces from the first to the last
 * @throws EngineError `render.unknown-drawing`, `render.table-too-wide`, `render.block-too-tall`
 */
export function measureDocument(
  document: StyledDocument,
  frame: Frame,
  measure: Measure,
  drawings: Readonly<Record<string, Drawing>>,
  logo?: Logo,
): readonly Piece[] {
  const root: Tag = { role: 'Document', parent: undefined };
  const space: Space = { x: 0, width: frame.width, tallest: frame.height, parent: root, measure, drawings };
  const lines = breakLines(document.title, frame.width, measure);
  const title = paragraphPieces(lines, {
    x: 0,
    width: frame.width,
    style: STYLES.title,
    before: 0,
    tag: { role: 'Title', parent: root },
  });
  const { letterhead } = document;
  const above = letterhead
    ? [measureLetterhead(letterhead, space, letterhead.hasLogo ? logo : undefined)]
    : [];
  return [
    ...above,
    ...heldTogether([...title], 'strong').map(strongLast),
    ...measureBlocks(document.blocks, space),
  ];
}

const strongLast = (piece: Piece): Piece => ({ ...piece, hold: 'strong' });

/** Blocks with an edge of their own: what follows keeps its distance. */
const FRAMED: ReadonlySet<string> = new Set([
  'table',
  'note',
  'figure',
  'calculation',
  'facts',
  'contents',
  'columns',
  'beside',
  'readings',
]);

const measureBlocks: MeasureBlocks = (blocks, space) => {
  const pieces: Piece[] = [];
  let breakNext = false;
  let afterFrame = false;
  for (let i = 0; i < blocks.length; i++) {
    const block = blocks[i];
    if (block?.kind === 'page-break') {
      breakNext = true;
      continue;
    }
    if (!block) continue;
    const next = blocks[i + 1];
    const pair =
      block.kind === 'figure' && block.half && next?.kind === 'figure' && next.half ? next : undefined;
    const measured =
      pair && block.kind === 'figure' ? measureFigures([block, pair], space) : measureBlock(block, space);
    if (pair) i += 1;
    // What to do, and what to mind, stand on the page of the first boxes.
    const hold = [next, blocks[i + 2]].some((one) => one?.kind === 'readings') ? 'strong' : 'weak';
    const [first, ...rest] = leadsIn(i, block, next, space) ? heldToNext(measured, hold) : measured;
    if (!first) continue;
    const before = afterFrame ? Math.max(first.before, GAP.block) : first.before;
    pieces.push({ ...first, before, ...(breakNext ? { newPage: true } : {}) }, ...rest);
    breakNext = false;
    afterFrame = FRAMED.has(block.kind);
  }
  return pieces;
};

/** Whether a block opens a section and speaks of the table or figure below it, or of the caution before that. */
const leadsIn = (index: number, block: StyledBlock, next: StyledBlock | undefined, space: Space): boolean => {
  if (block.kind !== 'paragraph' || space.parent.role !== 'Sect') return false;
  const isCaution = next?.kind === 'paragraph' && next.role === 'caution';
  if (index === 0) return isCaution || FRAMED.has(next?.kind ?? '');
  return block.role === 'caution' && next?.kind === 'readings';
};

function measureBlock(block: StyledBlock, space: Space): readonly Piece[] {
  const { measure } = space;
  switch (block.kind) {
    case 'section':
      return measureSection(block, space);
    case 'paragraph': {
      if (block.role === 'caution') return measureCaution(block.spans, space);
      const style = STYLES[block.role];
      const width = Math.min(space.width, WIDEST_TEXT);
      const tag: Tag = { role: 'P', parent: space.parent };
      const before = block.role === 'verdict' || block.role === 'lead' ? GAP.block : GAP.paragraph;
      return paragraphPieces(breakLines(block.spans, width, measure), {
        x: space.x,
        width,
        style,
        before,
        tag,
      });
    }
    case 'list':
      return measureList(block, space);
    case 'note':
      return measureNote(block, space, measureBlocks);
    case 'table':
      return measureTable(block, space, measure);
    case 'figure':
      return measureFigures([block], space);
    case 'calculation':
      return measureCalculation(block, space);
    case 'facts':
      return measureFacts(block.facts, space);
    case 'signatures':
      return measureSignatures(block.labels, space);
    case 'readings':
      return measureReadings(block, space);
    case 'contents':
      return measureContents(block.title, block.entries, space);
    case 'keep':
      return heldTogether(measureBlocks(block.blocks, space), 'weak');
    case 'columns':
      return measureColumns(block, space, measureBlocks);
    case 'beside':
      return measureBeside(block.sides, space, measureBlocks);
    case 'page-break':
      return [];
  }
}

function measureSection(block: Extract<StyledBlock, { kind: 'section' }>, space: Space): readonly Piece[] {
  const tag: Tag = { role: 'Sect', parent: space.parent };
  const heading: Tag = { role: block.level === 1 ? 'H1' : 'H2', parent: tag };
  const style = block.level === 1 ? STYLES.heading1 : STYLES.heading2;
  const way = block.back === undefined ? undefined : wayBack(block.back, space, style, tag);
  const lines = breakLines(
    [{ kind: 'text', text: block.title.trim(), style, rise: 0 }],
    space.width - (way ? way.width + GAP.block : 0),
    space.measure,
  );
  const pieces = paragraphPieces(lines, {
    x: space.x,
    width: space.width,
    style,
    before: block.level === 1 ? GAP.section1 : GAP.section2,
    tag: heading,
  });
  const inside = measureBlocks(block.blocks, { ...space, parent: tag });
  const opened = pieces.map(
    (piece, i): Piece => ({
      ...piece,
      ...(way && i === pieces.length - 1 ? { items: [...piece.items, way] } : {}),
      hold: inside.length > 0 || i < pieces.length - 1 ? 'strong' : 'free',
      ...(i === 0
        ? {
            anchors: [block.id],
            bookmark: { title: block.title, level: block.level },
            ...(block.newPage ? { newPage: true } : {}),
          }
        : {}),
    }),
  );
  const first = inside[0]?.before ?? 0;
  return [...opened, ...withGap(inside, Math.min(first, GAP.afterHeading))];
}

/** Words at the right of a heading that lead back to where the section was spoken of first. */
function wayBack(to: string, space: Space, heading: TextStyle, section: Tag) {
  const style = STYLES.back;
  const width = space.measure(BACK_WORDS, style.face, style.size);
  return {
    kind: 'text' as const,
    x: space.x + space.width - width,
    y: baselineOf(heading.leading, heading.size),
    width,
    text: BACK_WORDS,
    style,
    link: to,
    quiet: true,
    tag: { role: 'P', parent: section },
  };
}

function measureList(block: Extract<StyledBlock, { kind: 'list' }>, space: Space): readonly Piece[] {
  const numbering = block.ordered ? 'Decimal' : 'Disc';
  const list: Tag = { role: 'L', parent: space.parent, numbering };
  const style = STYLES.body;
  const labels = block.items.map((_, i) => (block.ordered ? `${i + 1}.` : '–'));
  const widest = Math.max(...labels.map((label) => space.measure(label, style.face, style.size)));
  const indent = Math.max(13, widest + 6);
  return block.items.flatMap((item, i) => {
    const entry: Tag = { role: 'LI', parent: list };
    const label = labels[i] ?? '';
    const labelWidth = space.measure(label, style.face, style.size);
    const tag: Tag = { role: 'Lbl', parent: entry };
    // Numbers hang from the right of their column so that 9 and 10 line up.
    const x = space.x + (block.ordered ? indent - 6 - labelWidth : 0);
    const body: Tag = { role: 'LBody', parent: entry };
    const [first, ...rest] = measureBlocks(item, {
      ...space,
      x: space.x + indent,
      width: space.width - indent,
      parent: body,
    });
    const marker = {
      kind: 'text' as const,
      x,
      y: baselineOf(style.leading, style.size),
      width: labelWidth,
      text: label,
      style,
      tag,
    };
    const before = i === 0 ? GAP.paragraph : GAP.item;
    if (!first) return [{ before, height: style.leading, hold: 'free' as const, items: [marker] }];
    return [{ ...first, before, items: [marker, ...first.items] }, ...rest];
  });
}
