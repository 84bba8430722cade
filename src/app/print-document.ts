/**
 * The one way onto paper: every document is filled, laid out and painted here, in the style of the firm.
 *
 *     template + view ─ filled ─▶ markup ─ printDocument ─▶ PDF
 */
import type { Drawing } from '../drawing/drawing.js';
import type { Letterhead, UnitSystem } from '../input/installation.js';
import { EngineError } from '../issues/issue.js';
import { type English, englishFor, ownTexts } from '../issues/spelling.js';
import { withoutLooseLinks } from '../render/firm-markup.js';
import type { FontFiles } from '../render/font/typeface.js';
import type { PageName } from '../render/layout/style-sheet.js';
import type { Logo } from '../render/logo/logo-shape.js';
import type { MarkupElement } from '../render/markup.js';
import type { Attachment } from '../render/paint/metadata.js';
import { parseMarkup } from '../render/parse-markup.js';
import { renderPdf } from '../render/render-pdf.js';
import { spelledDrawings, spelledMarkup } from '../render/spelled-document.js';
import { fillTraced } from '../render/template/fill-template.js';
import type { TemplateRecord } from '../render/template/template-view.js';
import { version } from './version.js';

/** What all papers of one firm have in common. */
export interface Paper {
  /** Templates by path below the folder of templates, without ending. */
  readonly templates: Readonly<Record<string, string>>;
  /** Bytes of the three faces. */
  readonly fonts: FontFiles;
  /** Size of the page; letter with US units and A4 with SI units where not said. */
  readonly page?: PageName;
  /** Whose paper it is. */
  readonly letterhead?: Letterhead;
  /** Logo of the letterhead, as `readLogo` gives it. */
  readonly logo?: Logo;
}

/** What one document says of itself, on every page and in the file. */
export interface DocumentAbout {
  readonly title: string;
  readonly subject: string;
  /** ISO 8601; dates the file. */
  readonly date: string;
  /** Hexadecimal digest of the input. */
  readonly fingerprint: string;
  readonly units: UnitSystem;
  /** Spelling; American with US units and British with SI where not said. */
  readonly english?: English;
  /** Data with the words that people wrote themselves, which are never respelled. */
  readonly own?: unknown;
  /** Left of the head of every page. */
  readonly head: string;
  /** Right of the head; the name of the firm where not given. */
  readonly headRight?: string;
  /** Left of the foot; or what stands there before input and version. */
  readonly foot: { readonly whole: string } | { readonly before: string };
  readonly author?: string;
  readonly drawings?: Readonly<Record<string, Drawing>>;
  readonly attachments?: readonly Attachment[];
  /** Words a program may look for in what the file says of itself. */
  readonly keywords?: readonly string[];
  /** What a form says of itself in hidden fields, by name of the field. */
  readonly stated?: Readonly<Record<string, string>>;
}

/**
 * Fills the template of a document, the letterhead of the firm in it.
 *
 * @param name - name of the template
 * @param view - what it sees, but for the letterhead
 * @param paper - templates and letterhead
 * @param links - `loose` where parts may be left out, so that links to them become words
 * @returns the document
 * @throws EngineError `render.template.…`; IssuesError `render.markup.…` with the places in the templates
 */
export function fillDocument(
  name: string,
  view: TemplateRecord,
  { templates, letterhead }: Pick<Paper, 'templates' | 'letterhead'>,
  links: 'loose' | 'strict' = 'strict',
): MarkupElement {
  const { [name]: master, ...partials } = templates;
  if (master === undefined) throw new EngineError('render.template.missing', { name });
  const named = letterhead ? { name: letterhead.name, address: letterhead.address } : false;
  const whole = { ...view, letterhead: named } as TemplateRecord;
  const { text, placeOf } = fillTraced(master, whole, { name, partials });
  return links === 'loose'
    ? withoutLooseLinks(parseMarkup(text, { placeOf, looseLinks: true }))
    : parseMarkup(text, { placeOf });
}

/**
 * A document as PDF.
 *
 * @param markup - the filled document
 * @param about - what it says of itself
 * @param paper - fonts, page, letterhead
 * @returns the bytes; the same for the same document and paper
 * @throws EngineError, IssuesError `render.…` for a document that cannot be laid out
 */
export function printDocument(
  markup: MarkupElement,
  about: DocumentAbout,
  paper: Omit<Paper, 'templates'>,
): Promise<Uint8Array> {
  const { fingerprint, foot } = about;
  const written = inItsSpelling(markup, about.drawings ?? {}, about);
  return renderPdf(written.markup, {
    fonts: paper.fonts,
    drawings: written.drawings,
    page: paper.page ?? pageOf(about.units),
    head: { left: about.head, right: about.headRight ?? paper.letterhead?.name ?? '' },
    foot: {
      left:
        'whole' in foot
          ? foot.whole
          : `${foot.before} input ${fingerprint.slice(0, 12)}, pipeborne ${version}`,
      right: '',
    },
    title: about.title,
    ...(about.author === undefined ? {} : { author: about.author }),
    subject: about.subject,
    date: about.date,
    language: LANGUAGE,
    fingerprint,
    producer: `pipeborne ${version}`,
    attachments: about.attachments ?? [],
    ...(about.keywords && { keywords: about.keywords }),
    ...(about.stated && { stated: about.stated }),
    ...(paper.logo && { logo: paper.logo }),
  });
}

/**
 * A document and its drawings in their spelling.
 *
 * @param markup - the filled document, in British spelling
 * @param drawings - its drawings, by name
 * @param about - units, spelling and what people wrote themselves
 * @returns both, respelled where they are to be
 */
export function inItsSpelling(
  markup: MarkupElement,
  drawings: Readonly<Record<string, Drawing>>,
  about: Pick<DocumentAbout, 'units' | 'english' | 'own'>,
): { readonly markup: MarkupElement; readonly drawings: Readonly<Record<string, Drawing>> } {
  const english = englishFor(about.units, about.english);
  const own = ownTexts(about.own);
  return {
    markup: spelledMarkup(markup, english, own),
    drawings: spelledDrawings(drawings, english, own),
  };
}

/** Language every document is written in, as the file says. */
export const LANGUAGE = 'en';

/** Page that goes with the units a document is printed in. */
function pageOf(units: UnitSystem): PageName {
  return units === 'us' ? 'letter' : 'a4';
}
