import { citedSources } from '../cited-sources.js';
import type { ReportContext, View } from '../context.js';

/**
 * Every publication cited in the review, with the clauses used and how sure their reading is.
 *
 * @param context - results
 * @returns one row per publication
 */
export function sources(context: ReportContext) {
  const cited = citedSources(context.subject.installation, context.findings, context.subject.layout);
  return {
    rows: cited.map((source) => ({
      title: source.title,
      edition: source.edition,
      kind: source.kind,
      clauses: source.clauses.map((clause) => ({ ...clause })),
      hasClauses: source.clauses.length > 0,
    })),
  } satisfies View;
}
