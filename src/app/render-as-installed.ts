/** The as-installed review as PDF. Loaded only when it is printed. */
import type { AsInstalled } from '../as-installed/as-installed.js';
import { asInstalledView, titleOf } from '../as-installed/compose-as-installed.js';
import type { TemplateRecord } from '../render/template/template-view.js';
import { ownWords } from '../report/words/own-words.js';
import { fillDocument, type Paper, printDocument } from './print-document.js';
import { version } from './version.js';

/** How it is printed. */
export type AsInstalledPrint = Paper;

/**
 * The as-installed review as PDF.
 *
 * @param visit - what came of the visit
 * @param options - templates, fonts, page
 * @returns the bytes; the same for the same visit and options
 * @throws EngineError, IssuesError `render.…` for a template that cannot be used
 */
export async function asInstalledPdf(visit: AsInstalled, options: AsInstalledPrint): Promise<Uint8Array> {
  const markup = fillDocument('as-installed', asInstalledView(visit, version) as TemplateRecord, options);
  const { pump, review, fingerprint } = visit.review.installation;
  const date = visit.date ?? review.date;
  const about = {
    title: titleOf(visit),
    author: options.letterhead?.name ?? '',
    subject: `Readings at the installed pump ${pump.mark}`,
    date,
    fingerprint,
    units: visit.write.system,
    ...(review.english && { english: review.english }),
    own: [ownWords(visit.review.installation), options.letterhead],
    head: `${review.project} · pump ${pump.mark} · as installed · ${date}`,
    foot: { before: 'Readings against an estimate,' },
  };
  return printDocument(markup, about, options);
}
