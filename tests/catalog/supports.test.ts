import { expect, test } from 'vitest';
import { findRod, findSpan, nominalInches, rodRating, rodSizes, spanSizes } from '../../src/catalog/index.js';

test('a rod is found however its size is written', () => {
  expect(findRod('5/8 in')?.size).toBe('5/8');
  expect(findRod('1 1/4')?.size).toBe('1-1/4');
  expect(findRod('0.5')?.size).toBe('1/2');
  expect(findRod('2/3')).toBeUndefined();
  expect(findRod('M12')).toBeUndefined();
});

test('a turn of the nut on a 1/2 in rod is a thirteenth of an inch', () => {
  expect(findRod('1/2')?.pitch).toBeCloseTo(0.0254 / 13, 12);
});

test.each(rodSizes('later'))(
  'the later rating of %s in is higher than the older and the same stress for all',
  (size) => {
    const older = rodRating({ size, edition: 'older' })?.value ?? Number.NaN;
    const later = rodRating({ size, edition: 'later' })?.value ?? Number.NaN;
    expect(later).toBeGreaterThan(older);
    const psi = later / (findRod(size)?.rootArea ?? Number.NaN) / 6894.757293168361;
    expect(psi).toBeGreaterThan(10600);
    expect(psi).toBeLessThan(11150);
  },
);

test('a size the later set does not hold has no later rating', () => {
  expect(rodRating({ size: '5/16', edition: 'older' })).toBeDefined();
  expect(rodRating({ size: '5/16', edition: 'later' })).toBeUndefined();
  expect(rodRating({ size: '9', edition: 'older' })).toBeUndefined();
  expect(rodSizes('later')).not.toContain('5/16');
  expect(rodSizes()).toContain('5/16');
});

test('later ratings that were not read say memory', () => {
  expect(rodRating({ size: '5/8', edition: 'later' })?.citation.confidence).toBe('read');
  expect(rodRating({ size: '1', edition: 'later' })?.citation.confidence).toBe('memory');
});

test.each(['carbon steel', 'stainless steel', 'copper'])(
  'spans and rods of %s never shrink with size',
  (material) => {
    const rows = spanSizes(material).map((nps) => findSpan({ nps, material }));
    expect(rows.length).toBeGreaterThan(10);
    for (const [i, row] of rows.entries()) {
      const before = rows[i - 1];
      if (before === undefined || row === undefined) continue;
      expect(row.value, row.nps).toBeGreaterThanOrEqual(before.value);
      const area = (size: string) => findRod(size)?.rootArea ?? Number.NaN;
      expect(area(row.rod.size), row.nps).toBeGreaterThanOrEqual(area(before.rod.size));
    }
  },
);

test('copper spans are shorter than steel spans of the same size', () => {
  for (const nps of spanSizes('copper').filter((size) => (nominalInches(size) ?? 0) >= 1)) {
    const span = (material: string) => findSpan({ nps, material })?.value ?? Number.NaN;
    expect(span('copper'), nps).toBeLessThanOrEqual(span('carbon steel'));
  }
});

test('unknown sizes and materials have no span', () => {
  expect(findSpan({ nps: '22', material: 'carbon steel' })).toBeUndefined();
  expect(findSpan({ nps: '6', material: 'brass' })).toBeUndefined();
  expect(spanSizes('brass')).toEqual([]);
});
