/** The box of what is said of an item of an earlier sheet. */
import { ITEM_CLASSES } from './item-boxes.js';
import type { Box } from './sheet.js';

/**
 * The box of an id that says something of an item: such ids are on the sheet of the visit after it, and not on every sheet.
 *
 * @param id - of a box
 * @returns the box; nothing for other ids
 */
export function boxOfItem(id: string): Box | undefined {
  const [, key, answer] = /^items\.([0-9a-f]{10})\.(class|done)$/u.exec(id) ?? [];
  if (key === undefined) return undefined;
  return answer === 'class'
    ? {
        id,
        kind: 'choice',
        label: 'keeps from',
        tip: 'What the item keeps from happening',
        choices: ITEM_CLASSES,
      }
    : {
        id,
        kind: 'text',
        label: 'what was done',
        tip: 'How the item was mended; it closes with this, a name and a day',
      };
}
