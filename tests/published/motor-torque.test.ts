// Source   Shaft torque by T = 9550 P/n and T = 5252 hp/n, two pages; a pump problem of 1200 gpm at 45 ft; load inertia
//          of NEMA MG 1, paragraph 12.54, five rows of the table read on a page
// Printed  below, beside each value.
// Checked  by hand: 30 000/π = 9549.3; 33 000/(2π) = 5252.1; 10 × 5252.11/1750 = 30.01. 1200 × 45/3960 = 13.64.
// Limits   the examples in kilowatts were worked with 9550, which is rounded: they are compared to one digit less.
//          The pump problem takes water of 999.0 kg/m³ (8.34 lb/gal), the metric one of 998 kg/m³ and 9.81 m/s².
import { expect, test } from 'vitest';
import { startableLoadInertia } from '../../src/catalog/index.js';
import { shaftDemand } from '../../src/mechanics/start/affinity.js';
import { ratedTorque } from '../../src/mechanics/start/motor-torque.js';
import { withinPrintedRounding } from './printed-value.js';

const RPM = Math.PI / 30;
const POUND = 0.45359237;
const FOOT = 0.3048;
const FOOT_POUND = POUND * 9.80665 * FOOT;
const HORSEPOWER = 550 * FOOT_POUND;
const GALLON_A_MINUTE = (231 * 0.0254 ** 3) / 60;

test('the two constants of shaft torque', () => {
  const metric = ratedTorque({ power: 1000, speed: RPM });
  const american = ratedTorque({ power: HORSEPOWER, speed: RPM });
  expect(withinPrintedRounding(metric, { text: '9549.3', lastDigit: 0.1, toSi: 1 })).toBe(true);
  expect(withinPrintedRounding(metric, { text: '9550', lastDigit: 10, toSi: 1 })).toBe(true);
  expect(withinPrintedRounding(american, { text: '5252', lastDigit: 1, toSi: FOOT_POUND })).toBe(true);
});

test.each([
  [7.5, 1450, '49.4'],
  [30, 1480, '193.6'],
  [75, 1485, '482.3'],
])('rated torque of %f kW at %i rpm', (kilowatts, speed, text) => {
  const torque = ratedTorque({ power: kilowatts * 1000, speed: speed * RPM });
  expect(withinPrintedRounding(torque, { text, lastDigit: 0.1, toSi: 1 })).toBe(true);
});

test.each([
  [10, 1750, '30.01'],
  [40, 1770, '118.69'],
  [100, 1780, '295.06'],
])('rated torque of %i hp at %i rpm', (horsepower, speed, text) => {
  const torque = ratedTorque({ power: horsepower * HORSEPOWER, speed: speed * RPM });
  expect(withinPrintedRounding(torque, { text, lastDigit: 0.01, toSi: FOOT_POUND })).toBe(true);
});

test('power of the water and at the shaft', () => {
  const american = shaftDemand({
    flow: 1200 * GALLON_A_MINUTE,
    head: 45 * FOOT,
    density: 999.0,
    gravity: 9.80665,
    efficiency: 0.725,
    speed: 1750 * RPM,
  });
  expect(
    withinPrintedRounding(american.waterPower, { text: '13.64', lastDigit: 0.01, toSi: HORSEPOWER }),
  ).toBe(true);
  expect(withinPrintedRounding(american.shaftPower, { text: '19', lastDigit: 1, toSi: HORSEPOWER })).toBe(
    true,
  );
  const metric = shaftDemand({
    flow: 50 / 3600,
    head: 30,
    density: 998,
    gravity: 9.81,
    efficiency: 0.75,
    speed: 1450 * RPM,
  });
  expect(withinPrintedRounding(metric.waterPower, { text: '4.079', lastDigit: 0.001, toSi: 1000 })).toBe(
    true,
  );
  expect(withinPrintedRounding(metric.shaftPower, { text: '5.439', lastDigit: 0.001, toSi: 1000 })).toBe(
    true,
  );
  expect(metric.torque).toBeCloseTo(metric.shaftPower / (1450 * RPM), 9);
});

test.each([
  [100, 1800, '441', 1],
  [10, 1800, '51', 1],
  [50, 3600, '49', 1],
  [100, 1200, '1180', 10],
  [50, 900, '1240', 10],
])('load inertia that %i hp at %i rpm must be able to start', (horsepower, speed, text, lastDigit) => {
  const { value } = startableLoadInertia({ power: horsepower * HORSEPOWER, synchronousSpeed: speed * RPM });
  expect(withinPrintedRounding(value, { text, lastDigit, toSi: POUND * FOOT ** 2 })).toBe(true);
});

test('the check can fail: the torque at the speed of the field instead of the shaft is refused', () => {
  const torque = ratedTorque({ power: 10 * HORSEPOWER, speed: 1800 * RPM });
  expect(withinPrintedRounding(torque, { text: '30.01', lastDigit: 0.01, toSi: FOOT_POUND })).toBe(false);
});
