import type { Installation } from '../../input/installation.js';
import type { Finding } from '../../judging/finding.js';
import type { Layout } from '../../model/layout/layout.js';
import { type Citation, type Source, type SourceId, sources } from '../../sources/index.js';
import type { Bands } from '../../study/bands/bands.js';
import { cardCitations } from './card-citations.js';

export interface CitedSource {
  readonly id: SourceId;
  readonly title: string;
  readonly edition: string;
  readonly kind: string;
  readonly clauses: readonly { readonly clause: string; readonly confidence: string }[];
}

/** What bands and samples are worked out by. */
const BANDS: Citation = {
  source: 'gum',
  clause: 'paras 4.3.7 and 5.1.2, independent quantities within limits',
  confidence: 'memory',
};
const SAMPLES: Citation = { source: 'latin-hypercube', clause: 'sampling by strata', confidence: 'memory' };

/**
 * Gathers every citation that stands anywhere in the data of a review: findings, assumptions, catalogue rows,
 * computed values, material curves, ratings, and what the cards for the fitter rest on.
 *
 * @param installation - installation with origins
 * @param findings - findings with bases
 * @param layout - placed parts
 * @param bands - how sure numbers are, where that is printed
 * @returns publications by title, each with the clauses used
 */
export function citedSources(
  installation: Installation,
  findings: readonly Finding[],
  layout: Layout,
  bands?: Bands,
): readonly CitedSource[] {
  const clauses = new Map<SourceId, Map<string, { clause: string; confidence: string }>>();
  const cite = (citation: Citation): void => {
    const known = clauses.get(citation.source) ?? new Map<string, { clause: string; confidence: string }>();
    if (citation.clause !== '') {
      known.set(`${citation.clause}|${citation.confidence}`, {
        clause: citation.clause,
        confidence: citation.confidence,
      });
    }
    clauses.set(citation.source, known);
  };
  for (const finding of findings) cite(finding.basis);
  for (const citation of [...citationsIn(installation), ...cardCitations]) cite(citation);
  for (const citation of citationsIn(layout.flangeJoints)) cite(citation);
  if (bands !== undefined) {
    for (const { citation } of bands.uncertainties) cite(citation);
    cite(BANDS);
    if (bands.sampled !== undefined) cite(SAMPLES);
  }
  for (const id of installation.sourcesUsed ?? []) cite({ source: id, clause: '', confidence: 'read' });
  return [...clauses]
    .map(([id, used]) => {
      const source: Source = sources[id];
      return {
        id,
        title: source.title,
        edition: source.edition,
        kind: source.kind,
        clauses: [...used.values()].sort((a, b) => (a.clause < b.clause ? -1 : a.clause > b.clause ? 1 : 0)),
      };
    })
    .sort((a, b) => (a.title < b.title ? -1 : a.title > b.title ? 1 : 0));
}

/** Walks plain data for citations: objects that hold a known source, a clause and a confidence. */
function citationsIn(data: unknown): readonly Citation[] {
  if (Array.isArray(data)) return data.flatMap(citationsIn);
  if (typeof data !== 'object' || data === null) return [];
  if (isCitation(data)) return [data];
  return Object.values(data).flatMap(citationsIn);
}

function isCitation(data: object): data is Citation {
  return (
    'source' in data &&
    'clause' in data &&
    'confidence' in data &&
    typeof data.source === 'string' &&
    data.source in sources
  );
}
