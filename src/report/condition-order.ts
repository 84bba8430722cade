import type { ConditionResponse, Response } from '../mechanics/response.js';

/** Conditions of service, in the order a reader expects. Upsets and starts have tables of their own. */
const ORDER = ['empty', 'filled', 'test', 'running', 'hot', 'cold'];

/**
 * The solved conditions of service in the order a reader expects: from the empty line to the extremes of temperature.
 *
 * @param response - solved conditions
 * @returns conditions in printing order
 */
export function orderedConditions(response: Response): readonly ConditionResponse[] {
  return ORDER.flatMap((name) => response.conditions[name] ?? []);
}

/**
 * Every solved condition: those of service first, then upsets and starts in the order they were solved.
 *
 * @param response - solved conditions
 * @returns conditions in printing order
 */
export function everyCondition(response: Response): readonly ConditionResponse[] {
  const service = orderedConditions(response);
  return [
    ...service,
    ...Object.values(response.conditions).filter((condition) => !service.includes(condition)),
  ];
}

/** Conditions that fit beside each other in a table of a page's width. */
const MOST_COLUMNS = 6;

/**
 * Cuts conditions into groups that fit the width of a page, as even as can be.
 *
 * @param conditions - in printing order
 * @returns groups in the same order
 */
export function columnGroups<Condition>(conditions: readonly Condition[]): readonly (readonly Condition[])[] {
  const groups = Math.ceil(conditions.length / MOST_COLUMNS);
  const each = Math.ceil(conditions.length / Math.max(1, groups));
  return Array.from({ length: groups }, (_, index) => conditions.slice(index * each, (index + 1) * each));
}
