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
