/** Advice as finished text, and on paper. */

import type { UnitSystem } from '../input/installation.js';
import type { TemplateRecord } from '../render/template/template-view.js';
import { adviceView, summaryOf } from '../report/advice/advice-view.js';
import { ownWords } from '../report/words/own-words.js';
import type { AdvisedFile } from './advise.js';
import { fillDocument, type Paper, printDocument } from './print-document.js';

export {
  type AdviceView,
  type AlternativeView,
  adviceView,
  summaryOf,
} from '../report/advice/advice-view.js';

/** How advice is printed. */
export interface AdviceRendering extends Paper {
  readonly units: UnitSystem;
  /** File as given. */
  readonly file: string;
  /** Lines of the file that go and come, one list an alternative. */
  readonly patches: readonly (readonly string[])[];
}

/**
 * What a template sees of advice.
 *
 * @param advised - review and advice
 * @param options - units, file, lines that change
 * @returns strings, truth values and lists
 */
export function advicePage(
  { review, advice }: AdvisedFile,
  { units, file, patches }: Pick<AdviceRendering, 'units' | 'file' | 'patches'>,
): TemplateRecord {
  const { installation } = review;
  const view = adviceView(advice, units);
  const page = {
    title: `What would make ${installation.pump.mark} meet`,
    pump: installation.pump.mark,
    project: installation.review.project,
    file,
    date: installation.review.date,
    fingerprint: installation.fingerprint,
    verdict: view.verdict,
    summary: summaryOf(advice, view),
    alternatives: view.alternatives.map((one, index) => ({
      ...one,
      rows: one.rows.map((row) => ({ ...row, became: row.became === 'same' ? 'stays' : row.became })),
      patch: patches[index] ?? [],
    })),
    hasUnsolved: view.unsolved.length > 0,
    unsolved: view.unsolved,
  };
  return page as unknown as TemplateRecord;
}

/**
 * Advice as PDF.
 *
 * @param advised - review and advice
 * @param options - templates, fonts, page, units, lines that change
 * @returns the bytes; the same for the same advice
 * @throws EngineError `render.…` for a template that cannot be used
 */
export function advicePdf(advised: AdvisedFile, options: AdviceRendering): Promise<Uint8Array> {
  const { installation } = advised.review;
  const title = `What would make ${installation.pump.mark} meet`;
  const about = {
    title,
    subject: `Changes of supports and legs of the installation of pump ${installation.pump.mark}`,
    date: installation.review.date,
    fingerprint: installation.fingerprint,
    units: options.units,
    ...(installation.review.english && { english: installation.review.english }),
    own: [ownWords(installation), options.letterhead],
    head: title,
    headRight: [options.letterhead?.name, installation.review.project].filter(Boolean).join(' · '),
    foot: { before: 'Estimate for review,' },
  };
  return printDocument(
    fillDocument('advice', advicePage(advised, options), options, 'loose'),
    about,
    options,
  );
}
