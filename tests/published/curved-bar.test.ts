// Source   S. Timoshenko, Strength of Materials, Part I, 3rd ed., 1955, p. 412, eq. 241, as reproduced in an open
//          collection of finite-element examples
// Printed  quarter circle, r = 100 in, solid round bar d = 2 in, E = 30e6 psi, ν = 0.3, F = 50 lb square to its plane at
//          the free end: deflection 2.648 in, bending stress 6366 psi, torsional stress 3183 psi.
// Checked  by hand: F r³/(E I) [π/4 + (E I/G J)(3π/4 − 2)] = 2.6493 in; 32 F r/(π d³) = 6366.2; 16 F r/(π d³) = 3183.1.
// Limits   shear deformation is left out, as in the formula. The printed deflection is 0.05 % under the exact value of
//          its own formula (E I/G J rounded to 1.3 gives 2.6493, a slide-rule 2.648), so its last digit is taken as 0.003.
import { expect, test } from 'vitest';
import { memberForces } from '../../src/mechanics/frame/recovery/member-forces.js';
import { solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import {
  anchor,
  bend,
  condition,
  force,
  frame,
  INCH,
  of,
  POUND_FORCE,
  PSI,
} from '../mechanics/small-frames.js';
import { relativeError, withinPrintedRounding } from './printed-value.js';

const r = 100 * INCH;
const d = 2 * INCH;
const F = 50 * POUND_FORCE;
const deflection = { text: '2.648', lastDigit: 0.003, toSi: INCH };

function bar(flexibility: number) {
  const loaded = condition({ loads: [force('b', [0, 0, -F])] });
  const built = frame({
    points: { a: [r, 0, 0], b: [0, r, 0] },
    materials: { steel: { modulus: 30e6 * PSI, poisson: 0.3, expansion: [] } },
    members: [bend('bar', 'a', 'b', [0, 0, 0], { tube: { outsideDiameter: d, wall: d / 2 }, flexibility })],
    supports: [anchor('A', 'a')],
    conditions: [loaded],
    options: { withoutShear: true },
  });
  const answer = of(solveFrame(built).conditions, 'test');
  const [root, tip] = memberForces(built, loaded, answer, 'bar', [0, 1]);
  return { moved: -of(answer.movements, 'b').translation[2], root, tip };
}

test('deflection of the free end of a curved bar loaded square to its plane', () => {
  expect(withinPrintedRounding(bar(1).moved, deflection)).toBe(true);
});

test('that deflection is the exact one of the formula', () => {
  const EI = (30e6 * PSI * Math.PI * d ** 4) / 64;
  const exact = ((F * r ** 3) / EI) * (Math.PI / 4 + 1.3 * ((3 * Math.PI) / 4 - 2));
  expect(relativeError(bar(1).moved, exact)).toBeLessThan(1e-12);
});

test('bending stress at the root', () => {
  const stress = (32 * (bar(1).root?.bending ?? 0)) / (Math.PI * d ** 3);
  expect(withinPrintedRounding(stress, { text: '6366', lastDigit: 1, toSi: PSI })).toBe(true);
});

test('torsional stress at the root', () => {
  const stress = (16 * Math.abs(bar(1).root?.torsion ?? 0)) / (Math.PI * d ** 3);
  expect(withinPrintedRounding(stress, { text: '3183', lastDigit: 1, toSi: PSI })).toBe(true);
});

test('at the free end it carries no moment', () => {
  expect(Math.abs(bar(1).tip?.moment ?? 1)).toBeLessThan(1e-9 * F * r);
});

test('the check can fail: with a flexibility factor of 1.01 the deflection is refused', () => {
  expect(withinPrintedRounding(bar(1.01).moved, deflection)).toBe(false);
});
