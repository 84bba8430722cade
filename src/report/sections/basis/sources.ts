import { numberedSources, sourceAnchor } from '../../citations/source-marks.js';
import type { ReportContext, View } from '../../context.js';

/**
 * Every publication cited in the review, with the clauses used and how sure their reading is.
 *
 * @param context - results
 * @returns one row per publication
 */
export function sources(context: ReportContext) {
  return {
    rows: numberedSources(context).map((source, index) => ({
      mark: String(index + 1),
      anchor: sourceAnchor(source.id),
      title: source.title,
      edition: source.edition,
      kind: source.kind,
      readings: readingsOf(source.clauses),
      hasClauses: source.clauses.length > 0,
    })),
  } satisfies View;
}

/** Clauses read with the same sureness, together. */
function readingsOf(clauses: readonly { readonly clause: string; readonly confidence: string }[]) {
  const sure = [...new Set(clauses.map(({ confidence }) => confidence))];
  return sure.map((confidence) => ({
    confidence,
    clauses: clauses.filter((one) => one.confidence === confidence).map(({ clause }) => clause),
  }));
}
