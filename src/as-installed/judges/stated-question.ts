/** The shape of a question that is answered by a word. */
import type { Citation } from '../../sources/index.js';

/** One question. */
export interface Stated {
  readonly id: string;
  readonly title: string;
  readonly trade: string;
  /** Boxes that ask it. */
  readonly box: RegExp;
  /** Place; the support's mark or the flange where the id names one. */
  readonly at: string;
  /** Answers that are as they must be; `yes` where not said. */
  readonly wanted?: readonly string[];
  readonly citation?: Citation;
  /** Answers that do not tell: it is as good as not answered. */
  readonly unsure?: readonly string[];
  /** Part of the sheet, where the first word of the boxes is not the part. */
  readonly part?: string;
}
