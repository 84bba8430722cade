/**
 * Every publication the product relies on, by a short id that is a promise: reports, catalogue rows, checks
 * and tests cite these ids, and the compiler refuses any other.
 *
 * How sure we are of a value is not a property of the book but of the reading, so it stands in the citation.
 */
import { books } from './books.js';
import { practice } from './practice.js';
import type { Source } from './source.js';
import { standards } from './standards.js';

export type { Source } from './source.js';

/** All sources by id. */
export const sources = { ...standards, ...books, ...practice } as const;

/** Id of a known publication. */
export type SourceId = keyof typeof sources;

/**
 * How a value was obtained from its source.
 *
 * - `read`: read in a page or file that reproduces the source;
 * - `two sources`: two or more independent places agree;
 * - `memory`: written from memory of the source, not seen on a page;
 * - `common practice`: a custom of the trade, no published source;
 * - `computed`: calculated here from values that carry their own source.
 */
export type Confidence = 'read' | 'two sources' | 'memory' | 'common practice' | 'computed';

/** Where a value or rule comes from, and how sure we are of it. */
export interface Citation {
  readonly source: SourceId;
  /** Paragraph, table or page; empty when the source as a whole is meant. */
  readonly clause: string;
  readonly confidence: Confidence;
}

/**
 * One printable line for a citation.
 *
 * @param citation - source id, clause and confidence
 * @returns for example `ASME B31.9 (2004), para 902.3.2(d), read`
 */
export function citationText(citation: Citation): string {
  const source: Source = sources[citation.source];
  const clause = citation.clause === '' ? '' : `, ${citation.clause}`;
  return `${source.title} (${source.edition})${clause}, ${citation.confidence}`;
}
