import { describe, expect, test } from 'vitest';
import { solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import type { Vec3 } from '../../src/model/conventions.js';
import type { Frame, Restraint } from '../../src/model/frame/frame.js';
import { relativeError } from '../published/printed-value.js';
import { errorOf } from './error-of.js';
import {
  anchor,
  condition,
  force,
  frame,
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
const EI = STEEL.modulus * I;

const k = 20_000;
const P = 900;
const TRAVEL = { least: 600, most: 1500 };

function solve(parts: Partial<Frame>) {
  return of(solveFrame(frame({ options: { withoutShear: true }, ...parts })).conditions, 'test');
}

describe('a block on a spring with stops at the ends of its travel', () => {
  const loaded = (down: number, changes: Partial<Restraint> = {}) =>
    solve({
      points: { b: [0, 0, 0] },
      bodies: [{ name: 'block', points: ['b'], masses: [] }],
      supports: [
        support('V', 'b', [restraint(UP, { stiffness: k, preload: P, travel: TRAVEL, ...changes })]),
        prop('G', 'b', EAST, NORTH),
        support(
          'T',
          'b',
          [EAST, NORTH, UP].map((axis) => restraint(axis, { acts: 'rotation' })),
        ),
      ],
      conditions: [condition({ loads: [force('b', [0, 0, -down])] })],
    });

  test.each([
    ['holding', 1100, -(1100 - P) / k],
    ['bottomed out', 2600, -(TRAVEL.most - P) / k],
    ['topped out', 250, (P - TRAVEL.least) / k],
  ] as const)('is %s under %i N', (state, down, movement) => {
    for (const sense of ['both', 'push'] as const) {
      const answer = loaded(down, { sense });
      expect(of(answer.supports, 'V').states).toEqual([state]);
      expect(relativeError(of(answer.movements, 'b').translation[2], movement)).toBeLessThan(1e-12);
      expect(relativeError(-of(answer.supports, 'V').load.force[2], down)).toBeLessThan(1e-12);
    }
  });

  test('held both ways it pulls down at the top; one that can only push goes slack', () => {
    const both = loaded(-300);
    expect(of(both.supports, 'V').states).toEqual(['topped out']);
    expect(relativeError(of(both.supports, 'V').load.force[2], 300)).toBeLessThan(1e-12);
    expect(errorOf(() => loaded(-300, { sense: 'push' })).code).toBe('mechanics.mechanism');
  });

  test('set out of place, its travel moves with it', () => {
    const answer = loaded(2600, { imposed: 0.004 });
    expect(relativeError(of(answer.movements, 'b').translation[2], 0.004 - 600 / k)).toBeLessThan(1e-12);
  });

  test('a travel that no spring can have is refused', () => {
    expect(errorOf(() => loaded(100, { travel: { least: 900, most: 900 } })).code).toBe(
      'mechanics.out-of-range',
    );
    expect(errorOf(() => loaded(100, { stiffness: Number.POSITIVE_INFINITY })).code).toBe(
      'mechanics.out-of-range',
    );
  });
});

describe('a spring near the end of a line', () => {
  const L = 3;
  const bending = (3 * EI) / L ** 3;
  const line = (up: number, sense: Restraint['sense']) =>
    solve({
      ...runThrough([
        [0, 0, 0],
        [L, 0, 0],
      ]),
      supports: [
        anchor('A', 'a'),
        support('V', 'b', [restraint(UP, { stiffness: k, preload: P, travel: TRAVEL, sense })]),
      ],
      conditions: [condition({ loads: [force('b', [0, 0, up])] })],
    });

  test('past bottom the line is propped, and the spring carries what its bending does not', () => {
    const answer = line(-5000, 'push');
    const fall = (TRAVEL.most - P) / k;
    expect(of(answer.supports, 'V').states).toEqual(['bottomed out']);
    expect(relativeError(-of(answer.supports, 'V').load.force[2], 5000 - bending * fall)).toBeLessThan(1e-9);
  });

  test('lifted clear of the top it carries nothing', () => {
    const answer = line(4000, 'push');
    expect(of(answer.supports, 'V').states).toEqual(['lifted']);
    expect(relativeError(of(answer.movements, 'b').translation[2], 4000 / bending)).toBeLessThan(1e-9);
  });

  test('between slack and its least load it stands at the top', () => {
    const top = (P - TRAVEL.least) / k;
    const answer = line(bending * top - 200, 'push');
    expect(of(answer.supports, 'V').states).toEqual(['topped out']);
    expect(relativeError(-of(answer.supports, 'V').load.force[2], 200)).toBeLessThan(1e-8);
  });
});
