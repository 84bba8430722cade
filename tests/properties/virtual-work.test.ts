// Invariant of the final state, linear or not: the work of the loads is the deformation work of members (integrated from
// the forces along them), of joints and of supports.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { gaussLegendre } from '../../src/algebra/gauss-legendre.js';
import { memberCompliance } from '../../src/mechanics/frame/elements/tube-section.js';
import { memberForces } from '../../src/mechanics/frame/recovery/member-forces.js';
import { memberPath } from '../../src/mechanics/frame/recovery/member-path.js';
import { solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import type { Vec3 } from '../../src/model/conventions.js';
import type { Frame } from '../../src/model/frame/frame.js';
import { dot } from '../../src/model/vector.js';
import { condition, force, of } from '../mechanics/small-frames.js';
import { steps, walkedFrame } from './random-line.js';

const RULE = gaussLegendre(12);

/** Rods that lean in place of friction on every second hanger, and travel on every spring. */
function withRods(built: Frame): Frame {
  return {
    ...built,
    supports: built.supports.map((each, index) => ({
      ...each,
      restraints: each.restraints.map((r) => ({
        ...r,
        ...(r.sense === 'push' && index % 2 === 1 && { friction: 0, swingLength: 1.5 }),
        ...(r.preload > 0 && { travel: { least: 0.6 * r.preload, most: 1.3 * r.preload } }),
      })),
    })),
  };
}

test('the work of point loads on a line with one-way supports, friction, rods and travel is taken up in it', () => {
  fc.assert(
    fc.property(steps, fc.nat(), fc.nat(), (walk, first, second) => {
      const names = Object.keys(walkedFrame(walk).points).slice(1, -1);
      const at = (pick: number) => names[pick % names.length] ?? 'start';
      const F: Vec3 = [900, -700, -2500];
      const M: Vec3 = [50, 80, -20];
      const acting = condition({
        name: 'push',
        pressure: 3e5,
        loads: [force(at(first), F, M), force(at(second), [0, 400, -4000])],
      });
      const built = withRods(walkedFrame(walk, { oneWay: true, conditions: [acting] }));
      const { conditions, quality } = solveFrame(built);
      const solved = of(conditions, 'push');
      let difference = 0;
      let size = 0;
      const count = (work: number) => {
        difference += work;
        size += Math.abs(work);
      };
      for (const { point, wrench } of acting.loads) {
        const moved = of(solved.movements, point);
        count(dot(wrench.force, moved.translation) + dot(wrench.moment, moved.rotation));
      }
      for (const member of built.members) {
        const f = memberCompliance(member, of(built.materials, member.material), false);
        const { length } = memberPath(built, member);
        memberForces(built, acting, solved, member.name, RULE.points).forEach((here, i) => {
          const weight = (RULE.weights[i] ?? 0) * length;
          count(
            -weight *
              (here.axial ** 2 * f.axial +
                here.torsion ** 2 * f.torsion +
                here.bending ** 2 * f.bending +
                (here.shearInPlane ** 2 + here.shearOutOfPlane ** 2) * f.shear),
          );
        });
      }
      for (const joint of built.joints) {
        for (const side of ['from', 'to'] as const) {
          const wrench = of(solved.joints, joint.name)[side];
          const moved = of(solved.movements, joint[side]);
          count(dot(wrench.force, moved.translation) + dot(wrench.moment, moved.rotation));
        }
      }
      for (const each of built.supports) {
        const { load } = of(solved.supports, each.name);
        const moved = of(solved.movements, each.point);
        count(-dot(load.force, moved.translation) - dot(load.moment, moved.rotation));
      }
      expect(Math.abs(difference) / size).toBeLessThan(1e-8);
      expect(quality.energy ?? 1).toBeLessThan(1e-8);
    }),
    { numRuns: 40, seed: 1955 },
  );
});
