/** Paginate step: pieces get a page and a height on it. Nothing is measured or painted here. */
import { EngineError } from '../../issues/issue.js';
import type { Hold, Piece, Tag } from './piece.js';
import { stackHeight } from './piece.js';

export interface PlacedPiece {
  readonly piece: Piece;
  /** Top of the piece below the top of the frame [points]. */
  readonly y: number;
  /** A table head painted again. */
  readonly isRepeat: boolean;
}

export type Page = readonly PlacedPiece[];

/** A hair that adding up heights may be off [points]. */
const HAIR = 0.01;

/**
 * Puts pieces on pages. Pieces that hold together go to one page if they fit on one; if not, they are parted where
 * they hold weakly, and only then where they hold strongly.
 *
 * @param pieces - measured pieces, first to last
 * @param height - height of the frame [points]
 * @returns pages with every piece once, and repeated table heads
 * @throws EngineError `render.block-too-tall` when one piece is taller than a page
 */
export function paginate(pieces: readonly Piece[], height: number): readonly Page[] {
  const pages: PlacedPiece[][] = [[]];
  let y = 0;
  let table: Tag | undefined;
  const page = (): PlacedPiece[] => pages.at(-1) ?? [];
  const turn = (): void => {
    if (page().length > 0) pages.push([]);
    y = 0;
  };
  /** Height of the head to be painted again if the piece starts a page; nothing when both do not fit on one. */
  const repeated = (piece: Piece): number => {
    if (!piece.repeat || piece.repeat.table !== table) return 0;
    const head = stackHeight(piece.repeat.pieces);
    return head + piece.height <= height + HAIR ? head : 0;
  };

  const place = (piece: Piece): void => {
    if (page().length === 0 && piece.repeat && repeated(piece) > 0) {
      for (const head of piece.repeat.pieces) {
        page().push({ piece: head, y, isRepeat: true });
        y += head.height;
      }
    }
    const gap = page().length === 0 ? 0 : piece.before;
    if (y + gap + piece.height > height + HAIR)
      throw new EngineError('render.block-too-tall', {
        block: 'block',
        height: Math.ceil(piece.height),
        available: Math.floor(height - y),
      });
    page().push({ piece, y: y + gap, isRepeat: false });
    y += gap + piece.height;
    table = piece.headOf ?? piece.repeat?.table ?? table;
  };

  const put = (chain: readonly Piece[], hold: Hold): void => {
    const [first] = chain;
    if (!first) return;
    const whole = stackHeight(chain);
    const gap = page().length === 0 ? 0 : first.before;
    if (y + gap + whole + (page().length === 0 ? repeated(first) : 0) <= height + HAIR) {
      chain.forEach(place);
      return;
    }
    if (whole + repeated(first) <= height + HAIR) {
      turn();
      chain.forEach(place);
      return;
    }
    if (hold === 'free' || chain.length === 1) {
      // One piece alone that is too tall even for an empty page: `place` says so.
      for (const piece of chain) {
        if (page().length > 0 && y + piece.before + piece.height > height + HAIR) turn();
        place(piece);
      }
      return;
    }
    for (const part of chains(chain, hold === 'weak' ? 'strong' : 'free'))
      put(part, hold === 'weak' ? 'strong' : 'free');
  };

  for (const chain of chains(pieces, 'weak')) {
    if (chain[0]?.newPage) turn();
    put(chain, 'weak');
  }
  return pages;
}

/** Cuts pieces into runs that hold at least as strongly as named. A piece that starts a page starts a run. */
function chains(pieces: readonly Piece[], least: Hold): readonly (readonly Piece[])[] {
  const runs: Piece[][] = [];
  let open = false;
  for (const piece of pieces) {
    if (open && !piece.newPage) runs.at(-1)?.push(piece);
    else runs.push([piece]);
    open = least === 'weak' ? piece.hold !== 'free' : least === 'strong' ? piece.hold === 'strong' : false;
  }
  return runs;
}

/** Page on which each id stands, from 0, and its height on that page. */
export function locateAnchors(
  pages: readonly Page[],
): ReadonlyMap<string, { readonly page: number; readonly y: number }> {
  const places = new Map<string, { readonly page: number; readonly y: number }>();
  pages.forEach((page, index) => {
    for (const { piece, y } of page) for (const id of piece.anchors ?? []) places.set(id, { page: index, y });
  });
  return places;
}
