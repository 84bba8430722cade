import { TRADES } from '../../../checks/rule-facts.js';
import type { Finding } from '../../../judging/finding.js';
import { isOpen } from '../../../judging/verdict.js';
import { workedMark } from '../../calculations/worked-mark.js';
import { shortCitations } from '../../citations/source-marks.js';
import type { ReportContext, View } from '../../context.js';
import {
  findingRow,
  isAdvice,
  isScope,
  isToldApart,
  isWorthReading,
  worstFirst,
} from '../../words/finding-row.js';
import { placeId } from '../../words/place-id.js';
import { tradeOf } from '../../words/trades.js';

/**
 * For the engineer every finding, by check in the order the checks ran; for others what has to be acted on, by trade.
 *
 * @param context - findings and writer
 * @returns groups of rows
 */
export function findings(context: ReportContext) {
  const full = context.reader === 'engineer';
  const told = context.findings.filter((finding) => !isToldApart(finding, context));
  const checks = full ? [...new Set(told.map((finding) => finding.check))] : [];
  // Advice of the trade is no verdict; who builds the line reads it after what is.
  const listed = full ? [] : [...worstFirst(told).filter(isWorthReading), ...told.filter(isAdvice)];
  const actions = listed.filter((finding) => !isScope(finding));
  const scope = full ? [] : told.filter((finding) => isScope(finding) && finding.verdict !== 'meets');
  return {
    full,
    groups: checks.map((check) =>
      group(
        told.filter((finding) => finding.check === check),
        context,
      ),
    ),
    hasRatios: context.findings.some((finding) => finding.ratio !== undefined),
    near: actions.filter(({ verdict }) => verdict === 'meets').map((finding) => findingRow(finding, context)),
    hasNear: actions.some(({ verdict }) => verdict === 'meets'),
    trades: TRADES.map((trade) => ({
      trade,
      rows: actions
        .filter((finding) => isOpen(finding) && tradeOf(finding) === trade)
        .map((finding) => ({
          ...findingRow(finding, context),
          hasLimit: finding.limit !== undefined,
          hasDemand: finding.demand !== undefined,
        })),
    })).filter(({ rows }) => rows.length > 0),
    hasActions: actions.some(isOpen),
    scope: scope.map((finding) => findingRow(finding, context)),
    hasScope: scope.length > 0,
    leftOut: String(told.length - actions.length - scope.length),
    hasLeftOut: told.length > actions.length + scope.length,
    hasPractice: told.length < context.findings.length,
  } satisfies View;
}

function group(found: readonly Finding[], context: ReportContext) {
  const first = found[0];
  const rows = found.map((finding) => ({ ...findingRow(finding, context), ...workedMark(finding, context) }));
  const judged = rows.filter((row) => row.verdict !== 'does-not-apply');
  const silent = rows.filter((row) => row.verdict === 'does-not-apply' && row.what === '');
  const remarks = remarksOf(rows);
  // What is said of one place stands below its row; what is said of several, or of none, at the end of the group.
  const own = (row: (typeof rows)[number]) =>
    remarks.find((remark) => remark.isOfOne && remark.what === row.what && row.what !== '');
  return {
    title: first?.title ?? '',
    anchor: `check-${placeId(first?.check ?? '')}`,
    rows: judged.map((row) => {
      const remark = own(row);
      return {
        ...row,
        hasRemark: remark !== undefined,
        remark: remark?.what ?? '',
        remedy: remark?.todo ?? '',
      };
    }),
    notApplying: silent.map((row) => row.at).join(', '),
    hasNotApplying: silent.length > 0,
    comparison: found.every((finding) => finding.comparison),
    bases: shortCitations(
      found.map((finding) => finding.basis),
      context,
    ),
    remarks: remarks.filter((remark) => !judged.some((row) => own(row) === remark)),
  };
}

/** What is to be said beside the table, places that have the same said together. */
function remarksOf(rows: readonly ReturnType<typeof findingRow>[]) {
  const sayings = [...new Set(rows.map((row) => row.what).filter((what) => what !== ''))];
  return sayings.map((what) => {
    const about = rows.filter((row) => row.what === what);
    return {
      what,
      todo: about[0]?.todo ?? '',
      at: about.map((row) => row.at).join(', '),
      doesNotApply: about.every((row) => row.verdict === 'does-not-apply'),
      isOfOne: about.length === 1,
    };
  });
}
