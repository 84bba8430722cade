/**
 * The shape of a judge. It names places and reads numbers there; it never compares: that is done for all judges by
 * `judge-readings.ts`, so that a missing reading is never a pass and never a fail.
 */

import type { AsFound } from '../as-found/as-found.js';
import type { ReasonData } from '../checks/define-check.js';
import type { Coded, CodesFrom } from '../issues/issue.js';
import type { ReadingsById } from '../readings/reading.js';
import type { SheetTaken } from '../readings/sheet-taken.js';
import type { FieldLimit } from '../report/limits/field-limit.js';
import type { FieldContext, Measured } from '../sheet/field-context.js';
import type { FieldSheet } from '../sheet/sheet.js';

/** Everything a judge may look at. */
export interface FieldSubject extends FieldContext {
  readonly sheet: FieldSheet;
  /** Ids of all boxes of the sheet: what this unit has. */
  readonly asked: ReadonlySet<string>;
  readonly readings: ReadingsById;
  /** Every sheet by itself, with who took it and when. */
  readonly sheets: readonly SheetTaken[];
  /** The line solved again as it was found. */
  readonly asFound: AsFound;
}

/** Codes whose sentence needs no more than a place and the title of what was read. */
export type JudgedCode = CodesFrom<{ at: string; title: string }>;

interface ComparisonBase {
  /** Trade word of the place. */
  readonly at: string;
  /** Boxes it rests on; the first that is missing tells why it cannot be told. */
  readonly boxes: readonly string[];
  /** Words and numbers for the sentences; numbers are printed text. */
  readonly data?: ReasonData;
  /** Why it cannot be told where nothing was answered, where that is not plain. */
  readonly noAnswer?: Coded;
  /** True for a comparison that decides nothing whatever its limit. */
  readonly comparison?: boolean;
}

/** A number that keeps to a limit. */
export interface MeasuredComparison extends ComparisonBase {
  readonly kind: 'measured';
  /** What is compared [SI]; nothing where a box it needs is missing. */
  readonly demand: number | undefined;
  readonly measured: Measured;
  readonly limit: FieldLimit | undefined;
  /** What was read, where the demand is only how far it is off [SI]. */
  readonly read?: number | undefined;
  /** What the review expects to be read [SI]. */
  readonly expected?: number | undefined;
  /** Code of the reason where no limit is known. */
  readonly noLimit?: JudgedCode;
}

/** A yes or no. */
export interface StatedComparison extends ComparisonBase {
  readonly kind: 'stated';
  /** Whether it is as it must be; nothing where that was not told. */
  readonly holds: boolean | undefined;
  /** As told. */
  readonly told?: string | undefined;
  readonly wanted: string;
  readonly limit?: Pick<FieldLimit, 'citation'>;
}

/** Something for which this unit has no question. */
export type FieldComparison = MeasuredComparison | StatedComparison;

/** What the author of a judge writes. */
export interface Judge {
  /** A promise: `voltage-unbalance`. Its sentence is `fieldwork.<id>.exceeds`. */
  readonly id: string;
  readonly title: string;
  /** Part of the sheet it belongs to. */
  readonly part: string;
  /** Trade that mends it. */
  readonly trade: string;
  readonly compare: (subject: FieldSubject) => readonly FieldComparison[];
}
