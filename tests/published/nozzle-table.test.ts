// Source   API 610 / ISO 13709, table of allowable nozzle loads, side nozzle, as printed in Forsthoffer's Best Practice
//          Handbook for Rotating Machinery, best practice 2.20
// Printed  For NPS 2 to 16, in lbf and ft·lbf: three force components and FR, three moment components and MR. Each
//          resultant is the root of the sum of squares of its components, rounded.
// Checked  by hand for NPS 6: √(560² + 700² + 460²) = 1008, printed 1010; √(1700² + 870² + 1300²) = 2310, printed 2310.
// Limits   the publication rounds its resultants to the nearest ten up to NPS 6 and 8, and to the nearest hundred above;
//          the tolerance is half of that step.
import { expect, test } from 'vitest';
import { nozzleLimits } from '../../src/analysis/nozzles/nozzle-limits.js';
import { nozzleAxisLoads } from '../../src/analysis/nozzles/nozzle-load-rows.js';
import { processPumpTable } from '../../src/catalog/index.js';
import { installation } from '../checks/fixture.js';
import { withinPrintedRounding } from './printed-value.js';

const POUND_FORCE = 4.4482216152605;
const FOOT_POUND = POUND_FORCE * 0.3048;

/** Size; FX, FY, FZ, FR [lbf]; MX, MY, MZ, MR [ft·lbf]; worth of the last figure of FR and of MR. */
const printed = [
  ['2', [160, 200, 130, '290'], [340, 170, 260, '460'], 10, 10],
  ['3', [240, 300, 200, '430'], [700, 350, 530, '950'], 10, 10],
  ['4', [320, 400, 260, '570'], [980, 500, 740, '1330'], 10, 10],
  ['6', [560, 700, 460, '1010'], [1700, 870, 1300, '2310'], 10, 10],
  ['8', [850, 1100, 700, '1560'], [2600, 1300, 1900, '3500'], 10, 100],
  ['10', [1200, 1500, 1000, '2200'], [3700, 1800, 2800, '5000'], 100, 100],
  ['12', [1500, 1800, 1200, '2600'], [4500, 2200, 3400, '6100'], 100, 100],
  ['14', [1600, 2000, 1300, '2900'], [4700, 2300, 3500, '6300'], 100, 100],
  ['16', [1900, 2300, 1500, '3300'], [5400, 2700, 4000, '7200'], 100, 100],
] as const;

/** A nozzle that faces north: along it is y, up is z, across is x. */
const north = { axis: [0, 1, 0] } as const;

test.each(printed)(
  'the resultant force of the components for NPS %s is the printed one',
  (_nps, [x, y, z, text], _m, step) => {
    const force = [x * POUND_FORCE, y * POUND_FORCE, z * POUND_FORCE] as const;
    const { resultantForce } = nozzleAxisLoads({ force, moment: [0, 0, 0] }, north);
    expect(withinPrintedRounding(resultantForce, { text, lastDigit: step, toSi: POUND_FORCE })).toBe(true);
  },
);

test.each(printed)(
  'the resultant moment of the components for NPS %s is the printed one',
  (_nps, _f, [x, y, z, text], _s, step) => {
    const moment = [x * FOOT_POUND, y * FOOT_POUND, z * FOOT_POUND] as const;
    const { resultantMoment } = nozzleAxisLoads({ force: [0, 0, 0], moment }, north);
    expect(withinPrintedRounding(resultantMoment, { text, lastDigit: step, toSi: FOOT_POUND })).toBe(true);
  },
);

test.each(printed)(
  'the limits used for NPS %s are those printed, the largest force along the nozzle',
  (nps, [x, y, z, r]) => {
    const limits = nozzleLimits('process-pump table', { which: 'suction', nps }, installation());
    const inPounds = (value = Number.NaN) => value / POUND_FORCE;
    expect(inPounds(limits?.allowance.crossForce)).toBeCloseTo(x, 6);
    expect(inPounds(limits?.allowance.axialForce)).toBeCloseTo(y, 6);
    expect(inPounds(limits?.allowance.verticalForce)).toBeCloseTo(z, 6);
    expect(inPounds(limits?.allowance.resultantForce)).toBeCloseTo(Number(r), 6);
  },
);

test('the check can fail: a resultant without one of its components is refused', () => {
  const force = [560 * POUND_FORCE, 700 * POUND_FORCE, 0] as const;
  const { resultantForce } = nozzleAxisLoads({ force, moment: [0, 0, 0] }, north);
  expect(withinPrintedRounding(resultantForce, { text: '1010', lastDigit: 10, toSi: POUND_FORCE })).toBe(
    false,
  );
});

test('a size that the table does not hold has no limits', () => {
  expect(processPumpTable('5')).toBeUndefined();
});
