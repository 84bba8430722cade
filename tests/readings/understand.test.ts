import { describe, expect, test } from 'vitest';
import { printIssue } from '../../src/issues/print.js';
import { understand } from '../../src/readings/understand.js';
import { understandDate } from '../../src/readings/understand-date.js';
import { understandNumber } from '../../src/readings/understand-number.js';
import { buildSheet } from '../../src/sheet/build-sheet.js';
import { answersFor } from '../as-installed/visit.js';
import { reviewedSample } from '../sheet/reviewed-sample.js';

const inches = { dimension: 'length', unit: 'in' } as const;
const millimetres = { dimension: 'length', unit: 'mm' } as const;

describe('numbers as people write them', () => {
  test.each([
    ['0.125', 0.125],
    ['1/8', 0.125],
    ['6 1/2', 6.5],
    ['0,125', 0.125],
    ['12,5', 12.5],
    ['.062', 0.062],
    ['12\'-6 1/2"', 150.5],
    ['3 mm', 3 / 25.4],
    ['5 mil', 0.005],
    ['3 thou', 0.003],
    ['9-10 1/2', 118.5],
    ["9'10", 118],
    ["9'-10", 118],
    ['11/16', 0.6875],
    ['-0.020', -0.02],
    ['−1/16', -0.0625],
  ])('%s in inches', (text, value) => {
    const read = understandNumber(text, inches, 'us');
    expect(read.ok && read.value / 0.0254).toBeCloseTo(value, 9);
  });

  test('a comma before three digits or at the end could be either, and is not guessed', () => {
    for (const text of ['1,250', '1,240', '0.062,', '12,', '1,250 in']) {
      expect(understandNumber(text, inches, 'us'), text).toMatchObject({
        ok: false,
        code: 'fieldwork.reading.comma',
      });
    }
    const force = { dimension: 'force', unit: 'lb' } as const;
    expect(understandNumber('1,704', force, 'us').ok).toBe(false);
    // Beside an expected 1,704 lb, as the sheet prints it, only thousands are meant.
    const beside = { ...force, plausible: { likely: { least: 1900, most: 30_000 } } };
    const read = understandNumber('1,704 lb', beside, 'us');
    expect(read.ok && read.value / 4.4482216152605).toBeCloseTo(1704, 6);
    expect(understandNumber('1,250,000', inches, 'us')).toMatchObject({ ok: true });
  });

  test.each([
    ['460/461', { dimension: 'voltage', unit: 'V' }],
    ['230/460', { dimension: 'voltage', unit: 'V' }],
    ['0.062/0.063', inches],
    ['1/3', inches],
    ['16/8', inches],
  ] as const)('%s is two numbers and read as neither', (text, box) => {
    expect(understandNumber(text, box, 'us')).toMatchObject({
      ok: false,
      code: 'fieldwork.reading.two-numbers',
    });
  });

  test.each([
    ['461 VAC', 'voltage', 461],
    ['461 Volts', 'voltage', 461],
    ['24.5 Amps', 'current', 24.5],
    ['0.12 ips', 'velocity', 0.12 * 0.0254],
    ['0.12 in/sec', 'velocity', 0.12 * 0.0254],
    ['0.12 in/s rms', 'velocity', 0.12 * 0.0254],
    ['3 mm/s RMS', 'velocity', 3e-3],
    ['-4 inHg', 'pressure', -4 * 3386.389],
  ] as const)('%s in the words of the trade', (text, dimension, value) => {
    const read = understandNumber(text, { dimension, unit: 'x' }, 'us');
    expect(read.ok && read.value).toBeCloseTo(value, 9);
  });

  test('a peak is no r.m.s. value; a count says what was counted; none is nought where it can be', () => {
    const velocity = { dimension: 'velocity', unit: 'in/s' } as const;
    expect(understandNumber('0.2 in/s pk', velocity, 'us')).toMatchObject({
      code: 'fieldwork.reading.peak',
    });
    const drops = { id: 'seal.leakage' };
    expect(understandNumber('2 drops/min', drops, 'us')).toEqual({ ok: true, value: 2 });
    expect(understandNumber('none', drops, 'us')).toEqual({ ok: true, value: 0 });
    expect(understandNumber('2 furlongs', drops, 'us').ok).toBe(false);
    expect(understandNumber('none', { id: 'electrical.volts-ab', dimension: 'voltage' }, 'us').ok).toBe(
      false,
    );
  });

  test('on a sheet in SI units a comma before three digits could be either, and is not guessed', () => {
    expect(understandNumber('1,250', millimetres, 'si')).toMatchObject({
      ok: false,
      code: 'fieldwork.reading.comma',
    });
    expect(understandNumber('1,25', millimetres, 'si')).toEqual({ ok: true, value: 1.25e-3 });
    expect(understandNumber('1.250,5', millimetres, 'si')).toMatchObject({ ok: true, value: 1.2505 });
    expect(understandNumber('0,125', millimetres, 'si')).toMatchObject({ ok: true });
  });

  test('a bare share is in per cent, as printed beside the box', () => {
    const share = { dimension: 'ratio', unit: '%' } as const;
    expect(understandNumber('5', share, 'us')).toEqual({ ok: true, value: 0.05 });
    expect(understandNumber('5 %', share, 'us')).toEqual({ ok: true, value: 0.05 });
  });

  test('a temperature of nought is not nought kelvin, a gauge may show a vacuum', () => {
    const read = understandNumber('0', { dimension: 'temperature', unit: '°C' }, 'si');
    expect(read).toEqual({ ok: true, value: 273.15 });
    expect(understandNumber('-2', { dimension: 'pressure', unit: 'psi' }, 'us').ok).toBe(true);
  });

  test.each(['about 3', '< 2', '3 to 4', '12 furlongs', '', '1/0', '1,2,3', '--3'])(
    '%s is no number',
    (text) => {
      expect(understandNumber(text, inches, 'us').ok).toBe(false);
    },
  );
});

