/** Measure step for contents and signatures. */
import { breakLines } from './break-lines.js';
import { heldTogether, type Item, type Piece, type Tag } from './piece.js';
import { paragraphPieces, placeLine } from './place-lines.js';
import type { Space } from './space.js';
import { baselineOf, GAP, STYLES, WIDEST_TEXT } from './style-sheet.js';
import type { ContentsEntry, Span } from './styled.js';

/** Room left blank above a signature line [points]. */
const SIGNING_ROOM = 34;
/** Room for a page number. */
const NUMBER_ROOM = 26;

/** Titles of the sections with the pages they start on. */
export function measureContents(
  title: readonly Span[],
  entries: readonly ContentsEntry[],
  space: Space,
): readonly Piece[] {
  const { measure } = space;
  const width = Math.min(space.width, WIDEST_TEXT);
  const list: Tag = { role: 'TOC', parent: space.parent };
  const style = STYLES.body;
  const head = paragraphPieces(breakLines(title, width, measure), {
    x: space.x,
    width,
    style: STYLES.heading2,
    before: GAP.section2,
    tag: { role: 'P', parent: space.parent },
  });
  const rows = entries.flatMap((entry, i): readonly Piece[] => {
    const tag: Tag = { role: 'Reference', parent: { role: 'TOCI', parent: list } };
    const indent = entry.level === 1 ? 0 : 13;
    const room = width - indent - NUMBER_ROOM;
    const lines = breakLines(
      entry.title.map((span) => (span.kind === 'text' ? { ...span, link: entry.id } : span)),
      room,
      measure,
    );
    return lines.map((line, k): Piece => {
      const words = placeLine(line, { x: space.x + indent, y: 0, width: room }, style, 'left', tag);
      const isLast = k === lines.length - 1;
      const y = baselineOf(style.leading, style.size);
      const items: Item[] = words.map((item) => (item.kind === 'text' ? { ...item, quiet: true } : item));
      if (isLast) {
        const from = space.x + indent + line.width + 5;
        items.push(...leader(from, space.x + width - NUMBER_ROOM + 4, y));
        items.push({ kind: 'page-number', x: space.x + width, y, target: entry.id, style, tag });
      }
      return {
        before: k > 0 ? 0 : i > 0 && entry.level === 1 ? 3 : i === 0 ? 4 : 0,
        height: style.leading,
        hold: isLast ? 'free' : 'strong',
        items,
      };
    });
  });
  if (rows.length === 0) return [];
  return [...heldTogether([...head, ...rows.slice(0, 1)], 'strong'), ...rows.slice(1)];
}

/** Dots on a common raster, so that they stand below each other. */
function leader(from: number, to: number, y: number): readonly Item[] {
  const step = 5;
  const items: Item[] = [];
  for (let x = Math.ceil(from / step) * step; x < to; x += step)
    items.push({ kind: 'fill', x, y: y - 0.7, width: 0.7, height: 0.7, ink: 'grey' });
  return items;
}

/** Blank lines to sign on, two side by side. */
export function measureSignatures(labels: readonly (readonly Span[])[], space: Space): readonly Piece[] {
  const gap = 24;
  const width = (space.width - gap) / 2;
  const style = STYLES.signature;
  const tag: Tag = { role: 'Div', parent: space.parent };
  const pieces: Piece[] = [];
  for (let i = 0; i < labels.length; i += 2) {
    const pair = labels.slice(i, i + 2).map((label) => breakLines(label, width, space.measure));
    const items = pair.flatMap((lines, side): readonly Item[] => {
      const x = space.x + side * (width + gap);
      const rule: Item = { kind: 'fill', x, y: SIGNING_ROOM, width, height: 0.5, ink: 'black' };
      const label: Tag = { role: 'P', parent: tag };
      return [
        rule,
        ...lines.flatMap((line, k) =>
          placeLine(line, { x, y: SIGNING_ROOM + 2 + k * style.leading, width }, style, 'left', label),
        ),
      ];
    });
    const most = Math.max(1, ...pair.map((lines) => lines.length));
    pieces.push({
      before: i === 0 ? GAP.block : 4,
      height: SIGNING_ROOM + 2 + most * style.leading,
      hold: 'free',
      items,
    });
  }
  return heldTogether(pieces, 'weak');
}
