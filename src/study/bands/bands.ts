/** What the study of uncertainties finds: bands beside numbers and verdicts, and what would turn a verdict. Plain data. */
import type { NozzleAxisLoads } from '../../analysis/nozzles/nozzle-load-rows.js';
import type { Uncertainty } from './uncertainty.js';

/** A number with its band. */
export interface Banded {
  readonly value: number;
  /** Standard uncertainty: Σ of the squares of what each uncertainty does alone, rooted. */
  readonly standard: number;
}

/** What one uncertainty alone does to a ratio. */
export interface Sensitivity {
  readonly uncertainty: Uncertainty;
  /** Ratio with the uncertainty at its lower and at its upper limit [-]; absent where nothing could be worked out there. */
  readonly low?: number;
  readonly high?: number;
}

/** An uncertainty that turns a verdict within its limits. */
export interface Turn {
  readonly uncertainty: Uncertainty;
  /** Where the demand is the limit, found by solving again: amount from −1 to 1 [-], and the value there. */
  readonly amount: number;
  readonly value?: number;
  /** Whether the finding meets below that value or above it. */
  readonly meets: 'below' | 'above';
}

/** What may be said of a verdict with its band. */
export type Statement =
  /** The whole band keeps to the limit, and no uncertainty alone passes it. */
  | 'meets throughout'
  /** It meets as taken; some of the band, or one uncertainty alone, is beyond the limit. */
  | 'meets only if'
  | 'exceeds throughout'
  /** It exceeds as taken; some of the band, or one uncertainty alone, keeps to the limit. */
  | 'exceeds unless';

/** One verdict with its band. */
export interface FindingBand extends Banded {
  readonly check: string;
  readonly title: string;
  readonly at: string;
  readonly comparison: boolean;
  readonly statement: Statement;
  /** Ratio with all weights heavier, and lighter, by `Bands.heavier` [-]. */
  readonly heavier?: number;
  readonly lighter?: number;
  /** Uncertainties by what they do to it, the strongest first. */
  readonly sensitivities: readonly Sensitivity[];
  readonly turns: readonly Turn[];
}

export interface NozzleBand extends Banded {
  readonly nozzle: 'suction' | 'discharge';
  readonly condition: string;
  readonly key: keyof NozzleAxisLoads;
}

export interface SupportBand extends Banded {
  readonly mark: string;
  readonly condition: string;
}

/** The same ratios by sampling all uncertainties at once. */
export interface Sampled {
  readonly count: number;
  readonly seed: number;
  /** Samples in which nothing could be worked out. */
  readonly failed: number;
  readonly findings: readonly {
    readonly check: string;
    readonly at: string;
    readonly mean: number;
    readonly standard: number;
    /** 2.5 % of the samples lie below, 2.5 % above. */
    readonly low: number;
    readonly high: number;
    /** Share of the samples that exceed [-]. */
    readonly beyond: number;
  }[];
}

/** A datum to get, and what it would do. */
export type MissingDatum =
  /** Something is not known, and verdicts wait for it. */
  | {
      readonly kind: 'missing';
      /** Code of the reason, as findings carry it. */
      readonly code: string;
      readonly findings: readonly { readonly check: string; readonly title: string; readonly at: string }[];
      /** True where no other verdict of the review waits for anything else. */
      readonly isLast: boolean;
    }
  /** Something is known so roughly that it turns a verdict, or uses up much of what is left to a limit. */
  | {
      readonly kind: 'rough';
      readonly uncertainty: Uncertainty;
      readonly turns: readonly { readonly check: string; readonly title: string; readonly at: string }[];
      /** The verdict it uses up most of: |change of the ratio| over what was left to the limit [-]. */
      readonly most: {
        readonly check: string;
        readonly title: string;
        readonly at: string;
        readonly share: number;
      };
    };

/** The study of uncertainties. */
export interface Bands {
  readonly uncertainties: readonly Uncertainty[];
  /** Share by which all weights are taken heavier and lighter together [-]. */
  readonly heavier: number;
  /** Judged ratios that move, nearest their limit or furthest beyond it first. */
  readonly findings: readonly FindingBand[];
  readonly nozzles: readonly NozzleBand[];
  readonly supports: readonly SupportBand[];
  /** Largest part of a band that does not follow from adding the uncertainties up: |r(+1) + r(−1) − 2 r| over the band [-]. */
  readonly bend: number;
  readonly sampled?: Sampled;
  /** What to find out, what matters most first. */
  readonly missingData: readonly MissingDatum[];
}
