// Source   ASME Boiler and Pressure Vessel Code, Section III, NC-3658, equivalent pressure; the form agrees in two pages.
//          The numbers are a hand calculation with it, as no worked sample could be read
// Printed  G = 7.80 in, M = 18 000 in·lb, F = 500 lb: 193.18 + 10.46 = 203.64 psi.
// Checked  by hand: 16 × 18 000 / (π × 474.552) = 193.18; 4 × 500 / (π × 60.84) = 10.46.
// Limits   a check of the equation and its units, not of the method.
import { expect, test } from 'vitest';
import { equivalentPressure } from '../../src/mechanics/stress/flange-equivalent-pressure.js';
import { withinPrintedRounding } from './printed-value.js';

const INCH = 0.0254;
const POUND_FORCE = 4.4482216152605;
const PSI = POUND_FORCE / INCH ** 2;

const opening = {
  bendingMoment: 18_000 * POUND_FORCE * INCH,
  tension: 500 * POUND_FORCE,
  gasketDiameter: 7.8 * INCH,
};

test('the equivalent pressure of a moment and a pull', () => {
  const printed = { text: '203.64', lastDigit: 0.01, toSi: PSI };
  expect(withinPrintedRounding(equivalentPressure(opening), printed)).toBe(true);
});

test('its share from the moment alone', () => {
  const printed = { text: '193.18', lastDigit: 0.01, toSi: PSI };
  expect(withinPrintedRounding(equivalentPressure({ ...opening, tension: 0 }), printed)).toBe(true);
});

test('the check can fail: a gasket taken half an inch larger is refused', () => {
  const printed = { text: '203.64', lastDigit: 0.01, toSi: PSI };
  expect(withinPrintedRounding(equivalentPressure({ ...opening, gasketDiameter: 8.3 * INCH }), printed)).toBe(
    false,
  );
});
