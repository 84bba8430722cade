/** The sheet of the next visit: only what is still open. */

import { boxOfItem } from '../sheet/box-of-item.js';
import { sheetRow } from '../sheet/boxes.js';
import { itemBox } from '../sheet/item-boxes.js';
import type { FieldSheet, SheetRow } from '../sheet/sheet.js';
import type { AsInstalled } from './as-installed.js';

/** Parts that every visit fills in anew. */
const ALWAYS: readonly string[] = ['identity', 'open-items', 'sign-off'];
/** Rows of the first part that need no second look once they were read and are right. */
const ONCE = /^identity\.(pump-serial|motor-|pump-weight|impeller|drawing)/u;

/**
 * What is still to be read: rows of which a reading exceeds, is missing or could not be read. Rows for a limit of the
 * maker stay beside what they limit.
 *
 * @param visit - what came of this visit
 * @returns a sheet with the same ids
 */
export function nextSheet(visit: AsInstalled): FieldSheet {
  const open = new Set(
    visit.judgements.filter(({ verdict }) => verdict !== 'meets').flatMap(({ boxes }) => boxes),
  );
  const isOpen = (row: SheetRow): boolean => {
    const [first] = row.boxes;
    if (first === undefined) return false;
    if (row.boxes.some(({ id }) => open.has(id))) return true;
    const states = row.boxes.map(({ id }) => visit.readings.get(id)?.kind);
    return states.some((kind) => kind === undefined || kind === 'unreadable');
  };
  const parts = visit.sheet.parts.flatMap((part) => {
    if (ALWAYS.includes(part.id)) {
      const rows = part.rows.filter((row) => !ONCE.test(row.boxes[0]?.id ?? '') || isOpen(row));
      return [{ ...part, rows: part.id === 'open-items' ? [...itemRows(visit), ...rows] : rows }];
    }
    const rows = part.rows.filter(isOpen);
    const judged = rows.some(({ label }) => !label.startsWith('Limit of manufacturer'));
    return judged ? [{ ...part, rows }] : [];
  });
  return { ...visit.sheet, parts };
}

/** What somebody noted and nobody has closed, each with the boxes that class and close it. */
function itemRows({ items }: AsInstalled): readonly SheetRow[] {
  return items.flatMap(({ key, finding, evidence }): readonly SheetRow[] => {
    if (key === undefined) return [];
    const boxes = (['class', 'done'] as const).flatMap((answer) => boxOfItem(itemBox(key, answer)) ?? []);
    return [sheetRow(`Open: ${finding.slice(0, 160)} (${evidence})`, boxes)];
  });
}
