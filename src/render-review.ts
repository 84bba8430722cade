/** The last step of a review: compose, fill the templates, lay out, paint. Loaded only when a review is printed. */
import type { UnitSystem } from './input/installation.js';
import { EngineError } from './issues/issue.js';
import {
  type Attachment,
  type FontFiles,
  fillTemplate,
  type PageName,
  renderHtml,
  renderPdf,
  type TemplateRecord,
} from './render/index.js';
import { type ComposedReview, composeReview, type ReviewSubject } from './report/compose-review.js';
import type { Reader } from './report/context.js';
import { placeId } from './report/place-id.js';
import { resultsFile } from './report/results-file.js';
import { version } from './version.js';

export type { FontFiles } from './render/index.js';

/** How a review is printed. */
export interface RenderOptions {
  /** Templates by path below the folder of templates, without ending: `review`, `sections/weights`. */
  readonly templates: Readonly<Record<string, string>>;
  /** Bytes of the three faces. */
  readonly fonts: FontFiles;
  /** Who reads it; `engineer` where not said. */
  readonly reader?: Reader;
  /** Units to print in; those of the installation's review where not said. */
  readonly units?: UnitSystem;
  /** Size of the page; letter with US units and A4 with SI units where not said. */
  readonly page?: PageName;
  /** The input as read, attached to the PDF where given. */
  readonly input?: { readonly name: string; readonly text: string };
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
  return renderPdf(markup, {
    fonts: options.fonts,
    drawings: composed.drawings,
    page: options.page ?? (units === 'us' ? 'letter' : 'a4'),
    head: { left: composed.head, right: '' },
    foot: { left: composed.foot, right: '' },
    title: composed.title,
    author: composed.author,
    subject: composed.about,
    date: installation.review.date,
    language: 'en',
    fingerprint: installation.fingerprint,
    producer: `pipeborne ${version}`,
    attachments: [
      ...(options.input === undefined ? [] : [inputFile(options.input)]),
      resultsAttachment(review),
    ],
  });
}

/**
 * The review as one page of HTML.
 *
 * @param review - the review
 * @param options - templates, reader, units
 * @returns text of the page
 */
export function reviewHtml(review: ReviewSubject, options: RenderOptions): string {
  const { composed, markup } = fill(review, options);
  return renderHtml(markup, {
    drawings: composed.drawings,
    title: composed.title,
    language: 'en',
    author: composed.author,
    subject: composed.about,
    foot: composed.foot,
  });
}

interface Filled {
  readonly composed: ComposedReview;
  readonly markup: string;
  readonly units: UnitSystem;
}

function fill(review: ReviewSubject, options: RenderOptions): Filled {
  const units = options.units ?? review.installation.review.units;
  const composed = composeReview(review, { reader: options.reader ?? 'engineer', units, version });
  const { review: master, ...partials } = options.templates;
  if (master === undefined) throw new EngineError('render.template.missing', { name: 'review' });
  const markup = fillTemplate(master, composed.view as TemplateRecord, { name: 'review', partials });
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
