/** Boxes by which a finding or remark of an earlier sheet is classed and closed: they are named by the item itself. */
/** What can be said of an item. */
export type ItemAnswer = 'class' | 'done';

/** Classes of an item. */
export const ITEM_CLASSES = ['blocks start', 'blocks acceptance', 'noted'] as const;

/**
 * Id of a box that says something of an item.
 *
 * @param key - of the item
 * @param answer - what it says
 * @returns `items.3fa9c1d20b.class`
 */
export function itemBox(key: string, answer: ItemAnswer): string {
  return `items.${key}.${answer}`;
}
