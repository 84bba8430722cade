import { solveProfile } from '../../algebra/profile-factor.js';
import { EngineError } from '../../issues/issue.js';
import type { ActiveRestraint } from '../contact/active-restraint.js';
import type { ConditionLoads } from './condition-loads.js';
import { type EndForces, endForces, pointForces, springForce } from './elements/element-forces.js';
import type { System } from './system/system.js';
import { gatherForces, spreadMovements } from './system/unknowns.js';

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
 * @param activeRestraints - set positions [m] and preloads [N] of this condition, in the order the system was built with
 * @param offsets - from `pointOffsets`, six numbers a point [m], [rad]
 * @returns movements [m], [rad], end wrenches and remaining forces [N], [N·m]
 * @throws EngineError `mechanics.not-a-number`
 * @source statics
 */
export function solveCondition(
  system: System,
  loads: ConditionLoads,
  activeRestraints: readonly ActiveRestraint[],
  offsets: Float64Array,
): Solution {
  const { prepared, clusters, unknowns, factor, scale } = system;
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
  const springs = activeRestraints.filter((activeRestraint) => Number.isFinite(activeRestraint.stiffness));
  const evaluate = (): number => {
    spreadMovements(unknowns, z, offsets, movements);
    endForces(prepared, clusters, movements, loads, ends);
    pointForces(prepared, clusters, ends, loads.pointForces, forces);
    addSprings(springs, movements, forces);
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

function addSprings(
  springs: readonly ActiveRestraint[],
  movements: Float64Array,
  forces: Float64Array,
): void {
  for (const activeRestraint of springs) {
    const force = springForce(activeRestraint, movements);
    const at = 6 * activeRestraint.point + (activeRestraint.acts === 'translation' ? 0 : 3);
    for (let i = 0; i < 3; i++) forces[at + i]! += force * activeRestraint.direction[i]!;
  }
}
