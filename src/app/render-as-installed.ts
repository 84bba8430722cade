/** The as-installed review as PDF: compose, fill the template, lay out, paint. Loaded only when it is printed. */
import type { AsInstalled } from '../as-installed/as-installed.js';
import { asInstalledView, titleOf } from '../as-installed/compose-as-installed.js';
import type { Letterhead } from '../input/installation.js';
import { EngineError } from '../issues/issue.js';
import { renderPdf } from '../render/render-pdf.js';
import { fillTemplate } from '../render/template/fill-template.js';
import type { TemplateRecord } from '../render/template/template-view.js';
import type { RenderOptions } from './render-review.js';
import { version } from './version.js';

/** Template of the as-installed review. */
const TEMPLATE = 'as-installed';

/** How it is printed. */
export type AsInstalledPrint = Pick<RenderOptions, 'templates' | 'fonts' | 'page' | 'logo'> & {
  /** Whose paper it is. */
  readonly letterhead?: Letterhead;
};

/**
 * The as-installed review as PDF.
 *
 * @param visit - what came of the visit
 * @param options - templates, fonts, page
 * @returns the bytes; the same for the same visit and options
 * @throws EngineError, IssuesError `render.…` for a template that cannot be used
 */
export async function asInstalledPdf(visit: AsInstalled, options: AsInstalledPrint): Promise<Uint8Array> {
  const { [TEMPLATE]: template, ...partials } = options.templates;
  if (template === undefined) throw new EngineError('render.template.missing', { name: TEMPLATE });
  const view = asInstalledView(visit, version) as TemplateRecord;
  const { letterhead, logo } = options;
  const named = letterhead && { letterhead: { name: letterhead.name, address: letterhead.address } };
  const markup = fillTemplate(template, { ...view, letterhead: false, ...named } as TemplateRecord, {
    name: TEMPLATE,
    partials,
  });
  const { pump, review, fingerprint } = visit.review.installation;
  const date = visit.date ?? review.date;
  return renderPdf(markup, {
    fonts: options.fonts,
    drawings: {},
    page: options.page ?? (visit.write.system === 'us' ? 'letter' : 'a4'),
    head: {
      left: `${review.project} · pump ${pump.mark} · as installed · ${date}`,
      right: letterhead?.name ?? '',
    },
    foot: {
      left: `Readings against an estimate, input ${fingerprint.slice(0, 12)}, pipeborne ${version}`,
      right: '',
    },
    title: titleOf(visit),
    author: letterhead?.name ?? '',
    subject: `Readings at the installed pump ${pump.mark}`,
    date,
    language: 'en',
    fingerprint,
    producer: `pipeborne ${version}`,
    attachments: [],
    ...(logo && { logo }),
  });
}
