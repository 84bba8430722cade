import { makerRow, numberBox, sheetRow } from '../boxes.js';
import type { FieldContext } from '../field-context.js';
import { directionsOf } from '../pump-directions.js';
import { NO_LIMIT } from '../sheet.js';
import type { PartDefinition } from '../sheet-part.js';

/** Length over which plumb is read. */
export function plumbBase({ write }: FieldContext): { readonly length: number; readonly text: string } {
  return write.system === 'us' ? { length: 0.3048, text: '12 in' } : { length: 1, text: '1 m' };
}

/** The shaft upright, in two directions. */
export const plumb: PartDefinition = {
  id: 'plumb',
  title: 'Plumb',
  trade: 'millwright',
  how: 'Machinist’s level or plumb line on a machined face of the motor stool or on the shaft, line filled and cold, in two directions.',
  rows: (context) => {
    const { along, across } = directionsOf(context);
    const { text } = plumbBase(context);
    const box = (key: string, way: string) =>
      numberBox({ id: `plumb.${key}`, label: way, tip: `Out of plumb ${way}, over ${text}` }, 'gap', context);
    return [
      sheetRow(`Out of plumb over ${text}`, [box('along', along), box('across', across)], {
        limit: NO_LIMIT,
      }),
      makerRow('plumb.limit', `out of plumb over ${text}`, 'gap', context),
    ];
  },
};
