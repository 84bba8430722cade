import type { Finding } from '../../judging/finding.js';
import type { ReportContext } from '../context.js';
import { calculationOf } from './calculation-plan.js';

/**
 * Number of the worked calculation behind a finding: its own, or `as` that of the governing place.
 *
 * @param finding - finding
 * @param context - results and writer
 * @returns number and link as printed
 */
export function workedMark(finding: Finding, context: ReportContext) {
  const worked = calculationOf(finding, context);
  return {
    isWorked: worked !== undefined,
    isWorkedAlike: worked?.isOwn === false,
    worked: worked?.mark ?? '',
    workedAt: worked?.to ?? '',
  };
}
