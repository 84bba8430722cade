/** The schedule of supports as a table of cells: heads with units, numbers as numbers, and what to order of each rod. */
import type { ScheduleRow, ScheduleUnits } from '../../index.js';

/** A text, a number, or nothing. */
export type Cell = string | number | undefined;

export interface ScheduleTable {
  readonly head: readonly string[];
  readonly rows: readonly (readonly Cell[])[];
}

/** A row with the file it comes from. */
export interface FiledRow extends ScheduleRow {
  readonly file: string;
}

type Column = readonly [head: string, cell: (row: FiledRow) => Cell];

/**
 * The table of supports.
 *
 * @param rows - supports of all files
 * @param units - units of their numbers
 * @returns head and rows
 */
export function supportTable(rows: readonly FiledRow[], units: ScheduleUnits): ScheduleTable {
  const { force, rate, length, travel } = units;
  const columns: readonly Column[] = [
    ['Pump', (row) => row.pump],
    ['Mark', (row) => row.mark],
    ['Kind', (row) => row.kind],
    // What is no mark of the file is not bought: the end of a line, the base of the pump.
    ['Quantity', (row) => (row.isBought ? 1 : undefined)],
    ['Rods', (row) => row.rods],
    ['Rod size (in)', (row) => row.rod],
    [`Rod length (${length})`, (row) => row.rodLength],
    [`Load empty (${force})`, (row) => row.empty],
    [`Load filled (${force})`, (row) => row.filled],
    [`Load under test (${force})`, (row) => row.test],
    [`Load on structure, largest down (${force})`, (row) => row.down],
    ['Largest down in', (row) => row.downIn],
    [`Load on structure, largest up (${force})`, (row) => row.up],
    ['Largest up in', (row) => row.upIn],
    [`Load on structure, largest sideways (${force})`, (row) => row.sideways],
    ['Largest sideways in', (row) => row.sidewaysIn],
    [`Load on structure, largest resultant, for rods the pull along them (${force})`, (row) => row.resultant],
    ['Largest resultant in', (row) => row.resultantIn],
    ['Governs', (row) => row.governs],
    [`Spring rate (${rate})`, (row) => row.rate],
    [`Spring set load (${force})`, (row) => row.set],
    [`Spring least load (${force})`, (row) => row.least],
    [`Spring greatest load (${force})`, (row) => row.most],
    [`Travel up and down (${travel})`, (row) => row.travel],
    [`Rating of attachment (${force})`, (row) => row.attachment],
    ['Remarks', (row) => row.remarks],
    ['File', (row) => row.file],
  ];
  return {
    head: columns.map(([head]) => head),
    rows: rows.map((row) => columns.map(([, cell]) => cell(row))),
  };
}

/**
 * What to order of each size of rod.
 *
 * @param rows - supports of all files
 * @param units - units of their numbers
 * @returns head and one row a size, from the smallest; supports whose rods have no size stand last
 */
export function rodTable(rows: readonly FiledRow[], { length }: ScheduleUnits): ScheduleTable {
  const totals = new Map<string, { rods: number; supports: number; length: number; unknown: number }>();
  for (const row of rows) {
    if (row.rods === undefined) continue;
    const size = row.rod ?? NO_SIZE;
    const total = totals.get(size) ?? { rods: 0, supports: 0, length: 0, unknown: 0 };
    total.rods += row.rods;
    total.supports += 1;
    if (row.rodLength === undefined) total.unknown += row.rods;
    else total.length += row.rods * row.rodLength;
    totals.set(size, total);
  }
  const sizes = [...totals.keys()].sort((a, b) => inches(a) - inches(b));
  return {
    head: ['Rod size (in)', 'Supports', 'Rods', `Length of all (${length})`, 'Remarks'],
    rows: sizes.map((size) => {
      const total = totals.get(size) ?? { rods: 0, supports: 0, length: 0, unknown: 0 };
      const remark = total.unknown === 0 ? '' : `${total.unknown} without a length are not counted in it`;
      return [size, total.supports, total.rods, Math.round(total.length * 100) / 100, remark];
    }),
  };
}

const NO_SIZE = 'not given';

/** `1-1/4` as a number, to sort by. */
function inches(size: string): number {
  const [, whole = '0', top, bottom] = /^(\d+)?(?:-?(\d+)\/(\d+))?$/.exec(fractionFirst(size)) ?? [];
  if (size === NO_SIZE) return Number.POSITIVE_INFINITY;
  return Number(whole) + (top === undefined ? 0 : Number(top) / Number(bottom));
}

/** `5/8` has no whole part; written as `0-5/8` it is read like the others. */
function fractionFirst(size: string): string {
  return /^\d+\//.test(size) ? `0-${size}` : size;
}
