// Closed form: a quarter bend built in at one end, loaded at the other; R = 6 in long-radius elbow of NPS 4, k = 5.272.
// With φ from the free end and a force P along the tangent there (in plane): M = P R (1 − cos φ), N = P cos φ, V = P sin φ.
// In plane square to the tangent: M = P R sin φ, N = P sin φ, V = P cos φ. Moment M alone: turns k M R π/(2 E I).
// Square to the plane: M = P R sin φ, T = P R (1 − cos φ), V = P.
import { describe, expect, test } from 'vitest';
import { bendElement } from '../../src/mechanics/frame/elements/bend-element.js';
import { solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import type { Vec3 } from '../../src/model/conventions.js';
import {
  anchor,
  bend,
  condition,
  force,
  frame,
  GRAVITY,
  INCH,
  NPS4,
  of,
  STEEL,
} from '../mechanics/small-frames.js';
import { relativeError } from '../published/printed-value.js';

const R = 6 * INCH;
const k = 5.272;
const inside = NPS4.outsideDiameter - 2 * NPS4.wall;
const I = (Math.PI / 64) * (NPS4.outsideDiameter ** 4 - inside ** 4);
const A = (Math.PI / 4) * (NPS4.outsideDiameter ** 2 - inside ** 2);
const E = STEEL.modulus;
const G = E / 2.6;
const [EI, EA, GA, GJ] = [E * I, E * A, (G * A) / 2, G * 2 * I];

function moved(F: Vec3, M: Vec3 = [0, 0, 0], gravity: Vec3 = [0, 0, 0]) {
  // From the built-in end at (0, −R), tangent east, to the free end at (R, 0), tangent north.
  const built = frame({
    points: { a: [0, -R, 0], b: [R, 0, 0] },
    members: [bend('elbow', 'a', 'b', [0, 0, 0], { flexibility: k, mass: { metal: 20, covering: 0 } })],
    supports: [anchor('A', 'a')],
    conditions: [condition({ gravity, loads: [force('b', F, M)] })],
  });
  const answer = of(solveFrame(built).conditions, 'test');
  return { ...of(answer.movements, 'b'), load: of(answer.supports, 'A').load };
}

describe('a long-radius elbow built in at one end', () => {
  test('loaded along the tangent of its free end', () => {
    const P = 1000;
    const exact = P * ((k * R ** 3 * ((3 * Math.PI) / 4 - 2)) / EI + (Math.PI / 4) * R * (1 / EA + 1 / GA));
    expect(relativeError(moved([0, P, 0]).translation[1], exact)).toBeLessThan(1e-12);
  });

  test('loaded across its free end in its plane', () => {
    const P = 1000;
    const exact = P * (((k * R ** 3) / EI) * (Math.PI / 4) + (Math.PI / 4) * R * (1 / EA + 1 / GA));
    expect(relativeError(moved([P, 0, 0]).translation[0], exact)).toBeLessThan(1e-12);
  });

  test('loaded square to its plane, with torsion, bending and shear', () => {
    const P = 1000;
    const exact =
      P *
      (((k * R ** 3) / EI) * (Math.PI / 4) +
        (R ** 3 / GJ) * ((3 * Math.PI) / 4 - 2) +
        ((Math.PI / 2) * R) / GA);
    expect(relativeError(moved([0, 0, P]).translation[2], exact)).toBeLessThan(1e-12);
  });

  test('turned by moments in and out of its plane', () => {
    const M = 500;
    expect(
      relativeError(moved([0, 0, 0], [0, 0, M]).rotation[2], (k * M * R * Math.PI) / (2 * EI)),
    ).toBeLessThan(1e-12);
    const mixed = M * R * (Math.PI / 4) * (k / EI + 1 / GJ);
    expect(relativeError(moved([0, 0, 0], [0, M, 0]).rotation[1], mixed)).toBeLessThan(1e-12);
  });

  test('under its own weight square to its plane', () => {
    // Load q R dψ at ψ between the free end and the section φ: M = q R² (1 − cos φ), T = q R² (φ − sin φ), V = q R φ.
    const q = 20 * 9.80665;
    const { translation, load } = moved([0, 0, 0], [0, 0, 0], GRAVITY);
    const quarter = Math.PI / 2;
    // ∫ (1 − cos φ) sin φ dφ = 1/2;  ∫ (φ − sin φ)(1 − cos φ) dφ = π²/8 − π/2 + 1/2;  ∫ φ dφ = π²/8.
    const exact =
      q * R ** 4 * ((k / EI) * 0.5 + (quarter ** 2 / 2 - quarter + 0.5) / GJ) +
      (q * R ** 2 * (quarter ** 2 / 2)) / GA;
    expect(relativeError(-translation[2], exact)).toBeLessThan(1e-12);
    expect(relativeError(-load.force[2], q * R * quarter)).toBeLessThan(1e-13);
    expect(
      relativeError(Math.hypot(load.moment[0], load.moment[1]), q * R ** 2 * Math.hypot(1, quarter - 1)),
    ).toBeLessThan(1e-12);
  });
});

test('an arc of half a degree is a straight pipe of its length', () => {
  const compliance = { axial: 1 / EA, shear: 1 / GA, torsion: 1 / GJ, bending: 1 / EI };
  const angle = Math.PI / 360;
  const L = 1;
  const arc = bendElement(
    {
      radius: L / angle,
      angle,
      centre: [0, 0, 0],
      axes: { along: [1, 0, 0], inPlane: [0, 1, 0], across: [0, 0, 1] },
    },
    compliance,
  );
  // S along the two directions across the arc: 12 E I / (L³ (1 + φ)).
  const phi = (12 * EI) / (GA * L ** 2);
  expect(relativeError(arc.stiffness[14] ?? 0, (12 * EI) / (L ** 3 * (1 + phi)))).toBeLessThan(1e-4);
  expect(relativeError(arc.stiffness[35] ?? 0, ((4 + phi) * EI) / (L * (1 + phi)))).toBeLessThan(1e-3);
});
