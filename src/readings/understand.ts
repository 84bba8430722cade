/** From answers as filled to readings in SI: nothing is dropped, nothing is guessed. */
import { nearMiss } from '../input/near-miss.js';
import { type Coded, type Issue, issueOf } from '../issues/issue.js';
import { boxOfItem } from '../sheet/box-of-item.js';
import { doubtOf } from '../sheet/plausible.js';
import { type Box, boxesOf, type FieldSheet, notReadBox } from '../sheet/sheet.js';
import type { UnitSystem } from '../units/index.js';
import type { Answer, AnswerPlace, Answers } from './answers.js';
import type { FieldReading, ReadingsById, ReadingValue } from './reading.js';
import { tradeChoice } from './trade-words.js';
import { understandDate } from './understand-date.js';
import { isNumberCode, understandNumber } from './understand-number.js';

/** Readings of one sheet, and everything in it that could not be understood. */
export interface Understood {
  readonly file: string;
  readonly readings: ReadingsById;
  /** What was unreadable, not on this sheet, or told as not read without a reason. */
  readonly issues: readonly Issue[];
}

/**
 * Understands the answers of one sheet.
 *
 * @param answers - as filled
 * @param sheet - the sheet of the review they are held against
 * @param system - units of the sheet
 * @returns readings by the ids of their boxes, with issues
 */
export function understand(answers: Answers, sheet: FieldSheet, system: UnitSystem): Understood {
  const boxes = new Map(boxesOf(sheet).map(({ box }) => [box.id, box]));
  const readings = new Map<string, FieldReading>();
  const issues: Issue[] = [...answers.issues];
  for (const answer of answers.answers) {
    const box = boxes.get(answer.id) ?? boxOfItem(answer.id);
    if (box === undefined) {
      issues.push(notOnSheet(answer, [...boxes.keys()]));
      continue;
    }
    const { id, text, place } = answer;
    const value = understoodValue(answer, box, system);
    const unit = box.unit ?? '';
    readings.set(id, { id, text, place, ...(unit !== '' && { unit }), ...value });
    if (value.kind === 'unreadable') issues.push(value.issue);
    if (value.kind === 'number' && value.unlikely === true) {
      const data = { ...spotOf(place), id, label: box.tip, found: short(text) };
      issues.push(issueAt({ code: 'fieldwork.reading.unlikely', data }, place));
    }
    if (value.kind === 'not-read' && value.reason === '') {
      issues.push(
        issueAt(
          { code: 'fieldwork.reading.no-reason', data: { ...spotOf(place), id, label: box.tip } },
          place,
        ),
      );
    }
  }
  for (const [id, reading] of rowReasons(sheet, readings)) if (!readings.has(id)) readings.set(id, reading);
  return { file: answers.file, readings, issues };
}

function understoodValue(answer: Answer, box: Box, system: UnitSystem): ReadingValue {
  const { text, notRead, place } = answer;
  if (notRead !== undefined) return { kind: 'not-read', reason: notRead };
  const told = { id: box.id, label: box.tip, found: short(text) };
  const unreadable = (issue: Coded): ReadingValue => ({ kind: 'unreadable', issue: issueAt(issue, place) });
  const spot = spotOf(place);
  const notApplicable = /^(?:n\.? ?\/? ?a\.?|not applicable|not read|[-–—])(?:$|[\s:;,(]+(.*?)\)?$)/isu.exec(
    text,
  );
  if (box.kind !== 'text' && notApplicable) {
    return { kind: 'not-read', reason: (notApplicable[1] ?? '').trim() };
  }
  switch (box.kind) {
    case 'number': {
      const isConfirmed = CONFIRMED.test(text);
      const isOver = box.id.endsWith('-insulation') && OVER.test(text);
      const plain = text.replace(CONFIRMED, '').replace(isOver ? OVER : /^$/u, '');
      const number = understandNumber(plain, box, system);
      if (!number.ok) {
        const { code } = number;
        return isNumberCode(code)
          ? unreadable({ code, data: { ...spot, ...told } })
          : unreadable({
              code: 'fieldwork.reading.not-a-number',
              data: { ...spot, ...told, unit: box.unit ?? '', cause: code, units: number.data?.units ?? '' },
            });
      }
      if (number.value < 0 && !mayBeNegative(box)) {
        return unreadable({ code: 'fieldwork.reading.negative', data: { ...spot, ...told } });
      }
      const doubt = doubtOf(number.value, box.plausible);
      if (doubt === 'impossible') {
        return unreadable({ code: 'fieldwork.reading.impossible', data: { ...spot, ...told } });
      }
      return {
        kind: 'number',
        value: number.value,
        ...(doubt === 'unlikely' && !isConfirmed && { unlikely: true }),
        ...(isOver && { atLeast: true }),
      };
    }
    case 'choice': {
      const choice = tradeChoice(text, box.choices ?? []);
      return choice === undefined
        ? unreadable({
            code: 'fieldwork.reading.not-a-choice',
            data: { ...spot, ...told, words: [...(box.choices ?? [])] },
          })
        : { kind: 'choice', choice };
    }
    case 'date': {
      const date = understandDate(text);
      return date === undefined
        ? unreadable({ code: 'fieldwork.reading.not-a-day', data: { ...spot, ...told } })
        : { kind: 'date', date };
    }
    case 'tick': {
      const ticked = tradeChoice(text, ['yes', 'no']);
      return ticked === undefined
        ? unreadable({
            code: 'fieldwork.reading.not-a-choice',
            data: { ...spot, ...told, words: ['yes', 'no'] },
          })
        : { kind: 'tick', ticked: ticked === 'yes' };
    }
    default:
      return { kind: 'text' };
  }
}

/** Behind a value that nobody expects: it was looked at again. */
const CONFIRMED = /[\s,;(]*confirmed\)?$/iu;
/** Before a reading of insulation at the end of the scale. */
const OVER = /^(?:>|≥|over|more than)\s*/iu;

/** Readings that have a side: above or below, to the east or the west; and gauges, which may show a vacuum. */
const SIGNED = /\.(rise|offset|holes|lean|along|across|shaft-along|shaft-across)$/u;

function mayBeNegative({ id, dimension }: Box): boolean {
  return (
    dimension === 'pressure' || dimension === 'temperature' || dimension === undefined || SIGNED.test(id)
  );
}

/** A reason beside a row holds for every box of it that was left empty. */
function rowReasons(sheet: FieldSheet, readings: ReadingsById): readonly (readonly [string, FieldReading])[] {
  return sheet.parts.flatMap(({ rows }) =>
    rows.flatMap((row) => {
      const why = notReadBox(row);
      const given = why && readings.get(why.id);
      if (given === undefined) return [];
      const { text, place } = given;
      return row.boxes.map(({ id }) => [id, { id, text, place, kind: 'not-read', reason: text }] as const);
    }),
  );
}

function notOnSheet({ id, place, text }: Answer, known: readonly string[]): Issue {
  const nearest = nearMiss(id, known);
  const data = { ...spotOf(place), id, found: short(text), ...(nearest !== undefined && { nearest }) };
  return issueAt({ code: 'fieldwork.reading.not-on-sheet', data }, place);
}

/** File, and page and field of a PDF, as data of a sentence. */
export function spotOf({ file, page, field }: AnswerPlace) {
  return { file, ...(page !== undefined && { page }), ...(field !== undefined && { field }) };
}

/** A warning with its place: a line, or page and field. */
export function issueAt(told: Coded, place: AnswerPlace): Issue {
  return issueOf('warning', told, place.text);
}

function short(text: string): string {
  return text.length > 60 ? `${text.slice(0, 60)}…` : text;
}
