/** What was filled in, as filled: the same shape whether it comes from a PDF, YAML, JSON or CSV. */

import type { Issue, Place } from '../issues/issue.js';
import type { UnitSystem } from '../units/index.js';
import type { FormReading } from './form-reading.js';

/** Where an answer stands. */
export interface AnswerPlace {
  /** File as the user named it. */
  readonly file: string;
  /** Page and name of the field, in a PDF. */
  readonly page?: number;
  readonly field?: string;
  /** Line and column, in a text file. */
  readonly text?: Place;
}

/** One answer. */
export interface Answer {
  /** Id of the box. */
  readonly id: string;
  /** As filled, ends trimmed; never empty unless there is a reason. */
  readonly text: string;
  /** Why it was not read. */
  readonly notRead?: string;
  readonly place: AnswerPlace;
}

/** One sheet or file brought back. */
export interface Answers {
  readonly file: string;
  /** Fingerprint of the input that the sheet was made from. */
  readonly fingerprint?: string;
  /** Digests of what that input describes, where the sheet says them. */
  readonly content?: string;
  readonly mark?: string;
  /** Units the boxes were in, where the sheet says so; else those of the review. */
  readonly units?: UnitSystem;
  readonly answers: readonly Answer[];
  /** Digests of the entries before it, where it comes from a store. */
  readonly keptAfter?: readonly string[];
  /** What could not be read, as it was found. */
  readonly issues: readonly Issue[];
}

/**
 * Answers of a filled PDF.
 *
 * @param reading - fields of the PDF
 * @param file - its name
 * @returns answers in the order of the sheet; boxes left empty are none
 */
export function answersOfForm(reading: FormReading, file: string): Answers {
  const answers = Object.values(reading.boxes).flatMap(({ id, text, field, page }): readonly Answer[] => {
    const trimmed = text.trim();
    return trimmed === ''
      ? []
      : [{ id, text: trimmed, place: { file, field, ...(page !== undefined && { page }) } }];
  });
  return {
    file,
    answers,
    issues: reading.issues,
    ...(reading.fingerprint !== undefined && { fingerprint: reading.fingerprint }),
    ...(reading.content !== undefined && { content: reading.content }),
    ...(reading.mark !== undefined && { mark: reading.mark }),
    ...(reading.units !== undefined && { units: reading.units }),
  };
}
