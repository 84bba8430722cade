/**
 * The shape of a check. A check names its places and the demands there; it never compares. Comparing, refusing
 * unusable numbers, picking the governing demand and ordering are done for all checks by `run-check.ts`.
 */

import type { Subject } from '../analysis/subject.js';
import type { IssueCode } from '../issues/issue.js';
import type { Calculation, CheckUnit } from '../judging/finding.js';
import type { Citation } from '../sources/index.js';
import type { RuleFacts } from './rule-facts.js';

/** Words and numbers a sentence is made of. */
export type ReasonData = Readonly<Record<string, string | number>>;

/** A code with its data; the sentence stands in `issues/sentences/checks/checks.ts`. */
export interface Reason {
  readonly code: IssueCode;
  readonly data: ReasonData;
}

interface DemandBase {
  /** Which of several demands at one place this is: `vertical force`. Also breaks ties. */
  readonly label?: string;
  /** Condition it holds in. */
  readonly condition?: string;
  /** Place, where one demand stands for less than the whole place. */
  readonly at?: string;
  /** Grounds, where they differ from the first of the check. */
  readonly basis?: Citation;
  /** Unit, where it differs from that of the check. */
  readonly unit?: CheckUnit;
  /** True where this demand is a comparison though the check as a whole is not. */
  readonly comparison?: boolean;
  /** True where the limit is a number that was chosen to keep to the demand: nearness tells nothing. */
  readonly chosen?: true;
  /** Further grounds that the outcome rests on, beside the basis of the limit. */
  readonly rests?: readonly Citation[];
  /** Words and numbers for the sentence, beside `at`, `condition` and `label`. */
  readonly data?: ReasonData;
  /** Code of the advice when it exceeds, where it differs from that of the check. */
  readonly advice?: IssueCode;
  /** Code of the reason when a number is missing. */
  readonly missing?: IssueCode;
  /** Code of a remark that belongs to the finding whatever its verdict, unless advice or a reason takes its place. */
  readonly remark?: IssueCode;
  readonly calculation?: Calculation;
}

/**
 * A demand that may not be above a limit, or, where its sense is `at least`, not below it: of a clearance the demand is
 * what is provided and the limit what is required. Missing, infinite or unusable numbers make it `cannot-tell`.
 */
export interface ComparedDemand extends DemandBase {
  readonly kind: 'compared';
  readonly sense?: 'at least';
  readonly demand: number | undefined;
  readonly limit: number | undefined;
  /** Where the demand is only known between bounds: `demand` is the largest it may be, this the least. */
  readonly least?: LeastDemand;
}

/**
 * The lower bound of a demand, or, of an `at least`, of what is required. Above the limit on one bound and not on the
 * other, it cannot be told.
 */
export interface LeastDemand {
  readonly demand?: number | undefined;
  readonly limit?: number | undefined;
  /** Code of the reason when the bounds disagree. */
  readonly code: IssueCode;
}

/** Something that must not happen at all, so that there is no limit to divide by. */
export interface ForbiddenDemand extends DemandBase {
  readonly kind: 'forbidden';
  /** Whether it happens; undefined where that cannot be told. */
  readonly happens: boolean | undefined;
  /** How much, where that is a number. */
  readonly demand?: number;
}

/** No number: it cannot be told, or it does not apply. */
export interface NoDemand extends DemandBase {
  readonly kind: 'cannot-tell' | 'does-not-apply';
  readonly code: IssueCode;
}

/** What is asked of one place: in one condition, of one component. */
export type Demand = ComparedDemand | ForbiddenDemand | NoDemand;

/** What the author of a check writes. `Place` is whatever the check finds handy: a support, a joint, a name. */
export interface CheckDefinition<Id extends string, Place> extends RuleFacts {
  /** A promise: `rod-load`. */
  readonly id: Id;
  /** As printed, in the words of the trade. */
  readonly title: string;
  readonly unit: CheckUnit;
  /** Published grounds; the first holds unless a demand names its own. */
  readonly basis: readonly [Citation, ...Citation[]];
  /** Code of the advice when it exceeds. */
  readonly exceeds: IssueCode;
  /** Code of the reason when an installation has no place for it. */
  readonly noPlace: IssueCode;
  readonly places: (subject: Subject) => readonly Place[];
  /** Trade word of the place. */
  readonly at: (place: Place, subject: Subject) => string;
  /** Every demand at the place, in all conditions; the runner reports the governing one. */
  readonly demands: (place: Place, subject: Subject) => readonly Demand[];
}

/** A check with its kind of place sealed in, so that all of them fit one registry. */
export interface Check<Id extends string = string>
  extends Omit<CheckDefinition<Id, never>, 'places' | 'at' | 'demands'> {
  /** The demands at every place of a subject. */
  readonly survey: (subject: Subject) => readonly SurveyedPlace[];
}

/** One place and its demands. */
export interface SurveyedPlace {
  readonly at: string;
  readonly demands: readonly Demand[];
}

/**
 * Makes a check out of its definition.
 *
 * @param definition - identity, facts, grounds, places and demands
 * @returns the check as the registry holds it
 */
export function defineCheck<const Id extends string, Place>({
  places,
  at,
  demands,
  ...facts
}: CheckDefinition<Id, Place>): Check<Id> {
  return {
    ...facts,
    survey: (subject) =>
      places(subject).map((place) => ({
        at: at(place, subject),
        demands: demands(place, subject),
      })),
  };
}
