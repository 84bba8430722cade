import { describe, expect, test } from 'vitest';
import type { BaseSprings } from '../../src/input/installation.js';
import { solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import type { Vec3 } from '../../src/model/conventions.js';
import { springGroup, springLoads } from '../../src/model/frame/spring-group.js';
import { condition, frame, GRAVITY, restraint, support } from '../mechanics/small-frames.js';

const G = 9.80665;
const UP: Vec3 = [0, 0, 1];
const load = { value: 1000, origin: { kind: 'given', path: 'test' } } as const;

/** A rigid block of 400 kg on springs, its centre of gravity off their middle. */
function block(springs: BaseSprings, at: Vec3) {
  return frame({
    points: { 'pump base': [0, 0, 0] },
    bodies: [
      {
        name: 'pump',
        points: ['pump base'],
        masses: [{ name: 'block', at, mass: 400, contents: 0, contentsGroup: 'pump' }],
      },
    ],
    supports: [support('pump base', 'pump base', springGroup(springs))],
    conditions: [condition({ gravity: GRAVITY })],
  });
}

const solved = (whole: ReturnType<typeof frame>) => {
  const answer = solveFrame(whole).conditions.test;
  if (answer === undefined) throw new Error('not solved');
  return answer;
};

describe('a block off the middle of four springs', () => {
  // Rocking stiffness k Σ y² about east: θ = W e / (4 k b²); the springs share W / 4 ± W e / (4 b) each.
  const [a, b, k] = [0.4, 0.25, 120_000];
  const corner = (east: number, north: number): Vec3 => [east * a, north * b, 0];
  const places = [corner(1, 1), corner(-1, 1), corner(-1, -1), corner(1, -1)];
  const springs: BaseSprings = { rate: k, load, count: 4, places, side: 60_000 };
  const W = 400 * G;
  const [ex, ey] = [0.06, -0.05];
  const answer = solved(block(springs, [ex, ey, 0.7]));
  const moved = answer.movements['pump base'];

  test('turns by W e over the rocking stiffness about both axes and settles by what is not set', () => {
    expect((moved?.rotation[0] ?? 0) / ((-W * ey) / (4 * k * b ** 2))).toBeCloseTo(1, 9);
    expect((moved?.rotation[1] ?? 0) / ((W * ex) / (4 * k * a ** 2))).toBeCloseTo(1, 9);
    expect((moved?.translation[2] ?? 0) / ((4 * 1000 - W) / (4 * k))).toBeCloseTo(1, 9);
  });

  test('loads each spring by its share, and all together carry the block', () => {
    if (moved === undefined) throw new Error('not moved');
    const loads = springLoads(springs, moved);
    places.forEach(([x, y], index) => {
      const share = W / 4 + (W * ex * x) / (4 * a ** 2) + (W * ey * y) / (4 * b ** 2);
      expect((loads[index] ?? 0) / share).toBeCloseTo(1, 9);
    });
    expect(loads.reduce((sum, each) => sum + each, 0) / W).toBeCloseTo(1, 12);
  });

  test('is what four springs one by one are, also askew', () => {
    const askew: readonly Vec3[] = [
      [0.4, 0.1, 0],
      [-0.1, 0.35, 0],
      [-0.3, -0.25, 0],
      [0, -0.2, 0],
    ];
    const together = solved(block({ ...springs, places: askew }, [ex, ey, 0.7]));
    const whole = block(springs, [ex, ey, 0.7]);
    const apart = solved({
      ...whole,
      points: { ...whole.points, ...Object.fromEntries(askew.map((place, i) => [`s${i}`, place])) },
      bodies: whole.bodies.map((body) => ({ ...body, points: ['pump base', 's0', 's1', 's2', 's3'] })),
      supports: askew.map((_, i) =>
        support(`s${i}`, `s${i}`, [
          restraint(UP, { stiffness: k, preload: 1000 }),
          restraint([1, 0, 0], { stiffness: 60_000 }),
          restraint([0, 1, 0], { stiffness: 60_000 }),
        ]),
      ),
    });
    const one = together.movements['pump base'];
    const other = apart.movements['pump base'];
    for (const kind of ['translation', 'rotation'] as const)
      one?.[kind].forEach((value, i) => {
        expect(value).toBeCloseTo(other?.[kind][i] ?? Number.NaN, 12);
      });
    if (one === undefined) throw new Error('not moved');
    springLoads({ ...springs, places: askew }, one).forEach((each, i) => {
      expect(each).toBeCloseTo(-(apart.supports[`s${i}`]?.load.force[2] ?? Number.NaN), 6);
    });
  });
});

test('two springs resist no rocking about the line through them, and none without places', () => {
  const two: BaseSprings = {
    rate: 1000,
    load,
    count: 2,
    places: [
      [0.3, 0.3, 0],
      [-0.3, -0.3, 0],
    ],
  };
  const rocking = springGroup(two).filter(({ acts }) => acts === 'rotation');
  expect(rocking).toHaveLength(1);
  expect(rocking[0]?.stiffness).toBeCloseTo(1000 * 4 * 0.09, 9);
  expect(Math.abs(rocking[0]?.direction[0] ?? 0)).toBeCloseTo(Math.SQRT1_2, 12);
  expect(springGroup({ rate: 1000, load, count: 2 })).toEqual([
    restraint(UP, { stiffness: 2000, preload: 2000 }),
  ]);
});
