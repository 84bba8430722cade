import { expect, test } from 'vitest';
import { EngineError } from '../../src/issues/issue.js';
import {
  allowableDisplacementRange,
  allowableRangeWithLeftOver,
  buildingSustainedStress,
  cycleFactor,
  insideDiameter,
  longitudinalPressureStress,
  metalArea,
  powerSustainedStress,
  sectionModulus,
  sustainedIntensification,
  thinWallPressureStress,
} from '../../src/mechanics/stress/code-stress.js';

const tube = { outsideDiameter: 0.168275, wall: 0.007112 };
const state = { tube, pressure: 8e5, moment: 5000, intensification: 1, axialForce: 0 };

const codeOf = (run: () => unknown): string => {
  try {
    run();
  } catch (error) {
    return error instanceof EngineError ? error.code : String(error);
  }
  return 'nothing thrown';
};

test('the end force of pressure over the metal area is the exact pressure stress', () => {
  const force = (8e5 * Math.PI * insideDiameter(tube) ** 2) / 4;
  expect(longitudinalPressureStress(state)).toBeCloseTo(force / metalArea(tube), 3);
});

test('the thin-wall form is on the high side of it for any tube', () => {
  for (const wall of [0.001, 0.005, 0.02, 0.06]) {
    const thick = { tube: { outsideDiameter: 0.168275, wall }, pressure: 1e6 };
    expect(thinWallPressureStress(thick)).toBeGreaterThan(longitudinalPressureStress(thick));
  }
});

test('the section modulus of a thin tube tends to pi r² t', () => {
  const thin = { outsideDiameter: 2.0002, wall: 0.0002 };
  const mean = 1 + 0.0001 - 0.0001;
  expect(sectionModulus(thin) / (Math.PI * mean ** 2 * 0.0002)).toBeCloseTo(1, 3);
});

test('the sustained factor is never below 1', () => {
  expect(sustainedIntensification(1)).toBe(1);
  expect(sustainedIntensification(4 / 3)).toBe(1);
  expect(sustainedIntensification(2)).toBe(1.5);
});

test('both codes add the same bending to their own pressure term', () => {
  const [power, building] = [powerSustainedStress(state), buildingSustainedStress(state)];
  expect(power - thinWallPressureStress(state)).toBeCloseTo(building - longitudinalPressureStress(state), 3);
});

test('axial force counts in the B31.9 sum with either sign', () => {
  const pulled = buildingSustainedStress({ ...state, axialForce: 1000 });
  const pushed = buildingSustainedStress({ ...state, axialForce: -1000 });
  expect(pulled).toBe(pushed);
  expect(pulled - buildingSustainedStress(state)).toBeCloseTo(1000 / metalArea(tube), 3);
});

test('the cycle factor is 1 up to 7776 cycles and falls after', () => {
  expect(cycleFactor(7000)).toBe(1);
  expect(cycleFactor(7776)).toBeCloseTo(1, 12);
  expect(cycleFactor(100_000)).toBeCloseTo(0.6, 12);
});

test('with nothing left over both forms of the allowable range agree', () => {
  const allowables = { cold: 120e6, hot: 100e6, cycles: 7000 };
  expect(allowableRangeWithLeftOver(allowables, 100e6)).toBeCloseTo(
    allowableDisplacementRange(allowables),
    3,
  );
  expect(allowableRangeWithLeftOver(allowables, 60e6)).toBeCloseTo(
    allowableDisplacementRange(allowables) + 40e6,
    3,
  );
});

test('what cannot be worked out is refused by name', () => {
  expect(codeOf(() => sectionModulus({ outsideDiameter: 0.1, wall: 0.05 }))).toBe(
    'mechanics.stress.not-a-tube',
  );
  expect(codeOf(() => metalArea({ outsideDiameter: 0.1, wall: 0 }))).toBe('mechanics.stress.not-a-tube');
  expect(
    codeOf(() => thinWallPressureStress({ tube: { outsideDiameter: 0.1, wall: Number.NaN }, pressure: 1 })),
  ).toBe('mechanics.stress.not-a-tube');
  expect(codeOf(() => cycleFactor(0))).toBe('mechanics.stress.no-cycles');
  expect(codeOf(() => cycleFactor(Number.NaN))).toBe('mechanics.stress.no-cycles');
  const allowables = { cold: 120e6, hot: 100e6, cycles: 7000 };
  expect(codeOf(() => allowableRangeWithLeftOver(allowables, 101e6))).toBe(
    'mechanics.stress.nothing-left-over',
  );
});
