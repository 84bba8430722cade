/** Runs a check: asks it for its places and the demands there, has them judged, and says what governs each place. */

import { givenIn } from '../analysis/citation-of.js';
import type { Subject } from '../analysis/subject.js';
import type { RuleDocument } from '../input/installation.js';
import { coded, type IssueCode } from '../issues/issue.js';
import {
  type Compared,
  compareWithLimit,
  judgeForbidden,
  type Outcome,
} from '../judging/compare-with-limit.js';
import type { Calculation, Finding } from '../judging/finding.js';
import { overBounds } from '../judging/over-bounds.js';
import { governing } from '../judging/worst-first.js';
import { conditionTitle } from '../model/conditions/condition-roles.js';
import { askedIn } from './asked-conditions.js';
import type { Check, ComparedDemand, Demand, SurveyedPlace } from './define-check.js';

/** A demand with its outcome. */
export interface JudgedDemand {
  readonly demand: Demand;
  readonly outcome: Outcome;
  readonly name: string;
  /** Code of the reason why it cannot be told or does not apply. */
  readonly reason?: IssueCode;
}

/**
 * Runs one check: one finding per place, the governing demand of each.
 *
 * @param check - the check
 * @param subject - installation, layout and response
 * @returns findings in the order of the places; one `does-not-apply` where the check names no place
 */
export function runCheck(check: Check, subject: Subject): readonly Finding[] {
  const surveyed = check.survey(subject);
  if (surveyed.length === 0) {
    const nothing = { kind: 'does-not-apply', code: check.noPlace } as const;
    return [findingOf(check, { at: 'whole installation', demands: [nothing] }, subject)];
  }
  return surveyed.flatMap((place) => parted(check, place)).map((place) => findingOf(check, place, subject));
}

/** What a rule only compares in some conditions is told apart from what it judges in the others. */
function parted(check: Check, place: SurveyedPlace): readonly SurveyedPlace[] {
  const isCompared = ({ condition }: Demand): boolean =>
    condition !== undefined && askedIn(check, condition) === 'compared';
  const beside = place.demands.filter(isCompared);
  if (beside.length === 0) return [place];
  const judged = place.demands.filter((demand) => !isCompared(demand));
  const compared = {
    at: `${place.at}, compared`,
    demands: beside.map((one) => ({ ...one, comparison: true })),
  };
  return judged.length === 0 ? [compared] : [{ ...place, demands: judged }, compared];
}

/** The document of the owner that makes a rule of practice a limit. */
function madeLimitBy(check: Check, { installation }: Subject): RuleDocument | undefined {
  if (check.standing !== 'practice') return undefined;
  return installation.limits.ownerRules?.find(({ rule }) => rule === check.id);
}

function findingOf(check: Check, place: SurveyedPlace, subject: Subject): Finding {
  const owner = madeLimitBy(check, subject);
  const isAdvice = check.standing === 'practice' && owner === undefined;
  const judged = governing(place.demands.map(judgeDemand)) ?? judgeDemand(NO_DEMANDS);
  const { demand, outcome } = judged;
  const at = demand.at ?? place.at;
  const code = reasonCode(check, judged);
  const data = {
    at,
    title: check.title,
    ...(demand.condition !== undefined && { condition: conditionTitle(demand.condition) }),
    ...(demand.label !== undefined && { label: demand.label }),
    ...demand.data,
  };
  return {
    check: check.id,
    title: check.title,
    at,
    unit: demand.unit ?? check.unit,
    ...outcome,
    ...(demand.kind === 'compared' && demand.sense && { sense: demand.sense }),
    comparison: check.standing === 'compares' || (demand.comparison ?? isAdvice),
    basis: owner ? givenIn(`${owner.document}, ${owner.clause}`) : (demand.basis ?? check.basis[0]),
    ...(demand.rests && demand.rests.length > 0 && { rests: demand.rests }),
    ...(demand.chosen && { chosen: demand.chosen }),
    ...(demand.condition !== undefined && { condition: demand.condition }),
    ...(code !== undefined && { reason: coded(code, data as never) }),
    ...(isWorkable(demand.calculation) && { calculation: demand.calculation }),
  };
}

/** A calculation with a number missing is not printed. */
function isWorkable(calculation: Calculation | undefined): calculation is Calculation {
  return calculation?.values.every(({ value }) => Number.isFinite(value)) ?? false;
}

const NO_DEMANDS: Demand = { kind: 'cannot-tell', code: 'checks.nothing-read' };

/**
 * Judges one demand of a check.
 *
 * @param demand - what the check asks of one place
 * @returns its outcome, and the code of the reason where there is none
 */
export function judgeDemand(demand: Demand): JudgedDemand {
  const name = `${demand.condition ?? ''} ${demand.label ?? ''} ${demand.at ?? ''}`;
  const { why, ...outcome } = comparedOf(demand);
  const reason = reasonOf(demand, why);
  return { demand, outcome, name, ...(reason !== undefined && { reason }) };
}

function comparedOf(demand: Demand): Compared {
  switch (demand.kind) {
    case 'compared':
      return comparedDemand(demand);
    case 'forbidden':
      return judgeForbidden(demand);
    case 'cannot-tell':
    case 'does-not-apply':
      return { verdict: demand.kind };
  }
}

/** Where only bounds are known both have to agree. To keep to the limit at its largest is to keep to it. */
function comparedDemand({ demand, limit, sense, least }: ComparedDemand): Compared {
  const how = sense === undefined ? {} : { sense };
  const largest = compareWithLimit({ demand, limit, ...how });
  if (least === undefined) return largest;
  const bound =
    sense === undefined ? { demand: least.demand, limit } : { demand, limit: least.limit, ...how };
  const { turnedBy: _, ...whole } = overBounds([
    { varied: [], outcome: largest },
    { varied: ['least'], outcome: compareWithLimit(bound) },
  ]);
  const { low, high, ...alone } = whole;
  // Where what is required has the bounds, what is provided has none.
  const both = sense === undefined ? whole : alone;
  return largest.verdict === 'meets' && both.verdict !== 'meets' ? largest : both;
}

function reasonOf(demand: Demand, why: Compared['why']): IssueCode | undefined {
  switch (why) {
    case 'limit-missing':
    case 'demand-missing':
      return demand.missing ?? `checks.${why}`;
    case 'limit-unusable':
    case 'demand-unusable':
      return `checks.${why}`;
    case 'bounds-disagree':
      return demand.kind === 'compared' ? demand.least?.code : undefined;
    case undefined:
      return 'code' in demand ? demand.code : undefined;
  }
}

function reasonCode(check: Check, { demand, outcome, reason }: JudgedDemand): IssueCode | undefined {
  if (outcome.verdict === 'exceeds') return demand.advice ?? check.exceeds;
  return outcome.verdict === 'meets' ? demand.remark : reason;
}
