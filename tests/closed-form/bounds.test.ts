import { describe, expect, test } from 'vitest';
import { solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import { naturalFrequencies } from '../../src/mechanics/modes/frequencies.js';
import type { Vec3 } from '../../src/model/conventions.js';
import type { Frame } from '../../src/model/frame/frame.js';
import {
  anchor,
  condition,
  force,
  frame,
  GRAVITY,
  INCH,
  NPS4,
  of,
  POUND_FORCE,
  PSI,
  restraint,
  runThrough,
  STEEL,
  STRAIN,
  support,
} from '../mechanics/small-frames.js';

const UP: Vec3 = [0, 0, 1];
const EAST: Vec3 = [1, 0, 0];
const LB_PER_INCH = POUND_FORCE / INCH;

describe('friction between none and its largest', () => {
  // 100 ft of NPS 4 full of water, 16.3 lb/ft, on eight supports 12.5 ft apart behind an anchor, heated.
  const spans = 8;
  const length = (100 * 12 * INCH) / spans;
  const mass = (16.3 * 0.45359237) / (12 * INCH);
  const line = (friction: number): Frame =>
    frame({
      ...runThrough(
        Array.from({ length: spans + 1 }, (_, i): Vec3 => [i * length, 0, 0]),
        { mass: { metal: mass, covering: 0 } },
      ),
      supports: [
        anchor('A', 'a'),
        ...Array.from({ length: spans }, (_, i) =>
          support(`R${i + 1}`, String.fromCharCode(98 + i), [restraint(UP, { sense: 'push', friction })]),
        ),
      ],
      conditions: [condition({ gravity: GRAVITY, temperature: 400 })],
    });
  const solved = (friction: number) => of(solveFrame(line(friction)).conditions, 'test').supports;

  test('an anchor holds the sum of what slides: F = Σ μ N, and 489 lb for the weight of 100 ft at 0.3', () => {
    const answer = solved(0.3);
    const rests = Object.entries(answer).filter(([name]) => name !== 'A');
    for (const [, { states }] of rests) expect(states).toEqual(['slipping']);
    const normal = rests.reduce((sum, [, { load }]) => sum - load.force[2], 0);
    const pull = Math.hypot(of(answer, 'A').load.force[0], of(answer, 'A').load.force[1]);
    expect(pull / (0.3 * normal)).toBeCloseTo(1, 6);
    // All of the weight on sliding supports: 0.3 × 1630 lb.
    const whole = normal - of(answer, 'A').load.force[2];
    expect((0.3 * whole) / POUND_FORCE).toBeCloseTo(489, 0);
  });

  test('grows evenly with the coefficient while all slide, and is nothing without', () => {
    const pull = (mu: number) => Math.abs(of(solved(mu), 'A').load.force[0]);
    expect(pull(0)).toBeLessThan(1e-6);
    expect(pull(0.4) / pull(0.2)).toBeCloseTo(2, 6);
  });

  test('a block on a spring sticks until k u = μ N, and slides from there: 150 lb at 0.3 × 500 lb', () => {
    // Pushed by a spring of 2000 lb/in whose far end is moved: it sticks to 0.075 in.
    const k = 2000 * LB_PER_INCH;
    const pushed = (by: number) => {
      const built = frame({
        points: { a: [0, 0, 0] },
        bodies: [
          {
            name: 'block',
            points: ['a'],
            masses: [
              {
                name: 'block',
                at: [0, 0, 0],
                mass: (500 * POUND_FORCE) / 9.80665,
                contents: 0,
                contentsGroup: 'x',
              },
            ],
          },
        ],
        supports: [
          support('floor', 'a', [restraint(UP, { sense: 'push', friction: 0.3 })]),
          support('spring', 'a', [restraint(EAST, { stiffness: k, imposed: by })]),
          support('upright', 'a', [
            restraint([0, 1, 0]),
            ...([EAST, [0, 1, 0], UP] as const).map((axis) => restraint(axis, { acts: 'rotation' })),
          ]),
        ],
        conditions: [condition({ gravity: GRAVITY })],
      });
      const answer = of(solveFrame(built).conditions, 'test');
      return {
        moved: of(answer.movements, 'a').translation[0] / INCH,
        push: Math.abs(of(answer.supports, 'spring').load.force[0]) / POUND_FORCE,
        state: of(answer.supports, 'floor').states[0],
      };
    };
    expect(pushed(0.074 * INCH)).toMatchObject({ state: 'holding' });
    expect(pushed(0.074 * INCH).push).toBeCloseTo(148, 6);
    const slid = pushed(0.1 * INCH);
    expect(slid.state).toBe('slipping');
    expect(slid.push).toBeCloseTo(150, 6);
    expect(slid.moved).toBeCloseTo(0.025, 8);
  });
});

describe('a spring of structure behind a stop', () => {
  test('takes R = (δ − gap) / (L³/3EI + 1/k): 342.08 and 274.41 lb', () => {
    // NPS 4 cantilever of 60 in under 500 lb at its end, a stop with a gap on 10 000 lb/in.
    const L = 60 * INCH;
    const inside = NPS4.outsideDiameter - 2 * NPS4.wall;
    const I = (Math.PI / 64) * (NPS4.outsideDiameter ** 4 - inside ** 4);
    const k = 10_000 * LB_PER_INCH;
    const reaction = (gap: number): number => {
      const built = frame({
        ...runThrough([
          [0, 0, 0],
          [L, 0, 0],
        ]),
        supports: [anchor('A', 'a'), support('stop', 'b', [restraint(UP, { stiffness: k, gap })])],
        conditions: [condition({ loads: [force('b', [0, 0, -500 * POUND_FORCE])] })],
        options: { withoutShear: true },
      });
      return (
        Math.abs(of(of(solveFrame(built).conditions, 'test').supports, 'stop').load.force[2]) / POUND_FORCE
      );
    };
    const flexibility = L ** 3 / (3 * STEEL.modulus * I);
    for (const [gap, printed] of [
      [0.02, 342.08],
      [0.05, 274.41],
    ] as const) {
      const exact = (500 * POUND_FORCE * flexibility - gap * INCH) / (flexibility + 1 / k) / POUND_FORCE;
      expect(reaction(gap * INCH)).toBeCloseTo(exact, 6);
      expect(exact).toBeCloseTo(printed, 1);
    }
    expect(29e6 * PSI).toBeCloseTo(STEEL.modulus, 0);
  });
});

describe('an anchor that gives', () => {
  test('holds a heated line with F = E A ε / (1 + E A / (k L))', () => {
    const L = 6;
    const inside = NPS4.outsideDiameter - 2 * NPS4.wall;
    const A = (Math.PI / 4) * (NPS4.outsideDiameter ** 2 - inside ** 2);
    const k = 2e7;
    const built = frame({
      ...runThrough([
        [0, 0, 0],
        [L, 0, 0],
      ]),
      supports: [
        anchor('A', 'a'),
        support(
          'B',
          'b',
          anchor('B', 'b').restraints.map((one) =>
            one.acts === 'translation' && one.direction[0] === 1 ? { ...one, stiffness: k } : one,
          ),
        ),
      ],
      conditions: [condition({ temperature: 400 })],
    });
    const held = Math.abs(of(of(solveFrame(built).conditions, 'test').supports, 'B').load.force[0]);
    const EA = STEEL.modulus * A;
    expect(held / ((EA * STRAIN) / (1 + EA / (k * L)))).toBeCloseTo(1, 10);
  });
});

describe('natural frequencies', () => {
  const line = (stiffness: number): Frame =>
    frame({
      ...runThrough(
        [
          [0, 0, 0],
          [2, 0, 0],
          [4, 0.5, 0],
          [6, 0.5, 1],
        ],
        { mass: { metal: 30, covering: 0 } },
      ),
      supports: [
        anchor('A', 'a'),
        support('H', 'c', [restraint(UP, { stiffness })]),
        support(
          'E',
          'd',
          anchor('E', 'd').restraints.map((one) => ({ ...one, stiffness: 3 * stiffness })),
        ),
      ],
    });
  const frequenciesAt = (stiffness: number) =>
    naturalFrequencies(line(stiffness), condition({ gravity: GRAVITY }), 8).modes.map(
      ({ frequency }) => frequency,
    );

  test('never fall in their place of the list when supports get stiffer', () => {
    const softness = [1e4, 1e5, 1e6, 1e7, 1e8];
    const found = softness.map(frequenciesAt);
    found.slice(1).forEach((stiffer, i) => {
      stiffer.forEach((frequency, place) => {
        expect(frequency).toBeGreaterThanOrEqual((found[i]?.[place] ?? 0) * (1 - 1e-9));
      });
    });
    expect(found.at(-1)?.[0] ?? 0).toBeGreaterThan(2 * (found[0]?.[0] ?? 0));
  });
});
