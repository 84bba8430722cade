/**
 * Judges readings. The comparison itself is the one of `judging`, as for the checks: a judge says what is read and what it
 * keeps to, `compareWithLimit` and `judgeForbidden` say what came of it, and what is added here is the sentence. Where a
 * reading is known only between bounds, judge both ends and ask `overBounds`.
 */
import { coded, type IssueCode } from '../issues/issue.js';
import {
  compareWithLimit,
  judgeForbidden,
  type Outcome,
  type Undecided,
} from '../judging/compare-with-limit.js';
import { decides } from '../report/limits/field-limit.js';
import { barredBy } from './decisions/requirement-of.js';
import type {
  FieldComparison,
  FieldSubject,
  Judge,
  JudgedCode,
  MeasuredComparison,
  StatedComparison,
} from './judge.js';
import type { Judgement } from './judgement.js';

/**
 * Runs judges.
 *
 * @param judges - the registry
 * @param subject - review, readings, and the line as found
 * @returns judgements in the order of the judges and of their places
 */
export function judgeReadings(judges: readonly Judge[], subject: FieldSubject): readonly Judgement[] {
  return judges.flatMap((judge) =>
    judge.compare(subject).map((comparison): Judgement => {
      const judged =
        comparison.kind === 'measured'
          ? judgeMeasured(judge, comparison, subject)
          : judgeStated(judge, comparison, subject);
      const believed = doubted(judged, subject);
      return { ...believed, ...barredBy(believed, subject) };
    }),
  );
}

/** A judgement before it is known what it keeps from happening. */
type Judged = Omit<Judgement, 'bars' | 'how' | 'undisputed' | 'blocksStart'>;

/** A value nobody expects and nobody has confirmed counts against the pump, and never for it. */
function doubted(judgement: Judged, { readings }: FieldSubject): Judged {
  if (judgement.verdict !== 'meets') return judgement;
  const [found] = judgement.boxes.flatMap((id) => {
    const reading = readings.get(id);
    return reading?.kind === 'number' && reading.unlikely === true ? [reading.text] : [];
  });
  if (found === undefined) return judgement;
  const { at, title } = judgement;
  return {
    ...judgement,
    comparison: false,
    verdict: 'cannot-tell',
    reason: { code: 'fieldwork.unlikely', data: { at, title, found } },
  };
}

function judgeMeasured(judge: Judge, comparison: MeasuredComparison, subject: FieldSubject): Judged {
  const { limit, measured, expected, read } = comparison;
  // A reading with the other sign was taken from the other side: its size is what keeps to "at most".
  const sense = limit?.words === 'at least' ? 'at least' : 'within';
  const { why, ...outcome } = compareWithLimit({ demand: comparison.demand, limit: limit?.value, sense });
  const isComparison = comparison.comparison === true || limit === undefined || !decides(limit.citation);
  return {
    ...baseOf(judge, comparison),
    ...outcome,
    measured,
    ...(limit && { limit: limit.value, limitWords: limit.words, citation: limit.citation }),
    ...(isUsable(read) && { read }),
    ...(isUsable(expected) && { expected }),
    comparison: isComparison,
    ...reasonOf(outcome, why, judge, comparison, subject),
  };
}

/** What was not read goes before what has no limit: it is the first thing to do. */
function reasonOf(
  { verdict, demand }: Outcome,
  why: Undecided | undefined,
  judge: Judge,
  comparison: MeasuredComparison,
  subject: FieldSubject,
): Reasoned {
  if (verdict === 'exceeds') return exceeding(judge, comparison);
  if (why === undefined) return {};
  if (demand === undefined) return missing(comparison, judge, subject);
  const code =
    why === 'limit-missing' ? (comparison.noLimit ?? 'fieldwork.no-limit') : 'fieldwork.limit-unusable';
  return untold(code, comparison, judge);
}

function judgeStated(judge: Judge, comparison: StatedComparison, subject: FieldSubject): Judged {
  const { holds, told, wanted, limit } = comparison;
  const isComparison = comparison.comparison === true || (limit !== undefined && !decides(limit.citation));
  const { why, ...outcome } = judgeForbidden({ happens: holds === undefined ? undefined : !holds });
  return {
    ...baseOf(judge, comparison),
    ...outcome,
    comparison: isComparison,
    wanted,
    ...(told !== undefined && { told }),
    ...(limit && { citation: limit.citation }),
    ...(why !== undefined && missing(comparison, judge, subject)),
    ...(outcome.verdict === 'exceeds' && exceeding(judge, comparison)),
  };
}

function baseOf({ id, title, part, trade }: Judge, { at, boxes }: FieldComparison) {
  return { judge: id, title, part, trade, at, boxes };
}

type Reasoned = Pick<Judgement, 'reason'>;

function exceeding({ id, title }: Judge, { at, data }: FieldComparison): Reasoned {
  return { reason: coded(`fieldwork.${id}.exceeds` as IssueCode, { at, title, ...data } as never) };
}

function untold(code: JudgedCode, { at, data }: FieldComparison, { title }: Judge): Reasoned {
  return { reason: coded(code, { ...data, at, title }) };
}

/** Why a number is missing: the first box that was told as not read, could not be read, or is empty. */
function missing(comparison: FieldComparison, { title }: Judge, subject: FieldSubject): Reasoned {
  const states = comparison.boxes.map((id) => subject.readings.get(id));
  const told = states.find((reading) => reading?.kind === 'not-read');
  const broken = states.find((reading) => reading?.kind === 'unreadable');
  const { at } = comparison;
  const data = { title, ...comparison.data };
  if (broken !== undefined) {
    return { reason: { code: 'fieldwork.unreadable', data: { at, ...data, found: broken.text } } };
  }
  if (told?.kind === 'not-read' && told.reason !== '') {
    return { reason: { code: 'fieldwork.not-read', data: { at, ...data, why: told.reason } } };
  }
  return { reason: comparison.noAnswer ?? { code: 'fieldwork.not-filled', data: { at, ...data } } };
}

function isUsable(value: number | undefined): value is number {
  return value !== undefined && Number.isFinite(value);
}
