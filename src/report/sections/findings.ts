import type { Finding } from '../../checks/finding.js';
import { citationText } from '../../sources/index.js';
import type { ReportContext, View } from '../context.js';
import { findingRow, printedFindings } from '../finding-row.js';

/**
 * Every finding, grouped by check in the order the checks ran.
 *
 * @param context - findings and writer
 * @returns groups of rows
 */
export function findings(context: ReportContext) {
  const shown = printedFindings(context);
  const checks = [...new Set(shown.map((finding) => finding.check))];
  return {
    full: context.reader === 'engineer',
    groups: checks.map((check) =>
      group(
        shown.filter((finding) => finding.check === check),
        context,
      ),
    ),
    hasGroups: checks.length > 0,
    hasRatios: context.findings.some((finding) => finding.ratio !== undefined),
    leftOut: String(context.findings.length - shown.length),
    hasLeftOut: shown.length < context.findings.length,
  } satisfies View;
}

function group(found: readonly Finding[], context: ReportContext) {
  const first = found[0];
  const rows = found.map((finding) => findingRow(finding, context));
  const bases = [...new Set(found.map((finding) => citationText(finding.basis)))];
  return {
    title: first?.title ?? '',
    section: rows[0]?.section ?? '',
    rows,
    comparison: found.every((finding) => finding.comparison),
    bases,
    remarks: [...new Set(rows.map((row) => row.what).filter((what) => what !== ''))].map((what) => {
      const about = rows.filter((row) => row.what === what);
      return {
        what,
        todo: about[0]?.todo ?? '',
        at: about.map((row) => row.at).join(', '),
        fault: about.some((row) => row.exceeds),
      };
    }),
    hasRemarks: rows.some((row) => row.what !== ''),
  };
}
