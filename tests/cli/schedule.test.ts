import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import readWorkbook from 'read-excel-file/node';
import { expect, test } from 'vitest';
import { runFake } from './fake-environment.js';
import { temporaryFolder } from './temporary-folder.js';

const pool = readFileSync('samples/pool-hot-water.yaml', 'utf8');
const library = readFileSync('samples/library-chilled-water.yaml', 'utf8');

function plant(): string {
  const folder = temporaryFolder();
  mkdirSync(join(folder, 'plant'));
  writeFileSync(
    join(folder, 'plant/a.yaml'),
    pool.replace('mark: HWP-1', "mark: '=1+1'").replaceAll('H1', "'@H1'"),
  );
  writeFileSync(join(folder, 'plant/b.yaml'), library);
  return folder;
}

type Row = Readonly<Record<string, string>>;

/** The two tables of the printed text. */
function tablesOf(text: string): readonly (readonly Row[])[] {
  return text.split(/\r\n\r\n/).map((part) => parse(part, { columns: true, bom: true }) as Row[]);
}

test('the schedule lists every support with its loads, and what to order of each size of rod', async () => {
  const { status, output, messages } = await runFake(['schedule', 'plant'], { folder: plant() });
  expect({ status, messages }).toEqual({ status: 0, messages: '' });
  const [supports = [], rods = []] = tablesOf(output);
  // Six and ten with the ends of the lines, upon which loads come as well.
  expect(supports).toHaveLength(6 + 10);
  expect(supports.filter(({ Quantity }) => Quantity === '1')).toHaveLength(4 + 8);
  const h2 = supports.find(({ Pump, Mark }) => Pump === 'CHWP-2' && Mark === 'H2');
  expect(h2).toMatchObject({ Kind: 'hanger', Rods: '1', 'Rod size (in)': '7/8', 'Rod length (ft)': '3' });
  // The printed review of this sample says 3,740 lb.
  expect(Number(h2?.['Load filled (lb)'])).toBeCloseTo(3740, -1);
  expect(h2?.Remarks).toContain('Hanger rod load');
  const spring = supports.find(({ Mark }) => Mark === 'V1');
  expect(spring).toMatchObject({ 'Spring rate (lb/in)': '900', 'Spring set load (lb)': '1700' });
  const guide = supports.find(({ Mark }) => Mark === 'G1');
  expect(guide?.['Load filled (lb)']).toBe('');
  expect(Number(guide?.['Load on structure, largest sideways (lb)'])).toBeGreaterThan(100);
  // Four rods of 2 ft 6 in and 1 ft 9 in; in the other file one rod each but V2, which has two.
  expect(
    rods.map((row) => [row['Rod size (in)'], row.Supports, row.Rods, row['Length of all (ft)']]),
  ).toEqual([
    ['3/4', '4', '4', '8.5'],
    ['7/8', '5', '6', '27'],
  ]);
});

test('a word that a spreadsheet would take for a formula is text, in CSV by an apostrophe, in a workbook by its type', async () => {
  const folder = plant();
  await runFake(['schedule', 'plant/a.yaml', '-o', 's.csv'], { folder });
  const text = readFileSync(join(folder, 's.csv'), 'utf8');
  expect(text.startsWith('\uFEFF')).toBe(true);
  const [supports = []] = tablesOf(text);
  expect(supports.map(({ Pump }) => Pump)).toContain("'=1+1");
  expect(supports.map(({ Mark }) => Mark)).toContain("'@H1");
  await runFake(['schedule', 'plant/a.yaml', '-o', 's.xlsx'], { folder });
  const [sheet] = await readWorkbook(join(folder, 's.xlsx'));
  const rows = sheet?.data ?? [];
  expect(rows[1]?.[0]).toBe('=1+1');
});

test('a workbook holds numbers as numbers with units in the heads, and the rods on a second sheet', async () => {
  const folder = plant();
  const { output } = await runFake(['schedule', 'plant', '-o', 's.xlsx', '--units', 'si'], { folder });
  expect(output).toBe('16 supports of 2 pumps written to s.xlsx\n');
  const [supports, rods] = await readWorkbook(join(folder, 's.xlsx'));
  expect([supports?.sheet, rods?.sheet]).toEqual(['Supports', 'Rods']);
  const head = supports?.data[0]?.map(String) ?? [];
  const filled = head.indexOf('Load filled (kN)');
  const h2 = supports?.data.find((row) => row[0] === 'CHWP-2' && row[1] === 'H2');
  expect(h2?.[filled]).toBeCloseTo(16.6, 1);
  expect(rods?.data.slice(1).map((row) => row.slice(0, 3))).toEqual([
    ['3/4', 4, 4],
    ['7/8', 5, 6],
  ]);
  const first = readFileSync(join(folder, 's.xlsx'));
  await runFake(['schedule', 'plant', '-o', 's.xlsx', '--units', 'si'], { folder });
  expect(readFileSync(join(folder, 's.xlsx')).equals(first)).toBe(true);
});

test('a bad file is told and does not keep the others out', async () => {
  const folder = plant();
  writeFileSync(join(folder, 'plant/c.yaml'), 'format: pipeborne/1');
  const { status, output, messages } = await runFake(['schedule', 'plant'], { folder });
  expect(status).toBe(2);
  expect(messages).toContain('c.yaml');
  expect(tablesOf(output)[0]).toHaveLength(16);
});

test('a name of another kind is refused before anything is read', async () => {
  const { status, messages } = await runFake(['schedule', 'none.yaml', '-o', 's.pdf'], { folder: plant() });
  expect(status).toBe(2);
  expect(messages).toContain('.csv or .xlsx');
});
