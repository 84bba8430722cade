import { describe, expect, test } from 'vitest';
import { EngineError } from '../../src/issues/issue.js';
import { wrenchOnBody } from '../../src/mechanics/frame/recovery/wrench-on-body.js';
import { solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import type { Vec3 } from '../../src/model/conventions.js';
import type { Frame, FrameBody, FrameJoint } from '../../src/model/frame/frame.js';
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
  pipe,
  prop,
  restraint,
  STEEL,
  STRAIN,
  support,
} from './small-frames.js';

const EAST: Vec3 = [1, 0, 0];
const UP: Vec3 = [0, 0, 1];
const RIGID = Number.POSITIVE_INFINITY;
const inside = NPS4.outsideDiameter - 2 * NPS4.wall;
const I = (Math.PI / 64) * (NPS4.outsideDiameter ** 4 - inside ** 4);
const A = (Math.PI / 4) * (NPS4.outsideDiameter ** 2 - inside ** 2);
const EI = STEEL.modulus * I;
const EA = STEEL.modulus * A;

const lump = (at: Vec3, mass: number, changes = {}) => ({
  name: 'lump',
  at,
  mass,
  contents: 0,
  contentsGroup: 'line',
  ...changes,
});
const body = (name: string, points: readonly string[], changes: Partial<FrameBody> = {}): FrameBody => ({
  name,
  points,
  masses: [],
  ...changes,
});
const joint = (name: string, from: string, to: string, changes: Partial<FrameJoint> = {}): FrameJoint => ({
  name,
  from,
  to,
  axis: EAST,
  axial: RIGID,
  lateral: RIGID,
  torsion: RIGID,
  bending: RIGID,
  thrustArea: 0,
  mass: 0,
  ...changes,
});
const solve = (parts: Partial<Frame>) => {
  const whole = frame({ options: { withoutShear: true }, ...parts });
  return { whole, answer: of(solveFrame(whole).conditions, 'test') };
};
const codeOf = (action: () => unknown): string => {
  try {
    action();
  } catch (error) {
    if (error instanceof EngineError) return error.code;
  }
  return 'nothing was refused';
};

