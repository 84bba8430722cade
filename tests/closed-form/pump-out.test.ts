import { describe, expect, test } from 'vitest';
import { standingFrame } from '../../src/mechanics/frame/standing-frame.js';
import { flangeSpring, pumpOut } from '../../src/mechanics/what-ifs/pump-out.js';
import type { Vec3 } from '../../src/model/conventions.js';
import type { Frame, FrameCondition } from '../../src/model/frame/frame.js';
import { DISCHARGE, EI, LEG, mass, pump, pumpBetweenLegs, SUCTION } from '../mechanics/pump-between-legs.js';
import {
  anchor,
  condition,
  force,
  frame,
  GRAVITY,
  pipe,
  restraint,
  support,
} from '../mechanics/small-frames.js';

const G = 9.80665;
const METAL = 16;
/** Weight of the pipe along its length [N/m]. */
const w = METAL * G;

const bolted: FrameCondition = condition({ name: 'filled', gravity: GRAVITY });
const out: FrameCondition = condition({
  name: 'pump-out',
  gravity: GRAVITY,
  removed: ['pump'],
  whatIf: true,
});
const taken = (whole: Frame) => pumpOut(whole, { bolted, out }, 'pump', [SUCTION, DISCHARGE]);
const first = <Item>(items: readonly Item[]): Item => {
  const [item] = items;
  if (item === undefined) throw new Error('there is none');
  return item;
};

describe('a pump without weight between two legs that carry their own', () => {
  // Bolted, symmetry keeps the pump level: each leg is fixed at the anchor and guided at the pump, w L⁴ / 24 E I down.
  // Left alone each is a cantilever: w L⁴ / 8 E I down, turned by w L³ / 6 E I.
  const { flanges, springs } = taken(pumpBetweenLegs({}, METAL));
  const suction = first(flanges);

  test('drops by the difference of the two', () => {
    const drop = ((w * LEG ** 4) / EI) * (1 / 8 - 1 / 24);
    expect((suction.spring?.rise ?? 0) / -drop).toBeCloseTo(1, 9);
    expect(suction.spring?.gap).toBeCloseTo(0, 12);
    expect(Math.hypot(...(suction.spring?.sideways ?? [1]))).toBeCloseTo(0, 12);
  });

  test('opens out of parallel by w L³ / 6 E I, widest at the bottom', () => {
    const angle = (w * LEG ** 3) / (6 * EI);
    expect((suction.spring?.tilt ?? 0) / angle).toBeCloseTo(1, 9);
    // The free end of the leg hangs: its face looks down, so the bottom of the face has gone away from the pump.
    expect(suction.spring?.widest[2]).toBeCloseTo(-1, 9);
  });

  // P L³ / 3 E I lifts the free end; it takes w L⁴ / 12 E I: P = w L / 4.
  test('is kept at its height by a prop of w L / 4', () => {
    expect((suction.prop ?? 0) / ((w * LEG) / 4)).toBeCloseTo(1, 9);
  });

  test('both flanges do the same, and no spring is to be pinned', () => {
    const [one, two] = flanges;
    expect(one?.spring?.rise).toBeCloseTo(two?.spring?.rise ?? 0, 12);
    expect(springs).toEqual([]);
    expect(one?.pinnedProp).toBeUndefined();
  });
});

test('the prop is the drop over the flexibility of the flange', () => {
  const whole = pumpBetweenLegs({}, METAL);
  const suction = first(taken(whole).flanges);
  const unit = standingFrame(whole, out).disturb({ loads: [force('pump suction', [0, 0, 1])] });
  const flexibility = unit.response.movements['pump suction']?.translation[2] ?? 0;
  expect(flexibility / (LEG ** 3 / (3 * EI))).toBeCloseTo(1, 9);
  expect((suction.prop ?? 0) / (-(suction.spring?.rise ?? 0) / flexibility)).toBeCloseTo(1, 9);
});

test('a line that the pump pulls down springs up, and is held down by the half of the pump that hung on it', () => {
  const heavy = pumpBetweenLegs({ bodies: [pump([mass('casing', [0, 0, 0], 400)])] });
  const suction = first(taken(heavy).flanges);
  // Guided leg under half the weight: W L³ / 24 E I. The cantilever is held there by P = 3 E I / L³ times that.
  const sag = (400 * G * LEG ** 3) / (24 * EI);
  expect((suction.spring?.rise ?? 0) / sag).toBeCloseTo(1, 9);
  expect((suction.prop ?? 0) / ((-400 * G) / 8)).toBeCloseTo(1, 9);
});

