import { citationOf, givenIn } from '../../analysis/citation-of.js';
import type { Subject } from '../../analysis/subject.js';
import { findSpan } from '../../catalog/index.js';
import type { PlacedSpan } from '../../model/layout/layout.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';

const TABLE: Citation = { source: 'mss-sp-69', clause: 'table of hanger spacing', confidence: 'two sources' };

/** Share of the straight-pipe span left where the pipe changes direction within it; read as 0.65 to 0.85 [-]. */
const BENT_SHARE = 0.75;

/** A span is level when no more than this share of it rises [-]. */
const RISING_SHARE = 0.05;

/**
 * Spans between supports stay within the table, or within the user's own longest span.
 *
 * Why: the table keeps sag and bending of water-filled pipe small enough to drain and to last. It is made for straight
 * level pipe without lumps, so with a valve, a bend or a riser in the span it is printed as a comparison and the
 * stress check decides. The user's own rule holds for every span. A span that only rises, or holds the pump, is none.
 */
export const supportSpan = defineCheck({
  id: 'support-span',
  title: 'Support span',
  trade: 'Pipe fitter',
  section: 'support-loads',
  dependsOn: ['supports'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'start',
  consequence: 'hurt or break',
  unit: 'm',
  basis: [TABLE],
  exceeds: 'checks.support-span.exceeds',
  noPlace: 'checks.support-span.no-place',
  places: ({ layout }) =>
    layout.spans.filter((span) => !span.pump && !(span.level <= RISING_SHARE * span.length)),
  at: ({ from, to }) => `${from} to ${to}`,
  demands: (span, subject) => [demandAt(span, subject)],
});

function demandAt(span: PlacedSpan, subject: Subject): Demand {
  const longest = subject.installation.limits.span.longest;
  const common = { kind: 'compared' as const, demand: span.level, data: { size: span.section.name } };
  if (longest !== undefined) {
    return { ...common, limit: longest.value, basis: citationOf(longest, givenIn('longest span')) };
  }
  const { nps, material } = span.section;
  const row = nps === undefined ? undefined : findSpan({ nps, material });
  const rises = span.length - span.level > RISING_SHARE * span.length;
  const remark = span.lumps
    ? 'checks.support-span.lumps'
    : rises
      ? 'checks.support-span.rises'
      : span.bent
        ? 'checks.support-span.bent'
        : undefined;
  const limit = row && (span.bent ? row.value * BENT_SHARE : row.value);
  return {
    ...common,
    limit,
    missing: 'checks.support-span.no-table',
    ...(row && { basis: row.citation }),
    ...(remark !== undefined && { comparison: true, remark, advice: remark }),
  };
}
