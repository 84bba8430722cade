/**
 * The as-installed review as a list of steps:
 *
 *     answers ─ understand ──▶ readings
 *             ─ mergeVisits ─▶ one set of readings
 *             ─ asFound ─────▶ the line solved again as it was found
 *             ─ judge ───────▶ judgements, open items, go or hold
 */

import { asFound } from '../as-found/as-found.js';
import { foundFindings, ONLY_IF_FORCED } from '../as-found/found-findings.js';
import { type Issue, IssuesError } from '../issues/issue.js';
import type { Finding } from '../judging/finding.js';
import { overallVerdict, type Verdict } from '../judging/verdict.js';
import type { Answers } from '../readings/answers.js';
import { DATE_BOX, mergeVisits } from '../readings/merge-visits.js';
import { dateIn } from '../readings/read-box.js';
import type { ReadingsById } from '../readings/reading.js';
import { understand } from '../readings/understand.js';
import type { ReviewSubject } from '../report/compose-review.js';
import { buildSheet } from '../sheet/build-sheet.js';
import { fieldContext } from '../sheet/field-context.js';
import { boxesOf } from '../sheet/sheet.js';
import { type AgentItem, agentItems } from './agent-items.js';
import type { FieldSubject } from './judge.js';
import { judgeReadings } from './judge-readings.js';
import type { Judgement } from './judgement.js';
import { judges } from './judges/all-judges.js';

/** Readings of an earlier visit, for the trend. */
export interface EarlierVisit {
  readonly date: string;
  readonly readings: ReadingsById;
  /** True where it was read with a sheet of another input. */
  readonly otherRevision: boolean;
}

/** Everything that came of a visit. */
export interface AsInstalled extends FieldSubject {
  /** Names of the sheets and files it was made from. */
  readonly files: readonly string[];
  /** Day of the visit, where it was read. */
  readonly date?: string;
  /** What could not be read or does not belong. */
  readonly issues: readonly Issue[];
  readonly judgements: readonly Judgement[];
  /** Checks of the review made again on the line as found. */
  readonly findings: readonly Finding[];
  readonly agentItems: readonly AgentItem[];
  readonly verdict: Verdict;
  readonly decision: 'go' | 'hold';
  readonly earlier: readonly EarlierVisit[];
}

/** How sheets are taken. */
export interface AsInstalledOptions {
  /** Take sheets of another input all the same. */
  readonly otherRevision?: boolean;
  readonly earlier?: readonly EarlierVisit[];
}

/**
 * Judges what was read at an installed unit.
 *
 * @param review - the review of its input
 * @param answers - one or more sheets, as filled
 * @param options - whether another revision is taken, and earlier visits
 * @returns judgements, the line as found, open items, go or hold
 * @throws IssuesError `fieldwork.sheet.…` with every sheet that belongs to another pump or input
 */
export function asInstalled(
  review: ReviewSubject,
  answers: readonly Answers[],
  options: AsInstalledOptions = {},
): AsInstalled {
  const sheet = buildSheet(review);
  const refused = answers.flatMap((each) => belonging(each, sheet, options.otherRevision === true));
  if (refused.some(({ severity }) => severity === 'error')) throw new IssuesError(refused);
  const context = fieldContext(review);
  const understood = answers.map((each) => {
    const units = each.units ?? context.write.system;
    return understand(each, units === context.write.system ? sheet : buildSheet(review, units), units);
  });
  const { readings, issues } = mergeVisits(understood, sheet);
  const found = asFound(context, readings);
  const asked = new Set(boxesOf(sheet).map(({ box }) => box.id));
  const subject: FieldSubject = { ...context, sheet, asked, readings, asFound: found };
  const judgements = judgeReadings(judges, subject);
  const findings = foundFindings(found);
  const items = agentItems(readings);
  const verdict = overallVerdict([
    ...judgements,
    ...(findings.length === 0 ? [] : [{ verdict: overallVerdict(findings), comparison: false }]),
    ...(found.kind === 'fails' ? [{ verdict: 'cannot-tell' as const, comparison: false }] : []),
    ...(items.some(({ closed }) => !closed) ? [{ verdict: 'exceeds' as const, comparison: false }] : []),
  ]);
  const holds =
    judgements.some(blocks) ||
    findings.some(
      ({ verdict: word, comparison, reason }) =>
        !comparison && (word === 'exceeds' || reason?.code === ONLY_IF_FORCED),
    ) ||
    found.kind === 'fails' ||
    items.some(({ blocksStart, closed }) => blocksStart && !closed);
  const date = dateIn(readings, DATE_BOX);
  return {
    ...subject,
    files: answers.map(({ file }) => file),
    ...(date !== undefined && { date }),
    issues: [...refused, ...understood.flatMap((each) => each.issues), ...issues],
    judgements,
    findings,
    agentItems: items,
    verdict,
    decision: holds ? 'hold' : 'go',
    earlier: options.earlier ?? [],
  };
}

/** Whether a judgement keeps the pump from being started: it exceeds, or it must be known first and is not. */
export function blocks({ blocksStart, comparison, verdict }: Judgement): boolean {
  return blocksStart && !comparison && verdict !== 'meets' && verdict !== 'does-not-apply';
}

/** What is wrong with the origin of a sheet. */
function belonging(
  { file, fingerprint, mark }: Answers,
  sheet: { readonly fingerprint: string; readonly mark: string },
  taken: boolean,
): readonly Issue[] {
  if (mark !== undefined && mark !== '' && mark !== sheet.mark) {
    const data = { file, found: mark, wanted: sheet.mark };
    return [{ code: 'fieldwork.sheet.other-pump', severity: 'error', data }];
  }
  if (fingerprint === sheet.fingerprint) return [];
  const severity = taken ? 'warning' : 'error';
  return fingerprint === undefined
    ? [{ code: 'fieldwork.sheet.unmarked', severity, data: { file, wanted: sheet.fingerprint } }]
    : [
        {
          code: 'fieldwork.sheet.other-revision',
          severity,
          data: { file, found: fingerprint, wanted: sheet.fingerprint },
        },
      ];
}
