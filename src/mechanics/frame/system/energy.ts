import type { Vec3 } from '../../../model/conventions.js';
import type { ConvergedFrame } from '../../contact/iterate-frame.js';
import { movementAlong, springForce } from '../elements/element-forces.js';
import { misfitOf } from '../recovery/point-offsets.js';
import { rowForces } from '../respond.js';
import { rowValues } from './constraints.js';
import { roundingForce } from './rounding-force.js';

/** Error of the energy past which an answer is refused [-]. */
export const LARGEST_ENERGY_ERROR = 1e-8;

/** Movement by which forces are measured where nothing moves further [m]. */
const SMALLEST_MOVEMENT = 1e-6;

/**
 * Virtual work of the final state: every force that is there at the end times the whole movement at the end. It holds
 * whether or not supports lift, gaps close or friction slips, since it asks nothing of the way there; for a frame that
 * is linear and free of strain at the start it is twice the energy.
 *
 *     loads · u + W · u_c − s · e₀ + preload x + (F − preload) at + r · value − f · growth
 *         =  Σ s · d  +  Σ k (x − at)²  +  Σ μ N slide
 *
 * with, of members, s the end wrench, e₀ the free movement and d the elastic deformation; of springs, x the movement
 * and F the force; r the forces of rigid supports and joints; f what bodies that grow carry between their points.
 *
 * @param settled - solution with what acted [N], [m]
 * @returns |left − right| over the sum of the sizes of all parts, or over the work of rounding where all parts are none [-]
 * @source statics
 */
export function energyOf(converged: ConvergedFrame): number {
  const { system, activeRestraints, solution, loads } = converged;
  const { prepared, clusters, unknowns } = system;
  const { movements: u, ends, pointForces } = solution;
  let difference = 0;
  let size = 0;
  const count = (work: number) => {
    difference += work;
    size += Math.abs(work);
  };
  let largest = 0;
  for (let i = 0; i < u.length; i++) {
    const load = loads.pointForces[i]!;
    largest = Math.max(largest, Math.abs(load));
    if (load !== 0) count(load * u[i]!);
  }
  for (let point = 0; point < prepared.places.length; point++) {
    for (let i = 0; i < 3; i++) {
      const growth = loads.growth[3 * point + i]!;
      if (growth !== 0) count(-pointForces[6 * point + i]! * growth);
    }
  }
  const S = prepared.stiffness;
  const e = new Float64Array(6);
  for (let n = 0; n < prepared.elementCount; n++) {
    if (n >= prepared.memberCount && clusters.jointStands[n - prepared.memberCount] === false) continue;
    const i = 6 * prepared.from[n]!;
    const j = 6 * prepared.to[n]!;
    const turn: Vec3 = [u[i + 3]!, u[i + 4]!, u[i + 5]!];
    const arm = carried(turn, prepared.arm, 3 * n);
    const centre = carried(turn, prepared.centroid, 3 * n);
    for (let k = 0; k < 3; k++) {
      const weight = loads.weight[3 * n + k]!;
      largest = Math.max(largest, Math.abs(weight));
      if (weight !== 0) count(weight * (u[i + k]! + centre[k]!));
      e[k] = u[j + k]! - u[i + k]! - arm[k]!;
      e[k + 3] = u[j + k + 3]! - turn[k]!;
    }
    let stored = 0;
    for (let r = 0; r < 6; r++) {
      const free = loads.freeMovement[6 * n + r]!;
      const wrench = ends.to[6 * n + r]!;
      if (free !== 0) count(-wrench * free);
      // Strain energy from the stiffness itself, so that it also stands for the end wrenches.
      for (let c = 0; c < 6; c++) {
        const other = e[c]! - loads.freeMovement[6 * n + c]!;
        stored += (e[r]! - free) * S[36 * n + 6 * r + c]! * other;
      }
    }
    count(-stored);
  }
  for (const activeRestraint of activeRestraints) {
    if (!Number.isFinite(activeRestraint.stiffness)) continue;
    const x = movementAlong(activeRestraint, u);
    // Friction does work against the movement: it is taken up, whatever side it is written on.
    if (activeRestraint.preload !== 0) count(activeRestraint.preload * x);
    const elastic = springForce(activeRestraint, u) - activeRestraint.preload;
    if (elastic === 0) continue;
    count(elastic * activeRestraint.at);
    count(elastic * (x - activeRestraint.at));
  }
  const forces = rowForces(system, solution);
  const values = rowValues(unknowns.rows, activeRestraints, loads.growth, misfitOf(system, loads));
  forces.forEach((force, row) => {
    largest = Math.max(largest, Math.abs(force));
    if (values[row] !== 0) count(force * values[row]!);
  });
  // Growth and movement that nothing hinders do no work: what is left of it then is rounding, measured as such.
  const free = roundingForce(prepared, u).work;
  const measure = Math.max(size, largest * SMALLEST_MOVEMENT, free);
  return measure === 0 ? 0 : Math.abs(difference) / measure;
}

/** θ × a for an arm kept in an array. */
function carried([x, y, z]: Vec3, arms: Float64Array, at: number): Vec3 {
  const a = arms[at]!;
  const b = arms[at + 1]!;
  const c = arms[at + 2]!;
  return [y * c - z * b, z * a - x * c, x * b - y * a];
}
