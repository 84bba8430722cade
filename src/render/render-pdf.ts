/** Markup and drawings to a PDF: parse, style, measure, paginate, paint. Bytes in, bytes out. */
import type { Drawing } from '../drawing/drawing.js';
import { type FontFiles, openTypeface } from './font/typeface.js';
import { measureDocument } from './layout/measure-document.js';
import { paginate } from './layout/paginate.js';
import { styleDocument } from './layout/style-document.js';
import { frameOf, type PageName } from './layout/style-sheet.js';
import type { Logo } from './logo/logo-shape.js';
import type { MarkupElement } from './markup.js';
import { type Attachment, readDate } from './paint/metadata.js';
import { paintDocument } from './paint/paint-document.js';
import type { Running } from './paint/paint-page.js';
import { parseMarkup } from './parse-markup.js';

export interface PdfOptions {
  readonly fonts: FontFiles;
  /** Drawings by the name figures call them by. */
  readonly drawings: Readonly<Record<string, Drawing>>;
  readonly page: PageName;
  readonly head: Running;
  readonly foot: Running;
  readonly title: string;
  readonly author?: string;
  readonly subject: string;
  /** ISO 8601. Printed nowhere by the renderer; it dates the file. */
  readonly date: string;
  readonly language: string;
  /** Hexadecimal digest of the input: the file's identity. */
  readonly fingerprint: string;
  readonly attachments: readonly Attachment[];
  /** Words a program may look for in what the file says of itself. */
  readonly keywords?: readonly string[];
  /** What a form says of itself in hidden fields, by name of the field. */
  readonly stated?: Readonly<Record<string, string>>;
  /** Logo of the letterhead. */
  readonly logo?: Logo;
  /** Name and version of the tool; the left of the foot when not given. */
  readonly producer?: string;
}

/**
 * Renders a review as a PDF.
 *
 * @param markup - a filled template, or what `parseMarkup` made of it
 * @param options - fonts, drawings, page, running words, what the file says of itself, attachments
 * @returns the file; the same input gives the same bytes
 * @throws IssuesError when the markup is not as `markup.ts` allows
 * @throws EngineError `render.unknown-drawing`, `render.table-too-wide`, `render.block-too-tall`,
 *   `render.font-unreadable`, `render.date-unreadable`
 */
export async function renderPdf(markup: MarkupElement | string, options: PdfOptions): Promise<Uint8Array> {
  readDate(options.date);
  const root = typeof markup === 'string' ? parseMarkup(markup) : markup;
  const typeface = openTypeface(options.fonts);
  const frame = frameOf(options.page);
  const styled = styleDocument(root);
  const pieces = measureDocument(styled, frame, typeface.measure, options.drawings, options.logo);
  const pages = paginate(pieces, frame.height);
  return paintDocument(pages, typeface, {
    frame,
    head: options.head,
    foot: options.foot,
    about: {
      title: options.title,
      ...(options.author === undefined ? {} : { author: options.author }),
      subject: options.subject,
      date: options.date,
      language: options.language,
      fingerprint: options.fingerprint,
      ...(options.keywords === undefined ? {} : { keywords: options.keywords }),
      producer: options.producer ?? options.foot.left,
    },
    attachments: options.attachments,
    ...(options.stated === undefined ? {} : { stated: options.stated }),
    ...(options.logo === undefined ? {} : { logo: options.logo }),
  });
}