describe('rigid bodies', () => {
  test('carry a load on an arm as force and moment', () => {
    // Cantilever of 2 m, rigid arm of 0.5 m beyond its end, P at the tip of the arm.
    const L = 2;
    const arm = 0.5;
    const P = 400;
    const { answer } = solve({
      points: { a: [0, 0, 0], b: [L, 0, 0], c: [L + arm, 0, 0] },
      members: [pipe('ab', 'a', 'b')],
      bodies: [body('arm', ['b', 'c'])],
      supports: [anchor('A', 'a')],
      conditions: [condition({ loads: [force('c', [0, 0, -P])] })],
    });
    const fall = (P * L ** 3) / (3 * EI) + (P * arm * L ** 2) / (2 * EI);
    const slope = (P * L ** 2) / (2 * EI) + (P * arm * L) / EI;
    expect(relativeError(-of(answer.movements, 'b').translation[2], fall)).toBeLessThan(1e-12);
    expect(relativeError(-of(answer.movements, 'c').translation[2], fall + slope * arm)).toBeLessThan(1e-12);
    expect(relativeError(of(answer.supports, 'A').load.moment[1], P * (L + arm))).toBeLessThan(1e-12);
  });

  test('that share a point move as one, and mass acts at its own place', () => {
    const { answer } = solve({
      points: { a: [0, 0, 0], b: [1, 0, 0], c: [1, 0.4, 0], d: [1, 0.4, 1] },
      members: [pipe('ab', 'a', 'b')],
      bodies: [body('valve', ['b', 'c']), body('motor', ['c', 'd'], { masses: [lump([1, 0.9, 1], 50)] })],
      supports: [anchor('A', 'a')],
      conditions: [condition({ gravity: GRAVITY })],
    });
    const weight = 50 * 9.80665;
    const { force: F, moment: M } = of(answer.supports, 'A').load;
    expect(relativeError(-F[2], weight)).toBeLessThan(1e-12);
    expect(relativeError(-M[0], 0.9 * weight)).toBeLessThan(1e-12);
    expect(relativeError(M[1], 1 * weight)).toBeLessThan(1e-12);
    expect(of(answer.movements, 'd').rotation).toEqual(of(answer.movements, 'b').rotation);
  });

  test('grow with their temperature between their points, body by body', () => {
    const cast = {
      ...STEEL,
      expansion: [
        [300, 0],
        [400, 2 * STRAIN],
      ] as const,
    };
    const { answer } = solve({
      points: { a: [0, 0, 0], b: [1, 0, 0], c: [1.5, 0.2, 0], d: [1.5, 0.2, 0.6] },
      materials: { steel: STEEL, cast },
      members: [pipe('ab', 'a', 'b')],
      bodies: [body('cold', ['d', 'c']), body('pump', ['b', 'c'], { material: 'cast' })],
      supports: [anchor('A', 'a')],
      conditions: [condition({ temperature: 400 })],
    });
    const moved = (name: string) => of(answer.movements, name).translation;
    expect(moved('b')[0]).toBeCloseTo(STRAIN, 12);
    expect(moved('c')[0]).toBeCloseTo(STRAIN + 2 * STRAIN * 0.5, 12);
    expect(moved('c')[1]).toBeCloseTo(2 * STRAIN * 0.2, 12);
    expect(moved('d')).toEqual(moved('c'));
  });

  test('between two pipes push them apart as they grow', () => {
    const { answer } = solve({
      points: { a: [0, 0, 0], b: [1, 0, 0], c: [2, 0, 0], d: [3, 0, 0] },
      members: [pipe('ab', 'a', 'b', { material: 'stiff' }), pipe('cd', 'c', 'd', { material: 'stiff' })],
      materials: {
        steel: STEEL,
        stiff: {
          ...STEEL,
          expansion: [
            [300, 0],
            [400, 0],
          ],
        },
      },
      bodies: [body('pump', ['b', 'c'], { material: 'steel' })],
      supports: [anchor('A', 'a'), anchor('D', 'd')],
      conditions: [condition({ temperature: 400 })],
    });
    expect(relativeError(of(answer.supports, 'D').load.force[0], (EA * STRAIN) / 2)).toBeLessThan(1e-10);
  });

  describe('that are removed', () => {
    const parts = {
      points: {
        a: [0, 0, 0],
        b: [2, 0, 0],
        c: [2.5, 0, 0],
        d: [2.6, 0, 0],
        e: [4.6, 0, 0],
        base: [2.2, 0, -1],
      },
      members: [pipe('ab', 'a', 'b'), pipe('de', 'd', 'e')],
      bodies: [
        body('pump', ['b', 'c', 'base'], { masses: [lump([2.25, 0, 0], 100)] }),
        body('water', ['c'], { masses: [lump([2.5, 0, 0], 3)] }),
      ],
      joints: [joint('flex', 'c', 'd', { mass: 10 })],
      supports: [anchor('A', 'a'), anchor('E', 'e'), prop('under', 'base', UP)],
    } satisfies Partial<Frame>;

    test('take their masses and supports, and leave the pipe end open', () => {
      const { answer } = solve({
        ...parts,
        conditions: [condition({ gravity: GRAVITY, removed: ['pump'], loads: [force('b', [0, 0, -30])] })],
      });
      expect(answer.weight).toBeCloseTo(13 * 9.80665, 9);
      expect(of(answer.supports, 'under')).toEqual({
        load: { force: [0, 0, 0], moment: [0, 0, 0] },
        states: ['absent'],
      });
      // Within one rigid part a joint has no springs that act: half its own weight at each end.
      expect(of(answer.joints, 'flex').from.force[2]).toBeCloseTo(-5 * 9.80665, 9);
      expect(relativeError(-of(answer.movements, 'b').translation[2], (30 * 8) / (3 * EI))).toBeLessThan(
        1e-12,
      );
      expect(of(answer.movements, 'base').translation).toEqual([0, 0, 0]);
      const loaded = condition({ removed: ['pump'], loads: [force('base', [0, 0, -30])] });
      expect(codeOf(() => solve({ ...parts, conditions: [loaded] }))).toBe('mechanics.load-on-nothing');
    });

    // 13 kg hang from the free end of a cantilever of 2 m, 8 of them at an arm of 0.1 m: P L³/3EI + M L²/2EI.
    test.each([
      ['rigid', {}],
      ['soft', { axial: 1e5, lateral: 1e5, torsion: 10, bending: 10 }],
      ['free to bend and turn', { torsion: 0, bending: 0 }],
      ['free in every way', { axial: 0, lateral: 0, torsion: 0, bending: 0 }],
    ])('leave a joint that is %s hanging from the pipe beyond it', (_, stiffness) => {
      const { answer } = solve({
        ...parts,
        joints: [joint('flex', 'c', 'd', { mass: 10, ...stiffness })],
        conditions: [condition({ gravity: GRAVITY, removed: ['pump'] })],
      });
      const P = 13 * 9.80665;
      const M = 0.1 * 8 * 9.80665;
      const sag = (P * 8) / (3 * EI) + (M * 4) / (2 * EI);
      expect(relativeError(-of(answer.movements, 'd').translation[2], sag)).toBeLessThan(1e-9);
      expect(relativeError(of(answer.supports, 'E').load.force[2], -P)).toBeLessThan(1e-9);
    });

    test('leave joints one behind the other hanging, and take one that joined two of them', () => {
      const { answer } = solve({
        ...parts,
        points: { ...parts.points, m: [2.55, 0, 0], top: [2.2, 0, 1] },
        bodies: [...parts.bodies, body('motor', ['top'], { masses: [lump([2.2, 0, 1], 50)] })],
        joints: [
          joint('first', 'c', 'm', { mass: 4, bending: 0, lateral: 0 }),
          joint('second', 'm', 'd', { mass: 6, bending: 0, torsion: 0 }),
          joint('bracket', 'base', 'top', { mass: 7 }),
        ],
        conditions: [condition({ gravity: GRAVITY, removed: ['pump', 'motor'] })],
      });
      expect(relativeError(of(answer.supports, 'E').load.force[2], -13 * 9.80665)).toBeLessThan(1e-9);
    });

    test('let fall what hangs on nothing', () => {
      const alone = { ...parts, members: [pipe('ab', 'a', 'b')], supports: [anchor('A', 'a')] };
      const falls = condition({ gravity: GRAVITY, removed: ['pump'] });
      expect(codeOf(() => solve({ ...alone, conditions: [falls] }))).toBe('mechanics.mechanism');
    });
  });
});

