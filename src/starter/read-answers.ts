/** From answers as typed to answers that can be used, or everything that is wrong with them. */
import {
  nominalSize,
  pipeSchedules,
  reducerSmallEnds,
  scheduleLabel,
  spanSizes,
  valveSizes,
} from '../catalog/index.js';
import { isDay } from '../input/schema/labels.js';
import { coded, type Issue, type IssueCode, type IssueDataOf, issueOf } from '../issues/issue.js';
import { sentenceOf } from '../issues/print.js';
import { parseQuantity, type UnitSystem } from '../units/index.js';
import type { Answers, Measured, Size } from './answers.js';
import { ARRANGEMENTS, belongsTo, exampleOf, type Question } from './question.js';
import { type QuestionKey, questions, type RawAnswers } from './questions.js';

/** What reading answers gave. */
export type ReadAnswers =
  | { readonly ok: true; readonly answers: Answers }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/** Longest word an answer may be; the file itself refuses longer ones. */
const LONGEST_TEXT = 200;
/** Arrangement whose questions are listed while none is told. */
const LIKELIEST = 'elbows';
/** Schedule where none is told. */
export const USUAL_SCHEDULE = 'STD';
/** Sizes that pipe, elbows, flanges, valves and spans are all listed in. */
const SIZES = valveSizes({ kind: 'gate', class: '150' }).filter((size) =>
  spanSizes('carbon steel').includes(size),
);

/**
 * What is wrong with one answer.
 *
 * @param question - one of the table [-]
 * @param found - the answer as typed [-]
 * @param units - system of units, for the example [-]
 * @returns an error, or undefined where the answer can be used [-]
 */
export function faultOf(question: Question, found: string, units: UnitSystem): Issue | undefined {
  const why = whyNot(question, found.trim());
  if (why === undefined) return undefined;
  const data = {
    option: `--${question.key}`,
    found,
    asks: question.asks,
    example: exampleOf(question, units),
    ...why,
  };
  return { code: 'starter.unusable', severity: 'error', data };
}

/** A reason, and what may be written where that is a short list. */
type Why = { readonly why: string; readonly words?: readonly string[] } | undefined;

function whyNot({ kind }: Question, found: string): Why {
  if (found === '') return { why: 'it is empty' };
  switch (kind.is) {
    case 'choice': {
      const known = kind.choices.map(({ value }) => value);
      return known.includes(found) ? undefined : { why: 'it is none of the words', words: known };
    }
    case 'quantity':
      return whyNotQuantity(found, kind.dimension);
    case 'insulation':
      return found === 'none' ? undefined : whyNotQuantity(found, 'length');
    case 'size':
      return SIZES.includes(sizeOf(found)?.nps ?? '')
        ? undefined
        : { why: 'it is no size of the tables', words: SIZES.map((size) => `${size} in`) };
    case 'day':
      return isDay(found) ? undefined : { why: 'it is no day of the calendar' };
    case 'text':
      if (found.length > LONGEST_TEXT) return { why: `it is longer than ${LONGEST_TEXT} signs` };
      return /[\p{Cc}\p{Cf}\p{Cs}\u2028\u2029]/u.test(found)
        ? { why: 'it holds signs that cannot be printed' }
        : undefined;
  }
}

function whyNotQuantity(found: string, dimension: Parameters<typeof parseQuantity>[1]): Why {
  const read = parseQuantity(found, dimension);
  if (!read.ok) {
    const { message, hint } = sentenceOf(coded(read.code, read.data));
    return { why: hint === undefined ? message : `${message} (${hint})` };
  }
  if (dimension === 'ratio' && read.value > 1) return { why: 'it is more than the whole' };
  return read.value > 0 || dimension === 'temperature' ? undefined : { why: 'it is not above zero' };
}

/** A bare number is taken as inches, which the file itself does not: the question leaves no uncertainty what is meant. */
function sizeOf(found: string): Size | undefined {
  const nps = nominalSize(found);
  if (nps === undefined) return undefined;
  return { nps, text: /^\s*(nps|dn)\b/iu.test(found) ? found.trim() : `${nps} in` };
}

/**
 * Reads every answer. All that is missing is told in one issue, and all that cannot be used in one each.
 *
 * @param raw - answers as typed [-]
 * @param today - day printed where none is given, `2026-09-14` [-]
 * @returns the answers, or the issues [-]
 */
export function readAnswers(raw: RawAnswers, today: string): ReadAnswers {
  const units: UnitSystem = raw.units === 'si' ? 'si' : 'us';
  const arrangement = ARRANGEMENTS.find((one) => one === raw.arrangement);
  const table: readonly Question[] = questions;
  const issues: Issue[] = [];
  const missing: Question[] = [];
  for (const question of table) {
    const found = raw[question.key as QuestionKey];
    if (found !== undefined && found.trim() !== '') {
      const fault = faultOf(question, found, units);
      if (fault) issues.push(fault);
      else if (!belongsTo(question, arrangement))
        issues.push({
          code: 'starter.not-of-arrangement',
          severity: 'error',
          data: { option: `--${question.key}`, arrangement: arrangement ?? '' },
        });
    } else if (question.otherwise === undefined && belongsTo(question, arrangement ?? LIKELIEST))
      missing.push(question);
  }
  if (missing.length > 0) issues.unshift(missingIssue(missing, units));
  if (issues.length > 0 || arrangement === undefined) return { ok: false, issues };
  const answers = answersOf(raw, arrangement, today);
  const against = contradictions(answers);
  return against.length > 0 ? { ok: false, issues: against } : { ok: true, answers };
}

