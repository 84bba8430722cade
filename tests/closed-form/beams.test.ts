// Closed form: cantilever in space, single spans, portal frame. NPS 4 schedule 40, E = 29e6 psi, without shear.
import { describe, expect, test } from 'vitest';
import { largestMoment, memberForces } from '../../src/mechanics/frame/recovery/member-forces.js';
import { movementAlong, sagAlong } from '../../src/mechanics/frame/recovery/movement-along.js';
import { solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import type { Vec3 } from '../../src/model/conventions.js';
import type { Frame } from '../../src/model/frame/frame.js';
import {
  anchor,
  condition,
  force,
  frame,
  INCH,
  NPS4,
  of,
  POUND_FORCE,
  prop,
  restraint,
  runThrough,
  STEEL,
  support,
} from '../mechanics/small-frames.js';
import { relativeError } from '../published/printed-value.js';

const EAST: Vec3 = [1, 0, 0];
const NORTH: Vec3 = [0, 1, 0];
const UP: Vec3 = [0, 0, 1];
const inside = NPS4.outsideDiameter - 2 * NPS4.wall;
const I = (Math.PI / 64) * (NPS4.outsideDiameter ** 4 - inside ** 4);
const A = (Math.PI / 4) * (NPS4.outsideDiameter ** 2 - inside ** 2);
const EI = STEEL.modulus * I;
const EA = STEEL.modulus * A;
const GJ = (STEEL.modulus / 2.6) * 2 * I;
const INCH_POUND = INCH * POUND_FORCE;
const scaled = (v: Vec3, by: number): Vec3 => [v[0] * by, v[1] * by, v[2] * by];

function solve(parts: Partial<Frame>) {
  const whole = frame({ options: { withoutShear: true }, ...parts });
  return { whole, answer: of(solveFrame(whole).conditions, 'test') };
}

describe('a cantilever in space, 120 in', () => {
  const L = 120 * INCH;
  const tip = (run: Vec3, F: Vec3, M: Vec3 = [0, 0, 0]) =>
    solve({
      ...runThrough([[0, 0, 0], run]),
      supports: [anchor('A', 'a')],
      conditions: [condition({ loads: [force('b', F, M)] })],
    }).answer;

  test('moves and turns as the formulas say under six loads at its tip', () => {
    const F = scaled([1000, 200, -300], POUND_FORCE);
    const M = scaled([5000, -2000, 3000], INCH_POUND);
    const answer = tip([L, 0, 0], F, M);
    const { translation, rotation } = of(answer.movements, 'b');
    const exact = [
      (F[0] * L) / EA,
      (F[1] * L ** 3) / (3 * EI) + (M[2] * L ** 2) / (2 * EI),
      (F[2] * L ** 3) / (3 * EI) - (M[1] * L ** 2) / (2 * EI),
      (M[0] * L) / GJ,
      (-F[2] * L ** 2) / (2 * EI) + (M[1] * L) / EI,
      (F[1] * L ** 2) / (2 * EI) + (M[2] * L) / EI,
    ];
    [...translation, ...rotation].forEach((value, i) => {
      expect(relativeError(value, exact[i] ?? 0)).toBeLessThan(1e-12);
    });
    expect(scaled(translation, 1 / INCH).map((x) => Number(x.toFixed(8)))).toEqual([
      0.00130368, 0.65221929, -0.75520128,
    ]);
    expect(rotation.map((x) => Number(x.toFixed(8)))).toEqual([0.00371879, 0.00915395, 0.00858183]);
    const { load } = of(answer.supports, 'A');
    expect(scaled(load.force, 1 / POUND_FORCE).map(Math.round)).toEqual([1000, 200, -300]);
    expect(scaled(load.moment, 1 / INCH_POUND).map(Math.round)).toEqual([5000, 34000, 27000]);
  });

  test('along a skew line moves as the axial and the lateral part say', () => {
    const n: Vec3 = [2 / 3, -1 / 3, 2 / 3];
    const F = scaled([100, 200, -300], POUND_FORCE);
    const axial = F[0] * n[0] + F[1] * n[1] + F[2] * n[2];
    const { translation } = of(tip(scaled(n, L), F).movements, 'b');
    const exact = F.map(
      (part, i) => (axial * (n[i] ?? 0) * L) / EA + ((part - axial * (n[i] ?? 0)) * L ** 3) / (3 * EI),
    );
    translation.forEach((value, i) => {
      expect(relativeError(value, exact[i] ?? 0)).toBeLessThan(1e-11);
    });
    expect(scaled(translation, 1 / INCH).map((x) => Number(x.toFixed(6)))).toEqual([
      0.640603, 0.366245, -0.457872,
    ]);
  });

  test('with shear its tip goes further by P L / (G A/2)', () => {
    const whole = frame({
      ...runThrough([
        [0, 0, 0],
        [L, 0, 0],
      ]),
      supports: [anchor('A', 'a')],
      conditions: [condition({ loads: [force('b', [0, 0, -1000])] })],
    });
    const moved = of(of(solveFrame(whole).conditions, 'test').movements, 'b').translation[2];
    const exact = -1000 * (L ** 3 / (3 * EI) + (2 * L) / ((STEEL.modulus / 2.6) * A));
    expect(relativeError(moved, exact)).toBeLessThan(1e-12);
  });
});

describe('single spans', () => {
  const L = 6;
  const w = 238;
  const weighty = { mass: { metal: w / 9.80665, covering: 0 } };
  const gravity: Vec3 = [0, 0, -9.80665];
  const half = runThrough([
    [0, 0, 0],
    [L / 2, 0, 0],
    [L, 0, 0],
  ]);
  const whole = runThrough(
    [
      [0, 0, 0],
      [L, 0, 0],
    ],
    weighty,
  );
  const pinned = [
    prop('A', 'a', EAST, NORTH, UP),
    support('T', 'a', [restraint(EAST, { acts: 'rotation' })]),
  ];

  test('simply supported under weight: w L/2 at the ends, w L²/8 and 5/384 at the middle', () => {
    const parts = {
      ...whole,
      supports: [...pinned, prop('B', 'b', NORTH, UP)],
      conditions: [condition({ gravity })],
    };
    const { whole: built, answer } = solve(parts);
    expect(relativeError(-of(answer.supports, 'A').load.force[2], (w * L) / 2)).toBeLessThan(1e-12);
    const middle = largestMoment(built, condition({ gravity }), answer, 'ab');
    expect(relativeError(middle.bending, (w * L ** 2) / 8)).toBeLessThan(1e-12);
    expect(middle.share).toBeCloseTo(0.5, 6);
    const sag = sagAlong(built, condition({ gravity }), answer, ['ab']);
    expect(relativeError(sag.sag, (5 * w * L ** 4) / (384 * EI))).toBeLessThan(1e-11);
  });

  test('built in under weight: w L²/12 at the ends, w L²/24 and 1/384 at the middle', () => {
    const { whole: built, answer } = solve({
      ...whole,
      supports: [anchor('A', 'a'), anchor('B', 'b')],
      conditions: [condition({ gravity })],
    });
    expect(relativeError(Math.abs(of(answer.supports, 'A').load.moment[1]), (w * L ** 2) / 12)).toBeLessThan(
      1e-12,
    );
    const [end, middle] = memberForces(built, condition({ gravity }), answer, 'ab', [0, 0.5]);
    expect(relativeError(Math.abs(end?.bendingInPlane ?? 0), (w * L ** 2) / 12)).toBeLessThan(1e-12);
    expect(relativeError(Math.abs(middle?.bendingInPlane ?? 0), (w * L ** 2) / 24)).toBeLessThan(1e-11);
    const moved = movementAlong(built, condition({ gravity }), answer, 'ab')(0.5).translation[2];
    expect(relativeError(-moved, (w * L ** 4) / (384 * EI))).toBeLessThan(1e-11);
  });

  test('propped under weight: 5/8 and 3/8, w L²/8 at the wall, 9/128 in the span, w L⁴/185 E I', () => {
    const { whole: built, answer } = solve({
      ...whole,
      supports: [anchor('A', 'a'), prop('B', 'b', UP)],
      conditions: [condition({ gravity })],
    });
    expect(relativeError(-of(answer.supports, 'A').load.force[2], (5 * w * L) / 8)).toBeLessThan(1e-12);
    expect(relativeError(-of(answer.supports, 'B').load.force[2], (3 * w * L) / 8)).toBeLessThan(1e-12);
    expect(relativeError(Math.abs(of(answer.supports, 'A').load.moment[1]), (w * L ** 2) / 8)).toBeLessThan(
      1e-12,
    );
    const [span] = memberForces(built, condition({ gravity }), answer, 'ab', [5 / 8]);
    expect(relativeError(Math.abs(span?.bending ?? 0), (9 * w * L ** 2) / 128)).toBeLessThan(1e-11);
    // Largest fall at x = L (15 − √33)/16 from the prop: (39 + 55 √33)/65536.
    const exact = ((39 + 55 * Math.sqrt(33)) / 65536) * ((w * L ** 4) / EI);
    expect(relativeError(sagAlong(built, condition({ gravity }), answer, ['ab']).sag, exact)).toBeLessThan(
      1e-10,
    );
  });

  test('propped with a load in the middle: 11/16 and 5/16, 3/16 at the wall, 5/32 and 7/768 under the load', () => {
    const P = 900;
    const { answer } = solve({
      ...half,
      supports: [anchor('A', 'a'), prop('C', 'c', UP)],
      conditions: [condition({ loads: [force('b', [0, 0, -P])] })],
    });
    expect(relativeError(-of(answer.supports, 'A').load.force[2], (11 * P) / 16)).toBeLessThan(1e-12);
    expect(relativeError(Math.abs(of(answer.supports, 'A').load.moment[1]), (3 * P * L) / 16)).toBeLessThan(
      1e-12,
    );
    expect(relativeError(Math.abs(of(answer.members, 'ab').to.moment[1]), (5 * P * L) / 32)).toBeLessThan(
      1e-11,
    );
    expect(
      relativeError(-of(answer.movements, 'b').translation[2], (7 * P * L ** 3) / (768 * EI)),
    ).toBeLessThan(1e-12);
  });

  test('built in with a load in the middle: P L/8 at ends and middle, 1/192', () => {
    const P = 900;
    const { answer } = solve({
      ...half,
      supports: [anchor('A', 'a'), anchor('C', 'c')],
      conditions: [condition({ loads: [force('b', [0, 0, -P])] })],
    });
    expect(relativeError(Math.abs(of(answer.supports, 'A').load.moment[1]), (P * L) / 8)).toBeLessThan(1e-12);
    expect(relativeError(Math.abs(of(answer.members, 'ab').to.moment[1]), (P * L) / 8)).toBeLessThan(1e-12);
    expect(relativeError(-of(answer.movements, 'b').translation[2], (P * L ** 3) / (192 * EI))).toBeLessThan(
      1e-12,
    );
  });

  test('a built-in end that settles by d: 12 E I d/L³ and 6 E I d/L²', () => {
    const d = 0.004;
    const settled = {
      ...anchor('B', 'b'),
      restraints: anchor('B', 'b').restraints.map((each) =>
        each.acts === 'translation' && each.direction[2] === 1 ? { ...each, imposed: -d } : each,
      ),
    };
    const { answer } = solve({
      ...runThrough([
        [0, 0, 0],
        [L, 0, 0],
      ]),
      supports: [anchor('A', 'a'), settled],
    });
    expect(
      relativeError(Math.abs(of(answer.supports, 'A').load.force[2]), (12 * EI * d) / L ** 3),
    ).toBeLessThan(1e-12);
    expect(
      relativeError(Math.abs(of(answer.supports, 'A').load.moment[1]), (6 * EI * d) / L ** 2),
    ).toBeLessThan(1e-12);
    const byCondition = solve({
      ...runThrough([
        [0, 0, 0],
        [L, 0, 0],
      ]),
      supports: [anchor('A', 'a'), anchor('B', 'b')],
      conditions: [condition({ imposed: { B: [0, 0, -d] } })],
    }).answer;
    expect(byCondition.supports).toEqual(answer.supports);
  });
});

describe('a portal with built-in feet, h = 100 in, L = 150 in, one pipe throughout', () => {
  const h = 100 * INCH;
  const L = 150 * INCH;
  const k = h / L;
  // A thousand times the size: axial strain counts a million times less, moments of the same loads grow a thousandfold.
  const portal = (size: number, loads: Partial<Parameters<typeof condition>[0]>, mass = 0) =>
    solve({
      points: { a: [0, 0, 0], b: [0, 0, h * size], c: [L * size, 0, h * size], d: [L * size, 0, 0] },
      members: [
        ...runThrough([
          [0, 0, 0],
          [0, 0, h],
        ]).members,
        {
          ...of(
            {
              m: runThrough([
                [0, 0, 0],
                [0, 0, h],
              ]).members[0],
            },
            'm',
          ),
          name: 'bc',
          from: 'b',
          to: 'c',
          mass: { metal: mass, covering: 0 },
        },
        {
          ...of(
            {
              m: runThrough([
                [0, 0, 0],
                [0, 0, h],
              ]).members[0],
            },
            'm',
          ),
          name: 'cd',
          from: 'c',
          to: 'd',
        },
      ] as Frame['members'],
      supports: [anchor('A', 'a'), anchor('D', 'd')],
      conditions: [condition(loads)],
    }).answer;

  test('side load: (P h/2)(3k+1)/(6k+1) at the feet, (P h/2) 3k/(6k+1) at the corners, and the sway', () => {
    const P = 400 * POUND_FORCE;
    const answer = portal(1000, { loads: [force('b', [P, 0, 0])] });
    const foot = ((P * h) / 2) * ((3 * k + 1) / (6 * k + 1));
    const corner = ((P * h) / 2) * ((3 * k) / (6 * k + 1));
    expect(relativeError(Math.abs(of(answer.supports, 'A').load.moment[1]) / 1000, foot)).toBeLessThan(1e-8);
    expect(relativeError(Math.abs(of(answer.members, 'ab').to.moment[1]) / 1000, corner)).toBeLessThan(1e-8);
    expect(foot / INCH_POUND).toBeCloseTo(12_000, 6);
    expect(corner / INCH_POUND).toBeCloseTo(8000, 6);
    expect(Math.abs(of(answer.supports, 'A').load.force[2]) / POUND_FORCE).toBeCloseTo(106.667, 3);
    const sway = ((P * h ** 3) / (12 * EI)) * ((3 * k + 2) / (6 * k + 1));
    expect(relativeError(of(answer.movements, 'b').translation[0] / 1e9, sway)).toBeLessThan(1e-6);
    expect(sway / INCH).toBeCloseTo(0.127138, 6);
  });

  test('side load with axial strain: the tabled moments and sway', () => {
    const answer = portal(1, { loads: [force('b', [400 * POUND_FORCE, 0, 0])] });
    const pounds = (name: string) => Math.abs(of(answer.supports, name).load.moment[1]) / INCH_POUND;
    expect(pounds('A')).toBeCloseTo(12_015.4, 1);
    expect(pounds('D')).toBeCloseTo(11_989.8, 1);
    expect(of(answer.movements, 'b').translation[0] / INCH).toBeCloseTo(0.127363, 6);
  });

  test('weight on the beam: q L²/[12(k+2)] at the feet, q L²/[6(k+2)] at the corners, q L²/[4h(k+2)] of thrust', () => {
    const q = (5 * POUND_FORCE) / INCH;
    const answer = portal(1000, { gravity: [0, 0, -9.80665] }, q / 9.80665 / 1e6);
    // A millionth of the load per length on a thousand times the length: a thousandth of the load.
    const at = (name: string) => Math.abs(of(answer.supports, name).load.moment[1]);
    expect(relativeError(at('A'), (q * L ** 2) / (12 * (k + 2)))).toBeLessThan(1e-8);
    expect(at('A') / INCH_POUND).toBeCloseTo(3515.6, 1);
    expect(
      relativeError(Math.abs(of(answer.members, 'ab').to.moment[1]), (q * L ** 2) / (6 * (k + 2))),
    ).toBeLessThan(1e-8);
    expect(
      relativeError(
        Math.abs(of(answer.supports, 'A').load.force[0]) * 1000,
        (q * L ** 2) / (4 * h * (k + 2)),
      ),
    ).toBeLessThan(1e-8);
  });
});