describe('joints', () => {
  const ends = {
    points: { a: [0, 0, 0], b: [2, 0, 0], c: [2.2, 0, 0] } as const,
    members: [pipe('ab', 'a', 'b')],
    supports: [anchor('A', 'a')],
  };

  test('that are rigid all round join two points as a body does', () => {
    const load = [condition({ loads: [force('c', [10, 20, -30], [1, 2, 3])] })];
    const asJoint = solve({ ...ends, joints: [joint('J', 'b', 'c')], conditions: load }).answer;
    const asBody = solve({ ...ends, bodies: [body('B', ['b', 'c'])], conditions: load }).answer;
    for (const point of ['b', 'c']) {
      const [one, two] = [asJoint, asBody].map((answer) => of(answer.movements, point));
      one?.translation.forEach((value, i) => {
        expect(value).toBeCloseTo(two?.translation[i] ?? Number.NaN, 12);
      });
    }
    expect(of(asJoint.joints, 'J').to.force.map((value) => Number(value.toFixed(9)))).toEqual([-10, -20, 30]);
    // About its own side: what the load makes about c.
    expect(of(asJoint.joints, 'J').to.moment.map((value) => Number(value.toFixed(9)))).toEqual([-1, -2, -3]);
  });

  test('give way along, across and about by their stiffnesses, acting at their middle', () => {
    const k = { axial: 1e5, lateral: 2e5, torsion: 3e3, bending: 4e3 };
    const { answer } = solve({
      points: { a: [0, 0, 0], b: [0.2, 0, 0] },
      bodies: [body('end', ['b'])],
      joints: [joint('J', 'a', 'b', k)],
      supports: [anchor('A', 'a')],
      conditions: [condition({ loads: [force('b', [100, 0, -200], [30, 0, 0])] })],
    });
    const { translation, rotation } = of(answer.movements, 'b');
    expect(translation[0]).toBeCloseTo(100 / 1e5, 12);
    expect(rotation[0]).toBeCloseTo(30 / 3e3, 12);
    // The load has an arm of 0.1 m about the middle: it turns there, and falls by shear and by turning.
    expect(rotation[1]).toBeCloseTo((200 * 0.1) / 4e3, 12);
    expect(translation[2]).toBeCloseTo(-200 / 2e5 - ((200 * 0.1) / 4e3) * 0.1, 12);
  });

  test('free to turn carry no moment, and rigid across carry the shear (a hinge at zero length)', () => {
    // Two built-in halves with a hinge in the middle: each a cantilever under half the load.
    const L = 3;
    const P = 600;
    const { answer } = solve({
      points: { a: [0, 0, 0], b: [L, 0, 0], c: [L, 0, 0], d: [2 * L, 0, 0] },
      members: [pipe('ab', 'a', 'b'), pipe('cd', 'c', 'd')],
      joints: [joint('hinge', 'b', 'c', { bending: 0 })],
      supports: [anchor('A', 'a'), anchor('D', 'd')],
      conditions: [condition({ loads: [force('b', [0, 0, -P])] })],
    });
    expect(
      relativeError(-of(answer.movements, 'b').translation[2], ((P / 2) * L ** 3) / (3 * EI)),
    ).toBeLessThan(1e-11);
    expect(relativeError(of(answer.joints, 'hinge').to.force[2], -P / 2)).toBeLessThan(1e-11);
    expect(Math.abs(of(answer.joints, 'hinge').to.moment[1])).toBeLessThan(1e-9 * P * L);
  });

  test('under pressure push their two sides apart, and weigh half at each side', () => {
    const p = 1e6;
    const area = 0.01;
    const { answer } = solve({
      points: { a: [0, 0, 0], b: [2, 0, 0], c: [2.2, 0, 0], d: [4.2, 0, 0] },
      members: [pipe('ab', 'a', 'b'), pipe('cd', 'c', 'd')],
      joints: [
        joint('bellows', 'b', 'c', {
          axial: 1e4,
          lateral: 1e6,
          torsion: 1e5,
          bending: 1e4,
          thrustArea: area,
          mass: 8,
        }),
      ],
      supports: [anchor('A', 'a'), anchor('D', 'd')],
      conditions: [condition({ gravity: GRAVITY, pressure: p })],
    });
    // The bellows' own spring takes a small share: pipes of E A / L each side against 1e4 N/m.
    const stretch = (p * area) / (EA / 2 / 2 + 1e4);
    expect(relativeError(of(answer.supports, 'D').load.force[0], p * area - 1e4 * stretch)).toBeLessThan(
      1e-9,
    );
    expect(relativeError(of(answer.supports, 'A').load.force[0], -(p * area - 1e4 * stretch))).toBeLessThan(
      1e-9,
    );
    expect(relativeError(answer.weight, 8 * 9.80665)).toBeLessThan(1e-12);
    expect(relativeError(-of(answer.supports, 'A').load.force[2], 4 * 9.80665)).toBeLessThan(1e-6);
  });

  test('whose axis is given backwards or askew to the points push the same way', () => {
    const thrust = (axis: Vec3) =>
      of(
        solve({
          points: { a: [0, 0, 0], b: [2, 0, 0], c: [2.2, 0, 0] },
          members: [pipe('ab', 'a', 'b')],
          bodies: [body('far', ['c'])],
          joints: [joint('J', 'b', 'c', { axis, thrustArea: 0.01, axial: 1e7 })],
          supports: [anchor('A', 'a'), anchor('C', 'c')],
          conditions: [condition({ pressure: 1e6 })],
        }).answer.supports,
        'C',
      ).load.force[0];
    expect(thrust([-1, 0, 0])).toBeCloseTo(thrust([1, 0, 0]), 6);
    expect(thrust([2, 0, 0])).toBeGreaterThan(0);
  });
});

