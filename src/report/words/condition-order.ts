import type { ConditionResponse, Response } from '../../mechanics/frame/response.js';

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
