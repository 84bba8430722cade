/** What the agent wrote down beside the readings. */

import { choiceIn, textIn } from '../readings/read-box.js';
import type { ReadingsById } from '../readings/reading.js';
import { OPEN_ITEMS } from '../sheet/parts/open-items.js';

/** One finding of the agent. */
export interface AgentItem {
  readonly finding: string;
  readonly trade: string;
  readonly blocksStart: boolean;
  readonly closed: boolean;
}

/**
 * Findings written on the sheet.
 *
 * @param readings - readings
 * @returns findings in the order of the sheet; one without a trade goes to the agent, one that does not say so blocks
 */
export function agentItems(readings: ReadingsById): readonly AgentItem[] {
  return Array.from({ length: OPEN_ITEMS }, (_, index) => `open-items.item-${index + 1}`).flatMap((id) => {
    const finding = textIn(readings, id);
    if (finding === undefined) return [];
    return [
      {
        finding,
        trade: choiceIn(readings, `${id}-trade`) ?? 'commissioning agent',
        blocksStart: choiceIn(readings, `${id}-blocks`) !== 'no',
        closed: choiceIn(readings, `${id}-closed`) === 'yes',
      },
    ];
  });
}
