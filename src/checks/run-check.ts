/** Runs a check: asks it for its places and what was read there, has that judged, and says what governs each place. */

import type { Subject } from '../analysis/subject.js';
import {
  type Compared,
  compareWithLimit,
  judgeForbidden,
  type Outcome,
} from '../judging/compare-with-limit.js';
import type { Calculation, Finding } from '../judging/finding.js';
import { overBounds } from '../judging/over-bounds.js';
import { governing } from '../judging/worst-first.js';
import type { Check, ComparedReading, Reading, SurveyedPlace } from './define-check.js';

/** A reading with its outcome. */
export interface JudgedReading {
  readonly reading: Reading;
  readonly outcome: Outcome;
  readonly name: string;
  /** Code of the reason why it cannot be told or does not apply. */
  readonly reason?: string;
}

/**
 * Runs one check: one finding per place, the governing reading of each.
 *
 * @param check - the check
 * @param subject - installation, layout and response
 * @returns findings in the order of the places; one `does-not-apply` where the check names no place
 */
export function runCheck(check: Check, subject: Subject): readonly Finding[] {
  const surveyed = check.survey(subject);
  if (surveyed.length === 0) {
    const nothing = { kind: 'does-not-apply', code: check.noPlace } as const;
    return [findingOf(check, { at: 'whole installation', readings: [nothing] })];
  }
  return surveyed.map((place) => findingOf(check, place));
}

function findingOf(check: Check, place: SurveyedPlace): Finding {
  const judged = governing(place.readings.map(judgeReading)) ?? judgeReading(NOTHING_READ);
  const { reading, outcome } = judged;
  const at = reading.at ?? place.at;
  const code = reasonCode(check, judged);
  const data = {
    at,
    title: check.title,
    ...(reading.condition !== undefined && { condition: reading.condition }),
    ...(reading.label !== undefined && { label: reading.label }),
    ...reading.data,
  };
  return {
    check: check.id,
    title: check.title,
    at,
    unit: reading.unit ?? check.unit,
    ...outcome,
    comparison: check.comparison || (reading.comparison ?? false),
    basis: reading.basis ?? check.basis[0],
    ...(reading.condition !== undefined && { condition: reading.condition }),
    ...(code !== undefined && { reason: { code, data } }),
    ...(isWorkable(reading.calculation) && { calculation: reading.calculation }),
  };
}

/** A calculation with a number missing is not printed. */
function isWorkable(calculation: Calculation | undefined): calculation is Calculation {
  return calculation?.values.every(({ value }) => Number.isFinite(value)) ?? false;
}

const NOTHING_READ: Reading = { kind: 'cannot-tell', code: 'checks.nothing-read' };

/**
 * Judges one reading of a check.
 *
 * @param reading - what was read
 * @returns its outcome, and the code of the reason where there is none
 */
export function judgeReading(reading: Reading): JudgedReading {
  const name = `${reading.condition ?? ''} ${reading.label ?? ''} ${reading.at ?? ''}`;
  const { why, ...outcome } = comparedOf(reading);
  const reason = reasonOf(reading, why);
  return { reading, outcome, name, ...(reason !== undefined && { reason }) };
}

function comparedOf(reading: Reading): Compared {
  switch (reading.kind) {
    case 'compared':
      return comparedDemand(reading);
    case 'forbidden':
      return judgeForbidden(reading);
    case 'cannot-tell':
    case 'does-not-apply':
      return { verdict: reading.kind };
  }
}

/** Where only bounds are known both have to agree. To keep to the limit at its largest is to keep to it. */
function comparedDemand({ demand, limit, least }: ComparedReading): Compared {
  const largest = compareWithLimit({ demand, limit });
  if (least === undefined) return largest;
  const { turnedBy: _, ...both } = overBounds([
    { varied: [], outcome: largest },
    { varied: ['least'], outcome: compareWithLimit({ demand: least.demand, limit }) },
  ]);
  return largest.verdict === 'meets' && both.verdict !== 'meets' ? largest : both;
}

function reasonOf(reading: Reading, why: Compared['why']): string | undefined {
  switch (why) {
    case 'limit-missing':
    case 'demand-missing':
      return reading.missing ?? `checks.${why}`;
    case 'limit-unusable':
    case 'demand-unusable':
      return `checks.${why}`;
    case 'bounds-disagree':
      return reading.kind === 'compared' ? reading.least?.code : undefined;
    case undefined:
      return 'code' in reading ? reading.code : undefined;
  }
}

function reasonCode(check: Check, { reading, outcome, reason }: JudgedReading): string | undefined {
  if (outcome.verdict === 'exceeds') return reading.advice ?? check.exceeds;
  return outcome.verdict === 'meets' ? reading.remark : reason;
}
