/** Paginate step for columns: each column is a small page, and the last ones are made as long as each other. */
import { chains } from './chains.js';
import { type Flow, HAIR, moved, type Piece, stackHeight, type Tag } from './piece.js';
import type { Page, PlacedPiece } from './placed-piece.js';

/** Puts pieces on pages of a height; columns are such pages. */
type Paginate = (pieces: readonly Piece[], height: number, inside?: Tag) => readonly Page[];

/** Where columns begin on a page. */
export interface PourStart {
  readonly flow: Flow;
  /** Height of a page [points]. */
  readonly height: number;
  /** Where the page is filled to [points]. */
  readonly y: number;
  readonly isEmpty: boolean;
  /** Table whose rows are being placed. */
  readonly table: Tag | undefined;
}

export interface Poured {
  /** What comes on the page it starts on, then on each page after it. The first may be nothing. */
  readonly pages: readonly Page[];
  /** Where the last page is filled to [points]. */
  readonly y: number;
  readonly table: Tag | undefined;
}

/** What holds together at the start of columns is parted when it is longer than this share of a page. */
const LONGEST_OPENING = 0.4;
/** Columns as long as each other to within so much [points]. */
const EVEN = 1;

/** Room that pieces in columns need to begin at all: their opening, and their tallest piece under its head [points]. */
export function openingHeight(pieces: readonly Piece[], height: number): number {
  const weak = stackHeight(chains(pieces, 'weak')[0] ?? []);
  const opening = weak <= LONGEST_OPENING * height ? weak : stackHeight(chains(pieces, 'strong')[0] ?? []);
  return Math.max(opening, tallestOf(pieces)) + HAIR;
}

/**
 * Fills columns from left to right and goes on, on the next page, with what is left.
 *
 * @param pieces - pieces of one flow
 * @param start - where they begin
 * @param paginate - puts pieces on pages of a height
 * @returns placed pieces by page
 * @throws EngineError `render.block-too-tall` when one piece is taller than a page
 */
export function pour(pieces: readonly Piece[], start: PourStart, paginate: Paginate): Poured {
  const { flow, height } = start;
  const plain = pieces.map(({ flow: _flow, newPage: _newPage, ...piece }): Piece => piece);
  const pages: PlacedPiece[][] = [[]];
  let { y, isEmpty, table } = start;
  let rest: readonly Piece[] = plain;
  while (rest.length > 0) {
    const gap = isEmpty ? 0 : (rest[0]?.before ?? 0);
    const room = height - y - gap;
    if (!isEmpty && room < openingHeight(rest, height)) {
      pages.push([]);
      [y, isEmpty] = [0, true];
      continue;
    }
    const columns = evenColumns(rest, room, flow.count, (some, tall) => paginate(some, tall, table));
    columns.forEach((column, i) => {
      for (const placed of column)
        pages.at(-1)?.push({ ...placed, piece: shifted(placed.piece, i * flow.step), y: y + gap + placed.y });
    });
    const done = columns.flat().filter((placed) => !placed.isRepeat);
    const last = done.at(-1)?.piece;
    table = last?.headOf ?? last?.repeat?.table ?? table;
    rest = rest.slice(done.length);
    y += gap + Math.max(0, ...columns.map(lengthOf));
    isEmpty = false;
    if (rest.length > 0) {
      pages.push([]);
      [y, isEmpty] = [0, true];
    }
  }
  return { pages, y, table };
}

/** Columns of one page: full ones when more is to come, else as short as they may be. */
function evenColumns(
  pieces: readonly Piece[],
  room: number,
  count: number,
  paginate: Paginate,
): readonly Page[] {
  const full = paginate(pieces, room);
  if (full.length > count) return full.slice(0, count);
  let low = Math.min(room, Math.max(tallestOf(pieces), stackHeight(pieces) / count));
  let high = room;
  let best = full;
  while (high - low > EVEN) {
    const middle = (low + high) / 2;
    const columns = paginate(pieces, middle);
    if (columns.length <= count) [best, high] = [columns, middle];
    else low = middle;
  }
  return best;
}

/** Height of the tallest piece, with the head that stands above it where it starts a column. */
const tallestOf = (pieces: readonly Piece[]): number =>
  Math.max(0, ...pieces.map(({ height, repeat }) => height + stackHeight(repeat?.pieces ?? [])));

const lengthOf = (column: Page): number => {
  const last = column.at(-1);
  return last ? last.y + last.piece.height : 0;
};

const shifted = (piece: Piece, dx: number): Piece =>
  dx === 0 ? piece : { ...piece, items: piece.items.map((item) => moved(item, dx, 0)) };