function missingIssue(missing: readonly Question[], units: UnitSystem): Issue {
  const options = missing.map((question) => {
    const example = exampleOf(question, units);
    return `--${question.key} ${/[^\w-]/.test(example) ? `"${example}"` : example}`;
  });
  return { code: 'starter.missing', severity: 'error', data: { options } };
}

function answersOf(raw: RawAnswers, arrangement: Answers['arrangement'], today: string): Answers {
  const words = (key: QuestionKey): string | undefined => {
    const found = raw[key]?.trim();
    return found === '' ? undefined : found;
  };
  const measured = (key: QuestionKey): Measured | undefined => {
    const text = words(key);
    const kind = questions.find((question) => question.key === key)?.kind;
    if (text === undefined || kind === undefined) return undefined;
    const read = parseQuantity(text, kind.is === 'quantity' ? kind.dimension : 'length');
    return read.ok ? { text, value: read.value } : undefined;
  };
  const needed = (key: QuestionKey): Measured => measured(key) ?? NOTHING;
  const size = sizeOf(words('size') ?? '') ?? { nps: '', text: '' };
  return {
    units: words('units') === 'si' ? 'si' : 'us',
    arrangement,
    mark: words('mark') ?? '',
    project: words('project'),
    by: words('by'),
    date: words('date') ?? today,
    service: words('service') as Answers['service'],
    pressure: needed('pressure'),
    running: measured('running'),
    hot: measured('hot'),
    cold: measured('cold'),
    flow: needed('flow'),
    head: needed('head'),
    size,
    pipeSize: sizeOf(words('pipe-size') ?? '') ?? size,
    schedule: words('schedule'),
    insulation: words('insulation') === 'none' ? 'none' : measured('insulation'),
    casingWeight: needed('casing-weight'),
    motorPower: needed('motor-power'),
    motorSpeed: measured('motor-speed'),
    motorWeight: measured('motor-weight'),
    motorTop: needed('motor-top'),
    faces: needed('faces'),
    pumpHeight: needed('pump-height'),
    baseHeight: measured('base-height'),
    pipeHeight: measured('pipe-height'),
    ceiling: needed('ceiling'),
    facing: words('facing') as Answers['facing'],
    turn: words('turn') as Answers['turn'],
    drop: measured('drop'),
    suctionRun: measured('suction-run'),
    dischargeRun: needed('discharge-run'),
    leg: measured('leg'),
    efficiency: measured('efficiency'),
    withdrawal: measured('withdrawal'),
    nozzleForce: measured('nozzle-force'),
    nozzleMoment: measured('nozzle-moment'),
  };
}

/** Stands where reading has already refused. */
const NOTHING: Measured = { text: '', value: Number.NaN };

/** What one answer says against another, where the geometry is not needed to see it. */
function contradictions(answers: Answers): readonly Issue[] {
  const issues: Issue[] = [];
  const add = <Code extends IssueCode>(code: Code, data: IssueDataOf<Code>) =>
    void issues.push(issueOf('error', coded(code, data)));
  const { size, pipeSize, schedule, facing, turn, arrangement } = answers;
  const ends = reducerSmallEnds(pipeSize.nps);
  if (pipeSize.nps !== size.nps && !ends.includes(size.nps))
    add('starter.no-reducer', {
      pipe: pipeSize.text,
      ports: size.text,
      sizes: ends.map((end) => `${end} in`),
    });
  for (const { nps, text } of pipeSize.nps === size.nps ? [size] : [size, pipeSize]) {
    const schedules = pipeSchedules(nps, 'carbon steel');
    if (!schedules.includes(scheduleLabel(schedule ?? USUAL_SCHEDULE)))
      add('starter.no-schedule', { found: schedule ?? USUAL_SCHEDULE, size: text, schedules });
  }
  if (arrangement === 'header' && axisOf(facing) === axisOf(turn))
    add('starter.turn-along', { turn, facing });
  const { running, hot, cold } = answers;
  if (running && hot && hot.value < running.value)
    add('starter.temperatures', { hot: hot.text, running: running.text });
  if (running && cold && cold.value > running.value)
    add('starter.temperatures', { hot: running.text, running: cold.text });
  if (hot && cold && cold.value > hot.value)
    add('starter.temperatures', { hot: hot.text, running: cold.text });
  return issues;
}

function axisOf(direction: string): 'north and south' | 'east and west' {
  return direction === 'north' || direction === 'south' ? 'north and south' : 'east and west';
}
