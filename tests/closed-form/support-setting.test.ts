import { describe, expect, test } from 'vitest';
import { drySetting, possibleSetting } from '../../src/mechanics/what-ifs/spring-setting.js';
import { raisingEffects } from '../../src/mechanics/what-ifs/support-setting.js';
import type { Frame, Restraint } from '../../src/model/frame/frame.js';
import {
  DISCHARGE,
  EI,
  HALF,
  LEG,
  mass,
  pump,
  pumpBetweenLegs,
  SUCTION,
} from '../mechanics/pump-between-legs.js';
import {
  anchor,
  condition,
  frame,
  GRAVITY,
  pipe,
  restraint,
  STEEL,
  support,
} from '../mechanics/small-frames.js';

const filled = condition({ name: 'filled', gravity: GRAVITY });
const UP = [0, 0, 1] as const;

/** A hanger at the discharge flange of a pump between two legs. */
const hung = (stiffness = Number.POSITIVE_INFINITY): Frame => {
  const plain = pumpBetweenLegs({ bodies: [pump([mass('casing', [0, 0, 0], 400)])] });
  const hanger = support('H1', 'pump discharge', [restraint(UP, { sense: 'push', stiffness })]);
  return { ...plain, supports: [...plain.supports, hanger] };
};
const effect = (whole: Frame) => {
  const [found] = raisingEffects(whole, filled, 'pump', { nozzles: [SUCTION, DISCHARGE], marks: ['H1'] });
  if (found === undefined) throw new Error('no effect');
  return found;
};

describe('raising a hanger under a pump between two legs', () => {
  // Let the rigid pump rise by v at its middle and turn by t; each leg resists its end (v ± t a, t) with 12 E I / L³,
  // 6 E I / L², 4 E I / L. The hanger acts at a north of the middle: solve both for a unit rise there.
  const a = HALF;
  const [f, m, r] = [(12 * EI) / LEG ** 3, (6 * EI) / LEG ** 2, (4 * EI) / LEG];
  const rising = 2 * f;
  const turning = 2 * (r + 2 * m * a + f * a * a);
  const flexibility = 1 / rising + (a * a) / turning;

  test('takes up load with the stiffness of both legs', () => {
    expect((effect(hung()).supports.H1 ?? 0) * flexibility).toBeCloseTo(1, 9);
  });

  test('puts on the anchors what the hanger takes', () => {
    const { supports } = effect(hung());
    expect((supports.south ?? 0) + (supports.north ?? 0) + (supports.H1 ?? 0)).toBeCloseTo(0, 3);
  });

  test('with a rod that stretches, rod and legs give in series', () => {
    const k = 2e5;
    expect((effect(hung(k)).supports.H1 ?? 0) * (flexibility + 1 / k)).toBeCloseTo(1, 9);
  });

  test('changes the nozzle by what the leg hands on to its anchor, downward where the pump rises', () => {
    const { supports, nozzles } = effect(hung());
    expect((nozzles.suction?.force[2] ?? 0) / (supports.south ?? 0)).toBeCloseTo(1, 9);
    expect(nozzles.suction?.force[2]).toBeLessThan(0);
  });

  test('does nothing where the hanger is slack', () => {
    const light = pumpBetweenLegs();
    const slack = support('H1', 'pump discharge', [restraint(UP, { sense: 'push', imposed: -0.01 })]);
    const found = effect({ ...light, supports: [...light.supports, slack] });
    expect(found.idle).toBe(true);
    expect(found.supports.H1).toBeCloseTo(0, 9);
  });
});

describe('a beam on two springs', () => {
  // A rigid bar of 2 m, springs k at both ends, a mass at a quarter of the length:
  // statics alone gives 3/4 and 1/4, whatever the springs are set to.
  const k = 40_000;
  const spring = (mark: string, preload: number, ...held: readonly Restraint[]) =>
    support(mark, mark, [restraint(UP, { stiffness: k, preload }), ...held]);
  const loose = (preload: number): Frame =>
    frame({
      points: { V1: [0, 0, 0], V2: [0, 2, 0] },
      bodies: [{ name: 'bar', points: ['V1', 'V2'], masses: [mass('weight', [0, 0.5, 0], 100)] }],
      supports: [
        spring(
          'V1',
          preload,
          restraint([1, 0, 0]),
          restraint([0, 1, 0]),
          restraint([0, 1, 0], { acts: 'rotation' }),
          restraint([0, 0, 1], { acts: 'rotation' }),
        ),
        spring('V2', preload),
      ],
    });
  const set = drySetting(loose(900), { target: filled, read: [filled] });

  test('carries what statics says, and says that no height brings the wanted load', () => {
    const [one, two] = set?.springs ?? [];
    expect(one?.loads.filled).toBeCloseTo(0.75 * 100 * 9.80665, 6);
    expect(two?.loads.filled).toBeCloseTo(0.25 * 100 * 9.80665, 6);
    expect(set?.springs.map(({ reached }) => reached)).toEqual([false, false]);
  });
});

