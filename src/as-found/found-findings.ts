/** The checks of the review that turn on the supports, made again on the line as found. */

import type { Subject } from '../analysis/subject.js';
import { allChecks } from '../checks/all-checks.js';
import { runCheck } from '../checks/run-check.js';
import { coded } from '../issues/issue.js';
import type { Finding } from '../judging/finding.js';
import type { AsFound } from './as-found.js';

/** Checks that turn on where supports stand and what they carry, and need no more than the line solved again. */
const TURN_ON_SUPPORTS = allChecks.filter(
  ({ dependsOn, cost, standing }) =>
    dependsOn.includes('supports') && cost === 'quick' && standing === 'decides',
);

/** Code of what exceeds only where heights are taken as forced on the pipe. */
export const ONLY_IF_FORCED = 'fieldwork.as-found.only-if-forced';

/**
 * Findings of the line as found.
 *
 * What exceeds with the heights forced on the pipe and not with the pipe cut to them cannot be told: no tape knows which.
 *
 * @param found - the line as found
 * @returns findings; none where nothing read differs from the drawing
 */
export function foundFindings(found: AsFound): readonly Finding[] {
  if (found.kind !== 'solved') return [];
  const forced = findingsOf(found.subject);
  if (found.levelled === undefined) return forced;
  const cut = findingsOf(found.levelled);
  return forced.map((finding): Finding => {
    const other = cut.find(({ check, at }) => check === finding.check && at === finding.at);
    // A place that is there only with the heights forced is no second opinion, and no fail.
    if (finding.verdict !== 'exceeds' || other?.verdict === 'exceeds') return finding;
    const reason = coded(ONLY_IF_FORCED, { at: finding.at, title: finding.title });
    return { ...finding, verdict: 'cannot-tell', reason };
  });
}

function findingsOf(subject: Subject): readonly Finding[] {
  return TURN_ON_SUPPORTS.flatMap((check) => runCheck(check, subject));
}
