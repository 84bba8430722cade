/**
 * What a field sheet asks, as data. `build-sheet` makes it of a review; the form writes it as a fillable PDF, the
 * reader brings readings back by the ids of its boxes, and the judging compares them.
 */
import type { Dimension } from '../units/dimension.js';

/** What may be put into a box. */
export type BoxKind = 'number' | 'text' | 'choice' | 'tick' | 'date';

/** One box to fill in. */
export interface Box {
  /** A promise: name of the field in the PDF and key in a readings file, as `before-bolt-up.suction.gap-top`. */
  readonly id: string;
  readonly kind: BoxKind;
  /** Short words above or before the box: `top`, `H1`, `A to B`. */
  readonly label: string;
  /** The whole question in a sentence, shown when the pointer rests on the box and read to who cannot see it. */
  readonly tip: string;
  /** What a number measures; absent for a bare count. */
  readonly dimension?: Dimension;
  /** Unit printed beside the box, and taken where none is written into it; empty for a bare count. */
  readonly unit?: string;
  /** Answers to choose from, for a choice. */
  readonly choices?: readonly string[];
}

/** One line of the sheet: what is read, the boxes, and what is expected. All texts are finished. */
export interface SheetRow {
  readonly label: string;
  readonly boxes: readonly Box[];
  /** What the review predicts, with its unit. */
  readonly expected?: string;
  /** What it must keep to, with its unit. */
  readonly limit?: string;
  /** Where the limit comes from, with how sure it is. */
  readonly source?: string;
}

/** One part of the sheet: a moment of the work, or a kind of reading. */
export interface SheetPart {
  /** Bookmark, and the first word of the ids in it: `before-bolt-up`. */
  readonly id: string;
  readonly title: string;
  /** Trade that fills it in. */
  readonly trade: string;
  /** How to take the readings, in a sentence or two. */
  readonly how: string;
  /** Warning shown above the boxes, where the readings are taken near a danger. */
  readonly caution?: string;
  readonly rows: readonly SheetRow[];
}

/** The whole sheet of one pump. */
export interface FieldSheet {
  readonly mark: string;
  readonly project: string;
  readonly revision: string;
  readonly date: string;
  /** Fingerprint of the input the sheet was made from. */
  readonly fingerprint: string;
  readonly parts: readonly SheetPart[];
}
