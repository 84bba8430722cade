// Source   ASCE 7, equations 13.3-1 to 13.3-3. Two worked sheets: a permit calculation of a rooftop heat pump in a
//          public city record (2010 edition), and a calculation sheet after the 2016 edition.
// Printed  first: SDS 0.876, ap 2.5, Rp 6, Ip 1, Wp 204 lb, z 14 ft over h 12 ft: Fp 99.3 lb, most 285.9, least 53.6,
//          for allowable stress 69.5 lb. Second: SDS 0.4667, ap 1.5, Rp 2.5, Ip 1.5, z 0: 0.168 Wp by the formula,
//          most 1.120, least 0.210, which governs.
// Checked  by hand: 0.4 × 2.5 × 0.876 × (1 + 2 × 14/12) / 6 = 0.48667, × 204 = 99.28.
//          0.4 × 1.5 × 0.4667 / (2.5/1.5) = 0.16801; 0.3 × 0.4667 × 1.5 = 0.21002.
// Limits   the first sheet takes z/h = 1.167, where the standard asks for no more than 1: on the safe side.
import { expect, test } from 'vitest';
import { seismicCoefficient } from '../../src/catalog/index.js';
import { withinPrintedRounding } from './printed-value.js';

const heatPump = {
  acceleration: 0.876,
  importance: 1,
  heightRatio: 14 / 12,
  amplification: 2.5,
  response: 6,
};
const onGrade = { acceleration: 0.4667, importance: 1.5, heightRatio: 0, amplification: 1.5, response: 2.5 };
/** One part in the weight of the heat pump. */
const ONE_OF_204_POUNDS = 1 / 204;

test('force on a rooftop heat pump of 204 lb, and what bounds it', () => {
  const { value, byFormula, least, most } = seismicCoefficient(heatPump);
  const pounds = { lastDigit: 0.1, toSi: ONE_OF_204_POUNDS };
  expect(withinPrintedRounding(value, { text: '99.3', ...pounds })).toBe(true);
  expect(withinPrintedRounding(most, { text: '285.9', ...pounds })).toBe(true);
  expect(withinPrintedRounding(least, { text: '53.6', ...pounds })).toBe(true);
  expect(withinPrintedRounding(0.7 * value, { text: '69.5', ...pounds })).toBe(true);
  expect(value).toBe(byFormula);
});

test('at grade the least force governs', () => {
  const { value, byFormula, least, most } = seismicCoefficient(onGrade);
  const share = { lastDigit: 0.001, toSi: 1 };
  expect(withinPrintedRounding(byFormula, { text: '0.168', ...share })).toBe(true);
  expect(withinPrintedRounding(most, { text: '1.120', ...share })).toBe(true);
  expect(withinPrintedRounding(least, { text: '0.210', ...share })).toBe(true);
  expect(value).toBe(least);
});

test('a part that answers strongly is held to the most', () => {
  const { value, byFormula, most } = seismicCoefficient({ ...heatPump, response: 1 });
  expect(byFormula).toBeGreaterThan(most);
  expect(value).toBe(most);
});

test('the check can fail: z/h held to 1 gives 89.35 lb, which is not what was printed', () => {
  const { value } = seismicCoefficient({ ...heatPump, heightRatio: 1 });
  const pounds = { lastDigit: 0.1, toSi: ONE_OF_204_POUNDS };
  expect(withinPrintedRounding(value, { text: '99.3', ...pounds })).toBe(false);
});
