// Source   IAPWS, Revised Release on the Industrial Formulation 1997, tables 5 (region 1) and 35 (saturation line).
// Printed  v(300 K, 3 MPa) 0.100215168e-2, v(300 K, 80 MPa) 0.971180894e-3, v(500 K, 3 MPa) 0.120241800e-2 m³/kg;
//          p_sat 0.353658941e-2, 2.63889776, 12.3443146 MPa at 300, 500, 600 K.
// Second   the independent program package @neutrium/thermo.eos.iapws97 (proves the coding, same formulation), and
//          the formula of Kell for water at one atmosphere (J. Chem. Eng. Data 20, 1975, 97), another formulation.
// Limits   liquid only; 273.15 to 623.15 K up to 100 MPa.
import { IAPWS97_EoS } from '@neutrium/thermo.eos.iapws97';
import { expect, test } from 'vitest';
import { regionOneDensity, waterDensity, waterSaturationPressure } from '../../src/catalog/index.js';
import { relativeError, withinPrintedRounding } from './printed-value.js';

test.each([
  [300, 3e6, '0.100215168', 1e-2],
  [300, 80e6, '0.971180894', 1e-3],
  [500, 3e6, '0.120241800', 1e-2],
])('specific volume at %d K and %d Pa is the printed one', (temperature, pressure, text, toSi) => {
  const volume = 1 / regionOneDensity({ temperature, pressure });
  // The release prints nine significant digits; the last may be cut instead of rounded.
  expect(withinPrintedRounding(volume, { text, lastDigit: 2e-9, toSi })).toBe(true);
});

test.each([
  [300, '0.353658941', 1e-9, 1e4],
  [500, '2.63889776', 1e-8, 1e6],
  [600, '12.3443146', 1e-7, 1e6],
])('saturation pressure at %d K is the printed one', (temperature, text, lastDigit, toSi) => {
  expect(withinPrintedRounding(waterSaturationPressure(temperature), { text, lastDigit, toSi })).toBe(true);
});

test('the check can fail: a volume one part in a million off is refused', () => {
  const volume = 1.000001 / regionOneDensity({ temperature: 300, pressure: 3e6 });
  expect(withinPrintedRounding(volume, { text: '0.100215168', lastDigit: 2e-9, toSi: 1e-2 })).toBe(false);
});

test.each([1, 10, 25, 50, 75, 100, 125, 150])(
  'an independent program agrees at %d °C and 1 MPa',
  (celsius) => {
    const temperature = celsius + 273.15;
    const other = new IAPWS97_EoS().solve({ p: 1e6, t: temperature }) as { readonly rho: number };
    const own = waterDensity({ temperature, pressure: 1e6 })?.value ?? Number.NaN;
    expect(relativeError(own, other.rho)).toBeLessThan(1e-9);
  },
);

test.each([5, 20, 40, 60, 80, 95])("Kell's formula agrees within 0.02 kg/m³ at %d °C", (t) => {
  const kell =
    (999.83952 +
      16.945176 * t -
      7.9870401e-3 * t ** 2 -
      46.170461e-6 * t ** 3 +
      105.56302e-9 * t ** 4 -
      280.54253e-12 * t ** 5) /
    (1 + 16.87985e-3 * t);
  const own = waterDensity({ temperature: t + 273.15, pressure: 101325 })?.value ?? Number.NaN;
  expect(Math.abs(own - kell)).toBeLessThan(0.02);
});
