import type { Finding } from '../../../judging/finding.js';
import { ratioReach } from '../../../judging/reach.js';
import type { ThingEffect } from '../../../study/bounds/bounds.js';
import { shortCitation } from '../../citations/source-marks.js';
import type { ReportContext, View } from '../../context.js';
import { findingRow } from '../../words/finding-row.js';
import { thingRange } from '../../words/unstated-words.js';

/** Ratios that stay below this over all bounds are counted, not listed [-]. */
const LISTED_FROM = 0.5;

/**
 * What nobody stated and the verdicts rest on, ranked by what it does; the verdicts with their least and largest ratio;
 * and what only a test on site can settle.
 *
 * @param context - results with their bounds
 * @returns table rows; omitted where everything is stated
 */
export function unstated(context: ReportContext) {
  const { bounds, findings, write } = context;
  const things = bounds?.things ?? [];
  const judged = findings.filter(
    ({ comparison, low, high }) => !comparison && low !== undefined && high !== undefined,
  );
  const moved = judged.filter(({ low = 0, high = 0 }) => high - low > 1e-3 * Math.abs(high));
  const listed = moved.filter(
    (finding) => finding.verdict === 'cannot-tell' || (ratioReach(finding).high ?? 0) > LISTED_FROM,
  );
  const onSite = findings.filter(({ siteTest, comparison }) => siteTest !== undefined && !comparison);
  const turned = findings.filter(({ turnedBy, comparison }) => turnedBy !== undefined && !comparison);
  return {
    omitted: things.length === 0,
    trials: String(bounds?.trials ?? 0),
    failed: String(bounds?.failed ?? 0),
    hasFailed: (bounds?.failed ?? 0) > 0,
    count: String(things.length),
    turnedCount: turned.length === 1 ? 'One verdict is' : `${turned.length} verdicts are`,
    hasTurned: turned.length > 0,
    things: things.map((effect) => thingRow(effect, context)),
    rows: listed.map((finding) => boundRow(finding, context)),
    hasRows: listed.length > 0,
    others: String(judged.length - listed.length),
    hasOthers: judged.length > listed.length,
    onSite: onSite.map((finding) => ({
      at: finding.at,
      title: finding.title,
      test: finding.siteTest ?? '',
      todo: findingRow(finding, context).todo,
    })),
    hasOnSite: onSite.length > 0,
    ratioUnit: write.unit('ratio'),
  } satisfies View;
}

function thingRow({ thing, turns, most }: ThingEffect, context: ReportContext) {
  const { write } = context;
  const effect =
    turns.length > 0
      ? `turns ${turns.map(({ title, at }) => `${title}: ${at}`).join('; ')}`
      : most === undefined
        ? thing.movesLoads
          ? 'changes no verdict that counts'
          : 'followed in the natural frequencies only'
        : `${most.title}, ${most.at}: ratio ${write.ratio(most.from)} to ${write.ratio(most.to)}`;
  return {
    what: thing.what,
    path: thing.path,
    say: thing.say,
    range: thingRange(thing, write),
    source: shortCitation(thing.citation, context),
    effect,
    turns: turns.length > 0,
  };
}

function boundRow(finding: Finding, context: ReportContext) {
  const { write } = context;
  const { verdict, title, at, turnedBy } = finding;
  const { stated, low, high } = ratioReach(finding);
  return {
    title,
    at,
    section: findingRow(finding, context).section,
    stated: write.ratio(stated),
    low: write.ratio(low),
    high: write.ratio(high),
    verdict: findingRow(finding, context).verdict,
    turnedBy: turnedBy?.join('; ') ?? '',
    open: verdict === 'cannot-tell',
    exceeds: verdict === 'exceeds',
  };
}
