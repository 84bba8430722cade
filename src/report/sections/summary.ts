import type { ReportContext, View } from '../context.js';
import { findingRow, worstFirst } from '../finding-row.js';

/** How many findings page one names. */
const NAMED = 3;

/**
 * Page one: what was reviewed, the verdict, the worst findings and what to do, what it rests on.
 *
 * @param context - results and writer
 * @returns strings of page one
 */
export function summary(context: ReportContext) {
  const { subject, findings, verdict, version } = context;
  const { installation } = subject;
  const { review, service, pump } = installation;
  const judged = findings.filter((finding) => !finding.comparison);
  const count = (word: string): string => String(judged.filter((finding) => finding.verdict === word).length);
  const worst = worstFirst(findings).slice(0, NAMED);
  const last = review.revisions.at(-1);
  return {
    project: review.project,
    location: review.location ?? '',
    client: review.client ?? '',
    preparedBy: review.preparedBy ?? '',
    engineerOfRecord: review.engineerOfRecord ?? '',
    status: review.status,
    date: review.date,
    revision: last?.mark ?? '',
    pump: pump.mark,
    build: pump.build,
    mount: pump.mount,
    service: service.name,
    duty: dutyText(context),
    version,
    fingerprint: installation.fingerprint.slice(0, 16),
    verdict,
    isMeets: verdict === 'meets',
    isExceeds: verdict === 'exceeds',
    isCannotTell: verdict === 'cannot-tell',
    judgedCount: String(judged.filter((finding) => finding.verdict !== 'does-not-apply').length),
    meetsCount: count('meets'),
    exceedsCount: count('exceeds'),
    cannotTellCount: count('cannot-tell'),
    doesNotApplyCount: count('does-not-apply'),
    comparisonCount: String(findings.filter((finding) => finding.comparison).length),
    worst: worst.map((finding, index) => ({ ...findingRow(finding, context), rank: String(index + 1) })),
    hasWorst: worst.length > 0,
    worstAreFaults: worst.some((finding) => finding.verdict !== 'meets'),
    assumptionCount: String(context.assumptions.length),
    bearingCount: String(context.assumptions.filter((one) => one.bearsOn.length > 0).length),
    hasAssumptions: context.assumptions.length > 0,
    notes: review.notes,
    hasNotes: review.notes.length > 0,
  } satisfies View;
}

function dutyText(context: ReportContext): string {
  const { duty, motor } = context.subject.installation.pump;
  const { write } = context;
  return [
    write.quantity(duty.flow, 'flow'),
    write.quantity(duty.head, 'head'),
    write.quantity(motor.power, 'power'),
    write.quantity(motor.speed, 'speed', { significant: 4 }),
  ].join(', ');
}
