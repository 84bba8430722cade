/**
 * The field sheet of a review: what to read at the installed pump, as a PDF to fill in, and that PDF read back.
 *
 *     Review ─ fieldSheet ─▶ FieldSheet ─ renderFieldSheetPdf ─▶ PDF ─ filled in ─ readFieldSheet ─▶ FormReading
 */

import type { UnitSystem } from '../input/installation.js';
import type { FormReading } from '../readings/form-reading.js';
import { buildSheet } from '../sheet/build-sheet.js';
import type { FieldSheet } from '../sheet/sheet.js';
import type { SheetOptions } from './render-field-sheet.js';
import type { Review } from './review.js';

export type { FilledBox, FormReading } from '../readings/form-reading.js';
export type { Box, FieldSheet, SheetPart, SheetRow } from '../sheet/sheet.js';
export type { SheetOptions } from './render-field-sheet.js';

/**
 * What to read at the installed pump.
 *
 * @param review - the review
 * @param units - units to read in; those of the installation's review where not said
 * @returns parts, rows and boxes, with what is expected and the limits
 */
export function fieldSheet(review: Review, units?: UnitSystem): FieldSheet {
  const { installation } = review;
  const wished = units ?? installation.review.units;
  return buildSheet({
    ...review,
    installation: { ...installation, review: { ...installation.review, units: wished } },
  });
}

/**
 * A field sheet as a PDF to fill in.
 *
 * @param sheet - the sheet
 * @param options - templates, fonts, page
 * @returns the bytes; the same for the same sheet and options
 * @throws EngineError `render.…` for a template that cannot be used
 */
export async function renderFieldSheetPdf(sheet: FieldSheet, options: SheetOptions): Promise<Uint8Array> {
  const { fieldSheetPdf } = await import('./render-field-sheet.js');
  return fieldSheetPdf(sheet, options);
}

/**
 * Reads a filled sheet back, whoever's viewer filled it. No script in it is run, and what it may cost is bounded.
 *
 * @param bytes - the PDF
 * @param sheet - the sheet it was made from
 * @returns what stands in each box, what the file says it was made from, and what could not be read
 * @throws EngineError `fieldwork.form.…` for a file that is no such sheet
 */
export async function readFieldSheet(bytes: Uint8Array, sheet: FieldSheet): Promise<FormReading> {
  const { readForm } = await import('../forms/read-form.js');
  return readForm(bytes, sheet);
}
