/** What came of trying what nobody stated. Plain data. */
import type { Finding } from '../../judging/finding.js';
import type { FrequencySweep } from './frequency-sweep.js';
import type { Unstated } from './unstated.js';

/** What one unstated thing does alone. */
export interface ThingEffect {
  readonly thing: Unstated;
  /** Verdicts that it turns within its range, alone or with others. */
  readonly turns: readonly { readonly check: string; readonly title: string; readonly at: string }[];
  /**
   * The verdict it uses up most of: change of the ratio towards the limit over what was left to it [-]; of one that is
   * over its limit, what it gives back. Absent where it moves none.
   */
  readonly most?: {
    readonly check: string;
    readonly title: string;
    readonly at: string;
    readonly from: number;
    readonly to: number;
    readonly share: number;
  };
}

/** Load of a support over all trials [N], down. */
export interface SupportReach {
  readonly mark: string;
  readonly condition: string;
  readonly stated: number;
  readonly low: number;
  readonly high: number;
}

/** Everything that came of it. */
export interface Bounds {
  /** Ranked: what turns verdicts first, then what uses up most of what is left to a limit. */
  readonly things: readonly ThingEffect[];
  /** How many times the line was solved again [-], and how many of them could not stand. */
  readonly trials: number;
  readonly failed: number;
  readonly supports: readonly SupportReach[];
  readonly frequencies?: FrequencySweep;
}

/** Findings with their bounds, and what they came from. */
export interface Bounded {
  readonly findings: readonly Finding[];
  readonly bounds: Bounds;
}
