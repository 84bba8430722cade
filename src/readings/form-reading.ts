/** What was found in a filled sheet, as filled: nothing is converted, dropped or guessed. */

import type { Issue } from '../issues/issue.js';
import type { UnitSystem } from '../units/index.js';

/** What stands in one box. */
export interface FilledBox {
  /** Id of the box in the sheet. */
  readonly id: string;
  /**
   * As filled: the words of a text, a number or a date, with line feeds where there are several lines; the choice in
   * the words of the sheet; `yes` for a tick; empty for a box left empty.
   */
  readonly text: string;
  /** Name of the field as the file has it, which a viewer may have changed. */
  readonly field: string;
  /** Page the box stands on, from 1; absent where the file does not say. */
  readonly page?: number;
}

/** A filled sheet as read. */
export interface FormReading {
  /** By id; a box whose field is missing or could not be read is not there, and is told in the issues. */
  readonly boxes: Readonly<Record<string, FilledBox>>;
  /** Fingerprint of the input the sheet was made from, as the file says; absent where it says none. */
  readonly fingerprint?: string;
  /** Digests of what that input describes, where the sheet says them. */
  readonly content?: string;
  readonly mark?: string;
  readonly revision?: string;
  /** Units of its boxes, as the file says. */
  readonly units?: UnitSystem;
  /**
   * What could not be read, with field and page: `fieldwork.form.field-missing`, `…field-unknown`, `…wrong-type`,
   * `…unreadable`, `…field-twice`, and `…script-ignored` as a warning.
   */
  readonly issues: readonly Issue[];
}
