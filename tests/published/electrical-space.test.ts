// Source   29 CFR 1910.303(g), table S-1, as a state reproduces it; UFC 3-520-01, table 8-1, after NFPA 70, 110.26(A).
// Printed  depth by voltage to ground and condition A, B, C, in ft and in m: 0 to 150 V 3, 3, 3 (0.9); 151 to 600 V 3
//          (0.9), 3.5 (1.07), 4 (1.2); width 30 in (0.76 m), height 6.5 ft (2.0 m). 601 to 1000 V 3, 4, 5 (0.9, 1.2, 1.5)
//          from memory of later editions of the code.
// Checked  by hand: 3.5 ft × 0.3048 = 1.0668 m, 4 ft = 1.2192 m, 5 ft = 1.524 m, 30 in = 0.762 m, 6.5 ft = 1.981 m.
// Limits   the metres of the table are rounded; the feet hold here, which are never the smaller. The table takes volts
//          to ground: 480 V between lines of a wye are 277 V and stand in the second row.
import { expect, test } from 'vitest';
import { type OppositeSide, WORKING_HEIGHT, WORKING_WIDTH, workingDepth } from '../../src/catalog/index.js';
import { withinPrintedRounding } from './printed-value.js';

const FOOT = 0.3048;
const INCH = 0.0254;

const printed: readonly (readonly [
  toGround: number,
  opposite: OppositeSide,
  feet: string,
  metres: string,
])[] = [
  [120, 'nothing', '3', '0.9'],
  [120, 'grounded', '3', '0.9'],
  [120, 'live', '3', '0.9'],
  [150, 'live', '3', '0.9'],
  [151, 'live', '4', '1.2'],
  [277, 'nothing', '3', '0.9'],
  [277, 'grounded', '3.5', '1.07'],
  [277, 'live', '4', '1.2'],
  [600, 'grounded', '3.5', '1.07'],
  [601, 'nothing', '3', '0.9'],
  [800, 'grounded', '4', '1.2'],
  [1000, 'live', '5', '1.5'],
];

/** Worth of the last printed digit. */
const lastDigit = (text: string) => 10 ** -(text.split('.')[1]?.length ?? 0);

test.each(printed)('%s V to ground, opposite %s: %s ft (%s m)', (toGround, opposite, feet, metres) => {
  const depth = workingDepth({ toGround, opposite })?.depth ?? Number.NaN;
  expect(withinPrintedRounding(depth, { text: feet, lastDigit: 0.001, toSi: FOOT })).toBe(true);
  expect(withinPrintedRounding(depth, { text: metres, lastDigit: lastDigit(metres), toSi: 1 })).toBe(true);
});

test('width and height are those printed', () => {
  expect(withinPrintedRounding(WORKING_WIDTH, { text: '30', lastDigit: 0.001, toSi: INCH })).toBe(true);
  expect(withinPrintedRounding(WORKING_WIDTH, { text: '0.76', lastDigit: 0.01, toSi: 1 })).toBe(true);
  expect(withinPrintedRounding(WORKING_HEIGHT, { text: '6.5', lastDigit: 0.001, toSi: FOOT })).toBe(true);
  expect(withinPrintedRounding(WORKING_HEIGHT, { text: '2.0', lastDigit: 0.1, toSi: 1 })).toBe(true);
});

test('the first two rows were found twice, the third is remembered', () => {
  const seen = [120, 277, 800].map(
    (toGround) => workingDepth({ toGround, opposite: 'live' })?.citation.confidence,
  );
  expect(seen).toEqual(['two sources', 'two sources', 'memory']);
});

test('above the last row, and for no voltage at all, there is no depth', () => {
  for (const toGround of [1001, 0, -1, Number.NaN, Number.POSITIVE_INFINITY])
    expect(workingDepth({ toGround, opposite: 'live' })).toBeUndefined();
});

test('the check can fail: volts between lines would stand in another row', () => {
  const depth = workingDepth({ toGround: 1000, opposite: 'live' })?.depth ?? Number.NaN;
  expect(withinPrintedRounding(depth, { text: '4', lastDigit: 0.001, toSi: FOOT })).toBe(false);
});
