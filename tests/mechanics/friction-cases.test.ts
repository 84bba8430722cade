// Friction by hand: blocks, slopes, moving supports, and a base dragged by a hot pipe.
import { describe, expect, test } from 'vitest';
import { solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import type { Vec3 } from '../../src/model/conventions.js';
import type { Frame, FrameSupport } from '../../src/model/frame/frame.js';
import { relativeError } from '../published/printed-value.js';
import {
  AXES,
  anchor,
  condition,
  force,
  frame,
  GRAVITY,
  NPS4,
  of,
  restraint,
  runThrough,
  STEEL,
  STRAIN,
  support,
} from './small-frames.js';

const EAST: Vec3 = [1, 0, 0];
const UP: Vec3 = [0, 0, 1];
const g = 9.80665;
const m = 300;
const mu = 0.3;

const block = (supports: readonly FrameSupport[]): Partial<Frame> => ({
  points: { b: [0, 0, 0] },
  bodies: [
    {
      name: 'block',
      points: ['b'],
      masses: [{ name: 'block', at: [0, 0, 0], mass: m, contents: 0, contentsGroup: '' }],
    },
  ],
  supports: [
    ...supports,
    support(
      'T',
      'b',
      AXES.map((axis) => restraint(axis, { acts: 'rotation' })),
    ),
  ],
});

function solve(parts: Partial<Frame>) {
  return of(solveFrame(frame(parts)).conditions, 'test');
}

describe('a block on a slope, kept by a spring along the slope', () => {
  const k = 5e4;
  const sloped = (degrees: number, load: Vec3 = [0, 0, 0], backstop = 0) => {
    const a = (degrees * Math.PI) / 180;
    const normal: Vec3 = [-Math.sin(a), 0, Math.cos(a)];
    const along: Vec3 = [Math.cos(a), 0, Math.sin(a)];
    const answer = solve({
      ...block([
        support('R', 'b', [restraint(normal, { sense: 'push', friction: mu })]),
        support('S', 'b', [restraint(along, { stiffness: k }), restraint([0, 1, 0])]),
        support('N', 'b', [restraint(normal, { stiffness: backstop })]),
      ]),
      conditions: [condition({ gravity: GRAVITY, loads: [force('b', load)] })],
    });
    return { answer, a };
  };

  test('sticks while the slope is less than the angle of friction', () => {
    const { answer } = sloped((Math.atan(mu) * 180) / Math.PI - 0.1);
    expect(of(answer.supports, 'R').states).toEqual(['holding']);
    expect(of(answer.movements, 'b').translation.every((part) => Math.abs(part) < 1e-12)).toBe(true);
  });

  test('slips beyond it by what friction leaves to the spring', () => {
    const { answer, a } = sloped(30);
    expect(of(answer.supports, 'R').states).toEqual(['slipping']);
    const down = (m * g * (Math.sin(a) - mu * Math.cos(a))) / k;
    const [x, , z] = of(answer.movements, 'b').translation;
    expect(relativeError(-(x * Math.cos(a) + z * Math.sin(a)), down)).toBeLessThan(1e-9);
  });

  test('lifted off, it feels neither slope nor friction', () => {
    const { answer, a } = sloped(30, [0, 0, 2 * m * g], 2 * k);
    expect(of(answer.supports, 'R').states).toEqual(['lifted']);
    expect(of(answer.supports, 'R').load.force).toEqual([0, 0, 0]);
    const [x, , z] = of(answer.movements, 'b').translation;
    expect(relativeError(x * Math.cos(a) + z * Math.sin(a), (m * g * Math.sin(a)) / k)).toBeLessThan(1e-10);
    expect(relativeError(z * Math.cos(a) - x * Math.sin(a), (m * g * Math.cos(a)) / (2 * k))).toBeLessThan(
      1e-10,
    );
  });
});

describe('a floor that moves under a block kept by a spring', () => {
  const k = 5e4;
  const slip = (mu * m * g) / k;
  const dragged = (by: number, lift = 0) =>
    solve({
      ...block([
        support('R', 'b', [restraint(UP, { sense: 'push', friction: mu })]),
        support('S', 'b', [restraint(EAST, { stiffness: k }), restraint([0, 1, 0], { stiffness: k })]),
      ]),
      conditions: [
        condition({ gravity: GRAVITY, imposed: { R: [by, 0, 0] }, loads: [force('b', [0, 0, lift])] }),
      ],
    });

  test('takes the block along while friction is more than the spring', () => {
    const answer = dragged(0.9 * slip);
    expect(of(answer.supports, 'R').states).toEqual(['holding']);
    expect(relativeError(of(answer.movements, 'b').translation[0], 0.9 * slip)).toBeLessThan(1e-10);
  });

  test('slides under it beyond, pulling with the whole friction', () => {
    const answer = dragged(3 * slip);
    expect(of(answer.supports, 'R').states).toEqual(['slipping']);
    expect(relativeError(of(answer.movements, 'b').translation[0], slip)).toBeLessThan(1e-9);
    expect(relativeError(of(answer.supports, 'S').load.force[0], mu * m * g)).toBeLessThan(1e-9);
  });

  test('a block half lifted is dragged half as hard', () => {
    const answer = dragged(3 * slip, (m * g) / 2);
    expect(relativeError(of(answer.supports, 'S').load.force[0], (mu * m * g) / 2)).toBeLessThan(1e-9);
  });
});

describe('a resting base at the end of a hot pipe', () => {
  const [length, section] = [6, Math.PI / 4];
  const A = section * (NPS4.outsideDiameter ** 2 - (NPS4.outsideDiameter - 2 * NPS4.wall) ** 2);
  const EA = STEEL.modulus * A;
  const growth = STRAIN * length;
  const base = (friction: number) => {
    const run = runThrough([
      [0, 0, 0],
      [length, 0, 0],
    ]);
    return solve({
      ...run,
      bodies: [
        {
          name: 'pump',
          points: ['b'],
          masses: [{ name: 'pump', at: [length, 0, 0], mass: m, contents: 0, contentsGroup: '' }],
        },
      ],
      supports: [anchor('A', 'a'), support('base', 'b', [restraint(UP, { sense: 'push', friction })])],
      conditions: [condition({ gravity: GRAVITY, temperature: 400 })],
    });
  };

  test('slides, and the nozzle feels the friction of the base and no more', () => {
    const answer = base(mu);
    expect(of(answer.supports, 'base').states).toEqual(['slipping']);
    expect(relativeError(of(answer.supports, 'A').load.force[0], -mu * m * g)).toBeLessThan(1e-9);
    const slid = growth - (mu * m * g * length) / EA;
    expect(relativeError(of(answer.movements, 'b').translation[0], slid)).toBeLessThan(1e-9);
  });

  test('on a floor without friction it is free to grow', () => {
    expect(relativeError(of(base(0).movements, 'b').translation[0], growth)).toBeLessThan(1e-12);
    expect(Math.abs(of(base(0).supports, 'A').load.force[0])).toBeLessThan(1e-6);
  });
});
