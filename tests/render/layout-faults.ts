/** What may not be on a page that is laid out, found by its measured boxes; each fault a line of words. */
import { elementsOf } from '../../src/render/judge-markup.js';
import type { Item, Tag } from '../../src/render/layout/piece.js';
import type { Page, PlacedPiece } from '../../src/render/layout/placed-piece.js';
import type { Frame } from '../../src/render/layout/style-sheet.js';
import type { MarkupElement, MarkupNode } from '../../src/render/markup.js';
import type { VerdictWord } from '../../src/render/vocabulary.js';
import { VERDICT_WORDS } from '../../src/render/words.js';

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly what: string;
}

/** Adding up widths may be off by this [points]. */
const HAIR = 0.01;

/** Boxes of words, marks, pictures and fields on a page: what must not cover each other. Words by their capitals. */
export function boxesOf(page: Page): readonly Box[] {
  return page.flatMap(({ piece, y }) =>
    piece.items.flatMap((item): readonly Box[] => {
      if (item.kind === 'fill' || (item.kind === 'text' && item.text === '')) return [];
      if (item.kind === 'drawing' || item.kind === 'box' || item.kind === 'logo')
        return [
          {
            left: item.x,
            right: item.x + item.width,
            top: y + item.y,
            bottom: y + item.y + item.height,
            what: item.kind,
          },
        ];
      const { size } = item.style;
      const what = item.kind === 'text' ? item.text : item.kind === 'mark' ? item.verdict : 'page number';
      // A page number of three digits, right-aligned.
      const [left, right] =
        item.kind === 'page-number' ? [item.x - 1.6 * size, item.x] : [item.x, item.x + item.width];
      return [{ left, right, top: y + item.y - 0.66 * size, bottom: y + item.y + 0.02 * size, what }];
    }),
  );
}

/** Things that leave the frame. */
export const outside = (page: Page, frame: Frame): readonly string[] =>
  boxesOf(page)
    .filter(
      (box) =>
        box.left < -HAIR ||
        box.right > frame.width + HAIR ||
        box.top < -HAIR ||
        box.bottom > frame.height + HAIR,
    )
    .map((box) => `"${box.what}" leaves the frame`);

/** Things that cover each other. */
export function covering(page: Page): readonly string[] {
  const sorted = [...boxesOf(page)].sort((a, b) => a.top - b.top);
  return sorted.flatMap((box, i) => {
    const faults: string[] = [];
    for (const other of sorted.slice(i + 1)) {
      if (other.top >= box.bottom - HAIR) break;
      const apart = other.left >= box.right - HAIR || other.right <= box.left + HAIR;
      if (!apart) faults.push(`"${box.what}" and "${other.what}"`);
    }
    return faults;
  });
}

const tagOf = (item: Item): Tag | undefined => ('tag' in item ? item.tag : undefined);
const roleOf = ({ piece }: PlacedPiece): string | undefined =>
  piece.items.map(tagOf).find((tag) => tag !== undefined)?.role;

/** Headings and table heads that nothing stands below, on their page and in their column. */
export function orphans(page: Page): readonly string[] {
  return page.flatMap((placed, i) => {
    const isHeading = /^H\d$/.test(roleOf(placed) ?? '');
    if (!isHeading && !placed.isRepeat && !placed.piece.headOf) return [];
    const next = page[i + 1];
    if (next && next.y >= placed.y - HAIR) return [];
    return [`"${wordsOf(placed)}" stands alone at the foot`];
  });
}

export const wordsOf = ({ piece }: PlacedPiece): string =>
  piece.items.map((item) => (item.kind === 'text' ? item.text : '')).join(' ');

/** The nearest element of a role above a tag. */
function within(tag: Tag | undefined, role: string): Tag | undefined {
  for (let at = tag; at; at = at.parent) if (at.role === role) return at;
  return undefined;
}

const squeezed = (text: string): string => text.replace(/[\s\u200b\ufeff]|\p{Cc}/gu, '');

/** Words of every row that is laid out, in the order in which rows begin; decoration is not counted. */
export function rowsLaidOut(pages: readonly Page[]): readonly string[] {
  const rows = new Map<Tag, Map<Tag, string>>();
  for (const item of pages.flatMap((page) => page.flatMap(({ piece }) => piece.items))) {
    if (item.kind !== 'text') continue;
    const row = within(item.tag, 'TR');
    const cell = within(item.tag, 'TD') ?? within(item.tag, 'TH');
    if (!row || !cell) continue;
    const cells = rows.get(row) ?? new Map<Tag, string>();
    rows.set(row, cells.set(cell, (cells.get(cell) ?? '') + item.text));
  }
  return [...rows.values()].map((cells) => [...cells.values()].map(squeezed).join('|'));
}

/** Words of every row that the markup asks for, of tables and facts, in their order. */
export function rowsAskedFor(element: MarkupElement): readonly string[] {
  if (element.name === 'row')
    return [
      elementsOf(element)
        .map((cell) => squeezed(plainWords(cell.children)))
        .join('|'),
    ];
  if (element.name === 'fact')
    return [[element.attributes.label ?? '', plainWords(element.children)].map(squeezed).join('|')];
  return elementsOf(element).flatMap(rowsAskedFor);
}

function plainWords(nodes: readonly MarkupNode[]): string {
  return nodes
    .map((node) => {
      if (node.kind === 'text') return node.text;
      return node.name === 'verdict'
        ? VERDICT_WORDS[node.attributes.is as VerdictWord]
        : plainWords(node.children);
    })
    .join('');
}

/** Pages on which a table goes on without its head. */
export function headless(pages: readonly Page[]): readonly string[] {
  return pages.flatMap((page, i) => {
    const [first, second] = page;
    if (!first?.piece.repeat || first.isRepeat || first.piece.repeat.pieces.length === 0) return [];
    const before = pages[i - 1]?.at(-1);
    const goesOn = before?.piece.repeat?.table === first.piece.repeat.table;
    return goesOn
      ? [`page ${i + 1} starts with "${wordsOf(first)}" ${second ? '' : 'alone '}without a head`]
      : [];
  });
}

/** Everything that is wrong with a document on its pages. */
export function faultsOf(root: MarkupElement, pages: readonly Page[], frame: Frame): readonly string[] {
  const onPages = pages.flatMap((page, i) =>
    [...outside(page, frame), ...covering(page), ...orphans(page)].map((fault) => `page ${i + 1}: ${fault}`),
  );
  return [...onPages, ...headless(pages), ...rowFaults(rowsAskedFor(root), rowsLaidOut(pages))];
}

/** Rows that are missing, there too often, or there without being asked for. */
export function rowFaults(asked: readonly string[], got: readonly string[]): readonly string[] {
  const counts = new Map<string, number>();
  for (const row of asked) counts.set(row, (counts.get(row) ?? 0) + 1);
  for (const row of got) counts.set(row, (counts.get(row) ?? 0) - 1);
  const faults = [...counts].filter(([, count]) => count !== 0);
  return faults.map(([row, count]) => `row ${row} ${count > 0 ? 'is missing' : 'is there too often'}`);
}
