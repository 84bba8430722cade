/** A field sheet as a PDF to fill in: fill the template, lay out, paint. Loaded only when a sheet is printed. */
import { keywordsOf, sheetTitle, sheetView, statedOf } from '../forms/compose-sheet.js';
import type { Letterhead } from '../input/installation.js';
import { EngineError } from '../issues/issue.js';
import { renderPdf } from '../render/render-pdf.js';
import { fillTemplate } from '../render/template/fill-template.js';
import type { TemplateRecord } from '../render/template/template-view.js';
import type { FieldSheet } from '../sheet/sheet.js';
import type { RenderOptions } from './render-review.js';
import { version } from './version.js';

/** Template of the sheet. */
const TEMPLATE = 'field-sheet';

/** How a sheet is printed. */
export type SheetOptions = Pick<RenderOptions, 'templates' | 'fonts' | 'page' | 'logo'> & {
  /** Whose paper it is. */
  readonly letterhead?: Letterhead;
};

/**
 * The sheet as a PDF with a form.
 *
 * @param sheet - what it asks
 * @param options - templates, fonts, page; letter where no page is said
 * @returns the bytes; the same for the same sheet and options
 * @throws EngineError, IssuesError `render.…` for a template that cannot be used
 */
export async function fieldSheetPdf(sheet: FieldSheet, options: SheetOptions): Promise<Uint8Array> {
  const { [TEMPLATE]: template, ...partials } = options.templates;
  if (template === undefined) throw new EngineError('render.template.missing', { name: TEMPLATE });
  const view: TemplateRecord = sheetView(sheet);
  const { letterhead, logo } = options;
  const named = letterhead && { letterhead: { name: letterhead.name, address: letterhead.address } };
  const markup = fillTemplate(template, { ...view, letterhead: false, ...named } as TemplateRecord, {
    name: TEMPLATE,
    partials,
  });
  const { mark, project, revision, date, fingerprint } = sheet;
  return renderPdf(markup, {
    fonts: options.fonts,
    drawings: {},
    page: options.page ?? 'letter',
    head: {
      left: `${project} · pump ${mark}${revision === '' ? '' : ` · revision ${revision}`} · ${date}`,
      right: letterhead === undefined ? 'field sheet' : `${letterhead.name} · field sheet`,
    },
    foot: { left: `Made from input ${fingerprint.slice(0, 12)}, pipeborne ${version}`, right: '' },
    title: sheetTitle(sheet),
    subject: `Readings at the installed pump ${mark}`,
    date,
    language: 'en',
    fingerprint,
    producer: `pipeborne ${version}`,
    keywords: keywordsOf(sheet),
    stated: statedOf(sheet),
    attachments: [],
    ...(logo && { logo }),
  });
}
