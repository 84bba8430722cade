/** The field sheet of one pump, made from its review. */
import type { ReviewSubject } from '../report/compose-review.js';
import { fieldContext } from './field-context.js';
import type { FieldSheet } from './sheet.js';
import { partOf } from './sheet-part.js';
import { sheetParts } from './sheet-parts.js';

/**
 * What to read at this unit, with what is expected and what it must keep to.
 *
 * Boxes are there only for what the unit has: no spring reading for a rod hanger, one speed for a motor on the line.
 * A limit comes from the review's file or from a publication named beside it; where there is none, the sheet says so.
 *
 * @param review - the review
 * @returns the sheet as data, in the units of the review
 */
export function buildSheet(review: ReviewSubject): FieldSheet {
  const context = fieldContext(review);
  const { fingerprint, pump, review: data } = review.installation;
  return {
    mark: pump.mark,
    project: data.project,
    revision: data.revisions.at(-1)?.mark ?? '',
    date: data.date,
    fingerprint,
    parts: sheetParts.flatMap((part) => partOf(part, context) ?? []),
  };
}
