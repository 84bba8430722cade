import { describe, expect, test } from 'vitest';
import { EngineError, type IssueDataOf } from '../../src/issues/issue.js';
import { mechanicsSentences } from '../../src/issues/sentences/mechanics.js';
import { solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import type { Vec3 } from '../../src/model/conventions.js';
import type { Frame } from '../../src/model/frame/frame.js';
import {
  AXES,
  anchor,
  bend,
  condition,
  force,
  frame,
  GRAVITY,
  pipe,
  prop,
  restraint,
  runThrough,
  support,
} from './small-frames.js';

const EAST: Vec3 = [1, 0, 0];
const NORTH: Vec3 = [0, 1, 0];
const UP: Vec3 = [0, 0, 1];

function refusalOf(parts: Partial<Frame>): EngineError {
  try {
    solveFrame(frame({ conditions: [condition({ gravity: GRAVITY })], ...parts }));
  } catch (error) {
    if (error instanceof EngineError) return error;
  }
  throw new Error('nothing was refused');
}

const run = runThrough([
  [0, 0, 0],
  [3, 0, 0],
  [6, 0, 0],
]);
const turns = (...axes: readonly Vec3[]) =>
  support(
    'T',
    'a',
    axes.map((axis) => restraint(axis, { acts: 'rotation' })),
  );

describe('a line that something does not hold', () => {
  test('with no support at all is loose, and all of it moves', () => {
    const { code, data } = refusalOf({ ...run });
    expect(code).toBe('mechanics.mechanism');
    expect(data).toMatchObject({ movement: 'moves up or down', held: 'loose', condition: 'test' });
  });

  test('on hangers alone moves sideways', () => {
    const hung = refusalOf({ ...run, supports: [prop('H1', 'a', UP), prop('H2', 'c', UP), turns(EAST)] });
    expect(hung.data).toMatchObject({ movement: 'moves east or west', held: 'partly' });
    const stopped = refusalOf({
      ...run,
      supports: [prop('H1', 'a', UP, EAST), prop('H2', 'c', UP), turns(EAST, UP)],
    });
    expect(stopped.data.movement).toBe('moves north or south');
  });

  test('held sideways at one point turns about it', () => {
    const { data } = refusalOf({
      ...run,
      supports: [prop('H1', 'a', UP, EAST, NORTH), prop('H2', 'c', UP), turns(EAST)],
    });
    expect(data).toMatchObject({ movement: 'turns about the vertical' });
    expect(data.points).toEqual(['c', 'b', 'a']);
  });

  test('that can spin about its own axis says so', () => {
    const { data } = refusalOf({
      ...run,
      supports: [prop('H1', 'a', UP, EAST, NORTH), prop('H2', 'c', UP, NORTH)],
    });
    expect(data.movement).toBe('turns about an east-west line');
  });

  test('that runs askew names the bearing of its axis', () => {
    const skew = runThrough([
      [0, 0, 0],
      [3, 3, 0],
    ]);
    const { data } = refusalOf({ ...skew, supports: [prop('P1', 'a', ...AXES), prop('P2', 'b', NORTH, UP)] });
    expect(data.movement).toBe('turns about a line bearing 45 degrees from north');
  });

  test('in two pieces names the piece that is loose', () => {
    const { data } = refusalOf({
      points: { ...run.points, far: [0, 9, 0], end: [5, 9, 0] },
      members: [...run.members, pipe('stray', 'far', 'end')],
      supports: [anchor('A', 'a')],
    });
    expect(data.held).toBe('loose');
    expect([...(data.points as readonly string[])].sort()).toEqual(['end', 'far']);
  });

  test('with a joint that is free to bend between two rests folds there', () => {
    const { data } = refusalOf({
      points: { a: [0, 0, 0], b: [2, 0, 0], c: [2, 0, 0], d: [4, 0, 0] },
      members: [pipe('ab', 'a', 'b'), pipe('cd', 'c', 'd')],
      joints: [
        {
          name: 'J',
          from: 'b',
          to: 'c',
          axis: EAST,
          axial: Number.POSITIVE_INFINITY,
          lateral: Number.POSITIVE_INFINITY,
          torsion: Number.POSITIVE_INFINITY,
          bending: 0,
          thrustArea: 0,
          mass: 0,
        },
      ],
      supports: [
        prop('P1', 'a', ...AXES),
        prop('P2', 'd', ...AXES),
        turns(EAST, UP),
        support('T2', 'd', [restraint(UP, { acts: 'rotation' })]),
      ],
    });
    expect(data.movement).toMatch(/moves up or down|turns about a north-south line/);
    expect((data.points as readonly string[]).slice(0, 2).sort()).toEqual(['b', 'c']);
  });

  test('is refused even when nothing loads the free movement', () => {
    const { code } = refusalOf({
      ...run,
      supports: [prop('H1', 'a', UP), prop('H2', 'c', UP), turns(EAST)],
      conditions: [condition()],
    });
    expect(code).toBe('mechanics.mechanism');
  });

  test('has a sentence that names movement and points', () => {
    const { data } = refusalOf({ ...run, supports: [prop('H1', 'a', UP), prop('H2', 'c', UP), turns(EAST)] });
    const sentence = mechanicsSentences['mechanics.mechanism'](data as IssueDataOf<'mechanics.mechanism'>);
    expect(sentence?.message).toContain('moves east or west');
    expect(sentence?.message).toContain('"a"');
  });
});

describe('a frame that is soft but held is solved', () => {
  test('a long slender line on its anchor', () => {
    const places = Array.from({ length: 24 }, (_, i): Vec3 => [5 * i, 0, 0]);
    const long = runThrough(places, { mass: { metal: 16, covering: 0 } });
    const { quality } = solveFrame(
      frame({ ...long, supports: [anchor('A', 'a')], conditions: [condition({ gravity: GRAVITY })] }),
    );
    expect(quality.residual).toBeLessThan(1e-8);
  });

  test('a line held sideways by nothing but a weak spring', () => {
    const weak = support('W', 'b', [
      restraint(NORTH, { stiffness: 5 }),
      restraint(UP, { acts: 'rotation', stiffness: 5 }),
      restraint(EAST, { stiffness: 5 }),
    ]);
    const { conditions } = solveFrame(
      frame({
        ...run,
        supports: [prop('H1', 'a', UP), prop('H2', 'c', UP), turns(EAST), weak],
        conditions: [condition({ loads: [force('b', [0, 2, 0])] })],
      }),
    );
    expect(conditions.test?.movements.b?.translation[1]).toBeCloseTo(0.4, 8);
  });

  test('an arc of two hundred pieces', () => {
    const R = 0.2;
    const place = (i: number): Vec3 => [
      R * Math.sin((Math.PI * i) / 400),
      R - R * Math.cos((Math.PI * i) / 400),
      0,
    ];
    const points = Object.fromEntries(Array.from({ length: 201 }, (_, i) => [`p${i}`, place(i)]));
    const members = Array.from({ length: 200 }, (_, i) =>
      bend(`m${i}`, `p${i}`, `p${i + 1}`, [0, R, 0], { flexibility: 8 }),
    );
    const cut = solveFrame(
      frame({
        points,
        members,
        supports: [anchor('A', 'p0')],
        conditions: [condition({ loads: [force('p200', [0, 0, 100])] })],
      }),
    );
    const whole = solveFrame(
      frame({
        points,
        members: [bend('m', 'p0', 'p200', [0, R, 0], { flexibility: 8 })],
        supports: [anchor('A', 'p0')],
        conditions: [condition({ loads: [force('p200', [0, 0, 100])] })],
      }),
    );
    const [a, b] = [cut, whole].map(
      ({ conditions }) => conditions.test?.movements.p200?.translation[2] ?? Number.NaN,
    );
    expect(Math.abs((a ?? 0) / (b ?? 1) - 1)).toBeLessThan(1e-9);
  });
});
