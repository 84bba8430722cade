import { describe, expect, test } from 'vitest';
import { solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import type { Vec3 } from '../../src/model/conventions.js';
import type { Frame, FrameCondition, FrameJoint } from '../../src/model/frame/frame.js';
import { relativeError } from '../published/printed-value.js';
import { errorOf } from './error-of.js';
import { anchor, condition, force, frame, of, restraint, support } from './small-frames.js';

const EAST: Vec3 = [1, 0, 0];
const NORTH: Vec3 = [0, 1, 0];
const UP: Vec3 = [0, 0, 1];
const RIGID = Number.POSITIVE_INFINITY;

const joint = (changes: Partial<FrameJoint>): FrameJoint => ({
  name: 'connector',
  from: 'a',
  to: 'b',
  axis: EAST,
  axial: RIGID,
  lateral: RIGID,
  torsion: RIGID,
  bending: RIGID,
  thrustArea: 0,
  mass: 0,
  ...changes,
});

function solve(parts: Partial<Frame>) {
  return of(solveFrame(frame(parts)).conditions, 'test');
}

describe('rods with a gap', () => {
  const [own, line, gap, area] = [3e5, 2e5, 0.01, 0.02];
  const sprung = (axial: number, acting: Partial<FrameCondition>) =>
    solve({
      points: { a: [0, 0, 0], b: [0.2, 0, 0] },
      bodies: [{ name: 'block', points: ['b'], masses: [] }],
      joints: [joint({ axial, rodGap: gap, thrustArea: area })],
      supports: [anchor('A', 'a'), support('S', 'b', [restraint(EAST, { stiffness: line })])],
      conditions: [condition(acting)],
    });
  const states = (answer: ReturnType<typeof sprung>) => of(answer.jointStates ?? {}, 'connector');

  test('are slack while the thrust stretches the joint by less', () => {
    const answer = sprung(own, { pressure: 2e5 });
    const stretch = (2e5 * area) / (own + line);
    expect(relativeError(of(answer.movements, 'b').translation[0], stretch)).toBeLessThan(1e-12);
    expect(states(answer)).toMatchObject({ rods: 'slack', rodTension: 0 });
    expect(relativeError(of(answer.supports, 'S').load.force[0], line * stretch)).toBeLessThan(1e-12);
  });

  test('engaged, they carry what is left of the thrust, and the line feels no more than at their gap', () => {
    const answer = sprung(own, { pressure: 10e5 });
    expect(relativeError(of(answer.movements, 'b').translation[0], gap)).toBeLessThan(1e-12);
    const tension = 10e5 * area - (own + line) * gap;
    expect(states(answer).rods).toBe('engaged');
    expect(relativeError(states(answer).rodTension ?? 0, tension)).toBeLessThan(1e-10);
    expect(relativeError(of(answer.supports, 'S').load.force[0], line * gap)).toBeLessThan(1e-12);
    // What the joint does to the block as a whole: thrust less rods less its own pull.
    expect(relativeError(of(answer.joints, 'connector').to.force[0], line * gap)).toBeLessThan(1e-10);
  });

  test('let the joint be pressed shorter at its own rate', () => {
    const answer = sprung(own, { loads: [force('b', [-4000, 0, 0])] });
    expect(relativeError(of(answer.movements, 'b').translation[0], -4000 / (own + line))).toBeLessThan(1e-12);
    expect(states(answer).rods).toBe('slack');
  });

  test('around a joint whose rate is rigid, shortening is stopped and lengthening is not until they engage', () => {
    const pressed = sprung(RIGID, { loads: [force('b', [-4000, 0, 0])] });
    expect(of(pressed.movements, 'b').translation[0]).toBeCloseTo(0, 14);
    const stretched = sprung(RIGID, { pressure: 0.5e5 });
    expect(relativeError(of(stretched.movements, 'b').translation[0], (0.5e5 * area) / line)).toBeLessThan(
      1e-12,
    );
    const engaged = sprung(RIGID, { pressure: 10e5 });
    expect(relativeError(states(engaged).rodTension ?? 0, 10e5 * area - line * gap)).toBeLessThan(1e-10);
  });

  test('hold a block that nothing else holds along the axis: at its place unloaded, at their gap when pulled', () => {
    const loose = (x: number) =>
      solve({
        points: { a: [0, 0, 0], b: [0.2, 0, 0] },
        bodies: [{ name: 'block', points: ['b'], masses: [] }],
        joints: [joint({ axial: 0, rodGap: gap })],
        supports: [anchor('A', 'a')],
        conditions: [condition({ loads: [force('b', [x, 0, -300])] })],
      });
    expect(of(loose(0).movements, 'b').translation[0]).toBeCloseTo(0, 14);
    expect(relativeError(of(loose(700).movements, 'b').translation[0], gap)).toBeLessThan(1e-12);
    expect(relativeError(states(loose(700)).rodTension ?? 0, 700)).toBeLessThan(1e-12);
    expect(errorOf(() => loose(-700)).code).toBe('mechanics.mechanism');
  });
});

describe('a joint that bends freely up to an angle', () => {
  // A stiff arm on an anchored joint, springs at its tip, load at its tip. The joint bends at its middle, 0.05 m out.
  const free = 0.02;
  const reach = 1.55;
  const arm = (bending: number, springs: readonly [number, number], load: Vec3) =>
    solve({
      points: { a: [0, 0, 0], b: [0.1, 0, 0], c: [0.05 + reach, 0, 0] },
      bodies: [{ name: 'arm', points: ['b', 'c'], masses: [] }],
      joints: [joint({ bending, freeRotation: free })],
      supports: [
        anchor('A', 'a'),
        support('S', 'c', [
          restraint(NORTH, { stiffness: springs[0] }),
          restraint(UP, { stiffness: springs[1] }),
        ]),
      ],
      conditions: [condition({ loads: [force('c', load)] })],
    });
  const at = (answer: ReturnType<typeof arm>) => of(answer.jointStates ?? {}, 'connector');

  test('does nothing within it', () => {
    const k = 2e4;
    const answer = arm(RIGID, [k, k], [0, 0, -300]);
    expect(relativeError(of(answer.movements, 'c').translation[2], -300 / k)).toBeLessThan(1e-12);
    expect(at(answer).bending).toBe('free');
    expect(relativeError(at(answer).angle, 300 / k / reach)).toBeLessThan(1e-12);
  });

  test('past it holds rigidly: the tip stops at the angle and the joint takes the rest', () => {
    const k = 2e4;
    const answer = arm(RIGID, [k, k], [0, 0, -900]);
    expect(relativeError(of(answer.movements, 'c').translation[2], -free * reach)).toBeLessThan(1e-12);
    expect(at(answer).bending).toBe('at limit');
    const moment = (900 - k * free * reach) * reach;
    const arm2 = 0.05 * of(answer.joints, 'connector').to.force[2];
    expect(relativeError(-of(answer.joints, 'connector').to.moment[1] + arm2, moment)).toBeLessThan(1e-9);
  });

  test('past it holds with its stiffness', () => {
    const [k, bending] = [2e4, 3e4];
    const answer = arm(bending, [k, k], [0, 0, -900]);
    // (P − k δ) l = k_b (δ / l − θ)
    const drop = (900 * reach + bending * free) / (k * reach + bending / reach);
    expect(relativeError(-of(answer.movements, 'c').translation[2], drop)).toBeLessThan(1e-10);
  });

  test.each([RIGID, 3e4])('bends the way its moment points, in whatever plane (stiffness %d)', (bending) => {
    const [ky, kz] = [3e4, 1e4];
    const load: Vec3 = [0, 1800, -1100];
    const answer = arm(bending, [ky, kz], load);
    const [, y, z] = of(answer.movements, 'c').translation;
    const angle = Math.hypot(y, z) / reach;
    const moment: [number, number] = [(load[1] - ky * y) * reach, (load[2] - kz * z) * reach];
    expect(relativeError(at(answer).angle, angle)).toBeLessThan(1e-9);
    if (bending === RIGID) expect(relativeError(angle, free)).toBeLessThan(1e-9);
    else expect(relativeError(Math.hypot(...moment), bending * (angle - free))).toBeLessThan(1e-7);
    const skew = moment[0] * z - moment[1] * y;
    expect(Math.abs(skew) / (Math.hypot(...moment) * Math.hypot(y, z))).toBeLessThan(1e-7);
  });

  test('with nothing else to hold the arm it hangs at the angle, and unloaded it stays straight', () => {
    const hung = arm(RIGID, [0, 0], [0, 300, -400]);
    expect(relativeError(of(hung.movements, 'c').translation[2], -0.8 * free * reach)).toBeLessThan(1e-9);
    expect(relativeError(of(hung.movements, 'c').translation[1], 0.6 * free * reach)).toBeLessThan(1e-9);
    expect(of(arm(RIGID, [0, 0], [500, 0, 0]).movements, 'c').translation[2]).toBeCloseTo(0, 14);
  });

  test('a free angle of nothing is refused', () => {
    const none = () =>
      solve({
        points: { a: [0, 0, 0], b: [0.1, 0, 0] },
        bodies: [{ name: 'block', points: ['b'], masses: [] }],
        joints: [joint({ freeRotation: 0 })],
        supports: [anchor('A', 'a')],
      });
    expect(errorOf(none).code).toBe('mechanics.out-of-range');
  });
});