describe('a spring in the middle of a beam fixed at both ends', () => {
  // Stiffness of the beam at its middle: 192 E I / l³ = K with l = 2 L. Raising the spring by h changes its load by
  // h k K / (k + K). The beam's own weight without the spring sags the middle by w l⁴ / 384 E I.
  const k = 30_000;
  const design = 1500;
  const l = 2 * LEG;
  const K = (192 * EI) / l ** 3;
  const metal = { dry: 16, filled: 24 };
  const beam = (preload: number): Frame => {
    const plain = pumpBetweenLegs();
    const half = (name: string, from: string, to: string) =>
      pipe(name, from, to, { mass: { metal: metal.dry, covering: metal.filled - metal.dry } });
    return {
      ...plain,
      points: { south: [0, -LEG, 0], V1: [0, 0, 0], north: [0, LEG, 0] },
      members: [half('one', 'south', 'V1'), half('two', 'V1', 'north')],
      bodies: [],
      supports: [
        anchor('south', 'south'),
        anchor('north', 'north'),
        support('V1', 'V1', [restraint(UP, { stiffness: k, preload })]),
      ],
    };
  };
  const dry = condition({ name: 'empty', gravity: GRAVITY });
  const wet = { ...filled, covering: true };
  const set = drySetting(beam(design), { target: wet, read: [dry, wet] });
  const spring = set?.springs[0];
  // Spring load P − k u with u = (F − w l / 2) / K, the middle of a fixed beam taking w l / 2 = (w l⁴ / 384 E I) K.
  const load = (kg: number, height: number) => {
    const share = (kg * 9.80665 * l) / 2;
    return (design + k * height + (k / K) * share) / (1 + k / K);
  };

  test('carries its load when filled', () => {
    expect(spring?.loads.filled).toBeCloseTo(design, 4);
    expect(spring?.reached).toBe(true);
  });

  test('stands higher or lower by what its load lacked over both stiffnesses in series', () => {
    const raise = (design - load(metal.filled, 0)) * (1 / k + 1 / K);
    expect((spring?.raise ?? 0) / raise).toBeCloseTo(1, 8);
  });

  test('reads less when it is set dry, by the share of the water that it gives way to', () => {
    const raise = spring?.raise ?? 0;
    expect(spring?.loads.empty).toBeCloseTo(load(metal.dry, raise), 4);
    expect(spring?.loads.empty ?? 0).toBeLessThan(design);
    expect(spring?.asGiven.filled).toBeCloseTo(load(metal.filled, 0), 4);
  });
});

test('there is nothing to set where there is no spring', () => {
  expect(drySetting(hung(), { target: filled, read: [filled] })).toBeUndefined();
});

describe('a spring that would have to be raised beyond its adjustment', () => {
  // A beam far stiffer than the spring: its load changes by k for each metre, so that 5000 N more take 5000 / k.
  const k = 5_000;
  const between = pumpBetweenLegs();
  const beam = (preload: number, swingLength?: number): Frame => ({
    ...between,
    points: { south: [0, -LEG, 0], V1: [0, 0, 0], north: [0, LEG, 0] },
    members: [pipe('one', 'south', 'V1'), pipe('two', 'V1', 'north')],
    bodies: [{ name: 'load', points: ['V1'], masses: [mass('weight', [0, 0, 0], 10)] }],
    supports: [
      anchor('south', 'south'),
      anchor('north', 'north'),
      support('V1', 'V1', [restraint(UP, { stiffness: k, preload, ...(swingLength && { swingLength }) })]),
    ],
  });
  const read = { target: filled, read: [filled] };

  test('is left as the file sets it, and its height is told', () => {
    // The beam fixed at both ends with K = 192 E I / l³: raising by h adds h k K / (k + K).
    const K = (192 * EI) / (2 * LEG) ** 3;
    const preload = 8000;
    const whole = beam(preload);
    const plain = drySetting(whole, read)?.springs[0];
    const W = 10 * 9.80665;
    expect(plain?.raise).toBeCloseTo((preload - W) / K, 9);
    const soft = { ...whole, materials: { steel: { ...STEEL, modulus: STEEL.modulus / 1000 } } };
    const [left] = possibleSetting(soft, read)?.springs ?? [];
    expect(left?.reached).toBe(false);
    expect(left?.raise).toBe(0);
    expect(left?.beyond ?? 0).toBeGreaterThan(preload / k);
    expect(left?.loads.filled).toBeCloseTo(left?.asGiven.filled ?? Number.NaN, 9);
  });

  test('is raised where a rod is long enough, and everywhere within reach', () => {
    const whole = beam(8000);
    expect(possibleSetting(whole, read)?.springs).toEqual(drySetting(whole, read)?.springs);
  });
});
