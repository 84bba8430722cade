import { isOf, ruleOf } from '../../checks/all-checks.js';
import type { Finding } from '../../judging/finding.js';
import { citationText } from '../../sources/index.js';
import type { ReportContext, View } from '../context.js';
import { findingRow } from '../words/finding-row.js';
import { bothText } from '../words/flange-words.js';

/**
 * Table of the spaces: what each is for, how much is needed and found, what stands nearest and how much is missing.
 *
 * @param context - findings and writer
 * @returns rows, one for each space that is judged
 */
export function spaceRows(context: ReportContext) {
  return context.findings
    .filter((finding) => ruleOf(finding)?.section === 'access')
    .filter(({ verdict }) => verdict !== 'does-not-apply')
    .map((finding) => spaceRow(finding, context));
}

function spaceRow(finding: Finding, context: ReportContext) {
  const { reason, demand, limit, verdict, basis } = finding;
  const data = reason?.data ?? {};
  const text = (key: string): string => (typeof data[key] === 'string' ? String(data[key]) : '');
  const short = typeof data.short === 'number' ? data.short : 0;
  const move = typeof data.move === 'number' ? data.move : undefined;
  const { write } = context;
  const row = findingRow(finding, context);
  return {
    purpose: finding.title,
    at: text('label') === '' || text('label') === finding.at ? finding.at : `${finding.at}, ${text('label')}`,
    needed: write.distance(limit),
    found: foundText(finding, write.distance(demand)),
    nearest: text('obstacle') === '' ? '–' : text('obstacle'),
    short: verdict === 'exceeds' && short > 0 ? bothText(short) : '–',
    move: move === undefined ? '' : `${bothText(move)} ${text('way')}`,
    hasMove: move !== undefined,
    whose: basis.source === 'input' ? basis.clause : citationText(basis),
    verdict,
    exceeds: verdict === 'exceeds',
    what: row.what,
    todo: row.todo,
  } satisfies View;
}

/** Nothing where it is blocked from the start, free where nothing stands within reach. */
function foundText({ verdict, demand, reason }: Finding, text: string): string {
  if (demand === undefined || (verdict === 'exceeds' && demand === 0))
    return verdict === 'exceeds' ? 'nothing' : text;
  return verdict === 'meets' && reason?.data.obstacle === '' ? 'free' : text;
}

/**
 * Table of what one person might lift by hand; a comparison.
 *
 * @param context - findings and writer
 * @returns rows, heaviest first
 */
export function handRows(context: ReportContext) {
  return context.findings
    .filter((finding) => isOf(finding, 'hand-lift') && finding.verdict !== 'does-not-apply')
    .sort((a, b) => (b.demand ?? 0) - (a.demand ?? 0))
    .map((finding) => ({
      piece: finding.at,
      weight: context.write.quantity(finding.demand, 'force'),
      limit: context.write.quantity(finding.limit, 'force'),
      byHand: finding.verdict === 'meets',
    }));
}
