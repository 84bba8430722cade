/** The context of the report, for what field work takes from it. */
import type { ReportContext } from '../report/context.js';
import { outline } from '../report/outline.js';
import { rankAssumptions } from '../report/rows/rank-assumptions.js';
import type { FieldContext } from './field-context.js';

/**
 * Context of the report for the commissioning reader.
 *
 * @param context - review and writer
 * @param version - of the program, where it is printed
 * @returns the context sections of a review are written from
 */
export function reportContextOf({ review, write }: FieldContext, version = ''): ReportContext {
  return {
    subject: review,
    findings: review.findings,
    verdict: review.verdict,
    reader: 'commissioning',
    printed: new Set(outline.commissioning),
    version,
    write,
    assumptions: rankAssumptions(review.installation.assumptions, review.findings),
  };
}
