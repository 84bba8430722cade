import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { PDFDocument } from 'pdf-lib';
import { expect, test } from 'vitest';
import { fieldSheetPdf } from '../../src/app/render-field-sheet.js';
import { asInstalled as judged } from '../../src/as-installed/as-installed.js';
import { readForm } from '../../src/forms/read-form.js';
import { asInstalled, readReadings, renderAsInstalledPdf, renderNextSheetPdf } from '../../src/index.js';
import { buildSheet } from '../../src/sheet/build-sheet.js';
import { projectRoot } from '../architecture/source-tree.js';
import { answersFor } from '../as-installed/visit.js';
import { reviewedSample } from '../sheet/reviewed-sample.js';

const folder = join(projectRoot, 'templates');
const look = {
  templates: Object.fromEntries(
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.hbs'))
      .map((name) => [name.slice(0, -4).replaceAll('\\', '/'), readFileSync(join(folder, name), 'utf8')]),
  ),
  fonts: {
    regular: readFileSync(join(folder, 'fonts/SourceSans3-Regular.ttf')),
    bold: readFileSync(join(folder, 'fonts/SourceSans3-SemiBold.ttf')),
    italic: readFileSync(join(folder, 'fonts/SourceSans3-Italic.ttf')),
  },
};
const pool = reviewedSample('pool-hot-water');

const filled = async (bytes: Uint8Array, values: Readonly<Record<string, string>>) => {
  const pdf = await PDFDocument.load(bytes);
  for (const [name, value] of Object.entries(values)) pdf.getForm().getTextField(name).setText(value);
  return pdf.save();
};

test('the next sheet, filled in, is read without asking for what it does not hold', async () => {
  const first = asInstalled(pool, [
    answersFor(pool, {
      'identity.date': '2026-11-05',
      'coupling.runout': '0.0015',
      'access.disconnect': '7 ft',
    }),
  ]);
  const next = await renderNextSheetPdf(first, look);
  const back = await filled(next, {
    'identity.date': '2026-12-01',
    'electrical.volts-ab': '461,5',
    'electrical.volts-bc': '0.46 kV',
  });
  const answers = await readReadings(back, 'next.pdf', pool);
  expect(answers.issues).toEqual([]);
  expect(answers.fingerprint).toBe(pool.installation.fingerprint);
  const visit = asInstalled(pool, [answers]);
  expect(visit.readings.get('electrical.volts-ab')).toMatchObject({
    value: 461.5,
    place: { file: 'next.pdf' },
  });
  expect(visit.readings.get('electrical.volts-bc')).toMatchObject({ value: 460 });
  expect(visit.readings.get('electrical.volts-ab')?.place.page).toBeGreaterThan(0);
});

test('a sheet in other units than the review says so, and bare numbers in it are in those', async () => {
  const metric = await fieldSheetPdf(buildSheet(pool, 'si'), look);
  const back = await filled(metric, { 'coupling.runout': '0,05', 'hydraulic.flow': '145' });
  const answers = await readReadings(back, 'metric.pdf', pool);
  expect(answers.units).toBe('si');
  const { readings } = judged(pool, [answers]);
  expect(readings.get('coupling.runout')).toMatchObject({ value: 5e-5, unit: 'mm' });
  expect(readings.get('hydraulic.flow')).toMatchObject({ value: 145 / 3600 });
});

test('a sheet of an input with another comment belongs to this one', async () => {
  const sheet = await fieldSheetPdf({ ...buildSheet(pool), fingerprint: 'e'.repeat(64) }, look);
  const answers = await readReadings(await filled(sheet, { 'coupling.runout': '0.001' }), 'back.pdf', pool);
  expect(answers.content).toEqual(pool.installation.content);
  expect(asInstalled(pool, [answers]).issues).toEqual([]);
});

test('a sheet of another revision is refused when it comes as a PDF too', async () => {
  // As the first version wrote it: with the fingerprint of the text alone.
  const { content: _none, ...first } = buildSheet(pool);
  const sheet = await fieldSheetPdf({ ...first, fingerprint: 'e'.repeat(64) }, look);
  const answers = await readReadings(await filled(sheet, { 'coupling.runout': '0.001' }), 'old.pdf', pool);
  expect(() => asInstalled(pool, [answers])).toThrow('fieldwork.sheet.other-revision');
});

test.each(['pool-hot-water', 'library-chilled-water', 'dairy-condenser-water'] as const)(
  'the as-installed review of %s prints with nothing read and with everything as predicted',
  async (name) => {
    const review = reviewedSample(name);
    const expected = buildSheet(review).parts.flatMap(({ rows }) =>
      rows.flatMap(({ boxes }) =>
        boxes.flatMap(({ id, kind, expected: text }) =>
          kind === 'number' && text !== undefined ? [[id, text] as const] : [],
        ),
      ),
    );
    for (const readings of [{}, Object.fromEntries(expected)]) {
      const visit = asInstalled(review, [answersFor(review, readings)]);
      expect(visit.issues).toEqual([]);
      const pdf = await renderAsInstalledPdf(visit, look);
      expect((await PDFDocument.load(pdf)).getPageCount()).toBeGreaterThan(3);
    }
  },
);

test('a sheet that was brought back is gone through once', async () => {
  let looks = 0;
  class Counted extends Uint8Array {
    override get length(): number {
      looks += 1;
      return super.length;
    }
  }
  const sheet = await fieldSheetPdf(buildSheet(pool), look);
  const looksOf = async (read: (bytes: Uint8Array) => Promise<unknown>) => {
    const bytes = new Counted(sheet);
    looks = 0;
    await read(bytes);
    return looks;
  };
  const once = await looksOf((bytes) => readForm(bytes, buildSheet(pool)));
  const brought = await looksOf((bytes) => readReadings(bytes, 'sheet.pdf', pool));
  expect(once).toBeGreaterThan(10);
  expect(brought).toBeLessThan(1.5 * once);
});
