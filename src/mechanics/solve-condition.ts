import { solveProfile } from '../algebra/profile-factor.js';
import { EngineError } from '../issues/issue.js';
import type { ConditionLoads } from './condition-loads.js';
import { rowValues } from './constraints.js';
import { type EndForces, endForces, pointForces, springForce } from './element-forces.js';
import { particularMovement } from './eliminate.js';
import type { Hold } from './hold.js';
import type { PreparedFrame } from './prepare-frame.js';
import type { System } from './system.js';
import { gatherForces, spreadMovements, type Unknowns } from './unknowns.js';

/** Movements and forces of one condition. */
export interface Solution {
  /** Six numbers a point [m], [rad]. */
  readonly movements: Float64Array;
  readonly ends: EndForces;
  /** What constraints must balance, six numbers a point [N], [N·m]. */
  readonly pointForces: Float64Array;
  /** Largest |K z − f| over the largest |f|, scaled [-]. */
  readonly residual: number;
}

/**
 * Movements in one condition: solves, and refines with forces found element by element, which are exact in balance
 * whatever the rounding of the assembled stiffness.
 *
 *     z ← z + K⁻¹ (f − Σ Aᵀ k (A z))     until the remainder no longer falls
 *
 * @param system - factored stiffness
 * @param loads - what acts [N]
 * @param holds - set positions [m] and preloads [N] of this condition, in the order the system was built with
 * @returns movements [m], [rad], end wrenches and remaining forces [N], [N·m]
 * @throws EngineError `mechanics.supports-conflict` when rigid supports or joints of one rigid body cannot all have
 *   their position; data: `condition`, `supports`, `by` [m]
 * @source statics
 */
export function solveCondition(system: System, loads: ConditionLoads, holds: readonly Hold[]): Solution {
  const { prepared, clusters, unknowns, factor, scale } = system;
  const offsets = pointOffsets(system, loads, holds);
  const n = unknowns.size;
  const z = new Float64Array(n);
  const best = new Float64Array(n);
  const remainder = new Float64Array(n);
  const movements = new Float64Array(offsets.length);
  const ends = {
    from: new Float64Array(6 * prepared.elementCount),
    to: new Float64Array(6 * prepared.elementCount),
  };
  const forces = new Float64Array(offsets.length);
  const evaluate = (): number => {
    spreadMovements(unknowns, z, offsets, movements);
    endForces(prepared, clusters, movements, loads, ends);
    pointForces(prepared, clusters, ends, loads.pointForces, forces);
    addSprings(holds, movements, forces);
    gatherForces(unknowns, forces, remainder);
    let largest = 0;
    for (let i = 0; i < n; i++) {
      remainder[i]! *= scale[i]!;
      const size = Math.abs(remainder[i]!);
      if (!(size <= largest)) largest = size;
    }
    return largest;
  };
  const start = evaluate();
  let left = start;
  for (let round = 0; round < REFINEMENTS && left > 0; round++) {
    solveProfile(factor, remainder);
    for (let i = 0; i < n; i++) z[i]! += remainder[i]! * scale[i]!;
    const now = evaluate();
    if (!Number.isFinite(now))
      throw new EngineError('mechanics.not-a-number', { what: loads.condition.name });
    if (round > 0 && now >= left) {
      z.set(best);
      left = evaluate();
      break;
    }
    const enough = round > 0 && now > left / 4;
    left = now;
    best.set(z);
    if (enough) break;
  }
  return { movements, ends, pointForces: forces, residual: start > 0 ? left / start : 0 };
}

/** Rounds of refinement; two are nearly always enough [-]. */
const REFINEMENTS = 6;

function addSprings(holds: readonly Hold[], movements: Float64Array, forces: Float64Array): void {
  for (const hold of holds) {
    if (!Number.isFinite(hold.stiffness)) continue;
    const force = springForce(hold, movements);
    const at = 6 * hold.point + (hold.acts === 'translation' ? 0 : 3);
    for (let i = 0; i < 3; i++) forces[at + i]! += force * hold.direction[i]!;
  }
}

/** Movement of every point when no unknown moves: imposed movement of its group, and its growth. */
function pointOffsets(system: System, loads: ConditionLoads, holds: readonly Hold[]): Float64Array {
  const { prepared, clusters, unknowns } = system;
  const offsets = new Float64Array(6 * prepared.places.length);
  const values = rowValues(unknowns.rows, holds, loads.growth);
  const particular = unknowns.groups.map((group) => {
    if (group.decomposition === undefined) return undefined;
    const { movement, conflict } = particularMovement(group, values);
    if (conflict !== undefined) {
      const supports = namesOfRows(prepared, unknowns, group.rows, holds);
      throw new EngineError('mechanics.supports-conflict', {
        condition: loads.condition.name,
        supports,
        by: conflict.by,
      });
    }
    return movement;
  });
  for (let point = 0; point < prepared.places.length; point++) {
    const node = clusters.nodeOf[point]!;
    if (node === -1) continue;
    for (let i = 0; i < 3; i++) offsets[6 * point + i] = loads.growth[3 * point + i]!;
    const moved = particular[unknowns.groupOf[node]!];
    if (moved === undefined) continue;
    const at = 6 * unknowns.placeIn[node]!;
    const here = prepared.places[point]!;
    const origin = prepared.places[clusters.nodePoint[node]!]!;
    const [rx, ry, rz] = [moved[at + 3]!, moved[at + 4]!, moved[at + 5]!];
    const [x, y, z] = [here[0] - origin[0], here[1] - origin[1], here[2] - origin[2]];
    offsets[6 * point]! += moved[at]! + ry * z - rz * y;
    offsets[6 * point + 1]! += moved[at + 1]! + rz * x - rx * z;
    offsets[6 * point + 2]! += moved[at + 2]! + rx * y - ry * x;
    offsets[6 * point + 3]! += rx;
    offsets[6 * point + 4]! += ry;
    offsets[6 * point + 5]! += rz;
  }
  return offsets;
}

function namesOfRows(
  prepared: PreparedFrame,
  unknowns: Unknowns,
  rows: readonly number[],
  holds: readonly Hold[],
): readonly string[] {
  const { supports, joints } = prepared.frame;
  const names = rows.map((row) => {
    const { of } = unknowns.rows[row]!;
    return of.kind === 'hold' ? supports[holds[of.hold]!.support]!.name : joints[of.joint]!.name;
  });
  return [...new Set(names)];
}
