import type { ReportContext, View } from '../../context.js';

/**
 * Lines to sign, space for the seal, and the table of revisions.
 *
 * @param context - review data
 * @returns names as far as given
 */
export function signature(context: ReportContext) {
  const { review, fingerprint, pump } = context.subject.installation;
  return {
    pump: pump.mark,
    project: review.project,
    status: review.status,
    preparedBy: review.preparedBy ?? '',
    engineerOfRecord: review.engineerOfRecord ?? '',
    revisions: review.revisions.map((revision) => ({ ...revision })),
    hasRevisions: review.revisions.length > 0,
    fingerprint,
    version: context.version,
    isPreliminary: review.status === 'preliminary',
  } satisfies View;
}
