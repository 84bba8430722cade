/** Which pieces go together to a page or a column. */
import type { Hold, Piece } from './piece.js';

/** Cuts pieces into runs that hold at least as strongly as named. A piece that starts a page starts a run. */
export function chains(pieces: readonly Piece[], least: Hold): readonly (readonly Piece[])[] {
  const runs: Piece[][] = [];
  let open = false;
  for (const piece of pieces) {
    if (open && !piece.newPage) runs.at(-1)?.push(piece);
    else runs.push([piece]);
    open = least === 'weak' ? piece.hold !== 'free' : least === 'strong' ? piece.hold === 'strong' : false;
  }
  return runs;
}
