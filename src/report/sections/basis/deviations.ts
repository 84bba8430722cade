import type { ReportContext, View } from '../../context.js';
import { findingRow, worstFirst } from '../../words/finding-row.js';

/**
 * Comments for a submittal, one for each thing that exceeds its limit or cannot be told, worst first.
 *
 * @param context - findings and writer
 * @returns numbered comments
 */
export function deviations(context: ReportContext) {
  const open = worstFirst(context.findings).filter((finding) => finding.verdict !== 'meets');
  return {
    pump: context.subject.installation.pump.mark,
    comments: open.map((finding, index) => ({
      ...findingRow(finding, context),
      finding: findingRow(finding, context).number,
      number: String(index + 1),
    })),
    hasComments: open.length > 0,
  } satisfies View;
}
