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
 * Cuts conditions into groups that fit the width of a page: those of service first, then the others, as even as can be.
 *
 * @param conditions - in printing order
 * @returns groups in the same order, none of them empty
 */
export function columnGroups<Condition extends { readonly name: string }>(
  conditions: readonly Condition[],
): readonly (readonly Condition[])[] {
  const inService = (condition: Condition): boolean => ORDER.includes(condition.name);
  const service = conditions.filter(inService);
  const others = conditions.filter((condition) => !inService(condition));
  const tables = Math.ceil(others.length / MOST_COLUMNS);
  const each = Math.ceil(others.length / Math.max(1, tables));
  const cut = Array.from({ length: tables }, (_, index) => others.slice(index * each, (index + 1) * each));
  return [service, ...cut].filter((group) => group.length > 0);
}
