import type { ActiveRestraint } from '../../contact/active-restraint.js';
import type { ConditionLoads } from '../condition-loads.js';
import type { PreparedFrame } from '../prepare-frame.js';
import type { Clusters } from '../system/cluster.js';

/** End wrenches of all elements as the points act on them, six numbers an element and end [N], [N·m]. */
export interface EndForces {
  readonly from: Float64Array;
  readonly to: Float64Array;
}

/**
 * End wrenches of every element from the movements of its points.
 *
 *     to:    s = S (u_to − T u_from − e₀)
 *     from:  F = −s_F − W,   M = −s_M − a × s_F − c × W
 *
 * @param prepared - elements
 * @param clusters - which joints stand
 * @param movements - six numbers a point [m], [rad]
 * @param loads - free movements and weights; left out for elastic forces alone
 * @param ends - filled here [N], [N·m]
 * @returns the end wrenches [N], [N·m]
 * @source statics
 */
export function endForces(
  prepared: PreparedFrame,
  clusters: Clusters,
  movements: Float64Array,
  loads: ConditionLoads | undefined,
  ends: EndForces,
): EndForces {
  const { stiffness, arm, centroid } = prepared;
  const u = movements;
  const e = new Float64Array(6);
  for (let n = 0; n < prepared.elementCount; n++) {
    if (n >= prepared.memberCount && clusters.jointStands[n - prepared.memberCount] === false) continue;
    const i = 6 * prepared.from[n]!;
    const j = 6 * prepared.to[n]!;
    const ax = arm[3 * n]!;
    const ay = arm[3 * n + 1]!;
    const az = arm[3 * n + 2]!;
    const rx = u[i + 3]!;
    const ry = u[i + 4]!;
    const rz = u[i + 5]!;
    e[0] = u[j]! - u[i]! - (ry * az - rz * ay);
    e[1] = u[j + 1]! - u[i + 1]! - (rz * ax - rx * az);
    e[2] = u[j + 2]! - u[i + 2]! - (rx * ay - ry * ax);
    e[3] = u[j + 3]! - rx;
    e[4] = u[j + 4]! - ry;
    e[5] = u[j + 5]! - rz;
    if (loads !== undefined) for (let k = 0; k < 6; k++) e[k]! -= loads.freeMovement[6 * n + k]!;
    for (let r = 0; r < 6; r++) {
      const at = 36 * n + 6 * r;
      let sum = 0;
      for (let c = 0; c < 6; c++) sum += stiffness[at + c]! * e[c]!;
      ends.to[6 * n + r] = sum;
    }
    const fx = ends.to[6 * n]!;
    const fy = ends.to[6 * n + 1]!;
    const fz = ends.to[6 * n + 2]!;
    let wx = 0;
    let wy = 0;
    let wz = 0;
    if (loads !== undefined) {
      wx = loads.weight[3 * n]!;
      wy = loads.weight[3 * n + 1]!;
      wz = loads.weight[3 * n + 2]!;
    }
    const cx = centroid[3 * n]!;
    const cy = centroid[3 * n + 1]!;
    const cz = centroid[3 * n + 2]!;
    ends.from[6 * n] = -fx - wx;
    ends.from[6 * n + 1] = -fy - wy;
    ends.from[6 * n + 2] = -fz - wz;
    ends.from[6 * n + 3] = -ends.to[6 * n + 3]! - (ay * fz - az * fy) - (cy * wz - cz * wy);
    ends.from[6 * n + 4] = -ends.to[6 * n + 4]! - (az * fx - ax * fz) - (cz * wx - cx * wz);
    ends.from[6 * n + 5] = -ends.to[6 * n + 5]! - (ax * fy - ay * fx) - (cx * wy - cy * wx);
  }
  return ends;
}

/**
 * What acts on every point but constraints: applied loads, less what the point gives to its elements, plus springs.
 *
 * @param prepared - elements
 * @param clusters - which joints stand
 * @param ends - end wrenches [N], [N·m]
 * @param applied - six numbers a point [N], [N·m]; left out for elastic forces alone
 * @param forces - six numbers a point, filled here [N], [N·m]
 * @returns the forces [N], [N·m]
 * @source statics
 */
export function pointForces(
  prepared: PreparedFrame,
  clusters: Clusters,
  ends: EndForces,
  applied: Float64Array | undefined,
  forces: Float64Array,
): Float64Array {
  if (applied === undefined) forces.fill(0);
  else forces.set(applied);
  for (let n = 0; n < prepared.elementCount; n++) {
    if (n >= prepared.memberCount && clusters.jointStands[n - prepared.memberCount] === false) continue;
    const i = 6 * prepared.from[n]!;
    const j = 6 * prepared.to[n]!;
    for (let k = 0; k < 6; k++) {
      forces[i + k]! -= ends.from[6 * n + k]!;
      forces[j + k]! -= ends.to[6 * n + k]!;
    }
  }
  return forces;
}

/**
 * Force of a spring on its point along its direction: preload − stiffness × (u·d − at).
 *
 * @param activeRestraint - the spring [N/m], [m], [N]
 * @param movements - six numbers a point [m], [rad]
 * @returns force or moment on the point along the direction [N] or [N·m]
 * @source statics
 */
export function springForce(activeRestraint: ActiveRestraint, movements: Float64Array): number {
  return (
    activeRestraint.preload -
    activeRestraint.stiffness * (movementAlong(activeRestraint, movements) - activeRestraint.at)
  );
}

/**
 * Movement of a point along the direction of a hold.
 *
 * @param activeRestraint - point and direction
 * @param movements - six numbers a point [m], [rad]
 * @returns movement [m] or [rad]
 * @source statics
 */
export function movementAlong(
  activeRestraint: Pick<ActiveRestraint, 'point' | 'direction' | 'acts'>,
  movements: Float64Array,
): number {
  const at = 6 * activeRestraint.point + (activeRestraint.acts === 'translation' ? 0 : 3);
  const [x, y, z] = activeRestraint.direction;
  return x * movements[at]! + y * movements[at + 1]! + z * movements[at + 2]!;
}
