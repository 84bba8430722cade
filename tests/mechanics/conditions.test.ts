import { describe, expect, test } from 'vitest';
import { massPerLength } from '../../src/mechanics/frame/present-mass.js';
import { solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import type { Vec3 } from '../../src/model/conventions.js';
import type { Frame, FrameCondition } from '../../src/model/frame/frame.js';
import { relativeError } from '../published/printed-value.js';
import {
  anchor,
  condition,
  frame,
  GRAVITY,
  NPS4,
  of,
  pipe,
  prop,
  restraint,
  runThrough,
  STEEL,
  STRAIN,
  support,
} from './small-frames.js';

const inside = NPS4.outsideDiameter - 2 * NPS4.wall;
const bore = (Math.PI / 4) * inside ** 2;
const A = (Math.PI / 4) * NPS4.outsideDiameter ** 2 - bore;
const g = 9.80665;

const line: Partial<Frame> = {
  points: { a: [0, 0, 0], b: [4, 0, 0], c: [4, 3, 0] },
  members: [
    pipe('ab', 'a', 'b', { mass: { metal: 16, covering: 3 }, contentsGroup: 'suction' }),
    pipe('bc', 'b', 'c', { mass: { metal: 16, covering: 3 }, contentsGroup: 'discharge' }),
  ],
  bodies: [
    {
      name: 'valve',
      points: ['b'],
      masses: [
        { name: 'valve', at: [4, 0, 0.2], mass: 40, contents: 0.005, contentsGroup: 'suction' },
        {
          name: 'its insulation',
          at: [4, 0, 0],
          mass: 6,
          contents: 0,
          contentsGroup: 'suction',
          covering: true,
        },
      ],
    },
  ],
  supports: [anchor('A', 'a'), prop('B', 'c', [0, 0, 1])],
};
const weightIn = (changes: Partial<FrameCondition>) =>
  of(
    solveFrame(frame({ ...line, conditions: [condition({ gravity: GRAVITY, ...changes })] })).conditions,
    'test',
  ).weight;

describe('what weighs in a condition', () => {
  test('empty: metal alone', () => {
    expect(relativeError(weightIn({}), (16 * 7 + 40) * g)).toBeLessThan(1e-14);
  });

  test('filled: the bore of each member, the contents of each body, and the covering', () => {
    const filled = (19 * 7 + 46 + 998 * (bore * 7 + 0.005)) * g;
    expect(relativeError(weightIn({ contentsDensity: 998, covering: true }), filled)).toBeLessThan(1e-14);
  });

  test('drained: the named group holds nothing', () => {
    const drained = (16 * 7 + 40 + 998 * bore * 3) * g;
    expect(relativeError(weightIn({ contentsDensity: 998, drained: ['suction'] }), drained)).toBeLessThan(
      1e-14,
    );
  });

  test('a solid bar has no bore', () => {
    const bar = pipe('bar', 'a', 'b', {
      tube: { outsideDiameter: 0.05, wall: 0.025 },
      mass: { metal: 15, covering: 0 },
    });
    expect(massPerLength(bar, condition({ contentsDensity: 998 }))).toBe(15);
  });
});

describe('several conditions of one frame', () => {
  test('give what each gives alone', () => {
    const conditions = [
      condition({ name: 'empty', gravity: GRAVITY }),
      condition({ name: 'filled', gravity: GRAVITY, contentsDensity: 998, covering: true }),
      condition({ name: 'hot', gravity: GRAVITY, temperature: 380 }),
      condition({ name: 'without', gravity: GRAVITY, absent: ['B'] }),
    ];
    const together = solveFrame(frame({ ...line, conditions })).conditions;
    for (const each of conditions) {
      const alone = of(solveFrame(frame({ ...line, conditions: [each] })).conditions, each.name);
      expect(of(together, each.name)).toEqual(alone);
    }
  });

  test('leave out the supports that do not act', () => {
    const without = of(
      solveFrame(frame({ ...line, conditions: [condition({ gravity: GRAVITY, absent: ['B'] })] })).conditions,
      'test',
    );
    expect(of(without.supports, 'B')).toEqual({
      load: { force: [0, 0, 0], moment: [0, 0, 0] },
      states: ['absent'],
    });
    expect(relativeError(-of(without.supports, 'A').load.force[2], without.weight)).toBeLessThan(1e-12);
  });
});

describe('a straight line between anchors', () => {
  const between = (changes: Partial<FrameCondition>, options: NonNullable<Frame['options']> = {}) =>
    of(
      solveFrame(
        frame({
          ...runThrough([
            [0, 0, 0],
            [5, 0, 0],
          ]),
          supports: [anchor('A', 'a'), anchor('B', 'b')],
          conditions: [condition(changes)],
          options,
        }),
      ).conditions,
      'test',
    ).supports;

  test('pushes with E A ε when hot', () => {
    expect(
      relativeError(of(between({ temperature: 400 }), 'B').load.force[0], STEEL.modulus * A * STRAIN),
    ).toBeLessThan(1e-12);
  });

  test('pushes with p A_bore (1 − 2ν) under pressure when asked for, and not otherwise', () => {
    const p = 2e6;
    const pushed = of(between({ pressure: p }, { pressureElongation: true }), 'B').load.force[0];
    expect(relativeError(pushed, p * bore * (1 - 2 * 0.3))).toBeLessThan(1e-12);
    expect(of(between({ pressure: p }), 'B').load.force[0]).toBe(0);
  });

  test('carries a lateral acceleration to its ends', () => {
    const sideways: Vec3 = [0, 3, 0];
    const loads = of(
      solveFrame(frame({ ...line, conditions: [condition({ gravity: sideways })] })).conditions,
      'test',
    );
    expect(relativeError(of(loads.supports, 'A').load.force[1], (16 * 7 + 40) * 3)).toBeLessThan(1e-12);
  });
});

test('a constant-load hanger pulls with its load however the point moves', () => {
  const run = runThrough(
    [
      [0, 0, 0],
      [3, 0, 0],
    ],
    { mass: { metal: 16, covering: 0 } },
  );
  const constant = support('C', 'b', [restraint([0, 0, 1], { stiffness: 0, preload: 180 })]);
  const answer = of(
    solveFrame(
      frame({
        ...run,
        supports: [anchor('A', 'a'), constant],
        conditions: [condition({ gravity: GRAVITY })],
      }),
    ).conditions,
    'test',
  );
  expect(of(answer.supports, 'C').load.force[2]).toBe(-180);
  expect(relativeError(-of(answer.supports, 'A').load.force[2], 48 * g - 180)).toBeLessThan(1e-11);
});

test('a support that is moved takes the line along', () => {
  const run = runThrough(
    [
      [0, 0, 0],
      [3, 0, 0],
    ],
    { mass: { metal: 16, covering: 0 } },
  );
  const moved = (imposed: FrameCondition['imposed']) => {
    const acting = condition({ gravity: GRAVITY, ...(imposed && { imposed }) });
    const built = frame({ ...run, supports: [anchor('A', 'a')], conditions: [acting] });
    return of(of(solveFrame(built).conditions, 'test').movements, 'b').translation;
  };
  const [still, carried] = [moved(undefined), moved({ A: [0.01, -0.02, 0.03] })];
  carried.forEach((value, i) => {
    expect(value - (still[i] ?? 0)).toBeCloseTo([0.01, -0.02, 0.03][i] ?? 0, 14);
  });
});
