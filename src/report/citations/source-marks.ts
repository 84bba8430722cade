/** Numbers the publications of a review, so that a table can cite one by its number and the reader finds it in the list. */
import { type Citation, citationText, type SourceId } from '../../sources/index.js';
import type { ReportContext, View } from '../context.js';
import { type CitedSource, citedSources } from './cited-sources.js';

/** One review asks for its sources many times over. */
const known = new WeakMap<ReportContext, readonly CitedSource[]>();

/**
 * Publications cited in a review, in the order of the list at its end.
 *
 * @param context - results
 * @returns publications by title; the number of each is its place, counted from 1
 */
export function numberedSources(context: ReportContext): readonly CitedSource[] {
  const found =
    known.get(context) ??
    citedSources(
      context.subject.installation,
      context.findings,
      context.subject.layout,
      context.printed.has('bands') ? context.bands : undefined,
    );
  known.set(context, found);
  return found;
}

/** Id of a publication's row in the list of sources. */
export const sourceAnchor = (id: SourceId): string => `source-${id.replaceAll(/[^A-Za-z0-9]+/g, '-')}`;

/**
 * A citation as short as its reader can use it: by number where the review lists its sources, else in full.
 *
 * @param citation - source, clause and confidence
 * @param context - results and reader
 * @returns number and link, or none; the clause and how sure it is
 */
export function shortCitation(citation: Citation, context: ReportContext) {
  const index = numberedSources(context).findIndex((source) => source.id === citation.source);
  const isListed = context.printed.has('sources') && index >= 0;
  return {
    isNumbered: isListed,
    mark: isListed ? String(index + 1) : '',
    to: isListed ? sourceAnchor(citation.source) : '',
    words: isListed
      ? [citation.clause, citation.confidence].filter((word) => word !== '').join(', ')
      : citationText(citation),
  } satisfies View;
}

/** Citations without those said twice. */
export function shortCitations(citations: readonly Citation[], context: ReportContext) {
  const short = citations.map((citation) => shortCitation(citation, context));
  const same = (a: (typeof short)[number], b: (typeof short)[number]): boolean =>
    a.mark === b.mark && a.words === b.words;
  return short.filter((one, index) => short.findIndex((other) => same(other, one)) === index);
}
