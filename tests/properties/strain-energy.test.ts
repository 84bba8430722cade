// Invariant: the work of the loads is the energy stored, found from the forces along each member by another way.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { gaussLegendre } from '../../src/algebra/gauss-legendre.js';
import { memberCompliance } from '../../src/mechanics/frame/elements/tube-section.js';
import { memberForces } from '../../src/mechanics/frame/recovery/member-forces.js';
import { memberPath } from '../../src/mechanics/frame/recovery/member-path.js';
import { movementAlong } from '../../src/mechanics/frame/recovery/movement-along.js';
import { solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import type { Vec3 } from '../../src/model/conventions.js';
import type { Frame } from '../../src/model/frame/frame.js';
import { dot, subtract } from '../../src/model/vector.js';
import { condition, force, of } from '../mechanics/small-frames.js';
import { relativeError } from '../published/printed-value.js';
import { CONDITIONS, furthestApart, steps, walkedFrame } from './random-line.js';

const RULE = gaussLegendre(12);

function storedEnergy(built: Frame, name: string): number {
  const solved = of(solveFrame(built).conditions, name);
  const acting = built.conditions.find((each) => each.name === name) ?? condition();
  let energy = 0;
  for (const member of built.members) {
    const material = of(built.materials, member.material);
    const f = memberCompliance(member, material, false);
    const { length } = memberPath(built, member);
    memberForces(built, acting, solved, member.name, RULE.points).forEach((at, i) => {
      const weight = ((RULE.weights[i] ?? 0) * length) / 2;
      energy +=
        weight * (at.axial ** 2 * f.axial + at.torsion ** 2 * f.torsion + at.bending ** 2 * f.bending);
      energy += weight * (at.shearInPlane ** 2 + at.shearOutOfPlane ** 2) * f.shear;
    });
  }
  for (const joint of built.joints) {
    // Work of the springs: wrench on each side times its movement.
    for (const side of ['from', 'to'] as const) {
      const wrench = of(solved.joints, joint.name)[side];
      const moved = of(solved.movements, joint[side]);
      energy -= (dot(wrench.force, moved.translation) + dot(wrench.moment, moved.rotation)) / 2;
    }
  }
  for (const each of built.supports) {
    const { load } = of(solved.supports, each.name);
    const moved = of(solved.movements, each.point);
    energy += (dot(load.force, moved.translation) + dot(load.moment, moved.rotation)) / 2;
  }
  return energy;
}

test('the work of point loads is the energy in members, joints and springs', () => {
  fc.assert(
    fc.property(steps, fc.nat(), (walk, pick) => {
      const springless = walk.map((each) => ({ ...each, mass: each.hold === 'spring' ? 0 : each.mass }));
      const names = Object.keys(walkedFrame(walk).points).slice(1, -1);
      const at = names[pick % names.length] ?? 'start';
      const F: Vec3 = [700, -300, 500];
      const M: Vec3 = [50, 80, -20];
      const built = walkedFrame(springless, {
        conditions: [condition({ name: 'push', loads: [force(at, F, M)] })],
      });
      const moved = of(of(solveFrame(built).conditions, 'push').movements, at);
      const work = (dot(F, moved.translation) + dot(M, moved.rotation)) / 2;
      fc.pre(work > 1e-9);
      expect(relativeError(storedEnergy(built, 'push'), work)).toBeLessThan(1e-7);
    }),
    { numRuns: 40, seed: 1955, endOnFailure: true },
  );
});

test('movements along a member run from the movement of one end to that of the other', () => {
  fc.assert(
    fc.property(steps, (walk) => {
      const built = walkedFrame(walk);
      const { conditions } = solveFrame(built);
      for (const { name } of CONDITIONS) {
        const solved = of(conditions, name);
        const acting = built.conditions.find((each) => each.name === name) ?? condition();
        const far = Math.max(
          ...Object.values(solved.movements).flatMap(({ translation }) => translation.map(Math.abs)),
        );
        for (const member of built.members) {
          const end = movementAlong(built, acting, solved, member.name)(1);
          const reached = of(solved.movements, member.to);
          const apart = subtract(end.translation, reached.translation);
          expect(Math.max(...apart.map(Math.abs)) / far).toBeLessThan(1e-8);
          expect(Math.max(...subtract(end.rotation, reached.rotation).map(Math.abs)) / far).toBeLessThan(
            1e-6,
          );
        }
      }
    }),
    { numRuns: 15, seed: 1955, endOnFailure: true },
  );
});

test('the middle of a member is the point that a cut there would have', () => {
  fc.assert(
    fc.property(steps, (walk) => {
      const [whole, cut] = [walkedFrame(walk), walkedFrame(walk, { pieces: 2 })];
      const [a, b] = [of(solveFrame(whole).conditions, 'hot'), of(solveFrame(cut).conditions, 'hot')];
      const acting = CONDITIONS.find(({ name }) => name === 'hot') ?? condition();
      const pairs = walk.flatMap((_, i) => [`pipe ${i}`, `bend ${i}`]);
      const ours = pairs.flatMap((name) => [
        ...movementAlong(whole, acting, a, `${name} part 1`)(0.5).translation,
      ]);
      const points = pairs.flatMap((name) => [...of(b.movements, `${name} 1`).translation]);
      expect(furthestApart(ours, points)).toBeLessThan(1e-9);
    }),
    { numRuns: 20, seed: 1955, endOnFailure: true },
  );
});
