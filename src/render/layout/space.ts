/** Where a block may stand while it is measured, and what it needs to know for that. */
import type { Drawing } from '../../drawing/drawing.js';
import type { Measure } from '../font/typeface.js';
import type { Piece, Tag } from './piece.js';
import type { StyledBlock } from './styled.js';

/** What every block needs to know to measure itself. */
export interface Space {
  readonly x: number;
  readonly width: number;
  /** Tallest piece a page can take. */
  readonly tallest: number;
  readonly parent: Tag;
  readonly measure: Measure;
  readonly drawings: Readonly<Record<string, Drawing>>;
}

/** Measures blocks one below the other. */
export type MeasureBlocks = (blocks: readonly StyledBlock[], space: Space) => readonly Piece[];
