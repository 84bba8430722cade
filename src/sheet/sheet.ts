/**
 * What a field sheet asks, as data. `build-sheet` makes it of a review; the form writes it as a fillable PDF, the
 * reader brings readings back by the ids of its boxes, and the judging compares them.
 */
import type { Dimension, UnitSystem } from '../units/index.js';
import { ITEM_CLASSES } from './item-boxes.js';
import type { Plausible } from './plausible.js';

/** What may be put into a box. A signature is a line to sign by hand; a name typed into it is a text. */
export type BoxKind = 'number' | 'text' | 'choice' | 'tick' | 'date' | 'signature';

/** One box to fill in. */
export interface Box {
  /**
   * A promise: name of the field in the PDF and key in a readings file, as `before-bolt-up.suction.gap-top`. Words of
   * letters, digits and hyphens, separated by dots; none is the beginning of another, as `a.b` is of `a.b.c`.
   */
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
  /** What the review predicts for this box alone, with its unit; printed below it. */
  readonly expected?: string;
  /** What a number can be and is likely to be, SI: what lies outside is asked about. */
  readonly plausible?: Plausible;
  /** First version of the sheet that has it, where that is not the first of all. */
  readonly since?: '0.2.0';
  /** Lines to write on, for a text of more than one. */
  readonly lines?: number;
}

/** Stands where there is no limit: none is invented. */
export const NO_LIMIT = 'no limit given';

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
  /** Stands in a line of its own on paper, beside no other. */
  readonly alone?: boolean;
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
  /** Most rows that stand beside each other on paper: two where the rows are pairs; three where not said. */
  readonly abreast?: 1 | 2 | 3;
  /** Where one limit holds for most rows, words for where: it is printed once, above them. */
  readonly commonLimit?: string;
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
  /** Digests of what that input describes, by which a sheet of the same installation is known. */
  readonly content?: string;
  /** Units its boxes are in. */
  readonly units?: UnitSystem;
  readonly parts: readonly SheetPart[];
}

/**
 * The box every row has for why it was not read: `not fitted`, `no access`, `after the moment`.
 *
 * @param row - row of a sheet
 * @returns the box, under the id of the row's first box with `-not-read` behind it; nothing for a row without boxes
 */
export function notReadBox(row: SheetRow): Box | undefined {
  const [first] = row.boxes;
  if (first === undefined) return undefined;
  return {
    id: `${first.id}-not-read`,
    kind: 'text',
    label: 'not read, because',
    tip: `${row.label}: where it was not read, say why`,
  };
}

/**
 * The box every part has for what does not fit a row.
 *
 * @param part - part of a sheet
 * @returns the box, under the id of the part with `.remarks` behind it
 */
export function remarksBox(part: SheetPart): Box {
  return {
    id: `${part.id}.remarks`,
    kind: 'text',
    label: 'remarks',
    tip: `Remarks on ${part.title}`,
  };
}

/**
 * The box in which whoever remarks says what the remark keeps from happening: as long as nobody has, it is the start.
 *
 * @param part - part of a sheet
 * @returns the box, under the id of the remarks with `-class` behind it
 */
export function remarksClassBox(part: SheetPart): Box {
  return {
    id: `${part.id}.remarks-class`,
    kind: 'choice',
    label: 'keeps from',
    tip: `What the remarks on ${part.title} keep from happening; as long as nobody has said, it is the start`,
    choices: ITEM_CLASSES,
    since: '0.2.0',
  };
}

/**
 * Every box of a sheet in the order in which it is filled in, those for what was not read and for remarks included.
 *
 * @param sheet - the sheet
 * @returns boxes with the row they stand in; remarks stand in none
 */
export function boxesOf(
  sheet: FieldSheet,
): readonly { readonly box: Box; readonly part: SheetPart; readonly row?: SheetRow }[] {
  return sheet.parts.flatMap((part) => [
    ...part.rows.flatMap((row) => {
      const why = notReadBox(row);
      return [...row.boxes, ...(why === undefined ? [] : [why])].map((box) => ({ box, part, row }));
    }),
    { box: remarksBox(part), part },
    { box: remarksClassBox(part), part },
  ]);
}
