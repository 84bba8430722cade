/** Paginate step: pieces get a page and a height on it. Nothing is measured or painted here. */
import { EngineError } from '../../issues/issue.js';
import { chains } from './chains.js';
import { HAIR, type Hold, type Piece, stackHeight, type Tag } from './piece.js';
import type { Page, PlacedPiece } from './placed-piece.js';
import { openingHeight, pour } from './pour-columns.js';

/**
 * Puts pieces on pages. Pieces that hold together go to one page if they fit on one; if not, they are parted where
 * they hold weakly, and only then where they hold strongly. Pieces of one flow run down columns, which are as long as
 * each other where the flow ends.
 *
 * @param pieces - measured pieces, first to last
 * @param height - height of the frame [points]
 * @param inside - table whose rows ran on from the page before
 * @returns pages with every piece once, and repeated table heads
 * @throws EngineError `render.block-too-tall` when one piece is taller than a page
 */
export function paginate(pieces: readonly Piece[], height: number, inside?: Tag): readonly Page[] {
  const pages: PlacedPiece[][] = [[]];
  let y = 0;
  let table = inside;
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

  /** `reserve` is what must find room below the last piece. */
  const put = (chain: readonly Piece[], hold: Hold, reserve = 0): void => {
    const [first] = chain;
    if (!first) return;
    const whole = stackHeight(chain);
    const gap = page().length === 0 ? 0 : first.before;
    if (y + gap + whole + reserve + (page().length === 0 ? repeated(first) : 0) <= height + HAIR) {
      chain.forEach(place);
      return;
    }
    if (whole + reserve + repeated(first) <= height + HAIR) {
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
    const next = hold === 'weak' ? 'strong' : 'free';
    const parts = next === 'free' ? pageLoads(chain, height) : chains(chain, next);
    parts.forEach((part, i) => {
      put(part, next, i === parts.length - 1 ? reserve : 0);
    });
  };

  const runs = runsOf(pieces);
  runs.forEach((run, i) => {
    const [first] = run;
    if (first?.newPage) turn();
    if (first?.flow) {
      const start = { flow: first.flow, height, y, isEmpty: page().length === 0, table };
      const poured = pour(run, start, paginate);
      poured.pages.forEach((columns, k) => {
        if (k > 0) turn();
        page().push(...columns);
      });
      y = poured.y;
      table = poured.table;
      return;
    }
    const next = runs[i + 1];
    const parts = chains(run, 'weak');
    parts.forEach((chain, k) => {
      if (chain[0]?.newPage) turn();
      const leads = k === parts.length - 1 && next !== undefined && chain.at(-1)?.hold !== 'free';
      put(chain, 'weak', leads ? (next[0]?.before ?? 0) + openingHeight(next, height) : 0);
    });
  });
  return pages;
}

/**
 * Cuts pieces that hold strongly and are together too tall for a page into as many as fit on one at a time, so that
 * what stands first, headings and the head of a table, is not parted from what follows it.
 */
function pageLoads(chain: readonly Piece[], height: number): readonly (readonly Piece[])[] {
  const loads: Piece[][] = [];
  for (const piece of chain) {
    const load = loads.at(-1);
    const repeat = stackHeight(load?.[0]?.repeat?.pieces ?? []);
    if (load && stackHeight([...load, piece]) + repeat <= height + HAIR) load.push(piece);
    else loads.push([piece]);
  }
  return loads;
}

/** Pieces beside each other in the list that stand in the same columns, or in none. */
function runsOf(pieces: readonly Piece[]): readonly (readonly Piece[])[] {
  const runs: Piece[][] = [];
  for (const piece of pieces) {
    const last = runs.at(-1);
    if (last && last[0]?.flow === piece.flow && !(piece.flow && piece.newPage)) last.push(piece);
    else runs.push([piece]);
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
