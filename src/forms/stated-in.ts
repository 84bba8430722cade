/** What a file says it was made from: in hidden fields, or in its keywords where those are gone. */
import type { UnitSystem } from '../units/index.js';
import { FINGERPRINT_KEYWORD, FORM_KIND, STATED, UNITS_KEYWORD } from './compose-sheet.js';
import { wordsOf } from './fill-value.js';
import { idOf } from './match-fields.js';
import type { PdfField } from './pdf/find-fields.js';
import type { OpenPdf } from './pdf/open-pdf.js';

/** What a file says of itself. */
export interface StatedInForm {
  /** Whether it says that it is a field sheet. */
  readonly isOurs: boolean;
  readonly fingerprint?: string;
  /** Digests of what that input describes, where the sheet says them. */
  readonly content?: string;
  readonly mark?: string;
  readonly revision?: string;
  /** Units of its boxes. */
  readonly units?: UnitSystem;
}

/** Longest of these that is taken. */
const LONGEST = 300;

/** Longest line of digests that is taken: some thirty signs a part. */
const LONGEST_CONTENT = 200_000;

/**
 * What a file says it was made from.
 *
 * @param pdf - open PDF
 * @param fields - its fields
 * @returns what is there
 */
export function statedIn(pdf: OpenPdf, fields: readonly PdfField[]): StatedInForm {
  const said = (name: string, longest = LONGEST): string | undefined => {
    const field = fields.find((one) => idOf(one.name, (known) => known === name) !== undefined);
    const words = field && wordsOf(pdf, field.entry('V'))?.trim();
    return words === undefined || words === '' || words.length > longest ? undefined : words;
  };
  const keywords = wordsOf(pdf, pdf.resolve(pdf.about?.entries.get('Keywords'))) ?? '';
  const word = new RegExp(`(?:^|\\s|,)${FINGERPRINT_KEYWORD}([0-9a-f]{16,128})(?=$|\\s|,)`).exec(
    keywords,
  )?.[1];
  const fingerprint = said(STATED.fingerprint) ?? word;
  const content = said(STATED.content, LONGEST_CONTENT);
  const mark = said(STATED.mark);
  const revision = said(STATED.revision);
  const units =
    said(STATED.units) ?? new RegExp(`(?:^|\\s|,)${UNITS_KEYWORD}(us|si)(?=$|\\s|,)`).exec(keywords)?.[1];
  return {
    isOurs: said(STATED.kind) === FORM_KIND || keywords.includes(FORM_KIND),
    ...(fingerprint === undefined ? {} : { fingerprint }),
    ...(content === undefined ? {} : { content }),
    ...(mark === undefined ? {} : { mark }),
    ...(revision === undefined ? {} : { revision }),
    ...(units === 'us' || units === 'si' ? { units } : {}),
  };
}
