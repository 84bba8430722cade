// Source   Plain-end weights and section properties of ASTM A53 / B36.10 steel pipe as piping handbooks and the tables
//          before 2004 print them (weight by 0.2833 lb/in³; from memory of those tables); weights of ASTM B88 tube
//          from the Copper Tube Handbook; water in pipe at 60 °F, 62.366 lb/ft³.
// Printed  below, in lb/ft, in⁴ and in³.
// Checked  by hand: NPS 6 STD: 12 π 0.2833 (6.625 - 0.280) 0.280 = 18.97 lb/ft; bore 6.065 in, 12.51 lb/ft of water.
// Limits   later editions of B36.10M print weights about 0.1 % higher (18.99 for NPS 6 STD), from 10.69 (D - t) t.
import { expect, test } from 'vitest';
import { findPipe, tubeProperties } from '../../src/catalog/index.js';
import { withinPrintedRounding } from './printed-value.js';

const POUND_PER_FOOT = 0.45359237 / 0.3048;
const INCH = 0.0254;
const WATER = (62.366 * 0.45359237) / 0.3048 ** 3;

const steel: readonly (readonly [nps: string, schedule: string, printed: string])[] = [
  ['2', 'STD', '3.65'],
  ['2-1/2', 'STD', '5.79'],
  ['3', 'STD', '7.58'],
  ['4', 'STD', '10.79'],
  ['5', 'STD', '14.62'],
  ['6', 'STD', '18.97'],
  ['8', 'STD', '28.55'],
  ['10', 'STD', '40.48'],
  ['12', 'STD', '49.56'],
  ['14', 'STD', '54.57'],
  ['16', 'STD', '62.58'],
  ['18', 'STD', '70.59'],
  ['20', 'STD', '78.60'],
  ['24', 'STD', '94.62'],
  ['2', 'XS', '5.02'],
  ['3', 'XS', '10.25'],
  ['4', 'XS', '14.98'],
  ['6', 'XS', '28.57'],
  ['8', 'XS', '43.39'],
  ['10', 'XS', '54.74'],
  ['12', 'XS', '65.42'],
];

const massOf = (nps: string, schedule: string, material: string) =>
  findPipe({ nps, schedule, material })?.massPerLength ?? Number.NaN;

test.each(steel)('NPS %s %s steel weighs %s lb/ft as printed', (nps, schedule, text) => {
  const printed = { text, lastDigit: 0.01, toSi: POUND_PER_FOOT };
  expect(withinPrintedRounding(massOf(nps, schedule, 'carbon steel'), printed)).toBe(true);
});

test('the check can fail: a density 0.1 % off is refused at NPS 24', () => {
  const printed = { text: '94.62', lastDigit: 0.01, toSi: POUND_PER_FOOT };
  expect(withinPrintedRounding(massOf('24', 'STD', 'carbon steel') * 1.001, printed)).toBe(false);
});

const copper: readonly (readonly [nps: string, type: string, printed: string, lastDigit: number])[] = [
  ['1', 'L', '0.655', 0.001],
  ['1-1/4', 'L', '0.884', 0.001],
  ['1-1/2', 'L', '1.14', 0.01],
  ['2', 'L', '1.75', 0.01],
  ['2-1/2', 'L', '2.48', 0.01],
  ['3', 'L', '3.33', 0.01],
  ['4', 'L', '5.38', 0.01],
  ['5', 'L', '7.61', 0.01],
  ['6', 'L', '10.2', 0.1],
  ['8', 'L', '19.3', 0.1],
  ['2', 'K', '2.06', 0.01],
  ['4', 'K', '6.51', 0.01],
  ['6', 'K', '13.9', 0.1],
  ['8', 'K', '25.9', 0.1],
];

test.each(copper)('NPS %s type %s copper tube weighs %s lb/ft as printed', (nps, type, text, lastDigit) => {
  expect(withinPrintedRounding(massOf(nps, type, 'copper'), { text, lastDigit, toSi: POUND_PER_FOOT })).toBe(
    true,
  );
});

const water: readonly (readonly [nps: string, printed: string])[] = [
  ['2', '1.45'],
  ['3', '3.20'],
  ['4', '5.51'],
  ['5', '8.66'],
  ['6', '12.51'],
];

test.each(water)('NPS %s STD holds %s lb of water a foot as printed', (nps, text) => {
  const pipe = findPipe({ nps, schedule: 'STD', material: 'carbon steel' });
  const held = pipe === undefined ? Number.NaN : tubeProperties(pipe).boreArea * WATER;
  expect(withinPrintedRounding(held, { text, lastDigit: 0.01, toSi: POUND_PER_FOOT })).toBe(true);
});

const sections: readonly (readonly [nps: string, moment: string, modulus: string, lastDigit: number])[] = [
  ['2', '0.666', '0.561', 0.001],
  ['3', '3.017', '1.724', 0.001],
  ['4', '7.233', '3.214', 0.001],
  ['6', '28.14', '8.50', 0.01],
  ['8', '72.49', '16.81', 0.01],
];

test.each(sections)(
  'NPS %s schedule 40 has I %s in⁴ and Z %s in³ as printed',
  (nps, moment, modulus, lastDigit) => {
    const pipe = findPipe({ nps, schedule: '40', material: 'carbon steel' });
    const tube = tubeProperties(pipe ?? { outsideDiameter: Number.NaN, wall: Number.NaN });
    expect(withinPrintedRounding(tube.secondMoment, { text: moment, lastDigit, toSi: INCH ** 4 })).toBe(true);
    expect(withinPrintedRounding(tube.sectionModulus, { text: modulus, lastDigit, toSi: INCH ** 3 })).toBe(
      true,
    );
  },
);
