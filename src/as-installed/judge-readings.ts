/** The one place where a reading meets its limit. */
import type { Verdict } from '../judging/finding.js';
import { decides } from '../sheet/field-limit.js';
import type { FieldComparison, FieldSubject, Judge, MeasuredComparison, StatedComparison } from './judge.js';
import type { Judgement } from './judgement.js';

/** Room for the last binary digits of a unit turned there and back: a reading at its limit meets it [-]. */
const ROUNDING = 1e-9;

/**
 * Runs judges.
 *
 * @param judges - the registry
 * @param subject - review, readings, and the line as found
 * @returns judgements in the order of the judges and of their places
 */
export function judgeReadings(judges: readonly Judge[], subject: FieldSubject): readonly Judgement[] {
  return judges.flatMap((judge) =>
    judge
      .compare(subject)
      .map((comparison) =>
        comparison.kind === 'measured'
          ? judgeMeasured(judge, comparison, subject)
          : judgeStated(judge, comparison, subject),
      ),
  );
}

function judgeMeasured(judge: Judge, comparison: MeasuredComparison, subject: FieldSubject): Judgement {
  const { demand, limit, measured, expected, read } = comparison;
  const numbers = {
    measured,
    ...(isUsable(demand) && { demand }),
    ...(limit && { limit: limit.value, limitWords: limit.words, citation: limit.citation }),
    ...(isUsable(read) && { read }),
    ...(isUsable(expected) && { expected }),
  };
  const isComparison = comparison.comparison === true || limit === undefined || !decides(limit.citation);
  const base = { ...baseOf(judge, comparison), ...numbers, comparison: isComparison };
  if (!isUsable(demand)) return { ...base, ...missing(comparison, judge, subject) };
  if (limit === undefined) {
    return { ...base, ...cannotTell(comparison.noLimit ?? 'fieldwork.no-limit', comparison, judge) };
  }
  const ratio = limit.words === 'at least' ? limit.value / demand : Math.abs(demand) / limit.value;
  if (!(Number.isFinite(limit.value) && limit.value > 0) || Number.isNaN(ratio)) {
    return { ...base, ...cannotTell('fieldwork.limit-unusable', comparison, judge) };
  }
  const meets = ratio <= 1 + ROUNDING;
  return { ...base, ratio, ...outcome(meets, judge, comparison) };
}

function judgeStated(judge: Judge, comparison: StatedComparison, subject: FieldSubject): Judgement {
  const { holds, told, wanted, limit } = comparison;
  const isComparison = comparison.comparison === true || (limit !== undefined && !decides(limit.citation));
  const base = {
    ...baseOf(judge, comparison),
    comparison: isComparison,
    wanted,
    ...(told !== undefined && { told }),
    ...(limit && { citation: limit.citation }),
  };
  if (holds === undefined) return { ...base, ...missing(comparison, judge, subject) };
  return { ...base, ...outcome(holds, judge, comparison) };
}

function baseOf({ id, title, part, trade, blocksStart }: Judge, { at, boxes }: FieldComparison) {
  return { judge: id, title, part, trade, at, boxes, blocksStart };
}

type Outcome = Pick<Judgement, 'verdict' | 'reason'>;

function outcome(meets: boolean, { id, title }: Judge, { at, data }: FieldComparison): Outcome {
  if (meets) return { verdict: 'meets' };
  return { verdict: 'exceeds', reason: { code: `fieldwork.${id}.exceeds`, data: { at, title, ...data } } };
}

function cannotTell(code: string, { at, data }: FieldComparison, { title }: Judge): Outcome {
  return { verdict: 'cannot-tell', reason: { code, data: { at, title, ...data } } };
}

/** Why a number is missing: the first box that was told as not read, could not be read, or is empty. */
function missing(comparison: FieldComparison, { title }: Judge, subject: FieldSubject): Outcome {
  const states = comparison.boxes.map((id) => subject.readings.get(id));
  const told = states.find((reading) => reading?.kind === 'not-read');
  const broken = states.find((reading) => reading?.kind === 'unreadable');
  const { at } = comparison;
  const data = { title, ...comparison.data };
  const verdict: Verdict = 'cannot-tell';
  if (broken !== undefined) {
    return { verdict, reason: { code: 'fieldwork.unreadable', data: { at, ...data, found: broken.text } } };
  }
  if (told?.kind === 'not-read' && told.reason !== '') {
    return { verdict, reason: { code: 'fieldwork.not-read', data: { at, ...data, why: told.reason } } };
  }
  return { verdict, reason: { code: 'fieldwork.not-filled', data: { at, ...data } } };
}

function isUsable(value: number | undefined): value is number {
  return value !== undefined && Number.isFinite(value);
}

/**
 * The verdict over all readings: comparisons never count; where nothing was judged, it cannot be told.
 *
 * @param judgements - all of them
 * @returns exceeds before cannot-tell before meets
 */
export function verdictOf(judgements: readonly Pick<Judgement, 'verdict' | 'comparison'>[]): Verdict {
  const words = judgements.filter(({ comparison }) => !comparison).map(({ verdict }) => verdict);
  if (words.includes('exceeds')) return 'exceeds';
  return words.includes('cannot-tell') || !words.includes('meets') ? 'cannot-tell' : 'meets';
}
