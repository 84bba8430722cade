import { describe, expect, test } from 'vitest';
import { solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import { naturalFrequencies } from '../../src/mechanics/modes/frequencies.js';
import type { Vec3 } from '../../src/model/conventions.js';
import type { Frame, FrameSupport } from '../../src/model/frame/frame.js';
import { relativeError } from '../published/printed-value.js';
import { errorOf } from './error-of.js';
import { AXES, condition, force, frame, GRAVITY, of, prop, restraint, support } from './small-frames.js';

const EAST: Vec3 = [1, 0, 0];
const NORTH: Vec3 = [0, 1, 0];
const UP: Vec3 = [0, 0, 1];
const g = 9.80665;

const rod = (name: string, point: string, length: number, changes = {}): FrameSupport =>
  support(name, point, [restraint(UP, { sense: 'push', swingLength: length, ...changes })]);
const unturned = (point: string) =>
  support(
    'T',
    point,
    AXES.map((axis) => restraint(axis, { acts: 'rotation' })),
  );

function solve(parts: Partial<Frame>) {
  return of(solveFrame(frame(parts)).conditions, 'test');
}

describe('a mass on one rod', () => {
  const m = 250;
  const L = 1.8;
  const hung = (F: Vec3, changes = {}): Partial<Frame> => ({
    points: { b: [0, 0, 0] },
    bodies: [
      {
        name: 'mass',
        points: ['b'],
        masses: [{ name: 'mass', at: [0, 0, 0], mass: m, contents: 0, contentsGroup: '' }],
      },
    ],
    supports: [rod('H', 'b', L, changes), unturned('b')],
    conditions: [condition({ gravity: GRAVITY, loads: [force('b', F)] })],
  });

  test('moves sideways by F L / W, and the rod carries the push as it leans', () => {
    const answer = solve(hung([120, -50, 0]));
    expect(relativeError(of(answer.movements, 'b').translation[0], (120 * L) / (m * g))).toBeLessThan(1e-10);
    expect(relativeError(of(answer.movements, 'b').translation[1], (-50 * L) / (m * g))).toBeLessThan(1e-10);
    const [x, y, z] = of(answer.supports, 'H').load.force;
    expect(relativeError(x, 120)).toBeLessThan(1e-10);
    expect(relativeError(y, -50)).toBeLessThan(1e-10);
    expect(relativeError(z, -m * g)).toBeLessThan(1e-12);
    expect(answer.balance.residual).toBeLessThan(1e-12);
  });

  test('swings as a pendulum, at the root of g over L, both ways', () => {
    const built = frame(hung([0, 0, 0]));
    const { modes } = naturalFrequencies(built, of({ test: built.conditions[0] ?? condition() }, 'test'), 2);
    const pendulum = Math.sqrt(g / L) / (2 * Math.PI);
    for (const mode of modes) expect(relativeError(mode.frequency, pendulum)).toBeLessThan(1e-9);
    expect(modes).toHaveLength(2);
  });

  test('on a spring with a rod it swings under the load of the spring', () => {
    const answer = solve(hung([120, 0, 0], { sense: 'both', stiffness: 4e4, preload: 2000 }));
    expect(relativeError(of(answer.movements, 'b').translation[0], (120 * L) / (m * g))).toBeLessThan(1e-10);
  });

  test('under no load the rod holds nothing sideways', () => {
    const weightless = {
      ...hung([120, 0, 0]),
      conditions: [condition({ loads: [force('b', [120, 0, 0])] })],
    };
    expect(errorOf(() => solve(weightless)).code).toBe('mechanics.mechanism');
  });
});

describe('rods that share a load', () => {
  // A stiff beam on two rods, its mass nearer the first: their sideways stiffness stands where the weight stands, so a
  // push at the mass moves it without turning.
  const beam = (supports: readonly FrameSupport[], at: Vec3): Partial<Frame> => ({
    points: { a: [0, 0, 0], b: [4, 0, 0], c: [1, 0, 0] },
    bodies: [
      {
        name: 'beam',
        points: ['a', 'b', 'c'],
        masses: [{ name: 'mass', at: [1, 0, 0], mass: 400, contents: 0, contentsGroup: '' }],
      },
    ],
    supports: [...supports, support('T', 'c', [restraint(EAST, { acts: 'rotation' })])],
    conditions: [condition({ gravity: GRAVITY, loads: [force('c', at)] })],
  });
  const pair = [rod('A', 'a', 2), rod('B', 'b', 2)];

  test('hold sideways in the ratio of what they carry', () => {
    const answer = solve(beam(pair, [0, 90, 0]));
    expect(relativeError(of(answer.movements, 'c').translation[1], (90 * 2) / (400 * g))).toBeLessThan(1e-9);
    expect(of(answer.movements, 'c').rotation[2]).toBeCloseTo(0, 12);
    expect(relativeError(of(answer.supports, 'A').load.force[1], 67.5)).toBeLessThan(1e-8);
    expect(relativeError(of(answer.supports, 'B').load.force[1], 22.5)).toBeLessThan(1e-8);
  });

  test('give the same answer in whatever order they stand', () => {
    const [one, other] = [solve(beam(pair, [30, 90, 0])), solve(beam(pair.toReversed(), [30, 90, 0]))];
    for (const name of ['A', 'B']) {
      const [a, b] = [of(one.supports, name).load.force, of(other.supports, name).load.force];
      a.forEach((value, i) => {
        expect(Math.abs(value - (b[i] ?? 0))).toBeLessThan(1e-8);
      });
    }
  });

  test('a slack one holds nothing: the other and a guide take the push', () => {
    // A rest that lifts the beam off the second rod.
    const lifted = [...pair, support('R', 'b', [restraint(UP, { imposed: 0.01 })]), prop('G', 'b', NORTH)];
    const answer = solve(beam(lifted, [0, 90, 0]));
    expect(of(answer.supports, 'B').states).toEqual(['lifted']);
    expect(of(answer.supports, 'B').load.force).toEqual([0, 0, 0]);
    // About the guide: k_A 4² θ = 90 × 3, and A takes k_A × 4 θ.
    expect(relativeError(of(answer.supports, 'A').load.force[1], (90 * 3) / 4)).toBeLessThan(1e-9);
  });
});

describe('a rod that stands askew', () => {
  // A lever pinned at a, held at b (distance l) by a rod of stiffness k leaning by α in the plane of the lever, load V
  // down at b. With δ the drop:  F = k δ cos α  and  V = F cos α + (F/L) δ sin² α.
  const [k, V, angle] = [3e5, 4000, 0.5];
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const lever = (L: number): Partial<Frame> => ({
    points: { a: [0, 0, 0], b: [2, 0, 0] },
    bodies: [{ name: 'lever', points: ['a', 'b'], masses: [] }],
    supports: [
      prop('P', 'a', EAST, NORTH, UP),
      support('T', 'a', [restraint(EAST, { acts: 'rotation' }), restraint(UP, { acts: 'rotation' })]),
      support('H', 'b', [restraint([s, 0, c], { sense: 'push', stiffness: k, swingLength: L })]),
    ],
    conditions: [condition({ loads: [force('b', [0, 0, -V])] })],
  });

  test.each([0.4, 0.02, 1e-5])('finds the load that agrees with its own leaning (length %d m)', (L) => {
    const a = (k * c * s * s) / L;
    const b = k * c * c;
    const drop = (2 * V) / (b + Math.sqrt(b * b + 4 * a * V));
    const answer = solve(lever(L));
    expect(relativeError(-of(answer.movements, 'b').translation[2], drop)).toBeLessThan(1e-9);
    expect(answer.rounds).toBeGreaterThan(3);
    expect(answer.balance.residual).toBeLessThan(1e-12);
  });
});
