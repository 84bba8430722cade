/** What differs between two revisions, as data: SI numbers, texts as the files write them. */

/** One side of a change of the input. */
export type Side =
  | { readonly kind: 'text'; readonly text: string }
  /** [m] */
  | { readonly kind: 'length'; readonly value: number }
  /** Place of a support: so far past a part of its line [m]. */
  | { readonly kind: 'station'; readonly past: string; readonly value: number; readonly line?: string };

/** One change of the input. */
export interface InputChange {
  readonly kind: 'changed' | 'added' | 'removed' | 'moved' | 'renamed';
  /** From the whole to the part: `suction line`, `elbow 2`, `turn`. */
  readonly place: readonly string[];
  readonly before?: Side;
  readonly after?: Side;
}

/** A result that moved; one side is missing where it is there in one revision only. */
export interface ValueChange {
  readonly of: 'nozzle' | 'support' | 'weight' | 'frequency';
  readonly at: string;
  readonly what: 'force' | 'moment' | 'load down' | 'weight' | 'frequency';
  readonly condition?: string;
  readonly unit: 'N' | 'N·m' | 'kg' | 'Hz';
  readonly before?: number;
  readonly after?: number;
}

export type VerdictWord = 'meets' | 'exceeds' | 'cannot-tell' | 'does-not-apply';

/** What one revision says of one comparison. */
export interface FindingSide {
  readonly verdict: VerdictWord;
  readonly demand?: number | undefined;
  readonly limit?: number | undefined;
  readonly ratio?: number | undefined;
}

export interface FindingChange {
  readonly kind: 'flipped' | 'moved' | 'new' | 'gone';
  readonly check: string;
  readonly at: string;
  /** The place that governed before, where it is another. */
  readonly atBefore?: string;
  readonly condition?: string;
  readonly comparison: boolean;
  readonly unit: string;
  readonly before?: FindingSide;
  readonly after?: FindingSide;
}

export interface AssumptionChange {
  readonly kind: 'new' | 'gone' | 'changed';
  readonly path: string;
  readonly before?: string;
  readonly after?: string;
}

export interface Comparison {
  readonly pump: { readonly before: string; readonly after: string };
  readonly verdict: { readonly before: VerdictWord; readonly after: VerdictWord };
  /** Whether both were made from the same input, to the byte. */
  readonly sameInput: boolean;
  /** Changes of the input; undefined where one side is a results file, which does not hold it. */
  readonly inputs: readonly InputChange[] | undefined;
  readonly values: readonly ValueChange[];
  readonly findings: readonly FindingChange[];
  readonly assumptions: readonly AssumptionChange[];
}

/**
 * What is left out as noise: a value that moved by less than this share of itself, or of the largest of its kind, and a
 * ratio that moved by less than half of its last printed digit or is printed alike. They hide rounding, and no verdict.
 */
export const NOISE = { ofItself: 0.005, ofLargest: 0.005, ratio: 0.005 } as const;
