import { expect, test } from 'vitest';
import { processPumpSizes, processPumpTable } from '../../src/catalog/index.js';

const row = (nps: string) => {
  const found = processPumpTable(nps);
  if (found === undefined) throw new Error(`no row ${nps}`);
  return found;
};

test('the side nozzle of NPS 6 is as printed in both unit systems', () => {
  const { si, printedUs, us } = row('NPS 6');
  expect(si).toEqual({ FX: 2490, FY: 3110, FZ: 2050, FR: 4480, MX: 2300, MY: 1180, MZ: 1760, MR: 3130 });
  expect(printedUs).toEqual({ FX: 560, FY: 700, FZ: 460, FR: 1010, MX: 1700, MY: 870, MZ: 1300, MR: 2310 });
  expect(us.FY).toBeCloseTo(700 * 4.4482216152605, 9);
  expect(us.MX).toBeCloseTo(1700 * 1.3558179483314, 6);
});

test.each(processPumpSizes())('NPS %s: both unit systems agree within 2.5 %%', (nps) => {
  const { si, us } = row(nps);
  for (const key of ['FX', 'FY', 'FZ', 'FR', 'MX', 'MY', 'MZ', 'MR'] as const) {
    expect(Math.abs(si[key] / us[key] - 1), key).toBeLessThan(0.025);
  }
});

test.each(processPumpSizes())('NPS %s: resultants are the root of the squares within rounding', (nps) => {
  const { us } = row(nps);
  expect(Math.abs(Math.hypot(us.FX, us.FY, us.FZ) / us.FR - 1)).toBeLessThan(0.02);
  expect(Math.abs(Math.hypot(us.MX, us.MY, us.MZ) / us.MR - 1)).toBeLessThan(0.02);
});

test.each(processPumpSizes())(
  'NPS %s: the largest force is along the nozzle, the least along the shaft',
  (nps) => {
    const { si } = row(nps);
    expect(si.FY).toBeGreaterThan(si.FX);
    expect(si.FX).toBeGreaterThan(si.FZ);
    expect(si.MX).toBeGreaterThan(si.MZ);
    expect(si.MZ).toBeGreaterThan(si.MY);
  },
);

test('SI moments say that they are from memory', () => {
  expect(row('6').siMomentCitation.confidence).toBe('memory');
  expect(row('6').citation.confidence).toBe('read');
});

test.each(['5', '2-1/2', '18', 'six'])('the table has no row for %s', (nps) => {
  expect(processPumpTable(nps)).toBeUndefined();
});
