import type { ConditionResponse } from '../mechanics/frame/response.js';
import {
  type ConditionRole,
  isHypothetical,
  isService,
  ofRole,
  type RoleKind,
  roleOf,
} from '../model/conditions/condition-roles.js';
import type { FrameCondition } from '../model/frame/frame.js';
import type { Facts } from './facts.js';

/** A condition with what acts and what came of it. */
export interface SolvedCondition {
  /** Id, as findings and results carry it. */
  readonly name: string;
  readonly role: ConditionRole;
  readonly acts: FrameCondition;
  readonly solved: ConditionResponse;
}

/**
 * All solved conditions in the order of the frame.
 *
 * @param subject - layout with its frame, and response
 * @returns conditions that were both described and solved
 */
export function solvedConditions(subject: Facts): readonly SolvedCondition[] {
  return subject.layout.frame.conditions.flatMap((acts) => {
    const solved = subject.response.conditions[acts.name];
    return solved === undefined ? [] : [{ name: acts.name, role: roleOf(acts), acts, solved }];
  });
}

/**
 * What acts in the condition of a role, whether or not it was solved.
 *
 * @param subject - layout with its frame
 * @param kind - for example `filled`
 * @returns the first condition of that kind, where there is one
 */
export function conditionOf(subject: Pick<Facts, 'layout'>, kind: RoleKind): FrameCondition | undefined {
  return ofRole(subject.layout.frame.conditions, kind);
}

/**
 * The solved condition of a role.
 *
 * @param subject - layout with its frame, and response
 * @param kind - for example `filled`
 * @returns the first solved condition of that kind, where there is one
 */
export function solvedOf(subject: Facts, kind: RoleKind): SolvedCondition | undefined {
  return ofRole(solvedConditions(subject), kind);
}

/**
 * The solved conditions of normal service: filled, hot, cold and running.
 *
 * @param subject - layout with its frame, and response
 * @returns those that are there, in the order of the frame
 */
export function operatingOnly(subject: Facts): readonly SolvedCondition[] {
  return solvedConditions(subject).filter(isService);
}

/**
 * Conditions that really come to pass: all but those that ask what a slack hanger would do, which have a check of
 * their own.
 *
 * @param subject - layout with its frame, and response
 * @returns those that are there, in the order of the frame
 */
export function judgedConditions(subject: Facts): readonly SolvedCondition[] {
  return solvedConditions(subject).filter((condition) => !isHypothetical(condition));
}

/**
 * Conditions that come to pass with the whole pump in its place: service, test, starts and sideways loads.
 *
 * @param subject - layout with its frame, and response
 * @returns those that are there, in the order of the frame
 */
export function withPumpInPlace(subject: Facts): readonly SolvedCondition[] {
  return judgedConditions(subject).filter(({ acts }) => acts.removed.length === 0);
}
