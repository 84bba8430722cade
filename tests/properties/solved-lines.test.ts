// Invariants of solved lines, on lines made at random.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { EngineError } from '../../src/issues/issue.js';
import { wrenchOnBody } from '../../src/mechanics/frame/recovery/wrench-on-body.js';
import { solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import type { Vec3, Wrench } from '../../src/model/conventions.js';
import type { Frame } from '../../src/model/frame/frame.js';
import { add, cross, norm, scale, subtract } from '../../src/model/vector.js';
import { condition, force, GRAVITY, of } from '../mechanics/small-frames.js';
import {
  CONDITIONS,
  furthestApart,
  loadsOf,
  type Step,
  solvedOrLeftOut,
  steps,
  walkedFrame,
} from './random-line.js';

const RUNS = { numRuns: 40, seed: 1955, endOnFailure: true };

test('what acts and what holds balance to 1e-9 in every condition', () => {
  fc.assert(
    fc.property(steps, fc.boolean(), (walk, oneWay) => {
      const { conditions, quality } = solvedOrLeftOut(walkedFrame(walk, { oneWay }));
      for (const { name } of CONDITIONS) expect(of(conditions, name).balance.residual).toBeLessThan(1e-9);
      expect(quality.residual).toBeLessThan(1e-7);
      expect(quality.reciprocalCondition).toBeGreaterThan(0);
    }),
    RUNS,
  );
});

test('the balance is that of the support loads themselves', () => {
  fc.assert(
    fc.property(steps, (walk) => {
      const built = walkedFrame(walk);
      const answer = of(solveFrame(built).conditions, 'filled');
      const up = built.supports.reduce((sum, each) => sum - of(answer.supports, each.name).load.force[2], 0);
      expect(Math.abs(up / answer.weight - 1)).toBeLessThan(1e-9);
    }),
    RUNS,
  );
});

describe('cutting every straight and every arc', () => {
  test.each([2, 7])('into %i pieces gives the same support loads', (pieces) => {
    fc.assert(
      fc.property(steps, (walk) => {
        const whole = solveFrame(walkedFrame(walk)).conditions;
        const cut = solveFrame(walkedFrame(walk, { pieces })).conditions;
        for (const { name } of CONDITIONS) {
          expect(furthestApart(loadsOf(of(whole, name)), loadsOf(of(cut, name)))).toBeLessThan(1e-9);
        }
      }),
      { ...RUNS, numRuns: 20 },
    );
  });

  test('into 50 pieces gives the same support loads and movements', () => {
    const walk: readonly Step[] = [
      { length: 3, turn: Math.PI / 2, bearing: 0.4, flexibility: 6, hold: 'hanger', part: 'valve', mass: 90 },
      { length: 2, turn: 1, bearing: 2, flexibility: 3, hold: 'guide', part: 'coupling', mass: 40 },
      { length: 4, turn: 0.5, bearing: 5, flexibility: 1, hold: 'spring', part: 'joint', mass: 60 },
    ];
    const whole = solveFrame(walkedFrame(walk)).conditions;
    const cut = solveFrame(walkedFrame(walk, { pieces: 50 })).conditions;
    for (const { name } of CONDITIONS) {
      const [a, b] = [of(whole, name), of(cut, name)];
      expect(furthestApart(loadsOf(a), loadsOf(b))).toBeLessThan(1e-9);
      const shared = Object.keys(a.movements);
      const moves = (answer: typeof a) =>
        shared.flatMap((point) => [...of(answer.movements, point).translation]);
      expect(furthestApart(moves(a), moves(b))).toBeLessThan(1e-9);
    }
  });
});

/** The frame turned about the vertical. */
function turned(built: Frame, angle: number): Frame {
  const turn = ([x, y, z]: Vec3): Vec3 => [
    x * Math.cos(angle) - y * Math.sin(angle),
    x * Math.sin(angle) + y * Math.cos(angle),
    z,
  ];
  return {
    ...built,
    points: Object.fromEntries(Object.entries(built.points).map(([name, place]) => [name, turn(place)])),
    members: built.members.map((m) => (m.kind === 'bend' ? { ...m, centre: turn(m.centre) } : m)),
    bodies: built.bodies.map((body) => ({
      ...body,
      masses: body.masses.map((mass) => ({ ...mass, at: turn(mass.at) })),
    })),
    joints: built.joints.map((joint) => ({ ...joint, axis: turn(joint.axis) })),
    supports: built.supports.map((each) => ({
      ...each,
      restraints: each.restraints.map((r) => ({ ...r, direction: turn(r.direction) })),
    })),
    conditions: built.conditions.map((each) => ({ ...each, gravity: turn(each.gravity) })),
  };
}

test('turning the plan by any bearing turns the loads with it', () => {
  fc.assert(
    fc.property(steps, fc.double({ min: 0, max: 6.28, noNaN: true }), fc.boolean(), (walk, angle, oneWay) => {
      const built = walkedFrame(walk, { oneWay });
      const before = solvedOrLeftOut(built).conditions;
      const after = solvedOrLeftOut(turned(built, angle)).conditions;
      const back = ([x, y, z]: Vec3): Vec3 => [
        x * Math.cos(angle) + y * Math.sin(angle),
        -x * Math.sin(angle) + y * Math.cos(angle),
        z,
      ];
      for (const { name } of CONDITIONS) {
        const supports = Object.fromEntries(
          Object.entries(of(after, name).supports).map(([key, { load }]) => [
            key,
            { load: { force: back(load.force), moment: back(load.moment) } },
          ]),
        );
        // Friction is found by iteration and agrees to its tolerance.
        expect(furthestApart(loadsOf(of(before, name)), loadsOf({ supports }))).toBeLessThan(
          oneWay ? 1e-5 : 1e-9,
        );
      }
    }),
    { ...RUNS, numRuns: 25 },
  );
});

test('moving the whole frame elsewhere changes nothing at the supports', () => {
  fc.assert(
    fc.property(steps, (walk) => {
      const built = walkedFrame(walk);
      const shift: Vec3 = [40, -25, 12];
      const moved: Frame = {
        ...built,
        points: Object.fromEntries(
          Object.entries(built.points).map(([name, place]) => [name, add(place, shift)]),
        ),
        members: built.members.map((m) => (m.kind === 'bend' ? { ...m, centre: add(m.centre, shift) } : m)),
        bodies: built.bodies.map((body) => ({
          ...body,
          masses: body.masses.map((mass) => ({ ...mass, at: add(mass.at, shift) })),
        })),
      };
      const [a, b] = [solveFrame(built).conditions, solveFrame(moved).conditions];
      expect(furthestApart(loadsOf(of(a, 'hot')), loadsOf(of(b, 'hot')))).toBeLessThan(1e-9);
    }),
    { ...RUNS, numRuns: 15 },
  );
});

test('reciprocity: a load here moves there as the same load there moves here', () => {
  fc.assert(
    fc.property(steps, fc.nat(), fc.nat(), (walk, i, j) => {
      const names = Object.keys(walkedFrame(walk).points);
      const [here, there] = [names[i % names.length] ?? 'start', names[j % names.length] ?? 'start'];
      const [d, e]: [Vec3, Vec3] = [
        [0.6, 0, 0.8],
        [0, 1, 0],
      ];
      const conditions = [
        condition({ name: 'here', loads: [force(here, scale(d, 1000))] }),
        condition({ name: 'there', loads: [force(there, [0, 0, 0], scale(e, 1000))] }),
        // Springs push even when nothing acts: their setting is taken off.
        condition({ name: 'none' }),
      ];
      const solved = solveFrame(walkedFrame(walk, { conditions })).conditions;
      const move = (name: string, point: string) => {
        const [a, b] = [of(of(solved, name).movements, point), of(of(solved, 'none').movements, point)];
        return {
          translation: subtract(a.translation, b.translation),
          rotation: subtract(a.rotation, b.rotation),
        };
      };
      const turnThere = move('here', there).rotation;
      const shiftHere = move('there', here).translation;
      const [a, b] = [turnThere[1], shiftHere[0] * d[0] + shiftHere[2] * d[2]];
      const size = Math.max(norm(turnThere), norm(shiftHere), 1e-12);
      expect(Math.abs(a - b) / size).toBeLessThan(1e-8);
    }),
    RUNS,
  );
});

test('superposition: two sets of loads together do what each does alone', () => {
  fc.assert(
    fc.property(steps, (walk) => {
      const last = Object.keys(walkedFrame(walk).points).at(-3) ?? 'start';
      const loads = [force(last, [300, -200, 100], [20, 30, -40])];
      const conditions = [
        condition({ name: 'none' }),
        condition({ name: 'weight', gravity: GRAVITY }),
        condition({ name: 'heat and push', temperature: 370, loads }),
        condition({ name: 'all', gravity: GRAVITY, temperature: 370, loads }),
      ];
      const solved = solveFrame(walkedFrame(walk, { conditions })).conditions;
      const [none, weight, push, all] = conditions.map(({ name }) => loadsOf(of(solved, name)));
      const sum = (weight ?? []).map((value, i) => value + (push?.[i] ?? 0) - (none?.[i] ?? 0));
      expect(furthestApart(sum, all ?? [])).toBeLessThan(1e-10);
    }),
    RUNS,
  );
});

test('the wrenches on a body and its weight balance', () => {
  fc.assert(
    fc.property(steps, fc.boolean(), (walk, oneWay) => {
      const built = walkedFrame(walk, { oneWay });
      const { conditions } = solvedOrLeftOut(built);
      for (const each of built.conditions) {
        const answer = of(conditions, each.name);
        for (const body of built.bodies) {
          const about = of(built.points, body.points[0] ?? '');
          let total: Wrench = { force: [0, 0, 0], moment: [0, 0, 0] };
          let size = 0;
          const act = (wrench: Wrench, place: Vec3) => {
            size = Math.max(size, norm(wrench.force), norm(wrench.moment));
            total = {
              force: add(total.force, wrench.force),
              moment: add(total.moment, add(wrench.moment, cross(subtract(place, about), wrench.force))),
            };
          };
          for (const point of body.points)
            act(wrenchOnBody(built, each, answer, body.name, point), of(built.points, point));
          for (const lump of body.masses) {
            const mass = lump.mass + lump.contents * each.contentsDensity;
            act({ force: scale(each.gravity, mass), moment: [0, 0, 0] }, lump.at);
          }
          expect(norm(total.force) / size).toBeLessThan(1e-8);
          expect(norm(total.moment) / size).toBeLessThan(1e-8);
        }
      }
    }),
    RUNS,
  );
});

test('a steady state is found for nearly every line of one-way supports with friction', () => {
  const walks = fc.sample(steps, { numRuns: 100, seed: 1677 });
  const restless = walks.filter((walk) => {
    try {
      solveFrame(walkedFrame(walk, { oneWay: true }));
      return false;
    } catch (error) {
      expect((error as EngineError).code).toBe('mechanics.contact-alternates');
      return true;
    }
  });
  expect(restless.length).toBeLessThan(2);
});

test('one-way supports never pull, never sink in, and friction never exceeds its share', () => {
  fc.assert(
    fc.property(steps, (walk) => {
      const built = walkedFrame(walk, { oneWay: true });
      const { conditions } = solvedOrLeftOut(built);
      for (const answer of Object.values(conditions)) {
        const least = 1e-6 * answer.weight;
        for (const each of built.supports) {
          const { load, states } = of(answer.supports, each.name);
          each.restraints.forEach((r, i) => {
            if (r.sense !== 'push') return;
            const movement = of(answer.movements, each.point).translation[2];
            if (states[i] === 'lifted') expect(movement).toBeGreaterThan(-1e-9);
            else {
              expect(Math.abs(movement)).toBeLessThan(1e-9);
              expect(load.force[2]).toBeLessThan(least);
            }
            if (r.friction === 0) return;
            const rub = Math.hypot(load.force[0], load.force[1]);
            expect(rub).toBeLessThan(r.friction * Math.abs(load.force[2]) + least);
            const slid = of(answer.movements, each.point).translation;
            if (states[i] === 'slipping')
              expect(load.force[0] * slid[0] + load.force[1] * slid[1]).toBeGreaterThan(-1e-9);
          });
        }
      }
    }),
    RUNS,
  );
});
