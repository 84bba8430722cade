import { choiceBox, sheetRow, textBox } from '../boxes.js';
import type { PartDefinition } from '../sheet-part.js';

/** How many findings of his own the agent may write down. */
export const OPEN_ITEMS = 6;

/** What a finding keeps from happening. */
export const BLOCKS = ['yes', 'no', 'acceptance', 'noted'] as const;

/** Trades by which open items are sorted. */
export const TRADES = [
  'pipe fitter',
  'millwright',
  'electrician',
  'balancing contractor',
  'vibration technician',
  'commissioning agent',
  'engineer',
] as const;

/** What was seen beyond the readings. */
export const openItems: PartDefinition = {
  id: 'open-items',
  title: 'Open items',
  trade: 'commissioning agent',
  how: 'What was found beside the readings, one a line, with the trade that mends it.',
  rows: () =>
    Array.from({ length: OPEN_ITEMS }, (_, index) => {
      const id = `open-items.item-${index + 1}`;
      return sheetRow(`${index + 1}`, [
        textBox(
          { id, label: 'finding', tip: `Finding ${index + 1}, with the number of its photograph` },
          undefined,
          2,
        ),
        choiceBox(
          { id: `${id}-trade`, label: 'trade', tip: `Trade that mends finding ${index + 1}` },
          TRADES,
        ),
        choiceBox(
          {
            id: `${id}-blocks`,
            label: 'blocks start',
            tip: `What finding ${index + 1} keeps from happening: yes, the start; no or acceptance, the acceptance; noted, nothing`,
          },
          BLOCKS,
        ),
        choiceBox({ id: `${id}-closed`, label: 'closed', tip: `Whether finding ${index + 1} is mended` }),
        textBox({
          id: `${id}-done`,
          label: 'what was done',
          since: '0.2.0',
          tip: `How finding ${index + 1} was mended; it closes with this, and with the name and the day of the sheet`,
        }),
      ]);
    }),
};
