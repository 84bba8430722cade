// Source   M. Kannappan, Introduction to Pipe Stress Analysis, fig. 5.12, and the guided-cantilever formulas on two training pages
// Printed  200 ft of 12 in carbon-steel pipe heated to 400 °F, 0.027 in per ft: expansion 5.4 in. Guided cantilever:
//          F = 12 E I d/L³, M = 6 E I d/L², S = 3 E D d/L². Stress 17,700 psi at a leg, times i = 2.8: 49,600 psi.
// Checked  by hand: 200 × 0.027 = 5.4 in; 17,700 × 2.8 = 49,560, printed to three figures.
// Limits   the page with the length of the leg is cut off, so the formulas are compared over a range of legs instead, with a
//          line solved between guides. Slender beam: shear deformation is left out.
import { describe, expect, test } from 'vitest';
import { memberForces } from '../../src/mechanics/frame/recovery/member-forces.js';
import { solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import type { Vec3 } from '../../src/model/conventions.js';
import {
  AXES,
  anchor,
  condition,
  frame,
  INCH,
  of,
  PSI,
  restraint,
  runThrough,
  STEEL,
  support,
} from '../mechanics/small-frames.js';
import { relativeError, withinPrintedRounding } from './printed-value.js';

const FOOT = 12 * INCH;
const tube = { outsideDiameter: 12.75 * INCH, wall: 0.375 * INCH };

test('expansion of a long line with one end free', () => {
  const perFoot = (0.027 * INCH) / FOOT;
  const built = frame({
    ...runThrough(
      [
        [0, 0, 0],
        [200 * FOOT, 0, 0],
      ],
      { tube },
    ),
    materials: {
      steel: {
        ...STEEL,
        expansion: [
          [294.26, 0],
          [477.59, perFoot],
        ],
      },
    },
    supports: [anchor('A', 'a')],
    conditions: [condition({ temperature: 477.59 })],
    installationTemperature: 294.26,
  });
  const moved = of(of(solveFrame(built).conditions, 'test').movements, 'b').translation[0];
  expect(withinPrintedRounding(moved, { text: '5.4', lastDigit: 0.1, toSi: INCH })).toBe(true);
});

/** A leg built in at its foot, its head guided and pushed sideways by d. */
function guidedLeg(L: number, d: number) {
  const head = support('head', 'b', [
    restraint([1, 0, 0], { imposed: d }),
    ...AXES.map((axis) => restraint(axis, { acts: 'rotation' })),
  ]);
  const built = frame({
    ...runThrough(
      [
        [0, 0, 0],
        [0, 0, L],
      ],
      { tube },
    ),
    supports: [anchor('foot', 'a'), head],
    options: { withoutShear: true },
  });
  const answer = of(solveFrame(built).conditions, 'test');
  const [foot] = memberForces(built, condition(), answer, 'ab', [0]);
  return { force: of(answer.supports, 'head').load.force as Vec3, moment: foot?.bending ?? Number.NaN };
}

describe.each([5, 20, 45.6])('a guided leg of %s ft that takes up the expansion', (feet) => {
  const L = feet * FOOT;
  const d = 5.4 * INCH;
  const inside = tube.outsideDiameter - 2 * tube.wall;
  const I = (Math.PI / 64) * (tube.outsideDiameter ** 4 - inside ** 4);
  const { force, moment } = guidedLeg(L, d);

  test('pushes with 12 E I d/L³', () => {
    expect(relativeError(Math.abs(force[0]), (12 * STEEL.modulus * I * d) / L ** 3)).toBeLessThan(1e-12);
  });

  test('bends with 6 E I d/L² and a stress of 3 E D d/L²', () => {
    expect(relativeError(moment, (6 * STEEL.modulus * I * d) / L ** 2)).toBeLessThan(1e-12);
    const stress = (moment * tube.outsideDiameter) / (2 * I);
    expect(relativeError(stress, (3 * STEEL.modulus * tube.outsideDiameter * d) / L ** 2)).toBeLessThan(
      1e-12,
    );
  });
});

test('stress at a leg with its intensification factor', () => {
  // The leg whose guided-cantilever stress is the printed 17 700 psi: L = √(3 E D d / S).
  const d = 1 * INCH;
  const L = Math.sqrt((3 * STEEL.modulus * tube.outsideDiameter * d) / (17_700 * PSI));
  const inside = tube.outsideDiameter - 2 * tube.wall;
  const I = (Math.PI / 64) * (tube.outsideDiameter ** 4 - inside ** 4);
  const stress = (guidedLeg(L, d).moment * tube.outsideDiameter) / (2 * I);
  expect(withinPrintedRounding(2.8 * stress, { text: '49,600', lastDigit: 100, toSi: PSI })).toBe(true);
});

test('the check can fail: a line 1 % longer is not 5.4 in to a hundredth', () => {
  expect(withinPrintedRounding(5.4 * 1.01 * INCH, { text: '5.40', lastDigit: 0.01, toSi: INCH })).toBe(false);
});
