// Source   API 610, annex F.1, sample of an end-suction pump, NPS 10 suction × NPS 8 discharge
// Printed  from memory of the standard: suction F = (2900, 0, -1990) lbf, M = (-1000, -3700, -5500) ft·lbf, 10.5 in in
//          front of the pump centre; discharge F = (1600, -100, 1950), M = (500, -2500, -3600), at (0, -12.25, 15) in.
//          Resultants 3517 lbf, 6704 ft·lbf and 2524, 4411; interaction 1.960 and 1.919; at the centre FRC 4501,
//          M = (-2366, -2459, -7467), MRC 8209.
// Checked  by hand: 3517 / (1.5 × 2200) + 6704 / (1.5 × 5000) = 1.0658 + 0.8939 = 1.960.
// Limits   the sample is a horizontal pump on a baseplate; only the rule is taken from it, not its field of use.
import { expect, test } from 'vitest';
import { processPumpTable } from '../../src/catalog/index.js';
import { loadsMovedTo, nozzleInteraction } from '../../src/mechanics/stress/combined-nozzle.js';
import type { Vec3, Wrench } from '../../src/model/conventions.js';
import { withinPrintedRounding } from './printed-value.js';

const INCH = 0.0254;
const POUND_FORCE = 4.4482216152605;
const FOOT_POUND = POUND_FORCE * 12 * INCH;

const scaled = (vector: Vec3, by: number): Vec3 => [vector[0] * by, vector[1] * by, vector[2] * by];
const wrench = (force: Vec3, moment: Vec3): Wrench => ({
  force: scaled(force, POUND_FORCE),
  moment: scaled(moment, FOOT_POUND),
});

const suction = { at: scaled([10.5, 0, 0], INCH), load: wrench([2900, 0, -1990], [-1000, -3700, -5500]) };
const discharge = {
  at: scaled([0, -12.25, 15], INCH),
  load: wrench([1600, -100, 1950], [500, -2500, -3600]),
};
const table = (nps: string) => {
  const row = processPumpTable(nps);
  if (row === undefined) throw new Error('the table lost a row');
  return { force: row.us.FR, moment: row.us.MR };
};

test('the interaction of the suction nozzle', () => {
  const value = nozzleInteraction(suction.load, table('10'));
  expect(withinPrintedRounding(value, { text: '1.960', lastDigit: 0.001, toSi: 1 })).toBe(true);
});

test('the interaction of the discharge nozzle', () => {
  const value = nozzleInteraction(discharge.load, table('8'));
  expect(withinPrintedRounding(value, { text: '1.919', lastDigit: 0.001, toSi: 1 })).toBe(true);
});

const total = loadsMovedTo([suction, discharge], [0, 0, 0]);

test('the resultant force at the pump centre', () => {
  const printed = { text: '4501', lastDigit: 1, toSi: POUND_FORCE };
  expect(withinPrintedRounding(Math.hypot(...total.force), printed)).toBe(true);
});

test.each([
  ['first', 0, '-2366'],
  ['second', 1, '-2459'],
  ['third', 2, '-7467'],
] as const)('the %s moment at the pump centre', (_word, axis, text) => {
  expect(withinPrintedRounding(total.moment[axis], { text, lastDigit: 1, toSi: FOOT_POUND })).toBe(true);
});

test('the resultant moment at the pump centre', () => {
  const printed = { text: '8209', lastDigit: 1, toSi: FOOT_POUND };
  expect(withinPrintedRounding(Math.hypot(...total.moment), printed)).toBe(true);
});

test('the check can fail: moments that are not moved with their forces are refused', () => {
  const unmoved = loadsMovedTo([suction, { ...discharge, at: [0, 0, 0] }], [0, 0, 0]);
  const printed = { text: '8209', lastDigit: 1, toSi: FOOT_POUND };
  expect(withinPrintedRounding(Math.hypot(...unmoved.moment), printed)).toBe(false);
});
