import { describe, expect, test } from 'vitest';
import type { Pump } from '../../src/input/installation.js';
import { solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import { naturalFrequencies } from '../../src/mechanics/modes/frequencies.js';
import { inSeries } from '../../src/model/frame/part-supports.js';
import {
  bracketJoint,
  bracketStiffness,
  MOTOR_FOOT,
  pumpBodies,
  pumpPoints,
} from '../../src/model/frame/pump-body.js';
import {
  anchor,
  condition,
  frame,
  GRAVITY,
  INCH,
  NPS4,
  of,
  POUND_FORCE,
  PSI,
  pipe,
  restraint,
  STEEL,
  support,
} from '../mechanics/small-frames.js';
import { installation, sourced } from '../model/fixture.js';

const I = (Math.PI / 64) * (NPS4.outsideDiameter ** 4 - (NPS4.outsideDiameter - 2 * NPS4.wall) ** 4);
const LB_PER_INCH = POUND_FORCE / INCH;

describe('what a support is fastened to', () => {
  test('gives in series with the rod: 1/k = 1/k1 + 1/k2', () => {
    // Rod 3/8 in of root area 0.068 in2, 24 in long: 82 167 lb/in; beam W8x18 at the middle of 20 ft: 6233 lb/in.
    const rod = (29e6 * PSI * 0.068 * INCH ** 2) / (24 * INCH);
    expect(rod / LB_PER_INCH).toBeCloseTo(82_167, 0);
    const beam = (48 * 29e6 * 61.9) / 240 ** 3;
    expect(beam).toBeCloseTo(6233, 0);
    expect(inSeries(rod, beam * LB_PER_INCH) / LB_PER_INCH).toBeCloseTo(1 / (1 / 82_166.7 + 1 / 6232.9), 0);
    expect(inSeries(undefined, Number.POSITIVE_INFINITY)).toBe(Number.POSITIVE_INFINITY);
    expect(inSeries(rod, Number.POSITIVE_INFINITY)).toBe(rod);
  });

  test('takes from a propped cantilever what it takes: R = 3wL/8 / (1 + 3EI/(k L³))', () => {
    const L = 3;
    const mass = 40;
    const k = 2e5;
    const built = frame({
      points: { a: [0, 0, 0], b: [L, 0, 0] },
      members: [pipe('ab', 'a', 'b', { mass: { metal: mass, covering: 0 } })],
      supports: [
        anchor('A', 'a'),
        support('H', 'b', [restraint([0, 0, 1], { stiffness: inSeries(4e5, 4e5), sense: 'push' })]),
      ],
      conditions: [condition({ gravity: GRAVITY })],
      options: { withoutShear: true },
    });
    const reaction = -of(of(solveFrame(built).conditions, 'test').supports, 'H').load.force[2];
    const w = mass * 9.80665;
    const EI = STEEL.modulus * I;
    expect(reaction).toBeCloseTo((3 * w * L) / 8 / (1 + (3 * EI) / (k * L ** 3)), 6);
  });
});

describe('the bracket of the motor', () => {
  const base: Pump = installation([], []).pump;
  const on = (frequency: number): Pump => ({
    ...base,
    motor: { ...base.motor, bracket: { kind: 'frequency', frequency: sourced(frequency) } },
  });
  /** Casing held where it stands, motor on its bracket. */
  const heldCasing = (pump: Pump) =>
    frame({
      points: pumpPoints(pump),
      bodies: pumpBodies(pump).map(({ material: _, ...body }) => body),
      joints: bracketJoint(pump),
      supports: [anchor('casing', 'pump suction')],
      conditions: [condition({ gravity: GRAVITY })],
    });

  test('gives the natural frequency it is given by, in both directions, the casing held', () => {
    const built = heldCasing(on(60));
    const { modes } = naturalFrequencies(built, condition({ gravity: GRAVITY }), 3);
    expect(modes).toHaveLength(2);
    for (const { frequency } of modes) expect(frequency).toBeCloseTo(60, 6);
    expect(built.points[MOTOR_FOOT]).toEqual(built.points['motor seat']);
  });

  test('is softer by the square of the frequency', () => {
    expect((bracketStiffness(on(80)) ?? 0) / (bracketStiffness(on(40)) ?? 1)).toBeCloseTo(4, 12);
  });

  test('on a support that rocks gives a lower frequency than either, and not below 1/f² = 1/f1² + 1/f2²', () => {
    // Dunkerley: a lower bound; the one degree of freedom of each alone.
    const pump = on(35);
    const rocking = (stiffness: number) => {
      const built = heldCasing(pump);
      const held = anchor('casing', 'motor seat').restraints.map((one) =>
        one.acts === 'rotation' && one.direction[1] === 1 ? { ...one, stiffness } : one,
      );
      return frame({ ...built, supports: [support('casing', 'motor seat', held)] });
    };
    const alone = (stiffness: number) =>
      naturalFrequencies(
        { ...rocking(stiffness), joints: bracketJoint(on(1e5)) },
        condition({ gravity: GRAVITY }),
        1,
      ).modes[0]?.frequency ?? 0;
    const k = 3e6;
    const whole = naturalFrequencies(rocking(k), condition({ gravity: GRAVITY }), 1).modes[0]?.frequency ?? 0;
    const second = alone(k);
    const dunkerley = 1 / Math.sqrt(1 / 35 ** 2 + 1 / second ** 2);
    expect(whole).toBeLessThan(Math.min(35, second));
    expect(whole).toBeGreaterThanOrEqual(dunkerley * (1 - 1e-6));
  });
});
