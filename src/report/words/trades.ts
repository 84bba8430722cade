/** Who mends what: the trade that acts on a finding. */

import { type OfCheck, ruleOf } from '../../checks/all-checks.js';
import type { Trade } from '../../checks/rule-facts.js';

/**
 * The trade that acts on a finding, as its check says; what no check of this version knows is for the design engineer.
 *
 * @param finding - finding, or anything that carries the id of a check
 * @returns trade as printed
 */
export function tradeOf(finding: OfCheck): Trade {
  return ruleOf(finding)?.trade ?? 'Design engineer';
}
