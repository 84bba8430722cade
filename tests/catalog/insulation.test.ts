import { expect, test } from 'vitest';
import { coveringMass, findInsulation, insulationKinds } from '../../src/catalog/index.js';

const INCH = 0.0254;
const POUND_PER_FOOT = 0.45359237 / 0.3048;

test.each(insulationKinds())('the typical density of %s lies in its range', (kind) => {
  const found = findInsulation(kind);
  if (found === undefined) throw new Error('listed and not found');
  expect(found.density.value).toBeGreaterThanOrEqual(found.range[0]);
  expect(found.density.value).toBeLessThanOrEqual(found.range[1]);
});

test('an unknown kind has no density', () => {
  expect(findInsulation('straw')).toBeUndefined();
});

test('2 in of 15 lb/ft³ on NPS 6 weigh 5.65 lb/ft', () => {
  // By hand: 0.0218 × 15 × 2 × (6.625 + 2) = 5.64 lb/ft, with 0.0218 for π/144.
  const mass = coveringMass({
    outsideDiameter: 6.625 * INCH,
    thickness: 2 * INCH,
    density: (15 * 0.45359237) / 0.3048 ** 3,
    jacketMassPerArea: 0,
  });
  expect(mass / POUND_PER_FOOT).toBeCloseTo(5.645, 3);
});

test('the jacket lies on the outside of the insulation', () => {
  const bare = { outsideDiameter: 0.1, thickness: 0.05, density: 0, jacketMassPerArea: 2 };
  expect(coveringMass(bare)).toBeCloseTo(Math.PI * 0.2 * 2, 12);
  expect(coveringMass({ ...bare, thickness: 0, jacketMassPerArea: 0 })).toBe(0);
});
