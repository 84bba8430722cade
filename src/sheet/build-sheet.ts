/** The field sheet of one pump, made from its review. */

import type { ReviewSubject } from '../report/compose-review.js';
import type { UnitSystem } from '../units/index.js';
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
 * @param reviewed - the review
 * @param units - units to read in; those of the review where not said
 * @returns the sheet as data
 */
export function buildSheet(reviewed: ReviewSubject, units?: UnitSystem): FieldSheet {
  const review = units === undefined ? reviewed : inUnits(reviewed, units);
  const context = fieldContext(review);
  const { fingerprint, content, pump, review: data } = review.installation;
  return {
    mark: pump.mark,
    project: data.project,
    revision: data.revisions.at(-1)?.mark ?? '',
    date: data.date,
    fingerprint,
    ...(content !== undefined && { content }),
    units: data.units,
    parts: sheetParts.flatMap((part) => partOf(part, context) ?? []),
  };
}

/** The same review, printed in other units. */
export function inUnits(review: ReviewSubject, units: UnitSystem): ReviewSubject {
  const { installation } = review;
  if (installation.review.units === units) return review;
  return { ...review, installation: { ...installation, review: { ...installation.review, units } } };
}
