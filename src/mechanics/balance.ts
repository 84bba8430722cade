import type { Vec3, Wrench } from '../model/conventions.js';
import { add, norm, scale, subtract } from '../model/vector.js';
import type { Clusters } from './cluster.js';
import type { ConditionLoads } from './condition-loads.js';
import { jointLoads } from './condition-loads.js';
import type { PreparedFrame } from './prepare-frame.js';
import { lumpMass, massPerLength } from './present-mass.js';
import type { Balance, SupportResponse } from './response.js';
import { addWrench, movedWrench, NO_WRENCH } from './rigid-arm.js';

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
  let applied: Wrench = NO_WRENCH;
  let mass = 0;
  let force = 0;
  let moment = 0;
  const act = (wrench: Wrench, at: Vec3) => {
    applied = addWrench(applied, movedWrench(wrench, at));
  };
  frame.members.forEach((member, e) => {
    const own = massPerLength(member, condition) * prepared.length[e]!;
    const c = 3 * e;
    const centroid: Vec3 = [prepared.centroid[c]!, prepared.centroid[c + 1]!, prepared.centroid[c + 2]!];
    mass += own;
    act(
      { force: scale(condition.gravity, own), moment: [0, 0, 0] },
      add(places[prepared.from[e]!]!, centroid),
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
  let reacted: Wrench = NO_WRENCH;
  for (const support of frame.supports) {
    const { load } = supports[support.name]!;
    reacted = addWrench(reacted, movedWrench(load, frame.points[support.point]!));
    force = Math.max(force, norm(load.force));
    moment = Math.max(moment, norm(load.moment));
  }
  reacted = { force: scale(reacted.force, -1), moment: scale(reacted.moment, -1) };
  const sum = addWrench(applied, reacted);
  const weight = mass * norm(condition.gravity);
  const size = sizeOf(prepared);
  const largest = Math.max(weight, force, moment / size, least);
  const unbalanced = Math.max(norm(sum.force), norm(sum.moment) / size);
  const residual = unbalanced === 0 ? 0 : unbalanced / largest;
  return { balance: { applied, reacted, residual }, weight };
}

/** Distance from the origin to the furthest point, or across the frame: the lever moments are measured by [m]. */
function sizeOf(prepared: PreparedFrame): number {
  const first = prepared.places[0];
  if (first === undefined) return 1;
  let size = 0;
  for (const place of prepared.places) size = Math.max(size, norm(place), norm(subtract(place, first)));
  return size || 1;
}
