// Complementarity of rods, travel, gaps and free bending on lines made at random, and what turning and units leave alone.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Response } from '../../src/mechanics/frame/response.js';
import { solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import type { Vec3 } from '../../src/model/conventions.js';
import type { Frame } from '../../src/model/frame/frame.js';
import { scale } from '../../src/model/vector.js';
import {
  anchor,
  condition,
  force,
  frame,
  of,
  prop,
  restraint,
  runThrough,
  support,
} from '../mechanics/small-frames.js';
import { CONDITIONS, furthestApart, loadsOf, type Step, steps, walkedFrame } from './random-line.js';

const RUNS = { numRuns: 30, seed: 1955 };

/** One-way lines with rods that lean, springs with travel, joints with rods and couplings that bend freely. */
function playfulLine(walk: readonly Step[]): Frame {
  const built = walkedFrame(walk, { oneWay: true });
  return {
    ...built,
    supports: built.supports.map((each) => ({
      ...each,
      restraints: each.restraints.map((r) => ({
        ...r,
        friction: 0,
        ...(r.sense === 'push' && { swingLength: 0.8 }),
        ...(r.preload > 0 && {
          sense: 'push' as const,
          travel: { least: 0.6 * r.preload, most: 1.3 * r.preload },
        }),
      })),
    })),
    joints: built.joints.map((joint) =>
      joint.thrustArea > 0 ? { ...joint, rodGap: 0.004 } : { ...joint, freeRotation: 0.006 },
    ),
  };
}

/** Solved in every condition that stands. */
const solved = (built: Frame): Response =>
  solveFrame({ ...built, conditions: built.conditions.map((each) => ({ ...each, whatIf: true })) });

test('rods, travel and free bending each are at a limit and loaded, or within it and not', () => {
  let settled = 0;
  let asked = 0;
  fc.assert(
    fc.property(steps, (walk) => {
      const built = playfulLine(walk);
      const { conditions } = solved(built);
      asked += built.conditions.length;
      for (const answer of Object.values(conditions)) {
        settled++;
        const least = 1e-6 * answer.weight;
        for (const joint of built.joints) {
          const {
            rods,
            rodTension = 0,
            lengthening,
            bending,
            angle,
          } = of(answer.jointStates ?? {}, joint.name);
          if (rods === 'engaged') {
            expect(Math.abs(lengthening - 0.004)).toBeLessThan(1e-9);
            expect(rodTension).toBeGreaterThanOrEqual(0);
          } else if (rods === 'slack') {
            expect(lengthening).toBeLessThan(0.004 + 1e-9);
            expect(rodTension).toBe(0);
          }
          if (bending === 'at limit') expect(angle).toBeGreaterThan(0.006 - 1e-9);
          else if (bending === 'free') expect(angle).toBeLessThan(0.006 + 1e-9);
        }
        for (const each of built.supports) {
          const { load, states } = of(answer.supports, each.name);
          each.restraints.forEach((r, i) => {
            if (r.sense !== 'push' || r.direction[2] !== 1) return;
            const up = -load.force[2];
            expect(up).toBeGreaterThan(-least);
            const moved = of(answer.movements, each.point).translation[2];
            if (states[i] === 'lifted') expect(Math.abs(up)).toBeLessThan(least);
            if (r.travel === undefined) return;
            const { least: low, most } = r.travel;
            const at = (force: number) => (r.preload - force) / r.stiffness;
            if (states[i] === 'bottomed out') {
              expect(up).toBeGreaterThan(most - least);
              expect(Math.abs(moved - at(most))).toBeLessThan(1e-9);
            } else if (states[i] === 'topped out') {
              expect(up).toBeLessThan(low + least);
              expect(Math.abs(moved - at(low))).toBeLessThan(1e-9);
            } else if (states[i] === 'lifted') expect(moved).toBeGreaterThan(at(low) - 1e-9);
            else expect(Math.abs(up - (r.preload - r.stiffness * moved))).toBeLessThan(least);
          });
        }
      }
    }),
    RUNS,
  );
  expect(settled).toBe(asked);
});

/** The same frame told in feet, pounds of force and slugs. */
function inFeet(built: Frame): Frame {
  const [metre, newton] = [1 / 0.3048, 1 / 4.4482216152605];
  const kilogram = newton / metre;
  const length = (v: Vec3): Vec3 => scale(v, metre);
  return {
    ...built,
    points: Object.fromEntries(Object.entries(built.points).map(([name, at]) => [name, length(at)])),
    materials: Object.fromEntries(
      Object.entries(built.materials).map(([name, material]) => [
        name,
        { ...material, modulus: (material.modulus * newton) / metre ** 2 },
      ]),
    ),
    members: built.members.map((member) => {
      const { outsideDiameter, wall } = member.tube;
      const told = {
        ...member,
        tube: { outsideDiameter: outsideDiameter * metre, wall: wall * metre },
        mass: {
          metal: (member.mass.metal * kilogram) / metre,
          covering: (member.mass.covering * kilogram) / metre,
        },
      };
      return told.kind === 'bend' ? { ...told, centre: length(told.centre) } : told;
    }),
    bodies: built.bodies.map((body) => ({
      ...body,
      masses: body.masses.map((part) => ({
        ...part,
        at: length(part.at),
        mass: part.mass * kilogram,
        contents: part.contents * metre ** 3,
      })),
    })),
    joints: built.joints.map((joint) => ({
      ...joint,
      axial: (joint.axial * newton) / metre,
      lateral: (joint.lateral * newton) / metre,
      torsion: joint.torsion * newton * metre,
      bending: joint.bending * newton * metre,
      thrustArea: joint.thrustArea * metre ** 2,
      mass: joint.mass * kilogram,
      ...(joint.rodGap !== undefined && { rodGap: joint.rodGap * metre }),
    })),
    supports: built.supports.map((each) => ({
      ...each,
      restraints: each.restraints.map((r) => ({
        ...r,
        stiffness: r.acts === 'translation' ? (r.stiffness * newton) / metre : r.stiffness * newton * metre,
        preload: r.preload * newton,
        gap: r.gap * metre,
        imposed: r.imposed * metre,
        ...(r.swingLength !== undefined && { swingLength: r.swingLength * metre }),
        ...(r.travel && { travel: { least: r.travel.least * newton, most: r.travel.most * newton } }),
      })),
    })),
    conditions: built.conditions.map((each) => ({
      ...each,
      gravity: length(each.gravity),
      contentsDensity: (each.contentsDensity * kilogram) / metre ** 3,
      pressure: (each.pressure * newton) / metre ** 2,
    })),
  };
}

test('another system of units gives the same loads and states', () => {
  fc.assert(
    fc.property(steps, (walk) => {
      const built = playfulLine(walk);
      const [ours, theirs] = [solved(built).conditions, solved(inFeet(built)).conditions];
      for (const { name } of CONDITIONS) {
        const [a, b] = [ours[name], theirs[name]];
        if (a === undefined || b === undefined) continue;
        const forces = (answer: typeof a, newton: number) =>
          loadsOf(answer).map((value, i) => (i % 6 < 3 ? value : 0) * newton);
        expect(furthestApart(forces(a, 1), forces(b, 4.4482216152605))).toBeLessThan(1e-6);
      }
    }),
    { ...RUNS, numRuns: 15 },
  );
});

test('turning the plan turns the loads with it', () => {
  const turn = ([x, y, z]: Vec3): Vec3 => [0.6 * x - 0.8 * y, 0.8 * x + 0.6 * y, z];
  fc.assert(
    fc.property(steps, (walk) => {
      const built = playfulLine(walk);
      const turned: Frame = {
        ...built,
        points: Object.fromEntries(Object.entries(built.points).map(([name, at]) => [name, turn(at)])),
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
      const [before, after] = [solved(built).conditions, solved(turned).conditions];
      for (const { name } of CONDITIONS) {
        const [a, b] = [before[name], after[name]];
        if (a === undefined || b === undefined) continue;
        const forward = Object.values(a.supports).flatMap(({ load }) => [
          ...turn(load.force),
          ...turn(load.moment),
        ]);
        expect(furthestApart(forward, loadsOf(b))).toBeLessThan(1e-6);
      }
    }),
    { ...RUNS, numRuns: 15 },
  );
});

describe('two supports of a line', () => {
  const rate = fc.double({ min: 1e3, max: 1e7, noNaN: true });
  const share = fc.double({ min: 0.05, max: 0.95, noNaN: true });
  test('a stiffer one never carries less', () => {
    fc.assert(
      fc.property(
        rate,
        rate,
        fc.double({ min: 1, max: 50, noNaN: true }),
        share,
        share,
        (k1, k2, by, at, load) => {
          const carried = (k: number) => {
            const L = 8;
            const places = [0, Math.min(at, load) * L, Math.max(at, load) * L, L].map((x): Vec3 => [x, 0, 0]);
            fc.pre(Math.abs(at - load) > 0.02);
            const name = at < load ? 'b' : 'c';
            const run = runThrough(places);
            const spring = (mark: string, point: string, stiffness: number) =>
              support(mark, point, [restraint([0, 0, 1], { sense: 'push', stiffness })]);
            const answer = solveFrame(
              frame({
                ...run,
                supports: [
                  anchor('A', 'a'),
                  spring('S', name, k),
                  spring('R', 'd', k2),
                  prop('G', 'd', [0, 1, 0]),
                ],
                conditions: [condition({ loads: [force(name === 'b' ? 'c' : 'b', [0, 0, -5000])] })],
              }),
            );
            return -of(of(answer.conditions, 'test').supports, 'S').load.force[2];
          };
          expect(carried(by * k1)).toBeGreaterThan(carried(k1) - 1e-6);
        },
      ),
      { numRuns: 60, seed: 1955 },
    );
  });
});
