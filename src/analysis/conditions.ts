import type { ConditionResponse } from '../mechanics/frame/response.js';
import { isSlackQuestion } from '../model/conditions/upset-conditions.js';
import type { FrameCondition } from '../model/frame/frame.js';
import type { Subject } from './subject.js';

/** A condition with what acts and what came of it. */
export interface SolvedCondition {
  readonly name: string;
  readonly acts: FrameCondition;
  readonly solved: ConditionResponse;
}

/** Conditions between which the pump runs, stands still, warms and cools: their differences fatigue the pipe. */
const OPERATING: readonly string[] = ['filled', 'hot', 'cold', 'running'];

/**
 * All solved conditions in the order of the frame.
 *
 * @param subject - layout with its frame, and response
 * @returns conditions that were both described and solved
 */
export function solvedConditions(subject: Subject): readonly SolvedCondition[] {
  return subject.layout.frame.conditions.flatMap((acts) => {
    const solved = subject.response.conditions[acts.name];
    return solved === undefined ? [] : [{ name: acts.name, acts, solved }];
  });
}

/**
 * The solved conditions of normal service: filled, hot, cold and running.
 *
 * @param subject - layout with its frame, and response
 * @returns those that are there, in the order of the frame
 */
export function operatingOnly(subject: Subject): readonly SolvedCondition[] {
  return solvedConditions(subject).filter((condition) => OPERATING.includes(condition.name));
}

/**
 * Conditions with pressure in the pipe: normal service and the pressure test.
 *
 * @param subject - layout with its frame, and response
 * @returns those that are there, in the order of the frame
 */
export function pressurisedOnly(subject: Subject): readonly SolvedCondition[] {
  return solvedConditions(subject).filter(({ name }) => OPERATING.includes(name) || name === 'test');
}

/**
 * Conditions that really come to pass: all but those that ask what a slack hanger would do, which have a check of
 * their own.
 *
 * @param subject - layout with its frame, and response
 * @returns those that are there, in the order of the frame
 */
export function judgedConditions(subject: Subject): readonly SolvedCondition[] {
  return solvedConditions(subject).filter(({ name }) => !isSlackQuestion(name));
}

/**
 * Conditions that come to pass with the whole pump in its place: service, test, starts and sideways loads.
 *
 * @param subject - layout with its frame, and response
 * @returns those that are there, in the order of the frame
 */
export function withPumpInPlace(subject: Subject): readonly SolvedCondition[] {
  return judgedConditions(subject).filter(({ acts }) => acts.removed.length === 0);
}
