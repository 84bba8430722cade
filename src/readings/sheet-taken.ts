/** One sheet as it was taken: its readings, and who took them when. */
import { dateIn, nameIn, textIn } from './read-box.js';
import type { ReadingsById } from './reading.js';
import type { Understood } from './understand.js';

/** Box with the day of the visit. */
export const DATE_BOX = 'identity.date';

/** One sheet brought back. */
export interface SheetTaken {
  readonly file: string;
  readonly readings: ReadingsById;
  /** Day, where it can be told for sure; without one nobody knows what it corrects and what corrects it. */
  readonly day?: string;
  /** Who read it; without a name nothing is corrected by it. */
  readonly by?: string;
  /** Of which readings it says that it takes their place. */
  readonly corrects?: string;
}

/**
 * Who took a sheet, and when.
 *
 * @param understood - its readings
 * @returns the sheet
 */
export function sheetTaken({ file, readings }: Pick<Understood, 'file' | 'readings'>): SheetTaken {
  const day = dateIn(readings, DATE_BOX);
  const by = nameIn(readings, 'identity.by');
  const corrects = textIn(readings, 'identity.corrects');
  return {
    file,
    readings,
    ...(day !== undefined && { day }),
    ...(by !== undefined && { by }),
    ...(corrects !== undefined && { corrects }),
  };
}