test.each([
  ['2026-10-02', '2026-10-02'],
  ['2 October 2026', '2026-10-02'],
  ['Oct 2, 2026', '2026-10-02'],
  ['29 Feb 2028', '2028-02-29'],
  ['31/12/2026', '2026-12-31'],
  ['12/31/2026', '2026-12-31'],
  ['4/4/2026', '2026-04-04'],
  ['2026/11/04', '2026-11-04'],
  ['2026.11.04', '2026-11-04'],
  ['4-Nov-2026', '2026-11-04'],
  ['2026-11-04 14:30', '2026-11-04'],
  ['2026-11-04T14:30:00Z', '2026-11-04'],
  ['4 Nov 2026, 2 pm', '2026-11-04'],
])('%s is a day', (text, day) => expect(understandDate(text)).toBe(day));

test.each([
  '10/02/2026',
  '2.10.2026',
  '2026-02-30',
  '2026-13-01',
  '31 June 2026',
  'today',
  '11/04/2026',
  '4 Nov 26',
  '32/12/2026',
  '4 Nox 2026',
])('%s is no day that can be told for sure', (text) => expect(understandDate(text)).toBeUndefined());

describe('answers against the sheet', () => {
  const review = reviewedSample('pool-hot-water');
  const sheet = buildSheet(review);
  const read = (readings: Record<string, string>) => understand(answersFor(review, readings), sheet, 'us');

  test('what cannot be read is kept and told, with its place', () => {
    const { readings, issues } = read({ 'electrical.volts-ab': 'four hundred' });
    expect(readings.get('electrical.volts-ab')).toMatchObject({ kind: 'unreadable', text: 'four hundred' });
    expect(printIssue(issues[0] as (typeof issues)[number]).join('\n')).toMatch(
      /four hundred.*Voltage A to B[\s\S]*a\.yaml:1:1/,
    );
  });

  test('in a PDF the place is page and field', () => {
    const place = { file: 'sheet.pdf', page: 3, field: 'electrical.volts-ab' };
    const answers = {
      file: 'sheet.pdf',
      issues: [],
      answers: [{ id: 'electrical.volts-ab', text: 'x', place }],
    };
    const { issues } = understand(answers, sheet, 'us');
    expect(printIssue(issues[0] as (typeof issues)[number])[0]).toContain(
      'sheet.pdf, page 3, field electrical.volts-ab',
    );
  });

  test.each(['n/a: no access', 'N.A. no access', 'not applicable - no access', 'NA (no access)'])(
    '%s',
    (text) => {
      const reading = read({ 'electrical.volts-ab': text }).readings.get('electrical.volts-ab');
      expect(reading).toMatchObject({ kind: 'not-read' });
      expect(reading?.kind === 'not-read' && reading.reason).toMatch(/no access$/);
    },
  );

  test('not read without a reason is told', () => {
    expect(read({ 'electrical.volts-ab': 'n/a' }).issues.map(({ code }) => code)).toEqual([
      'fieldwork.reading.no-reason',
    ]);
  });

  test('a reason beside a row holds for the boxes of it that are empty, and for no others', () => {
    const { readings } = read({
      'electrical.volts-ab-not-read': 'panel locked',
      'electrical.volts-bc': '460',
    });
    expect(readings.get('electrical.volts-ab')).toMatchObject({ kind: 'not-read', reason: 'panel locked' });
    expect(readings.get('electrical.volts-bc')).toMatchObject({ kind: 'number', value: 460 });
    expect(readings.get('electrical.volts-ca')).toMatchObject({ kind: 'not-read' });
    expect(readings.has('electrical.amps-a')).toBe(false);
  });

  test('choices are forgiven their capitals and shortened yes and no, nothing else', () => {
    const choice = (text: string) => read({ 'coupling.guard': text }).readings.get('coupling.guard');
    expect(choice('YES')).toMatchObject({ choice: 'yes' });
    expect(choice('n')).toMatchObject({ choice: 'no' });
    expect(choice('maybe')).toMatchObject({ kind: 'unreadable' });
  });

  test.each([
    ['OK', 'yes'],
    ['pass', 'yes'],
    ['Failed', 'no'],
    ['Y.', 'yes'],
  ])('%s is %s', (text, choice) => {
    expect(read({ 'coupling.guard': text }).readings.get('coupling.guard')).toMatchObject({ choice });
  });

  test('what takes an answer back is no answer', () => {
    for (const text of ['yes but loose', 'ok?', 'pass, except the top', 'not yes']) {
      expect(read({ 'coupling.guard': text }).readings.get('coupling.guard')?.kind).toBe('unreadable');
    }
  });

  test('impossible is not taken, unlikely is told at its box and taken, confirmed is believed', () => {
    const kind = (id: string, text: string) => {
      const { readings, issues } = read({ [id]: text });
      const reading = readings.get(id);
      return [reading?.kind, reading?.kind === 'number' && reading.unlikely === true, issues[0]?.code];
    };
    expect(kind('hydraulic.running-suction', '-200 psi')).toEqual([
      'unreadable',
      false,
      'fieldwork.reading.impossible',
    ]);
    const asked = ['number', true, 'fieldwork.reading.unlikely'];
    expect(kind('supports.h1.height', '100 ft')).toEqual(asked);
    expect(kind('before-bolt-up.suction.gap-up', '62')).toEqual(asked);
    expect(kind('identity.motor-voltage', '46')).toEqual(asked);
    expect(kind('vibration.motor-top-along', '2,8')).toEqual(asked);
    expect(kind('vibration.motor-top-along', '2.8 confirmed')).toEqual(['number', false, undefined]);
    expect(kind('electrical.volts-ab', '461')).toEqual(['number', false, undefined]);
  });

  test('a length below zero is no gap; an offset may be', () => {
    expect(read({ 'supports.h1.position': '-3' }).issues[0]?.code).toBe('fieldwork.reading.negative');
    expect(read({ 'before-bolt-up.suction.rise': '-0.02' }).issues).toEqual([]);
  });

  test('a box that is not on the sheet is told with the one that was meant', () => {
    const { issues } = read({ 'electrical.vots-ab': '460' });
    expect(issues[0]).toMatchObject({
      code: 'fieldwork.reading.not-on-sheet',
      data: { nearest: 'electrical.volts-ab' },
    });
  });
});