describe('a rigid bar on a spring and a hinge', () => {
  // Bar of 2 m from a hinge at the south; spring of rate k at 1 m; the pump, W, at its north end on no other line.
  const k = 50_000;
  const W = 100 * G;
  const P = 3000;
  const hinge = support('hinge', 'south', [
    restraint([1, 0, 0]),
    restraint([0, 1, 0]),
    restraint([0, 0, 1]),
    restraint([0, 1, 0], { acts: 'rotation' }),
    restraint([0, 0, 1], { acts: 'rotation' }),
  ]);
  const bar = frame({
    points: { south: [0, -2, 0], V1: [0, -1, 0], 'pump suction': [0, 0, 0] },
    members: [],
    bodies: [
      { name: 'bar', points: ['south', 'V1', 'pump suction'], masses: [] },
      { name: 'pump', points: ['pump suction'], masses: [mass('casing', [0, 0, 0], 100)] },
    ],
    supports: [hinge, support('V1', 'V1', [restraint([0, 0, 1], { stiffness: k, preload: P })])],
  });
  const { flanges, springs } = pumpOut(bar, { bolted, out }, 'pump', [{ ...SUCTION, axis: [0, 1, 0] }]);

  // Moments about the hinge: spring F · 1 = W · 2 bolted, F = 0 free. It lets go of 2 W and rises by 2 W / k.
  test('throws twice the weight of the pump and rises by that over its rate', () => {
    const spring = first(springs);
    expect(spring.filled / (2 * W)).toBeCloseTo(1, 9);
    expect(spring.free).toBeCloseTo(0, 6);
    expect(spring.rise / ((2 * W) / k)).toBeCloseTo(1, 9);
    expect((first(flanges).spring?.rise ?? 0) / ((4 * W) / k)).toBeCloseTo(1, 9);
  });

  test('is held down by the weight that was taken, and with the pin in does not move', () => {
    expect((first(flanges).prop ?? 0) / -W).toBeCloseTo(1, 9);
    expect(first(flanges).pinnedSpring?.rise).toBeCloseTo(0, 12);
  });
});

describe('a line that stands on the pump alone', () => {
  // The discharge leg hangs on one vertical hanger past its middle and is hinged nowhere else: without the pump it falls.
  const whole = pumpBetweenLegs(
    {
      supports: [anchor('south', 'south'), support('H1', 'north', [restraint([0, 0, 1])])],
    },
    METAL,
  );
  const { flanges, springs } = taken(whole);

  test('falls by name, while the other is judged for itself', () => {
    const [suction, discharge] = flanges;
    expect(discharge?.falls?.code).toBe('mechanics.mechanism');
    expect(discharge?.spring).toBeUndefined();
    expect(suction?.falls).toBeUndefined();
    expect(suction?.spring?.rise).toBeLessThan(0);
    expect(springs).toEqual([]);
  });
});

test('a face that turns about its upright opens on one side', () => {
  const still = { translation: [0, 0, 0], rotation: [0, 0, 0] } as const;
  const turned = { translation: [0.001, 0.002, 0.003], rotation: [0, 0.004, 0.01] } as const;
  // Seen from above it turns left: of a face that looks north, the east side goes north, away from the pump.
  expect(flangeSpring(still, turned, [0, 1, 0])).toEqual({
    rise: 0.003,
    gap: 0.002,
    sideways: [0.001, 0, 0],
    tilt: 0.01,
    widest: [1, 0, 0],
    twist: 0.004,
  });
});

test('nothing is said of a nozzle at which no line stands', () => {
  const whole = pumpBetweenLegs({}, METAL);
  const one: Frame = { ...whole, members: [pipe('suction leg', 'pump suction', 'south')] };
  const { flanges } = pumpOut({ ...one, supports: [anchor('south', 'south')] }, { bolted, out }, 'pump', [
    SUCTION,
    DISCHARGE,
  ]);
  expect(flanges.map(({ which }) => which)).toEqual(['suction']);
});

describe('a connector bolted to the pump', () => {
  // The leg behind a connector of 0.2 m, without weight and free to bend: the leg alone is the cantilever of w L⁴ / 8 E I.
  const whole = pumpBetweenLegs({}, METAL);
  const flange: Vec3 = whole.points['pump suction'] ?? [0, 0, 0];
  const behind: Vec3 = [flange[0], flange[1] - 0.2, flange[2]];
  const connected: Frame = {
    ...whole,
    points: { ...whole.points, behind },
    members: whole.members.map((member) => ({
      ...member,
      from: member.from === 'pump suction' ? 'behind' : member.from,
      to: member.to === 'pump suction' ? 'behind' : member.to,
    })),
    joints: [
      {
        name: 'connector',
        from: 'pump suction',
        to: 'behind',
        axis: SUCTION.axis,
        axial: 1e6,
        lateral: 1e6,
        torsion: 1e3,
        bending: 0,
        thrustArea: 0,
        mass: 0,
      },
    ],
  };

  test('lets no line fall, and the prop stands under the flange of the pipe', () => {
    const suction = first(taken(connected).flanges);
    expect(suction.falls).toBeUndefined();
    const face = (acting: FrameCondition) =>
      standingFrame(connected, acting).response.movements['pump suction']?.translation[2] ?? Number.NaN;
    expect(suction.spring?.rise).toBeCloseTo(face(out) - face(bolted), 12);
    const unit = standingFrame(connected, out).disturb({ loads: [force('behind', [0, 0, 1])] });
    const flexibility = unit.response.movements['behind']?.translation[2] ?? 0;
    const bent = standingFrame(connected, out).response.movements['behind']?.translation[2] ?? 0;
    const before = standingFrame(connected, bolted).response.movements['behind']?.translation[2] ?? 0;
    expect((suction.prop ?? 0) / ((before - bent) / flexibility)).toBeCloseTo(1, 9);
  });
});
