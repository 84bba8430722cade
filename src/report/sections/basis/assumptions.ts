import { shortCitation } from '../../citations/source-marks.js';
import type { ReportContext, View } from '../../context.js';

/** Checks named beside an assumption; the rest are counted. */
const LISTED = 3;

/**
 * Everything the file did not say and that was taken instead, ranked by what it bears on.
 *
 * @param context - ranked assumptions
 * @returns table rows
 */
export function assumptions(context: ReportContext) {
  return {
    full: context.reader === 'engineer',
    rows: context.assumptions.map(({ assumption, mark, bearsOn, nearest }) => ({
      mark,
      what: assumption.what,
      value: assumption.value,
      path: assumption.path,
      source: shortCitation(assumption.citation, context),
      effect: assumption.effect,
      bearsOn: bearsOn.slice(0, LISTED).join('; '),
      more: String(bearsOn.length - LISTED),
      hasMore: bearsOn.length > LISTED,
      touches: bearsOn.length > 0,
      nearest: context.write.ratio(nearest),
    })),
    notes: context.subject.installation.review.notes,
    hasNotes: context.subject.installation.review.notes.length > 0,
    hasRows: context.assumptions.length > 0,
    count: String(context.assumptions.length),
    bearing: String(context.assumptions.filter((one) => one.bearsOn.length > 0).length),
  } satisfies View;
}
