import type { Vec3, Wrench } from '../../../model/conventions.js';
import { norm, scale, subtract } from '../../../model/vector.js';
import type { ConditionLoads } from '../condition-loads.js';
import { jointLoads } from '../condition-loads.js';
import { addWrench } from '../elements/rigid-arm.js';
import type { PreparedFrame } from '../prepare-frame.js';
import { lumpMass, massPerLength } from '../present-mass.js';
import type { Balance, SupportResponse } from '../response.js';
import type { Clusters } from './cluster.js';

/**
 * Everything that acts against everything that holds, about the origin, from the parts of the frame and not from the
 * solution.
 *
 *     residual = max(|ΣF| / P, |ΣM| / (P × size)),   P = largest of weight, applied load and support load
 *
 * @param prepared - the frame
 * @param clusters - bodies and joints that stand
 * @param loads - the condition
 * @param supports - loads on supports [N], [N·m]
 * @param least - force against which the difference is measured where everything that acts is smaller [N]
 * @returns sums and residual, and the weight of everything present [N]
 * @source statics
 */
export function balanceOf(
  prepared: PreparedFrame,
  clusters: Clusters,
  loads: ConditionLoads,
  supports: Readonly<Record<string, SupportResponse>>,
  least = 0,
): { readonly balance: Balance; readonly weight: number } {
  const { frame, places } = prepared;
  const { condition } = loads;
  const total = new Float64Array(6);
  let mass = 0;
  let force = 0;
  let moment = 0;
  const act = (wrench: Wrench, at: Vec3) => {
    addAt(total, wrench.force, at[0], at[1], at[2], 1);
    for (let i = 0; i < 3; i++) total[3 + i]! += wrench.moment[i]!;
  };
  frame.members.forEach((member, e) => {
    const own = massPerLength(member, condition) * prepared.length[e]!;
    const [x, y, z] = places[prepared.from[e]!]!;
    const c = 3 * e;
    mass += own;
    addAt(
      total,
      condition.gravity,
      x + prepared.centroid[c]!,
      y + prepared.centroid[c + 1]!,
      z + prepared.centroid[c + 2]!,
      own,
    );
  });
  frame.bodies.forEach((body, index) => {
    if (clusters.bodyStands[index] === false) return;
    for (const lump of body.masses) {
      const own = lumpMass(lump, condition);
      mass += own;
      act({ force: scale(condition.gravity, own), moment: [0, 0, 0] }, lump.at);
    }
  });
  frame.joints.forEach((joint, index) => {
    if (clusters.jointStands[index] === false) return;
    const [from, to] = jointLoads(prepared, index, condition);
    mass += joint.mass;
    act(from, places[prepared.from[prepared.memberCount + index]!]!);
    act(to, places[prepared.to[prepared.memberCount + index]!]!);
    force = Math.max(force, condition.pressure * joint.thrustArea);
  });
  for (const { point, wrench } of condition.loads) {
    act(wrench, frame.points[point]!);
    force = Math.max(force, norm(wrench.force));
    moment = Math.max(moment, norm(wrench.moment));
  }
  const held = new Float64Array(6);
  for (const support of frame.supports) {
    const { load } = supports[support.name]!;
    const [x, y, z] = frame.points[support.point]!;
    addAt(held, load.force, x, y, z, -1);
    for (let i = 0; i < 3; i++) held[3 + i]! -= load.moment[i]!;
    force = Math.max(force, norm(load.force));
    moment = Math.max(moment, norm(load.moment));
  }
  const [applied, reacted] = [wrenchOf(total), wrenchOf(held)];
  const sum = addWrench(applied, reacted);
  const weight = mass * norm(condition.gravity);
  const size = sizeOf(prepared);
  const largest = Math.max(weight, force, moment / size, least);
  const unbalanced = Math.max(norm(sum.force), norm(sum.moment) / size);
  const residual = unbalanced === 0 ? 0 : unbalanced / largest;
  return { balance: { applied, reacted, residual }, weight };
}

/** Adds a force times a share at a place to a sum of forces and moments about the origin; nothing is made on the way. */
function addAt(sum: Float64Array, force: Vec3, x: number, y: number, z: number, share: number): void {
  const [fx, fy, fz] = [force[0] * share, force[1] * share, force[2] * share];
  sum[0]! += fx;
  sum[1]! += fy;
  sum[2]! += fz;
  sum[3]! += y * fz - z * fy;
  sum[4]! += z * fx - x * fz;
  sum[5]! += x * fy - y * fx;
}

function wrenchOf(sum: Float64Array): Wrench {
  return { force: [sum[0]!, sum[1]!, sum[2]!], moment: [sum[3]!, sum[4]!, sum[5]!] };
}

/** Distance from the origin to the furthest point, or across the frame: the lever moments are measured by [m]. */
function sizeOf(prepared: PreparedFrame): number {
  const first = prepared.places[0];
  if (first === undefined) return 1;
  let size = 0;
  for (const place of prepared.places) size = Math.max(size, norm(place), norm(subtract(place, first)));
  return size || 1;
}
