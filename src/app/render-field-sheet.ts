/** A field sheet as a PDF to fill in. Loaded only when a sheet is printed. */
import { keywordsOf, sheetTitle, sheetView, statedOf } from '../forms/compose-sheet.js';
import type { FieldSheet } from '../sheet/sheet.js';
import { fillDocument, type Paper, printDocument } from './print-document.js';

/** How a sheet is printed. */
export type SheetOptions = Paper;

/**
 * The sheet as a PDF with a form.
 *
 * @param sheet - what it asks
 * @param options - templates, fonts, page; letter where no page is said
 * @returns the bytes; the same for the same sheet and options
 * @throws EngineError, IssuesError `render.…` for a template that cannot be used
 */
export async function fieldSheetPdf(sheet: FieldSheet, options: SheetOptions): Promise<Uint8Array> {
  const markup = fillDocument('field-sheet', sheetView(sheet), options);
  const { mark, project, revision, date, fingerprint } = sheet;
  const about = {
    title: sheetTitle(sheet),
    subject: `Readings at the installed pump ${mark}`,
    date,
    fingerprint,
    units: 'us',
    own: [project, mark, revision, options.letterhead],
    head: `${project} · pump ${mark}${revision === '' ? '' : ` · revision ${revision}`} · ${date}`,
    headRight: options.letterhead === undefined ? 'field sheet' : `${options.letterhead.name} · field sheet`,
    foot: { before: 'Made from' },
    keywords: keywordsOf(sheet),
    stated: statedOf(sheet),
  } as const;
  return printDocument(markup, about, options);
}
