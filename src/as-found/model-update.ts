/** What of the readings went back into the model, and what could not. */
import type { CodesFrom } from '../issues/issue.js';

/** One thing put back into the model. */
export interface ModelUpdate {
  readonly mark: string;
  readonly what: 'place' | 'height' | 'rod length' | 'spring load' | 'travel stops in' | 'gap under it';
  /** As drawn or predicted, and as found [m] or [N]; nothing for stops. */
  readonly drawn?: number;
  readonly found?: number;
}

/** Something that was read and could not be put back, with the code of why. */
export interface LeftOut {
  readonly mark: string;
  readonly code: CodesFrom<{ mark: string }>;
}

/** One length that a tape was held to. */
export interface Compared {
  readonly mark: string;
  readonly what: 'place' | 'height' | 'rod length';
  /** Id of the box. */
  readonly box: string;
  /** As drawn or predicted, as found, and how far the two may be apart before anything has moved [m]. */
  readonly drawn: number;
  readonly found: number;
  readonly tolerance: number;
}
