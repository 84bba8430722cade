/** What came of one comparison. */
import type { Coded } from '../issues/issue.js';
import type { Outcome } from '../judging/compare-with-limit.js';
import type { Measured } from '../sheet/field-context.js';
import type { Citation } from '../sources/index.js';

/** One reading, or one thing made of several, judged: an outcome [SI] with its place and its words. */
export interface Judgement extends Outcome {
  readonly judge: string;
  readonly title: string;
  readonly part: string;
  readonly trade: string;
  readonly at: string;
  readonly boxes: readonly string[];
  /** True where it decides nothing: no limit, one from memory, or a custom of the trade. */
  readonly comparison: boolean;
  readonly blocksStart: boolean;
  /** What was read, where the demand is only how far it is off. */
  readonly read?: number;
  readonly expected?: number;
  readonly measured?: Measured;
  /** `within`, `at most`, `at least`. */
  readonly limitWords?: string;
  /** What was told, and what is wanted, where it is no number. */
  readonly told?: string;
  readonly wanted?: string;
  readonly citation?: Citation;
  /** Code of the finding, or of why it cannot be told. */
  readonly reason?: Coded;
}
