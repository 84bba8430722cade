// Closed form: L, Z and U bends of uniform pipe, built in at both ends, heated by e = α ΔT = 6.93e-4.
// NPS 4 schedule 40, E = 29e6 psi, I = 7.23260 in⁴, A = 3.17405 in². Rigid corners unless an elbow is given.
import { describe, expect, test } from 'vitest';
import { solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import type { Vec3 } from '../../src/model/conventions.js';
import type { Frame } from '../../src/model/frame/frame.js';
import {
  anchor,
  bend,
  condition,
  frame,
  INCH,
  NPS4,
  of,
  POUND_FORCE,
  pipe,
  runThrough,
  STEEL,
  STRAIN,
} from '../mechanics/small-frames.js';
import { relativeError } from '../published/printed-value.js';
import { type PlanePiece, restrainedGrowth } from './elastic-centre.js';

const inside = NPS4.outsideDiameter - 2 * NPS4.wall;
const EI = (STEEL.modulus * Math.PI * (NPS4.outsideDiameter ** 4 - inside ** 4)) / 64;
const EA = (STEEL.modulus * Math.PI * (NPS4.outsideDiameter ** 2 - inside ** 2)) / 4;
const INCH_POUND = INCH * POUND_FORCE;
type Corner = readonly [number, number];

const inches = ([x, y]: Corner, scale = 1): Vec3 => [x * INCH * scale, y * INCH * scale, 0];

function heated(parts: Pick<Frame, 'points' | 'members'>, ends: readonly [string, string]) {
  const hot = frame({
    ...parts,
    supports: [anchor('A', ends[0]), anchor('Z', ends[1])],
    conditions: [condition({ temperature: 400 })],
    options: { withoutShear: true },
  });
  return of(solveFrame(hot).conditions, 'test');
}

function heatedLine(corners: readonly Corner[], scale = 1) {
  const run = runThrough(corners.map((corner) => inches(corner, scale)));
  const last = String.fromCharCode(96 + corners.length);
  return { answer: heated(run, ['a', last]), last };
}

const piecesOf = (corners: readonly Corner[]): readonly PlanePiece[] =>
  corners.slice(1).map((to, i) => ({ from: inchesOf(corners[i] ?? to), to: inchesOf(to) }));
const inchesOf = ([x, y]: Corner): Corner => [x * INCH, y * INCH];

/** L bends: legs a east and b north; forces by the formulas, and with axial strain. */
const bends = [
  { a: 240, b: 120, fx: 136.269, fy: 41.638, axial: [136.001, 41.566], moments: [3936.7, 6056.4, 10295.9] },
  { a: 120, b: 120, fx: 121.128, fy: 121.128, axial: [120.898, 120.898], moments: [7267.7, 7267.7, 7267.7] },
  { a: 240, b: 240, fx: 30.282, fy: 30.282, axial: [30.268, 30.268], moments: [3633.8, 3633.8, 3633.8] },
] as const;

describe.each(bends)('an L bend of $a by $b in', ({ a, b, fx, fy, axial, moments }) => {
  const corners: readonly Corner[] = [
    [0, 0],
    [a, 0],
    [a, b],
  ];
  const e = STRAIN;
  // Fx = 3 E I e (a³ + 4 a² b + 3 b³) / [a b³ (a+b)] and the same turned round.
  const formula = (p: number, q: number) =>
    (3 * EI * e * (p ** 3 + 4 * p ** 2 * q + 3 * q ** 3)) / (p * q ** 3 * (p + q)) / INCH ** 2;

  test('pushes with the forces of the formula when it is so slender that axial strain does not count', () => {
    // A hundred times the size with the same pipe: axial strain counts ten thousand times less, and forces fall as much.
    const { answer } = heatedLine(corners, 100);
    const load = of(answer.supports, 'A').load.force;
    expect(relativeError(Math.abs(load[0]) * 1e4, formula(a, b))).toBeLessThan(5e-7);
    expect(relativeError(Math.abs(load[1]) * 1e4, formula(b, a))).toBeLessThan(5e-7);
    expect(formula(a, b) / POUND_FORCE).toBeCloseTo(fx, 2);
    expect(formula(b, a) / POUND_FORCE).toBeCloseTo(fy, 2);
    const [endA, corner, endB] = moments;
    const size = (moment: number) => (Math.abs(moment) * 1e2) / INCH_POUND;
    expect(size(of(answer.supports, 'A').load.moment[2])).toBeCloseTo(endA, 0);
    expect(size(of(answer.supports, 'Z').load.moment[2])).toBeCloseTo(endB, 0);
    expect(size(of(answer.members, 'ab').to.moment[2])).toBeCloseTo(corner, 0);
  });

  test('pushes with the forces of the elastic centre with axial strain', () => {
    const { answer } = heatedLine(corners);
    const exact = restrainedGrowth(piecesOf(corners), { bending: EI, axial: EA }, e);
    const { force, moment } = of(answer.supports, 'A').load;
    expect(relativeError(Math.abs(force[0]), Math.abs(exact.fx))).toBeLessThan(1e-10);
    expect(relativeError(Math.abs(force[1]), Math.abs(exact.fy))).toBeLessThan(1e-10);
    expect(relativeError(Math.abs(moment[2]), Math.abs(exact.momentAt([0, 0])))).toBeLessThan(1e-9);
    expect(Math.abs(force[0]) / POUND_FORCE).toBeCloseTo(axial[0], 2);
    expect(Math.abs(force[1]) / POUND_FORCE).toBeCloseTo(axial[1], 2);
  });
});

/** The same with a long-radius elbow, R = 6 in, k = 5.272; forces and largest moment of a model of short chords. */
const elbows = [
  { a: 240, b: 120, fx: 116.34, fy: 31.5, most: 9539.8 },
  { a: 120, b: 120, fx: 89.98, fy: 89.98, most: 6072.3 },
  { a: 240, b: 240, fx: 25.2, fy: 25.2, most: 3235.3 },
] as const;

describe.each(elbows)('an L bend of $a by $b in with a long-radius elbow', ({ a, b, fx, fy, most }) => {
  const R = 6;
  const pieces: readonly PlanePiece[] = [
    { from: [0, 0], to: inchesOf([a - R, 0]) },
    { from: inchesOf([a - R, 0]), to: inchesOf([a, R]), centre: inchesOf([a - R, R]), flexibility: 5.272 },
    { from: inchesOf([a, R]), to: inchesOf([a, b]) },
  ];

  test('pushes as the elastic centre of its arc says', () => {
    const exact = restrainedGrowth(pieces, { bending: EI, axial: EA }, STRAIN);
    const answer = heated(
      {
        points: { a: [0, 0, 0], b: inches([a - R, 0]), c: inches([a, R]), d: inches([a, b]) },
        members: [
          pipe('ab', 'a', 'b'),
          bend('bc', 'b', 'c', inches([a - R, R]), { flexibility: 5.272 }),
          pipe('cd', 'c', 'd'),
        ],
      },
      ['a', 'd'],
    );
    const { force, moment } = of(answer.supports, 'Z').load;
    expect(relativeError(Math.abs(force[0]), Math.abs(exact.fx))).toBeLessThan(1e-9);
    expect(relativeError(Math.abs(force[1]), Math.abs(exact.fy))).toBeLessThan(1e-9);
    expect(relativeError(Math.abs(moment[2]), Math.abs(exact.momentAt(inchesOf([a, b]))))).toBeLessThan(1e-9);
  });

  test('agrees with the forces of a model of chords to the accuracy of the chords', () => {
    const table = restrainedGrowth(pieces, { bending: EI, axial: EA }, STRAIN);
    expect(relativeError(Math.abs(table.fx) / POUND_FORCE, fx)).toBeLessThan(3e-4);
    expect(relativeError(Math.abs(table.fy) / POUND_FORCE, fy)).toBeLessThan(3e-4);
    const ends = [table.momentAt([0, 0]), table.momentAt(inchesOf([a, b]))].map(
      (m) => Math.abs(m) / INCH_POUND,
    );
    expect(relativeError(Math.max(...ends), most)).toBeLessThan(3e-4);
  });
});

/** Z bends: legs c east, offset b north between them. */
const offsets = [
  { c: 120, b: 60, fx: 529.935, fy: 206.296, corner: 15898.0, end: 8857.5 },
  { c: 120, b: 120, fx: 133.241, fy: 115.072, corner: 7994.4, end: 5814.1 },
  { c: 180, b: 72, fx: 375.426, fy: 115.32, corner: 13515.3, end: 7242.2 },
] as const;

describe.each(offsets)('a Z bend of $c and $b in', ({ c, b, fx, fy, corner, end }) => {
  const corners: readonly Corner[] = [
    [0, 0],
    [c, 0],
    [c, b],
    [2 * c, b],
  ];

  test('pushes with the tabled forces when axial strain does not count', () => {
    const { answer } = heatedLine(corners, 100);
    const { force, moment } = of(answer.supports, 'A').load;
    expect((Math.abs(force[0]) * 1e4) / POUND_FORCE).toBeCloseTo(fx, 2);
    expect((Math.abs(force[1]) * 1e4) / POUND_FORCE).toBeCloseTo(fy, 2);
    expect((Math.abs(moment[2]) * 1e2) / INCH_POUND).toBeCloseTo(end, 0);
    expect((Math.abs(of(answer.members, 'ab').to.moment[2]) * 1e2) / INCH_POUND).toBeCloseTo(corner, 0);
  });

  test('pushes with the forces of the elastic centre with axial strain', () => {
    const { answer } = heatedLine(corners);
    const exact = restrainedGrowth(piecesOf(corners), { bending: EI, axial: EA }, STRAIN);
    const { force } = of(answer.supports, 'A').load;
    expect(relativeError(Math.abs(force[0]), Math.abs(exact.fx))).toBeLessThan(1e-10);
    expect(relativeError(Math.abs(force[1]), Math.abs(exact.fy))).toBeLessThan(1e-10);
  });
});

/** U loops: runs s each side, width W, height H, anchors on one line. */
const loops = [
  { s: 600, W: 60, H: 60, fx: 568.008, end: 2963.5, top: 31117.0, axial: 562.99 },
  { s: 600, W: 48, H: 96, fx: 201.673, end: 1936.1, top: 17424.6, axial: 201.04 },
] as const;

describe.each(loops)(
  'a U loop $W wide and $H high between runs of $s in',
  ({ s, W, H, fx, end, top, axial }) => {
    const corners: readonly Corner[] = [
      [0, 0],
      [s, 0],
      [s, H],
      [s + W, H],
      [s + W, 0],
      [2 * s + W, 0],
    ];

    test('pushes with the tabled force when axial strain does not count', () => {
      const { answer } = heatedLine(corners, 100);
      const { force, moment } = of(answer.supports, 'A').load;
      // Fx = E I e (2s+W)/Ixx, with T = 2s+2H+W, yc = (H² + W H)/T, Ixx = 2H³/3 + W H² − T yc².
      const T = 2 * s + 2 * H + W;
      const yc = (H ** 2 + W * H) / T;
      const Ixx = (2 * H ** 3) / 3 + W * H ** 2 - T * yc ** 2;
      const formula = (EI * STRAIN * (2 * s + W)) / Ixx / INCH ** 2;
      expect(relativeError(Math.abs(force[0]) * 1e4, formula)).toBeLessThan(2e-6);
      expect(formula / POUND_FORCE).toBeCloseTo(fx, 2);
      expect((Math.abs(moment[2]) * 1e2) / INCH_POUND).toBeCloseTo(end, 0);
      expect((Math.abs(of(answer.members, 'cd').to.moment[2]) * 1e2) / INCH_POUND).toBeCloseTo(top, 0);
    });

    test('pushes with the force of the elastic centre with axial strain', () => {
      const { answer } = heatedLine(corners);
      const exact = restrainedGrowth(piecesOf(corners), { bending: EI, axial: EA }, STRAIN);
      const force = Math.abs(of(answer.supports, 'A').load.force[0]);
      expect(relativeError(force, Math.abs(exact.fx))).toBeLessThan(1e-9);
      expect(force / POUND_FORCE).toBeCloseTo(axial, 1);
    });
  },
);

test('the guided cantilever is conservative for unequal legs and exact for equal ones', () => {
  const { answer } = heatedLine(
    [
      [0, 0],
      [120, 0],
      [120, 120],
    ],
    100,
  );
  const L = 120 * INCH;
  expect(
    relativeError(Math.abs(of(answer.supports, 'A').load.force[0]) * 1e4, (12 * EI * STRAIN) / L ** 2),
  ).toBeLessThan(5e-7);
  const unequal = heatedLine(
    [
      [0, 0],
      [240, 0],
      [240, 120],
    ],
    100,
  ).answer;
  const guided = (12 * EI * STRAIN * 2 * L) / L ** 3;
  expect(guided / POUND_FORCE).toBeCloseTo(242.3, 1);
  expect(guided).toBeGreaterThan(Math.abs(of(unequal.supports, 'A').load.force[0]) * 1e4);
});
