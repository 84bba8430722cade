/** What the paginate step hands to the paint step. */
import type { Piece } from './piece.js';

export interface PlacedPiece {
  readonly piece: Piece;
  /** Top of the piece below the top of the frame [points]. */
  readonly y: number;
  /** A table head painted again. */
  readonly isRepeat: boolean;
}

export type Page = readonly PlacedPiece[];
