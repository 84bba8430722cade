import type { ConditionResponse, Response } from '../mechanics/response.js';

/** Order in which conditions are printed; others follow by name. */
const ORDER = ['empty', 'filled', 'test', 'running', 'hot', 'cold'];

/**
 * The solved conditions in the order a reader expects: from the empty line to the extremes of temperature.
 *
 * @param response - solved conditions
 * @returns conditions in printing order
 */
export function orderedConditions(response: Response): readonly ConditionResponse[] {
  const place = (name: string): number => {
    const at = ORDER.indexOf(name);
    return at < 0 ? ORDER.length : at;
  };
  return Object.values(response.conditions).sort(
    (a, b) => place(a.name) - place(b.name) || (a.name < b.name ? -1 : a.name > b.name ? 1 : 0),
  );
}
