import { describe, expect, test } from 'vitest';
import { EngineError } from '../../src/issues/issue.js';
import { solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import type { Vec3 } from '../../src/model/conventions.js';
import type { Frame, FrameSupport } from '../../src/model/frame/frame.js';
import { relativeError } from '../published/printed-value.js';
import {
  anchor,
  condition,
  force,
  frame,
  GRAVITY,
  NPS4,
  of,
  prop,
  restraint,
  runThrough,
  STEEL,
  support,
} from './small-frames.js';

const EAST: Vec3 = [1, 0, 0];
const NORTH: Vec3 = [0, 1, 0];
const UP: Vec3 = [0, 0, 1];
const I = (Math.PI / 64) * (NPS4.outsideDiameter ** 4 - (NPS4.outsideDiameter - 2 * NPS4.wall) ** 4);
const A = (Math.PI / 4) * (NPS4.outsideDiameter ** 2 - (NPS4.outsideDiameter - 2 * NPS4.wall) ** 2);
const EI = STEEL.modulus * I;
const EA = STEEL.modulus * A;

const rest = (name: string, point: string, changes = {}): FrameSupport =>
  support(name, point, [restraint(UP, { sense: 'push', ...changes })]);

function solve(parts: Partial<Frame>) {
  const response = solveFrame(frame({ options: { withoutShear: true }, ...parts }));
  return of(response.conditions, 'test');
}

const errorOf = (action: () => unknown): EngineError => {
  try {
    action();
  } catch (error) {
    if (error instanceof EngineError) return error;
  }
  throw new Error('nothing was refused');
};

describe('one-way supports', () => {
  // Anchored at a, rests at b (L) and c (2 L), 1000 N down at d (3 L): c carries, b would have to pull. With b lifted:
  // propped cantilever of 2 L with overhang L: R_c = P (1 + 3 L / (2 · 2 L)) = 1.75 P.
  const L = 3;
  const run = runThrough([
    [0, 0, 0],
    [L, 0, 0],
    [2 * L, 0, 0],
    [3 * L, 0, 0],
  ]);
  const loaded = (P: number) => [condition({ loads: [force('d', [0, 0, -P])] })];

  test('a rest lifts off rather than pull, and the others take its share', () => {
    const answer = solve({
      ...run,
      supports: [anchor('A', 'a'), rest('B', 'b'), rest('C', 'c')],
      conditions: loaded(1000),
    });
    expect(of(answer.supports, 'B').states).toEqual(['lifted']);
    expect(of(answer.supports, 'B').load.force).toEqual([0, 0, 0].map((zero) => expect.closeTo(zero, 9)));
    expect(of(answer.movements, 'b').translation[2]).toBeGreaterThan(0);
    expect(relativeError(-of(answer.supports, 'C').load.force[2], 1750)).toBeLessThan(1e-10);
    expect(answer.rounds).toBe(2);
  });

  test('a rest that is pressed stays, and the answer is that of a two-way support', () => {
    const oneWay = solve({
      ...run,
      supports: [anchor('A', 'a'), rest('C', 'c')],
      conditions: loaded(1000),
    });
    const twoWay = solve({
      ...run,
      supports: [anchor('A', 'a'), prop('C', 'c', UP)],
      conditions: loaded(1000),
    });
    expect(oneWay).toEqual({ ...twoWay, rounds: 1 });
  });

  test('a set-height error too large for the bending of the line leaves a hanger slack', () => {
    // Simple span of 2 L with its own weight sags 5 w (2 L)^4 / (384 E I) at the middle; a rest set lower carries nothing.
    const w = 160;
    const sag = (5 * w * (2 * L) ** 4) / (384 * EI);
    const span = runThrough(
      [
        [0, 0, 0],
        [L, 0, 0],
        [2 * L, 0, 0],
      ],
      { mass: { metal: w / 9.80665, covering: 0 } },
    );
    const hung = (imposed: number) =>
      solve({
        ...span,
        supports: [
          prop('A', 'a', EAST, NORTH, UP),
          rest('B', 'b', { imposed }),
          prop('C', 'c', NORTH, UP),
          support('T', 'a', [restraint(EAST, { acts: 'rotation' })]),
        ],
        conditions: [condition({ gravity: GRAVITY })],
      });
    expect(of(hung(-sag * 1.001).supports, 'B').states).toEqual(['lifted']);
    const carrying = hung(-sag * 0.5);
    expect(of(carrying.supports, 'B').states).toEqual(['holding']);
    // Half the sag prevented: half of the 5/8 w (2 L) that a level middle support carries.
    expect(relativeError(-of(carrying.supports, 'B').load.force[2], 0.5 * 0.625 * w * 2 * L)).toBeLessThan(
      1e-9,
    );
  });

  test('a lifted spring carries nothing and a pressed one its rate times the movement', () => {
    const k = 50_000;
    const loads = (P: number) =>
      solve({
        ...runThrough([
          [0, 0, 0],
          [L, 0, 0],
        ]),
        supports: [anchor('A', 'a'), rest('B', 'b', { stiffness: k })],
        conditions: [condition({ loads: [force('b', [0, 0, P])] })],
      });
    expect(of(loads(500).supports, 'B').states).toEqual(['lifted']);
    const pressed = loads(-500);
    const share = k / (k + (3 * EI) / L ** 3);
    expect(relativeError(-of(pressed.supports, 'B').load.force[2], 500 * share)).toBeLessThan(1e-10);
  });

  test('a line that only one-way supports hold down is refused when it lifts', () => {
    const error = errorOf(() =>
      solve({
        ...runThrough([
          [0, 0, 0],
          [L, 0, 0],
        ]),
        supports: [
          prop('A', 'a', EAST, NORTH),
          prop('B', 'b', NORTH),
          support('T', 'a', [restraint(EAST, { acts: 'rotation' })]),
          rest('R1', 'a'),
          rest('R2', 'b'),
        ],
        conditions: [condition({ loads: [force('a', [0, 0, 10]), force('b', [0, 0, 10])] })],
      }),
    );
    expect(error.code).toBe('mechanics.mechanism');
    expect(error.data.movement).toBe('moves up or down');
  });
});

describe('gaps', () => {
  const L = 4;
  const run = runThrough([
    [0, 0, 0],
    [L, 0, 0],
  ]);
  const guided = (P: number, gap: number) =>
    solve({
      ...run,
      supports: [anchor('A', 'a'), support('G', 'b', [restraint(NORTH, { gap })])],
      conditions: [condition({ loads: [force('b', [0, P, 0])] })],
    });

  test('a guide with free play does nothing within it', () => {
    const tip = (300 * L ** 3) / (3 * EI);
    const answer = guided(300, 1.01 * tip);
    expect(of(answer.supports, 'G').states).toEqual(['in gap']);
    expect(relativeError(of(answer.movements, 'b').translation[1], tip)).toBeLessThan(1e-10);
  });

  test.each([1, -1])('past its play it holds what the bending of the line does not (way %i)', (way) => {
    const gap = 0.01;
    const P = 5 * ((3 * EI) / L ** 3) * gap;
    const answer = guided(way * P, gap);
    expect(of(answer.supports, 'G').states).toEqual(['holding']);
    expect(relativeError(of(answer.movements, 'b').translation[1], way * gap)).toBeLessThan(1e-12);
    expect(relativeError(of(answer.supports, 'G').load.force[1], way * P * 0.8)).toBeLessThan(1e-10);
  });

  test('a line held along its axis by stops with play alone moves to the stop that the load presses', () => {
    const answer = solve({
      ...run,
      supports: [
        support('A', 'a', [
          restraint(EAST, { gap: 0.005 }),
          restraint(NORTH),
          restraint(UP),
          ...[EAST, NORTH, UP].map((axis) => restraint(axis, { acts: 'rotation' })),
        ]),
      ],
      conditions: [condition({ loads: [force('b', [-200, 0, 0])] })],
    });
    expect(relativeError(of(answer.movements, 'a').translation[0], -0.005)).toBeLessThan(1e-12);
    expect(relativeError(of(answer.supports, 'A').load.force[0], -200)).toBeLessThan(1e-12);
  });

  test('with nothing to press it either way it stays where it was set', () => {
    const answer = solve({
      ...run,
      supports: [
        support('A', 'a', [
          restraint(EAST, { gap: 0.005 }),
          restraint(NORTH),
          restraint(UP),
          ...[EAST, NORTH, UP].map((axis) => restraint(axis, { acts: 'rotation' })),
        ]),
      ],
      conditions: [condition({ loads: [force('b', [0, 0, -200])] })],
    });
    expect(of(answer.supports, 'A').states[0]).toBe('in gap');
    expect(of(answer.movements, 'a').translation[0]).toBeCloseTo(0, 12);
  });

  test('two stops close one after the other as the line grows', () => {
    // Grows from the anchor at a; the stop at the far end has play under the growth.
    const growth = 6.93e-4 * L;
    const answer = solve({
      ...run,
      supports: [anchor('A', 'a'), support('S', 'b', [restraint(EAST, { gap: growth / 4 })])],
      conditions: [condition({ temperature: 400 })],
    });
    expect(relativeError(of(answer.supports, 'S').load.force[0], (EA * 0.75 * growth) / L)).toBeLessThan(
      1e-10,
    );
  });
});

describe('travel stops', () => {
  const L = 3;
  const run = runThrough([
    [0, 0, 0],
    [L, 0, 0],
  ]);
  const spring = support('V', 'b', [
    restraint(UP, { stiffness: 20_000, preload: 900 }),
    restraint(NORTH, { stiffness: 300 }),
  ]);
  const solved = (stopped: readonly string[]) =>
    solve({
      ...run,
      supports: [anchor('A', 'a'), spring],
      conditions: [condition({ stopped, loads: [force('b', [0, 50, -2000])] })],
    });

  test('a stopped spring hanger holds its set position, and its side stiffness goes on', () => {
    const answer = solved(['V']);
    expect(of(answer.supports, 'V').states).toEqual(['stopped', 'holding']);
    expect(of(answer.movements, 'b').translation[2]).toBeCloseTo(0, 14);
    expect(relativeError(-of(answer.supports, 'V').load.force[2], 2000)).toBeLessThan(1e-12);
    expect(of(answer.movements, 'b').translation[1]).toBeGreaterThan(0);
  });

  test('without the stop it carries its setting plus its rate times the fall', () => {
    const answer = solved([]);
    const stiffness = (3 * EI) / L ** 3;
    const fall = (2000 - 900) / (20_000 + stiffness);
    expect(relativeError(-of(answer.movements, 'b').translation[2], fall)).toBeLessThan(1e-10);
    expect(relativeError(-of(answer.supports, 'V').load.force[2], 900 + 20_000 * fall)).toBeLessThan(1e-10);
  });
});

describe('friction', () => {
  const L = 5;
  const mu = 0.3;
  const run = runThrough([
    [0, 0, 0],
    [L, 0, 0],
  ]);

  test('a hot line pushes its anchor with no more than the friction of its rest', () => {
    const N = 4000;
    const answer = solve({
      ...run,
      supports: [anchor('A', 'a'), rest('R', 'b', { friction: mu })],
      conditions: [condition({ temperature: 400, loads: [force('b', [0, 0, -N])] })],
    });
    expect(of(answer.supports, 'R').states).toEqual(['slipping']);
    expect(relativeError(of(answer.supports, 'R').load.force[0], mu * N)).toBeLessThan(1e-9);
    expect(relativeError(of(answer.supports, 'A').load.force[0], -mu * N)).toBeLessThan(1e-9);
    const slid = 6.93e-4 * L - (mu * N * L) / EA;
    expect(relativeError(of(answer.movements, 'b').translation[0], slid)).toBeLessThan(1e-9);
  });

  test('it sticks where the growth asks for less than the friction', () => {
    const N = (2 * EA * 6.93e-4) / mu;
    const answer = solve({
      ...run,
      supports: [anchor('A', 'a'), rest('R', 'b', { friction: mu })],
      conditions: [condition({ temperature: 400, loads: [force('b', [0, 0, -N])] })],
    });
    expect(of(answer.supports, 'R').states).toEqual(['holding']);
    expect(relativeError(of(answer.supports, 'R').load.force[0], EA * 6.93e-4)).toBeLessThan(1e-10);
    expect(answer.rounds).toBe(1);
  });

  test('friction works against the way the point moves, whatever its bearing', () => {
    // Two equal springs across, N from a load: |t| = μ N, t opposite to u, and k u + μ N u/|u| = P.
    const k = 100_000;
    const N = 5000;
    const P: Vec3 = [2000, 1500, 0];
    const springs = support('S', 'b', [
      restraint(EAST, { stiffness: k }),
      restraint(NORTH, { stiffness: k }),
      ...[EAST, NORTH, UP].map((axis) => restraint(axis, { acts: 'rotation' })),
    ]);
    const answer = solve({
      points: { b: [0, 0, 0] },
      bodies: [{ name: 'block', points: ['b'], masses: [] }],
      supports: [springs, rest('R', 'b', { friction: mu })],
      conditions: [condition({ loads: [force('b', [P[0], P[1], -N])] })],
    });
    const [x, y] = of(answer.movements, 'b').translation;
    const far = (2500 - mu * N) / k;
    expect(relativeError(x, 0.8 * far)).toBeLessThan(1e-9);
    expect(relativeError(y, 0.6 * far)).toBeLessThan(1e-9);
    expect(relativeError(of(answer.supports, 'R').load.force[0], mu * N * 0.8)).toBeLessThan(1e-9);
  });

  test('springs that differ turn the slip away from the load, and the friction with it', () => {
    const [kx, ky] = [100_000, 400_000];
    const N = 5000;
    const springs = support('S', 'b', [
      restraint(EAST, { stiffness: kx }),
      restraint(NORTH, { stiffness: ky }),
      ...[EAST, NORTH, UP].map((axis) => restraint(axis, { acts: 'rotation' })),
    ]);
    const answer = solve({
      points: { b: [0, 0, 0] },
      bodies: [{ name: 'block', points: ['b'], masses: [] }],
      supports: [springs, rest('R', 'b', { friction: mu })],
      conditions: [condition({ loads: [force('b', [2000, 1500, -N])] })],
    });
    const [x, y] = of(answer.movements, 'b').translation;
    const far = Math.hypot(x, y);
    expect(relativeError(kx * x + (mu * N * x) / far, 2000)).toBeLessThan(1e-8);
    expect(relativeError(ky * y + (mu * N * y) / far, 1500)).toBeLessThan(1e-8);
  });

  test('a guide of the same support takes the side load, so that friction acts along the pipe alone', () => {
    const guidedRest = support('R', 'b', [restraint(UP, { sense: 'push', friction: mu }), restraint(NORTH)]);
    const answer = solve({
      ...run,
      supports: [anchor('A', 'a'), guidedRest],
      conditions: [condition({ temperature: 400, loads: [force('b', [0, 700, -1000])] })],
    });
    expect(relativeError(of(answer.supports, 'R').load.force[1], 700)).toBeLessThan(1e-9);
    expect(relativeError(of(answer.supports, 'R').load.force[0], mu * 1000)).toBeLessThan(1e-9);
  });

  test('the last of several rests sticks while those nearer the free end slip', () => {
    // Four rests under equal loads on a hot line anchored at one end: axial force builds up from the free end.
    const places: Vec3[] = [0, 1, 2, 3, 4].map((i) => [i * L, 0, 0]);
    const N = 1000;
    const points = ['b', 'c', 'd', 'e'];
    const answer = solve({
      ...runThrough(places),
      supports: [anchor('A', 'a'), ...points.map((point) => rest(`R${point}`, point, { friction: mu }))],
      conditions: [condition({ temperature: 400, loads: points.map((point) => force(point, [0, 0, -N])) })],
    });
    expect(points.map((point) => of(answer.supports, `R${point}`).states[0])).toEqual(
      points.map(() => 'slipping'),
    );
    expect(relativeError(of(answer.supports, 'A').load.force[0], -4 * mu * N)).toBeLessThan(1e-9);
  });

  test('a load above the friction, with nothing behind it, is refused', () => {
    const error = errorOf(() =>
      solve({
        points: { b: [0, 0, 0] },
        bodies: [{ name: 'block', points: ['b'], masses: [] }],
        supports: [
          rest('R', 'b', { friction: mu }),
          support(
            'T',
            'b',
            [EAST, NORTH, UP].map((axis) => restraint(axis, { acts: 'rotation' })),
          ),
        ],
        conditions: [condition({ loads: [force('b', [400, 0, -1000])] })],
      }),
    );
    expect(error.code).toBe('mechanics.mechanism');
    expect(error.data.movement).toBe('moves east or west');
  });
});

describe('a rigid part on several rests', () => {
  const block = (at: number) => ({
    points: { a: [0, 0, 0], b: [1, 0, 0], c: [2, 0, 0] } as Record<string, Vec3>,
    bodies: [
      {
        name: 'block',
        points: ['a', 'b', 'c'],
        masses: [{ name: 'block', at: [at, 0, 0.5] as Vec3, mass: 100, contents: 0, contentsGroup: '' }],
      },
    ],
    supports: [
      rest('A', 'a'),
      rest('B', 'b'),
      rest('C', 'c'),
      prop('G', 'a', EAST, NORTH),
      support('T', 'a', [restraint(EAST, { acts: 'rotation' }), restraint(UP, { acts: 'rotation' })]),
    ],
    conditions: [condition({ gravity: GRAVITY })],
  });
  const weight = 980.665;
  const loads = (answer: ReturnType<typeof solve>) =>
    ['A', 'B', 'C'].map((name) => -of(answer.supports, name).load.force[2] / weight);

  test('shares with the least sum of squares while all can push', () => {
    expect(loads(solve(block(1)))).toEqual([1, 1, 1].map((part) => expect.closeTo(part / 3, 10)));
  });

  test('leaves out the rest that would have to pull', () => {
    const answer = solve(block(1.9));
    expect(loads(answer)).toEqual([0, 0.1, 0.9].map((part) => expect.closeTo(part, 9)));
    expect(of(answer.supports, 'A').states).toEqual(['lifted']);
  });

  test('two-way supports set at heights that do not fit are refused by name', () => {
    const parts = block(1);
    const supports = parts.supports.map((each) =>
      each.name === 'B'
        ? support('B', 'b', [restraint(UP, { imposed: 0.002 })])
        : each.name === 'A' || each.name === 'C'
          ? prop(each.name, each.point, UP)
          : each,
    );
    const error = errorOf(() => solve({ ...parts, supports }));
    expect(error.code).toBe('mechanics.supports-conflict');
    expect(error.data.supports).toEqual(['A', 'B', 'C']);
  });

  test('one-way rests set at heights that do not fit: the one that stands clear lets go', () => {
    const parts = block(0.7);
    const supports = parts.supports.map((each) =>
      each.name === 'B' ? rest('B', 'b', { imposed: -0.002 }) : each,
    );
    const answer = solve({ ...parts, supports });
    expect(of(answer.supports, 'B').states).toEqual(['lifted']);
    expect(loads(answer)).toEqual([0.65, 0, 0.35].map((part) => expect.closeTo(part, 9)));
  });
});
