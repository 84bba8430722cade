import { copyFileSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { BoardUnit } from '../../src/cli/as-installed/board-one.js';
import { boardRow, boardTable, punchTable } from '../../src/cli/as-installed/board-table.js';
import { boardPicture } from '../../src/cli/as-installed/board-view.js';
import { boardPage, visitPage } from '../../src/cli/as-installed/visit-page.js';
import { commaSeparated } from '../../src/cli/schedule/schedule-files.js';
import type { AsInstalledSummary } from '../../src/index.js';
import { projectRoot } from '../architecture/source-tree.js';
import { runFake } from './fake-environment.js';
import { temporaryFolder } from './temporary-folder.js';

const item = (trade: string, bars: AsInstalledSummary['items'][number]['bars'], finding: string) => ({
  trade,
  at: 'H1',
  finding,
  evidence: 'as read',
  consequence: 'it drops',
  fix: 'mend it',
  blocksStart: bars === 'start' || bars === 'running',
  bars,
});

const seen: AsInstalledSummary = {
  mark: 'P-1 <b>',
  project: 'Hall & Sons',
  date: '2026-11-05',
  decision: 'hold',
  verdict: 'exceeds',
  counts: { meets: 3, exceeds: 1, 'cannot-tell': 0 },
  decisions: {
    start: { word: 'hold', against: 2, by: '' },
    run: { word: 'stop', against: 1, by: '' },
  },
  items: [
    item('pipe fitter', 'running', '=HYPERLINK("http://x")'),
    item('electrician', 'start', '<script>alert(1)</script>'),
    item('pipe fitter', 'nothing', '-1+1'),
  ],
};
const unit: BoardUnit = { file: 'a/pump.yaml', status: 1, messages: '', seen, sheets: 2 };
const unvisited: BoardUnit = {
  ...unit,
  file: 'b/pump.yaml',
  sheets: 0,
  seen: {
    ...seen,
    mark: 'P-2',
    decisions: { start: { word: 'go', against: 0, by: 'x' }, run: { word: 'go', against: 0, by: 'x' } },
  },
};
const broken: BoardUnit = { file: 'c/pump.yaml', status: 2, messages: 'error', sheets: 0 };

test('a row counts what blocks, what is open by trade, and tells the last visit', () => {
  expect(boardRow(unit)).toEqual({
    mark: 'P-1 <b>',
    start: 'hold',
    run: 'stop',
    blocking: 2,
    open: 3,
    trades: 'pipe fitter 2, electrician 1',
    lastVisit: '2026-11-05',
    file: 'a/pump.yaml',
  });
});

test('a pump without readings, or whose files cannot be used, is held whatever else is said of it', () => {
  for (const each of [unvisited, broken]) {
    expect(boardRow(each)).toMatchObject({ start: 'hold', run: 'hold' });
    expect(punchTable([each]).rows).toHaveLength(1);
    expect(boardPage([each])).not.toContain('>GO<');
  }
  expect(boardTable([unit, unvisited, broken]).rows.map(([, start]) => start)).toEqual([
    'HOLD',
    'HOLD',
    'HOLD',
  ]);
});

test('no word of a sheet is a formula in a spreadsheet', async () => {
  const text = await commaSeparated([punchTable([unit])]);
  expect(text).toContain(`"'=HYPERLINK(""http://x"")"`);
  expect(text).toContain(",'-1+1,");
});

test('a page has no scripts, fetches nothing, and prints words as words', () => {
  for (const page of [boardPage([unit, unvisited, broken]), visitPage(seen)]) {
    expect(page).not.toMatch(/<script|<b>\s|src=|@import|url\(/u);
    expect(page).toContain("default-src 'none'");
    expect(page).toContain('&lt;script&gt;alert(1)&lt;/script&gt;');
    expect(page).toContain('width=device-width');
    expect(page).toContain('STOP');
  }
});

test('the picture is 80 wide and needs no colour', () => {
  const picture = boardPicture([unit, unvisited, broken], { files: ['board.xlsx'], colour: false });
  expect(picture.split('\n').every((line) => line.length <= 80)).toBe(true);
  expect(picture).toMatch(/P-1 <b>\s+HOLD\s+STOP\s+2\s+3/);
  expect(picture).toContain('3 pumps: 0 may be started, 3 held, 1 to be stopped');
});

/** A plant of two folders; only the first pump has been visited. */
function plant(): string {
  const folder = temporaryFolder();
  for (const name of ['north', 'south']) {
    mkdirSync(join(folder, 'plant', name), { recursive: true });
    copyFileSync(join(projectRoot, 'samples/pool-hot-water.yaml'), join(folder, 'plant', name, 'pump.yaml'));
  }
  copyFileSync(join(projectRoot, 'samples/readings/pool-hot-water.yaml'), join(folder, 'read.yaml'));
  return folder;
}

test('a folder is decided from its record; the readings of one folder are not those of a like mark in another', async () => {
  const folder = plant();
  const store = ['--store', 'record/north'];
  const visit = ['as-installed', 'plant/north/pump.yaml', 'read.yaml', ...store, '--html', 'visit.html'];
  await runFake(visit, { folder });
  expect(readFileSync(join(folder, 'visit.html'), 'utf8')).toContain('HWP-1 as installed');
  const out = ['--board', 'board.xlsx', '--punch-list', 'items.csv', '--html', 'board.html'];
  const { status, output } = await runFake(['as-installed', 'plant', '--store', 'record', ...out], {
    folder,
  });
  expect(status).toBe(1);
  expect(output).toMatch(/HWP-1\s+HOLD\s+HOLD\s+\d+\s+\d+/);
  expect(output).toContain('no readings');
  expect(output).toContain('2 pumps: 0 may be started, 2 held');
  const items = readFileSync(join(folder, 'items.csv'), 'utf8');
  expect(items).toContain('no readings have been brought back');
  expect(items.split('\r\n').length).toBeGreaterThan(4);
  expect(readFileSync(join(folder, 'board.xlsx')).subarray(0, 2).toString()).toBe('PK');
});

test('a board without its record, an unknown ending, and a board beside sheets are refused', async () => {
  const folder = plant();
  writeFileSync(join(folder, 'x.yaml'), '');
  const told = async (...args: string[]) => runFake(['as-installed', ...args], { folder });
  expect(await told('plant')).toMatchObject({ status: 2, messages: expect.stringContaining('no-record') });
  const ending = await told('plant', '--store', 'record', '--board', 'board.doc');
  expect(ending).toMatchObject({ status: 2, messages: expect.stringContaining('wrong-ending') });
  const beside = await told('plant/north/pump.yaml', 'read.yaml', '--board', 'board.csv');
  expect(beside).toMatchObject({ status: 2, messages: expect.stringContaining('board-only') });
  expect(existsSync(join(folder, 'board.csv'))).toBe(false);
});
