import { describe, expect, test } from 'vitest';
import { symmetricInverse } from '../../src/algebra/small-inverse.js';
import { solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import { standingFrame } from '../../src/mechanics/frame/standing-frame.js';
import { jointClosing, type MisfitWay, wayOf } from '../../src/mechanics/what-ifs/fit-up.js';
import { openedJoint } from '../../src/mechanics/what-ifs/opened-joint.js';
import type { Frame } from '../../src/model/frame/frame.js';
import { dot } from '../../src/model/vector.js';
import {
  DISCHARGE,
  EA,
  EI,
  GJ,
  HALF,
  LEG,
  mass,
  pump,
  pumpBetweenLegs,
  SUCTION,
} from '../mechanics/pump-between-legs.js';
import {
  anchor,
  bend,
  condition,
  force,
  GRAVITY,
  of,
  pipe,
  restraint,
  STEEL,
  support,
} from '../mechanics/small-frames.js';

const WAYS: readonly MisfitWay[] = ['gap', 'rise', 'offset', 'twist', 'tilt-upright', 'tilt-sideways'];

/** A pump that cannot give, so that the leg alone is closed. */
const bolted = pumpBetweenLegs({
  supports: [anchor('south', 'south'), anchor('north', 'north'), anchor('pump base', 'pump suction')],
});

const closing = (frame: Frame, ...faces: readonly [typeof DISCHARGE] | readonly [typeof SUCTION]) => {
  const found = jointClosing(frame, condition(), 'pump', faces);
  if (found === undefined) throw new Error('nothing stands at the nozzle');
  return found;
};

describe('a straight leg with its far end anchored, pulled to a pump that cannot give', () => {
  const { loads } = closing(bolted, DISCHARGE);

  // The line's face stands a unit short; the bolts stretch the leg: F = E A / L, a pull on the nozzle along its axis.
  test('closes a gap with E A / L, pulling the nozzle outward', () => {
    expect(loads.gap.own.force[1] / (EA / LEG)).toBeCloseTo(1, 10);
    expect(loads.gap.own.force[0]).toBeCloseTo(0, 3);
  });

  // Both ends held parallel: the guided leg. F = 12 E I / L³, M = 6 E I / L² at each end.
  test('closes a rise with 12 E I / L³ and 6 E I / L²', () => {
    const { force: pull, moment } = loads.rise.own;
    expect(pull[2] / ((12 * EI) / LEG ** 3)).toBeCloseTo(1, 10);
    expect(Math.abs(moment[0]) / ((6 * EI) / LEG ** 2)).toBeCloseTo(1, 10);
  });

  test('closes an offset across with the same', () => {
    const { force: pull, moment } = loads.offset.own;
    expect(Math.hypot(...pull) / ((12 * EI) / LEG ** 3)).toBeCloseTo(1, 10);
    expect(Math.abs(moment[2]) / ((6 * EI) / LEG ** 2)).toBeCloseTo(1, 10);
  });

  // Turning one end of a fixed beam: M = 4 E I / L, F = 6 E I / L²; twisting: M = G J / L.
  test('closes tilts with 4 E I / L and 6 E I / L², and a twist with G J / L', () => {
    for (const way of ['tilt-upright', 'tilt-sideways'] as const) {
      expect(Math.hypot(...loads[way].own.moment) / ((4 * EI) / LEG)).toBeCloseTo(1, 10);
      expect(Math.hypot(...loads[way].own.force) / ((6 * EI) / LEG ** 2)).toBeCloseTo(1, 10);
    }
    expect(loads.twist.own.moment[1] / (GJ / LEG)).toBeCloseTo(1, 10);
  });

  test('the check can fail: a leg one per cent longer is not it', () => {
    expect(loads.rise.own.force[2] / ((12 * EI) / (1.01 * LEG) ** 3)).not.toBeCloseTo(1, 2);
  });

  // A spacer of another material, 0.1 m long, that shrinks by 1 % makes the leg 1 mm short: the same gap by other means.
  test('pulls with what a spacer does that shrinks by as much', () => {
    const spaced: Frame = {
      ...bolted,
      points: { ...bolted.points, joint: [0, HALF + 0.1, 0], north: [0, HALF + 0.1 + LEG, 0] },
      materials: {
        steel: {
          ...STEEL,
          expansion: [
            [200, 0],
            [500, 0],
          ],
        },
        spacer: {
          ...STEEL,
          expansion: [
            [300, 0],
            [400, -0.01],
          ],
        },
      },
      members: bolted.members.map((member) =>
        member.name === 'discharge leg' ? { ...member, from: 'joint' } : member,
      ),
      bodies: [
        pump(),
        { name: 'spacer', points: ['pump discharge', 'joint'], masses: [], material: 'spacer' },
      ],
      conditions: [condition({ temperature: 400 })],
    };
    const pull = of(solveFrame(spaced).conditions, 'test').supports.north?.load.force[1] ?? 0;
    expect(Math.abs(pull) / (loads.gap.own.force[1] * 0.001)).toBeCloseTo(1, 10);
  });
});

/** A suction line that goes down and round to an anchor, so that nothing is symmetrical. */
const bent: Frame = pumpBetweenLegs({
  points: {
    south: [1.5, -1.2, -2],
    corner: [0, -0.97, 0],
    below: [0, -1.2, -0.23],
    low: [0, -1.2, -2],
    'pump suction': [0, -HALF, 0],
    'pump discharge': [0, HALF, 0],
    north: [0, HALF + LEG, 0],
  },
  members: [
    pipe('first', 'pump suction', 'corner'),
    bend('elbow', 'corner', 'below', [0, -0.97, -0.23], { flexibility: 5 }),
    pipe('drop', 'below', 'low'),
    pipe('run', 'low', 'south'),
    pipe('discharge leg', 'pump discharge', 'north'),
  ],
});

describe('a pump between two lines', () => {
  const found = closing(bent, SUCTION);
  const wrenchAlong = (way: MisfitWay, along: MisfitWay): number => {
    const { acts, direction } = wayOf(along, found.axes);
    const { own } = found.loads[way];
    return dot(acts === 'translation' ? own.force : own.moment, direction);
  };

  test('has a stiffness that is the same both ways round', () => {
    for (const a of WAYS) {
      for (const b of WAYS) {
        const size = Math.sqrt(wrenchAlong(a, a) * wrenchAlong(b, b));
        expect(Math.abs(wrenchAlong(a, b) - wrenchAlong(b, a)) / size).toBeLessThan(1e-10);
      }
    }
  });

  // Each side alone is loaded with unit wrenches at its face: F. Closing brings both together: K = (F_a + F_b)⁻¹.
  test('closes with the inverse of the summed flexibilities of the two sides', () => {
    const opened = openedJoint(bent, { body: 'pump', point: 'pump suction', axis: [0, -1, 0] });
    if (opened === undefined) throw new Error('nothing to open');
    const free = standingFrame(opened.frame, condition());
    const flexibility = new Float64Array(36);
    for (const point of [opened.near, opened.far]) {
      WAYS.forEach((way, column) => {
        const { acts, direction } = wayOf(way, found.axes);
        const load = acts === 'translation' ? force(point, direction) : force(point, [0, 0, 0], direction);
        const moved = of(free.disturb({ loads: [load] }).response.movements, point);
        WAYS.forEach((other, row) => {
          const read = wayOf(other, found.axes);
          const part = read.acts === 'translation' ? moved.translation : moved.rotation;
          flexibility[6 * row + column] = (flexibility[6 * row + column] ?? 0) + dot(part, read.direction);
        });
      });
    }
    const stiffness = symmetricInverse(flexibility, 6);
    WAYS.forEach((a, row) => {
      WAYS.forEach((b, column) => {
        const size = Math.sqrt(wrenchAlong(a, a) * wrenchAlong(b, b));
        const expected = stiffness[6 * row + column] ?? Number.NaN;
        expect(Math.abs(wrenchAlong(a, b) - expected) / size).toBeLessThan(1e-8);
      });
    });
  });
});

test('a pump that hangs on one line alone is closed to another with both sides giving', () => {
  // Straight legs in line, each E A / L: in series half of one.
  const { loads } = closing(pumpBetweenLegs(), SUCTION);
  expect(loads.gap.own.force[1] / (-EA / LEG / 2)).toBeCloseTo(1, 10);
});

test('a nozzle without a line has nothing to close', () => {
  const frame = pumpBetweenLegs();
  const alone = { ...frame, members: frame.members.slice(1) };
  expect(jointClosing(alone, condition(), 'pump', [SUCTION])).toBeUndefined();
});

describe('a pump that rests on a one-way stand', () => {
  // A pump of 100 N rests on a rigid stand under its discharge face. A line that stands too high pulls it up; once that
  // takes the weight off the stand the pump goes up with the line, and only the other leg holds it back.
  const plain = pumpBetweenLegs();
  const body = pump([mass('casing', [0, HALF, 0], 100 / 9.80665)]);
  const resting: Frame = {
    ...plain,
    points: { ...plain.points, foot: [0, HALF, 0] },
    bodies: [{ ...body, points: [...body.points, 'foot'] }],
    supports: [...plain.supports, support('stand', 'foot', [restraint([0, 0, 1], { sense: 'push' })])],
  };
  const found = jointClosing(resting, condition({ gravity: GRAVITY }), 'pump', [DISCHARGE]);
  const solved = (misfit: number) => found?.pulled('rise', misfit).force[2] ?? Number.NaN;
  const slope = found?.loads.rise.own.force[2] ?? Number.NaN;

  test('costs by the metre what a unit costs as long as it rests', () => {
    expect(solved(1e-4) / (slope * 1e-4)).toBeCloseTo(1, 9);
    expect(solved(-1e-2) / (slope * -1e-2)).toBeCloseTo(1, 9);
  });

  test('costs less once the pump has lifted off its stand', () => {
    expect(solved(0.02)).toBeLessThan(0.9 * slope * 0.02);
    expect(solved(0.02)).toBeGreaterThan(0);
  });
});
