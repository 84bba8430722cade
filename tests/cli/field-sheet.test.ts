import { copyFileSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { PDFDocument } from 'pdf-lib';
import { expect, test } from 'vitest';
import { fieldSheet, readFieldSheet, readInstallation, review } from '../../src/index.js';
import { runFake } from './fake-environment.js';
import { temporaryFolder } from './temporary-folder.js';

const samples = readdirSync('samples').filter((name) => name.endsWith('.yaml'));

/** Most pages a unit's sheet may take. */
const MOST_PAGES = 10;

function folderWith(...names: readonly string[]): string {
  const folder = temporaryFolder();
  for (const name of names) copyFileSync(join('samples', name), join(folder, name));
  return folder;
}

test('the help fits 80 columns and says the exit statuses and the caution', async () => {
  const { status, output } = await runFake(['field-sheet', '--help']);
  expect(status).toBe(0);
  expect(output).toContain('Exit status:');
  expect(output).toContain('engineer of record');
  for (const line of output.split('\n')) expect(line.length, line).toBeLessThanOrEqual(80);
});

test.each(samples)('%s has a sheet whose every box comes back, on few enough pages', async (name) => {
  const folder = folderWith(name);
  const { status, output, messages } = await runFake(['field-sheet', name, '-o', 'sheet.pdf'], { folder });
  expect({ status, messages }).toEqual({ status: 0, messages: '' });
  expect(output).toMatch(/: \d+ boxes to fill in, written to sheet\.pdf\n$/);
  const bytes = new Uint8Array(readFileSync(join(folder, 'sheet.pdf')));
  expect((await PDFDocument.load(bytes)).getPageCount()).toBeLessThanOrEqual(MOST_PAGES);
  const installation = readInstallation(readFileSync(join('samples', name), 'utf8'), { file: name });
  if (!installation.ok) throw new Error(name);
  const sheet = fieldSheet(review(installation.installation));
  const reading = await readFieldSheet(bytes, sheet);
  expect(reading.issues).toEqual([]);
  expect(reading.fingerprint).toBe(installation.installation.fingerprint);
  expect(Object.keys(reading.boxes).length).toBeGreaterThan(sheet.parts.length);
});

test('without a name the sheets are called after their files; the units can be chosen', async () => {
  const [first = '', second = ''] = samples;
  const folder = folderWith(first, second);
  expect((await runFake(['field-sheet', first, second], { folder })).status).toBe(0);
  const names = readdirSync(folder).filter((name) => name.endsWith('.pdf'));
  expect(names).toEqual([first, second].map((name) => name.replace('.yaml', '-field-sheet.pdf')).sort());
  const wide = { us: 612, si: 595.28 };
  const page = (await PDFDocument.load(readFileSync(join(folder, names[0] ?? '')))).getPage(0);
  const other = Math.abs(page.getWidth() - wide.us) < 1 ? 'si' : 'us';
  await runFake(['field-sheet', first, '-o', 'other.pdf', '--units', other], { folder });
  const turned = (await PDFDocument.load(readFileSync(join(folder, 'other.pdf')))).getPage(0);
  expect(turned.getWidth()).toBeCloseTo(wide[other], 2);
});

test('the same input gives the same bytes', async () => {
  const [name = ''] = samples;
  const folder = folderWith(name);
  await runFake(['field-sheet', name, '-o', 'a.pdf'], { folder });
  await runFake(['field-sheet', name, '-o', 'b.pdf'], { folder });
  expect(readFileSync(join(folder, 'a.pdf')).equals(readFileSync(join(folder, 'b.pdf')))).toBe(true);
});

test('wrong names and wrong files are refused, and nothing is written', async () => {
  const [name = ''] = samples;
  const folder = folderWith(name);
  writeFileSync(join(folder, 'empty.yaml'), '');
  for (const [args, status, said] of [
    [['field-sheet', name, '-o', 'sheet.txt'], 2, 'does not end in .pdf'],
    [['field-sheet', 'none.yaml'], 3, 'cannot be read'],
    [['field-sheet', 'empty.yaml'], 2, 'error['],
    [['field-sheet', name, '--templates', 'nowhere'], 2, 'cannot be used'],
    [['field-sheet'], 2, 'error['],
  ] as const) {
    const outcome = await runFake(args, { folder });
    expect(outcome.status, args.join(' ')).toBe(status);
    expect(outcome.messages).toContain(said);
  }
  expect(readdirSync(folder).filter((one) => one.endsWith('.pdf'))).toEqual([]);
});

test('a firm’s folder gives the sheet its letterhead; one that cannot be used is refused', async () => {
  const [name = ''] = samples;
  const folder = folderWith(name);
  const plain = join(folder, 'plain.pdf');
  mkdirSync(join(folder, 'ours'));
  writeFileSync(
    join(folder, 'ours', 'firm.yaml'),
    'format: pipeborne-firm/1\nletterhead:\n  name: Alder and Reed\n  address: [Mill Lane 4]\n',
  );
  expect((await runFake(['field-sheet', name, '-o', 'plain.pdf'], { folder })).status).toBe(0);
  const args = ['field-sheet', name, '-o', 'headed.pdf', '--templates', 'ours'];
  expect((await runFake(args, { folder })).messages).toBe('');
  expect(readFileSync(join(folder, 'headed.pdf')).equals(readFileSync(plain))).toBe(false);
  const headed = await PDFDocument.load(readFileSync(join(folder, 'headed.pdf')));
  expect(headed.getPageCount()).toBeLessThanOrEqual(MOST_PAGES);
  writeFileSync(
    join(folder, 'ours', 'firm.yaml'),
    'format: pipeborne-firm/1\nletterhead:\n  nam: Alder and Reed\n',
  );
  expect((await runFake(args, { folder })).status).toBe(2);
});
