import { calculationPlan } from '../../calculations/calculation-plan.js';
import { workedCalculation } from '../../calculations/worked-calculation.js';
import { shortCitation } from '../../citations/source-marks.js';
import type { ReportContext, View } from '../../context.js';
import { findingRow } from '../../words/finding-row.js';

/**
 * Worked calculations: balance of weight, one support by hand, and the governing place of every check.
 *
 * @param context - results and writer
 * @returns calculations as text, each with the finding it gives the number of
 */
export function calculations(context: ReportContext) {
  const all = calculationPlan(context).map(({ question, citation, finding }, index) => {
    const row = finding && findingRow(finding, context);
    return {
      ...workedCalculation(question, context.write),
      mark: String(index + 1),
      ratio: row?.ratio ?? '',
      basis: shortCitation(citation, context),
      hasFinding: row !== undefined,
      finding: row?.number ?? '',
      findingPlace: row?.section ?? '',
    };
  });
  return {
    calculations: all,
    hasCalculations: all.length > 0,
  } satisfies View;
}
