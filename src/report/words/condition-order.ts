import type { ConditionResponse, Response } from '../../mechanics/frame/response.js';
import {
  type ConditionRole,
  conditionTitle,
  inPrintedOrder,
  isCommon,
  roleOfId,
} from '../../model/conditions/condition-roles.js';

/** A solved condition with what it stands for and what is printed for it. */
export interface PrintedCondition extends ConditionResponse {
  readonly role: ConditionRole;
  readonly title: string;
}

/**
 * The solved conditions that every line goes through, in the order a reader expects: from the empty line to the extremes
 * of temperature. Upsets and starts have tables of their own.
 *
 * @param response - solved conditions
 * @returns conditions in printing order
 */
export function orderedConditions(response: Response): readonly PrintedCondition[] {
  return everyCondition(response).filter(isCommon);
}

/**
 * Every solved condition: those of service first, then upsets and starts in the order they were solved.
 *
 * @param response - solved conditions
 * @returns conditions in printing order
 */
export function everyCondition(response: Response): readonly PrintedCondition[] {
  return inPrintedOrder(
    Object.values(response.conditions).map((condition) => ({
      ...condition,
      role: roleOfId(condition.name),
      title: conditionTitle(condition.name),
    })),
  );
}

/**
 * Cuts a list into groups no longer than they may be, as even as can be.
 *
 * @param list - in printing order
 * @param most - longest group
 * @returns groups in the same order, none of them empty
 */
export function evenGroups<Entry>(list: readonly Entry[], most: number): readonly (readonly Entry[])[] {
  const groups = Math.ceil(list.length / most);
  const each = Math.ceil(list.length / Math.max(1, groups));
  return Array.from({ length: groups }, (_, index) => list.slice(index * each, (index + 1) * each));
}
