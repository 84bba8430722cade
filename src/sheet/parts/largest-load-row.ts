import type { PlacedNozzle, PlacedSupport } from '../../model/layout/layout.js';
import { largestLoadRows } from '../../report/rows/largest-load-rows.js';
import { largestNozzleRows } from '../../report/rows/largest-nozzle-rows.js';
import { NO_NUMBER } from '../../report/writer.js';
import { sheetRow } from '../boxes.js';
import type { FieldContext } from '../field-context.js';
import type { SheetRow } from '../sheet.js';

/**
 * The largest load of the review in the direction that governs, on the first row of the support: what holds it has to
 * hold that. The end of a line has no row else.
 *
 * @param support - placed support
 * @param rows - its rows
 * @param context - review and writer
 * @returns the rows, the first with the load
 */
export function withLargestLoad(
  support: PlacedSupport,
  rows: readonly SheetRow[],
  { review, write }: FieldContext,
): readonly SheetRow[] {
  const load = largestLoadRows(review, write).find(({ mark }) => mark === support.mark);
  if (load === undefined || load.governing === NO_NUMBER) return rows;
  const expected = `largest load ${load.governing} ${load.governs}, ${load.governingIn}`;
  const [first, ...others] = rows;
  if (first === undefined) return [sheetRow(`${support.mark}: load`, [], { expected })];
  return [{ ...first, expected }, ...others];
}

/**
 * The largest force and moment of the review on a nozzle, for whoever reads its joint.
 *
 * @param which - the nozzle
 * @param label - what the row is called
 * @param context - review and writer
 * @returns one row without a box; none where nothing loads the nozzle
 */
export function nozzleLoadRow(
  which: PlacedNozzle['which'],
  label: string,
  { review, write }: FieldContext,
): readonly SheetRow[] {
  const row = largestNozzleRows(review, write).find(({ nozzle }) => nozzle === which);
  if (row === undefined || row.force === NO_NUMBER) return [];
  const expected = `largest force ${row.force}, ${row.forceIn}; moment ${row.moment}, ${row.momentIn}`;
  return [sheetRow(label, [], { expected })];
}
