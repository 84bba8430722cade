/** The schedule as a file: comma-separated, or a workbook. */
import type { Cell, ScheduleTable } from './schedule-table.js';

/** What a spreadsheet takes for the beginning of a formula, in a text it reads. */
const FORMULA = /^[=+\-@\t\r]/;

/**
 * Both tables as comma-separated text, a blank line between them.
 *
 * @param tables - supports, rods
 * @returns text; a word that a spreadsheet would take for a formula begins with an apostrophe
 */
export async function commaSeparated(tables: readonly ScheduleTable[]): Promise<string> {
  const { stringify } = await import('csv-stringify/sync');
  return tables
    .map(({ head, rows }) =>
      stringify([head, ...rows.map((row) => row.map(harmless))], { record_delimiter: '\r\n' }),
    )
    .join('\r\n');
}

function harmless(cell: Cell): string | number {
  if (cell === undefined) return '';
  return typeof cell === 'string' && FORMULA.test(cell) ? `'${cell}` : cell;
}

/**
 * Both tables as a workbook, a sheet each. Cells are typed: a text is a text whatever it begins with.
 *
 * @param sheets - name and table of each sheet
 * @returns bytes
 */
export async function workbook(
  sheets: readonly { readonly name: string; readonly table: ScheduleTable }[],
): Promise<Uint8Array> {
  const { default: writeWorkbook } = await import('write-excel-file/node');
  const made = writeWorkbook(
    sheets.map(({ name, table }) => ({
      sheet: name,
      stickyRowsCount: 1,
      columns: table.head.map((head, column) => ({ width: widthOf(head, table, column) })),
      data: [
        table.head.map((value) => ({ value, type: String, fontWeight: 'bold' as const, wrap: true })),
        ...table.rows.map((row) => row.map(typed)),
      ],
    })),
  );
  return withoutClock(new Uint8Array(await made.toBuffer()));
}

const END_OF_DIRECTORY = 0x06054b50;
/** Midnight of the first day the container can tell. */
const FIRST_DAY = 0x00210000;

/** The container dates its parts by the clock; with the first day it knows, the same rows give the same bytes. */
function withoutClock(bytes: Uint8Array): Uint8Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let end = bytes.byteLength - 22;
  while (end > 0 && view.getUint32(end, true) !== END_OF_DIRECTORY) end -= 1;
  const entries = view.getUint16(end + 10, true);
  let entry = view.getUint32(end + 16, true);
  for (let index = 0; index < entries; index += 1) {
    view.setUint32(entry + 12, FIRST_DAY, true);
    view.setUint32(view.getUint32(entry + 42, true) + 10, FIRST_DAY, true);
    entry +=
      46 +
      view.getUint16(entry + 28, true) +
      view.getUint16(entry + 30, true) +
      view.getUint16(entry + 32, true);
  }
  return bytes;
}

function typed(cell: Cell) {
  if (cell === undefined || cell === '') return null;
  return typeof cell === 'number' ? { value: cell, type: Number } : { value: cell, type: String };
}

const WIDEST = 40;
const NARROWEST = 9;

function widthOf(head: string, { rows }: ScheduleTable, column: number): number {
  const longest = Math.max(
    ...head.split(' ').map((word) => word.length),
    ...rows.map((row) => String(row[column] ?? '').length),
  );
  return Math.min(WIDEST, Math.max(NARROWEST, longest + 2));
}