describe('what acts on a body at a point', () => {
  const built = {
    points: { a: [0, 0, 0], b: [2, 0, 0], c: [2.3, 0, 0], d: [2.6, 0, 0], e: [4.6, 0, 0] } as const,
    members: [pipe('ab', 'a', 'b', { mass: { metal: 16, covering: 0 } }), pipe('de', 'd', 'e')],
    bodies: [
      body('flange', ['b', 'c'], { masses: [lump([2.15, 0, 0], 9)] }),
      body('pump', ['c', 'd'], { masses: [lump([2.45, 0.3, 0.5], 120)] }),
    ],
    supports: [anchor('A', 'a'), anchor('E', 'e')],
    conditions: [condition({ gravity: GRAVITY })],
  };

  test('is the member end there', () => {
    const { whole, answer } = solve(built);
    const on = wrenchOnBody(whole, condition({ gravity: GRAVITY }), answer, 'pump', 'd');
    expect(on.force).toEqual(of(answer.members, 'de').from.force.map((value) => -value));
  });

  test('includes the weight of a body beyond the cut, carried to the point', () => {
    const { whole, answer } = solve(built);
    const on = wrenchOnBody(whole, condition({ gravity: GRAVITY }), answer, 'pump', 'c');
    const end = of(answer.members, 'ab').to;
    expect(relativeError(on.force[2], -end.force[2] - 9 * 9.80665)).toBeLessThan(1e-12);
    // Arms from c to b and from c to the flange: −0.3 and −0.15 m along the line.
    const moment = -end.moment[1] - -0.3 * -end.force[2] - -0.15 * -9 * 9.80665;
    expect(relativeError(on.moment[1], moment)).toBeLessThan(1e-10);
  });

  test('is refused for a body that is not there and for a point that is not its own', () => {
    const { whole, answer } = solve(built);
    const still = condition({ gravity: GRAVITY });
    expect(codeOf(() => wrenchOnBody(whole, still, answer, 'pump', 'a'))).toBe('mechanics.not-of-body');
    expect(codeOf(() => wrenchOnBody(whole, { ...still, removed: ['pump'] }, answer, 'pump', 'c'))).toBe(
      'mechanics.not-of-body',
    );
  });

  test('cannot be told where bodies close a loop', () => {
    const parts = {
      ...built,
      points: { ...built.points, f: [2.3, 0.5, 0] as const },
      bodies: [...built.bodies, body('bracket', ['b', 'f']), body('strut', ['f', 'd'])],
    };
    const { whole, answer } = solve(parts);
    expect(codeOf(() => wrenchOnBody(whole, condition({ gravity: GRAVITY }), answer, 'pump', 'c'))).toBe(
      'mechanics.rigid-loop',
    );
  });

  test('counts supports and loads at the point', () => {
    const parts = {
      ...built,
      supports: [...built.supports, support('S', 'c', [restraint(UP, { stiffness: 1e5, preload: 300 })])],
      conditions: [condition({ gravity: GRAVITY, loads: [force('c', [7, 0, 0])] })],
    };
    const { whole, answer } = solve(parts);
    const still = of({ it: parts.conditions[0] ?? condition() }, 'it');
    const outer = wrenchOnBody(whole, still, answer, 'pump', 'c');
    const flange = wrenchOnBody(whole, still, answer, 'flange', 'b');
    const own = -of(answer.supports, 'S').load.force[2];
    expect(relativeError(outer.force[2], flange.force[2] - 9 * 9.80665 + own)).toBeLessThan(1e-10);
    expect(relativeError(outer.force[0], flange.force[0] + 7)).toBeLessThan(1e-9);
  });
});

test('supports of one rigid body on four bolts share its load evenly', () => {
  const corners: readonly Vec3[] = [
    [0, 0, 0],
    [1, 0, 0],
    [1, 1, 0],
    [0, 1, 0],
  ];
  const names = corners.map((_, i) => `bolt ${i}`);
  const { answer } = solve({
    points: Object.fromEntries(corners.map((at, i) => [`bolt ${i}`, at])),
    bodies: [body('base', names, { masses: [lump([0.5, 0.5, 0.4], 100)] })],
    supports: names.map((name) =>
      support(
        name,
        name,
        AXES.map((axis) => restraint(axis)),
      ),
    ),
    conditions: [condition({ gravity: GRAVITY })],
  });
  for (const name of names)
    expect(relativeError(-of(answer.supports, name).load.force[2], 25 * 9.80665)).toBeLessThan(1e-12);
});
