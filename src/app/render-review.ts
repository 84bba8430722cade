/** The last step of a review: compose, fill the templates, lay out, paint. Loaded only when a review is printed. */

import type { UnitSystem } from '../input/installation.js';
import type { Firm } from '../input/read-firm.js';
import { renderHtml } from '../render/html/render-html.js';
import type { MarkupElement } from '../render/markup.js';
import type { Attachment } from '../render/paint/metadata.js';
import { type ComposedReview, composeReview, type ReviewSubject } from '../report/compose-review.js';
import type { Reader } from '../report/context.js';
import { resultsFile } from '../report/results/results-file.js';
import { ownWords } from '../report/words/own-words.js';
import { placeId } from '../report/words/place-id.js';
import { fillReview } from './fill-review.js';
import { inItsSpelling, LANGUAGE, type Paper, printDocument } from './print-document.js';
import { version } from './version.js';

export type { FontFiles } from '../render/font/typeface.js';
export type { Logo } from '../render/logo/logo-shape.js';

/** How a review is printed. */
export interface RenderOptions extends Omit<Paper, 'letterhead'> {
  /** Who reads it; `engineer` where not said. */
  readonly reader?: Reader;
  /** Units to print in; those of the installation's review where not said. */
  readonly units?: UnitSystem;
  /** The input as read, attached to the PDF where given. */
  readonly input?: { readonly name: string; readonly text: string };
  /** The firm's own style, as `readFirm` gives it. A letterhead in the input comes before that of the firm. */
  readonly firm?: Partial<Firm>;
}

/**
 * The review as PDF.
 *
 * @param review - the review
 * @param options - templates, fonts, reader, units, page, input
 * @returns the bytes
 */
export async function reviewPdf(review: ReviewSubject, options: RenderOptions): Promise<Uint8Array> {
  const { composed, markup, units } = fill(review, options);
  const { installation } = review;
  const about = {
    title: composed.title,
    author: composed.author,
    subject: composed.about,
    date: installation.review.date,
    fingerprint: installation.fingerprint,
    units,
    head: composed.head,
    headRight: composed.firm,
    foot: { whole: composed.foot },
    drawings: composed.drawings,
    ...spellingOf(review),
    attachments: [
      ...(options.input === undefined ? [] : [inputFile(options.input)]),
      resultsAttachment(review),
    ],
  };
  return printDocument(markup, about, options);
}

/**
 * The review as one page of HTML.
 *
 * @param review - the review
 * @param options - templates, reader, units
 * @returns text of the page
 */
export function reviewHtml(review: ReviewSubject, options: RenderOptions): string {
  const { composed, markup, units } = fill(review, options);
  const written = inItsSpelling(markup, composed.drawings, { units, ...spellingOf(review) });
  return renderHtml(written.markup, {
    drawings: written.drawings,
    title: composed.title,
    language: LANGUAGE,
    author: composed.author,
    subject: composed.about,
    foot: composed.foot,
    ...(options.logo && { logo: options.logo }),
  });
}

/** The spelling the file asks for, and its own words. */
function spellingOf({ installation }: ReviewSubject) {
  const { english } = installation.review;
  return { own: ownWords(installation), ...(english && { english }) };
}

interface Filled {
  readonly composed: ComposedReview;
  readonly markup: MarkupElement;
  readonly units: UnitSystem;
}

function fill(review: ReviewSubject, options: RenderOptions): Filled {
  const units = options.units ?? review.installation.review.units;
  const reader = options.reader ?? 'engineer';
  const { letterhead, cautions, outline } = options.firm ?? {};
  const order = outline?.[reader];
  const composed = composeReview(review, {
    reader,
    units,
    version,
    firm: {
      ...(letterhead && { letterhead }),
      ...(cautions && { cautions }),
      ...(order && { outline: order }),
    },
  });
  const markup = fillReview(composed, {
    templates: options.templates,
    headings: options.firm?.headings ?? {},
    hasOwnOrder: order !== undefined,
  });
  return { composed, markup, units };
}

/** The results as `--results` writes them, to the byte. */
function resultsAttachment(review: ReviewSubject): Attachment {
  const text = `${JSON.stringify(resultsFile(review, review.findings, { version }), null, 2)}\n`;
  return {
    name: `${placeId(review.installation.pump.mark) || 'pump'}-results.json`,
    mime: 'application/json',
    bytes: new TextEncoder().encode(text),
    description: 'The results of this review for machines, in SI units.',
    relation: 'data',
  };
}

function inputFile({ name, text }: { readonly name: string; readonly text: string }): Attachment {
  const base = name.split(/[/\\]/).at(-1) ?? name;
  const isJson = base.toLowerCase().endsWith('.json');
  return {
    name: base === 'standard input' ? 'input.yaml' : base,
    mime: isJson ? 'application/json' : 'application/yaml',
    bytes: new TextEncoder().encode(text),
    description: 'The input this review was made from.',
    relation: 'source',
  };
}
