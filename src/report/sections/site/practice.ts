import { checkValveDistances, suctionRun } from '../../../analysis/pipes/pipe-diameters.js';
import { isOf, ruleOf } from '../../../checks/all-checks.js';
import type { Finding } from '../../../judging/finding.js';
import { isOpen } from '../../../judging/verdict.js';
import { shortCitations } from '../../citations/source-marks.js';
import type { ReportContext, View } from '../../context.js';
import { findingRow } from '../../words/finding-row.js';

/**
 * Installation practice: for the engineer every question that was asked, for others what exceeds or cannot be told.
 * What is not judged stands under the scope.
 *
 * @param context - findings, installation and writer
 * @returns rows by check
 */
export function practice(context: ReportContext) {
  const full = context.reader === 'engineer';
  const rows = context.findings
    .filter((finding) => ruleOf(finding)?.section === 'practice')
    .filter((finding) => full || isOpen(finding))
    .map((finding) => practiceRow(finding, context));
  return {
    full,
    rows,
    hasRows: rows.length > 0,
  } satisfies View;
}

function practiceRow(finding: Finding, context: ReportContext) {
  const basis = ruleOf(finding)?.basis ?? [];
  const row = findingRow(finding, context);
  return {
    ...row,
    found: foundText(finding, context),
    isMarked: row.exceeds && !row.comparison,
    hasTodo: row.todo !== '' && isOpen(finding),
    bases: shortCitations([finding.basis, ...basis], context),
  };
}

/** What was found, lengths of straight pipe also in diameters D; a limit behind it where there is one. */
function foundText(finding: Finding, context: ReportContext): string {
  const { write } = context;
  const row = findingRow(finding, context);
  if (finding.demand === undefined) return '–';
  const diameter = diameterOf(finding, context);
  if (diameter !== undefined)
    return `${write.distance(finding.demand)}, ${write.plain(finding.demand / diameter, 2)} D`;
  return finding.limit === undefined
    ? row.demand
    : `${row.demand}, ${row.isLeast ? 'required' : 'limit'} ${row.limit}`;
}

function diameterOf(finding: Finding, { subject }: ReportContext): number | undefined {
  if (isOf(finding, 'straight-run')) return suctionRun(subject)?.diameter;
  if (!isOf(finding, 'check-valve-distance')) return undefined;
  return checkValveDistances(subject).find(({ name }) => name === finding.at)?.diameter;
}
