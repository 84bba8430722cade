// Source   University of Oregon, Architecture 461 courseware, lecture 27, example problem 1, "Thermal Strain"
// Printed  4 in standard steel pipe, a = 3.17 in², installed at 60 °F, runs at 220 °F, α = 0.0000065 per °F,
//          E = 29,000,000 psi. Answers: stress 30,160 psi, force on the buttresses 95,600 lb.
// Checked  by hand: 29e6 × 6.5e-6 × 160 = 30,160 psi; × 3.17 in² = 95,607 lbf, printed to three figures.
// Limits   the example takes E and α at room temperature and holds both ends fully rigid; so does this test. The tube is given
//          a wall that makes its area the printed 3.17 in².
import { expect, test } from 'vitest';
import { memberForces } from '../../src/mechanics/frame/recovery/member-forces.js';
import { solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import {
  anchor,
  condition,
  frame,
  INCH,
  of,
  POUND_FORCE,
  PSI,
  runThrough,
} from '../mechanics/small-frames.js';
import { withinPrintedRounding } from './printed-value.js';

const FAHRENHEIT_STEP = 5 / 9;
const area = 3.17 * INCH ** 2;
const outsideDiameter = 4.5 * INCH;
const wall = (outsideDiameter - Math.sqrt(outsideDiameter ** 2 - (4 * area) / Math.PI)) / 2;
const installed = 288.7;
const step = (220 - 60) * FAHRENHEIT_STEP;

function push(expansion: number): number {
  const hot = condition({ temperature: installed + step });
  const built = frame({
    ...runThrough(
      [
        [0, 0, 0],
        [30, 0, 0],
      ],
      { tube: { outsideDiameter, wall } },
    ),
    materials: {
      steel: {
        modulus: 29e6 * PSI,
        poisson: 0.3,
        expansion: [
          [installed, 0],
          [installed + step, (expansion / FAHRENHEIT_STEP) * step],
        ],
      },
    },
    supports: [anchor('A', 'a'), anchor('B', 'b')],
    conditions: [hot],
    installationTemperature: installed,
  });
  const answer = of(solveFrame(built).conditions, 'test');
  expect(of(answer.supports, 'B').load.force[0]).toBeGreaterThan(0);
  return -(memberForces(built, hot, answer, 'ab', [0.5])[0]?.axial ?? 0);
}

test('an anchored 4 in steam pipe pushes on its anchors with the published force', () => {
  expect(withinPrintedRounding(push(6.5e-6), { text: '95,600', lastDigit: 100, toSi: POUND_FORCE })).toBe(
    true,
  );
});

test('its axial stress is the published stress', () => {
  expect(withinPrintedRounding(push(6.5e-6) / area, { text: '30,160', lastDigit: 10, toSi: PSI })).toBe(true);
});

test('the check can fail: a force 0.2 % off is refused', () => {
  expect(
    withinPrintedRounding(push(6.5e-6 * 1.002), { text: '95,600', lastDigit: 100, toSi: POUND_FORCE }),
  ).toBe(false);
});
