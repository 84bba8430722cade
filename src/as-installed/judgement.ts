/** What came of one comparison. */
import type { Coded } from '../issues/issue.js';
import type { Outcome } from '../judging/compare-with-limit.js';
import type { Measured } from '../sheet/field-context.js';
import type { Citation } from '../sources/index.js';
import type { Bars } from './decisions/requirement.js';

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
  /** What it keeps from happening, by the tables of requirements. */
  readonly bars: Bars;
  /** By what: a limit that decides, a factor past which nobody disputes one, guidance alone, or that it is not known. */
  readonly how: 'against' | 'beyond' | 'guidance' | 'unknown' | 'none';
  /** Why the factor is not disputed. */
  readonly undisputed?: string;
  /** Whether it keeps the pump from being started. */
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
