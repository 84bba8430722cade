/** What every part of a field sheet is written from, and every judge works with. */
import type { ReviewSubject } from '../report/compose-review.js';
import { createWriter, type Writer } from '../report/writer.js';

/** A review with the writer of its units. */
export interface FieldContext {
  readonly review: ReviewSubject;
  readonly write: Writer;
}

/**
 * The context of a field sheet.
 *
 * @param review - the review the sheet is made from
 * @returns review and writer, in the units of the review
 */
export function fieldContext(review: ReviewSubject): FieldContext {
  return { review, write: createWriter(review.installation.review.units) };
}

export { type Measured, siteText, siteUnit } from '../report/limits/site-text.js';
