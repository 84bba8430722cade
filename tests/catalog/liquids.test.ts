import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  glycolDensity,
  glycolShares,
  waterDensity,
  waterSaturationPressure,
} from '../../src/catalog/index.js';

test('water at 60 °F and one atmosphere is 62.37 lb/ft³', () => {
  const density = waterDensity({ temperature: (60 + 459.67) / 1.8, pressure: 101325 });
  expect((density?.value ?? 0) / 16.018463).toBeCloseTo(62.37, 2);
});

test('without a pressure a closed system at 1 MPa is taken', () => {
  expect(waterDensity({ temperature: 350 })).toEqual(waterDensity({ temperature: 350, pressure: 1e6 }));
});

test('water that boils, freezes or leaves the formulation has no density', () => {
  expect(waterDensity({ temperature: 373.15, pressure: 1e5 })).toBeUndefined();
  expect(waterDensity({ temperature: 373.15, pressure: 1.1e5 })).toBeDefined();
  expect(waterDensity({ temperature: 272 })).toBeUndefined();
  expect(waterDensity({ temperature: 700, pressure: 5e7 })).toBeUndefined();
  expect(waterDensity({ temperature: 300, pressure: 2e8 })).toBeUndefined();
  expect(waterDensity({ temperature: Number.NaN })).toBeUndefined();
});

test('water boils at one atmosphere at 99.97 °C', () => {
  expect(waterSaturationPressure(373.12) / 101325).toBeCloseTo(1, 3);
});

test('water is lighter the hotter it is from 5 °C up, and denser the harder it is pressed', () => {
  fc.assert(
    fc.property(fc.double({ min: 278.15, max: 420, noNaN: true }), (temperature) => {
      const at = (kelvin: number, pressure: number) =>
        waterDensity({ temperature: kelvin, pressure })?.value ?? Number.NaN;
      expect(at(temperature + 1, 1e6)).toBeLessThan(at(temperature, 1e6));
      expect(at(temperature, 2e6)).toBeGreaterThan(at(temperature, 1e6));
    }),
  );
});

test('a glycol row of the table is given as printed', () => {
  const density = glycolDensity({ fluid: 'propylene glycol', share: 0.3, temperature: 293.15 });
  expect(density?.value).toBeCloseTo(1028.3, 9);
  expect(density?.citation.confidence).toBe('read');
});

test('between rows and columns lines are straight', () => {
  const middle = glycolDensity({ fluid: 'ethylene glycol', share: 0.45, temperature: 298.15 });
  expect(middle?.value).toBeCloseTo((1059.7 + 1055.4 + 1073.3 + 1068.7) / 4, 9);
});

test.each([
  [{ fluid: 'ethylene glycol', share: 0.19, temperature: 300 }],
  [{ fluid: 'ethylene glycol', share: 0.51, temperature: 300 }],
  [{ fluid: 'ethylene glycol', share: 0.3, temperature: 364 }],
  [{ fluid: 'propylene glycol', share: 0.3, temperature: 262 }],
  [{ fluid: 'propylene glycol', share: 0.26, temperature: 268 }],
  [{ fluid: 'propylene glycol', share: Number.NaN, temperature: 300 }],
  [{ fluid: 'propylene glycol', share: 0.3, temperature: Number.NaN }],
] as const)('%o is outside the table', (mixture) => {
  expect(glycolDensity(mixture)).toBeUndefined();
});

test('the ends of the table still answer', () => {
  const [lowest, highest] = glycolShares('ethylene glycol');
  for (const share of [lowest, highest]) {
    expect(glycolDensity({ fluid: 'ethylene glycol', share, temperature: 363.15 })).toBeDefined();
  }
});

test('more glycol is denser, warmer is lighter, and ethylene is denser than propylene', () => {
  const share = fc.double({ min: 0.2, max: 0.48, noNaN: true });
  const temperature = fc.double({ min: 274, max: 360, noNaN: true });
  fc.assert(
    fc.property(share, temperature, (part, kelvin) => {
      const at = (fluid: 'ethylene glycol' | 'propylene glycol', s: number, t: number) =>
        glycolDensity({ fluid, share: s, temperature: t })?.value ?? Number.NaN;
      expect(at('ethylene glycol', part + 0.02, kelvin)).toBeGreaterThan(at('ethylene glycol', part, kelvin));
      expect(at('propylene glycol', part, kelvin + 2)).toBeLessThan(at('propylene glycol', part, kelvin));
      expect(at('ethylene glycol', part, kelvin)).toBeGreaterThan(at('propylene glycol', part, kelvin));
    }),
  );
});
