import { reciprocalCondition } from '../../../algebra/condition-estimate.js';
import { factorProfile } from '../../../algebra/profile-factor.js';
import { type ProfileMatrix, scaleProfile } from '../../../algebra/profile-matrix.js';
import type { ActiveRestraint } from '../../contact/active-restraint.js';
import type { PreparedFrame } from '../prepare-frame.js';
import { addSupportStiffness, assembleElements } from './assemble.js';
import type { Clusters } from './cluster.js';
import { type FreeMovement, freeMovements } from './free-movements.js';
import type { System } from './system.js';
import { numberUnknowns, type Unknowns } from './unknowns.js';

/** Pivots of the scaled stiffness below this are looked at closer [-]. */
const SUSPICIOUS_PIVOT = 1e-9;
/** Pivots below this are raised to it so that the free movement can be found [-]. */
const PIVOT_FLOOR = 1e-15;

/**
 * Numbers, assembles and factors the stiffness, and looks for movements that nothing resists.
 *
 * @param prepared - the frame
 * @param clusters - bodies and joints that stand
 * @param activeRestraints - what the supports do
 * @param pipework - from `numberPipework` with holds of the same `rigidKey`, where it is known
 * @returns the system, and its free movements: none where everything is held
 * @source statics
 */
export function buildSystem(
  prepared: PreparedFrame,
  clusters: Clusters,
  activeRestraints: readonly ActiveRestraint[],
  pipework: Pipework = numberPipework(prepared, clusters, activeRestraints),
): BuiltSystem {
  const { unknowns } = pipework;
  const matrix = { ...pipework.stiffness, values: pipework.stiffness.values.slice() };
  addSupportStiffness(matrix, unknowns, activeRestraints);
  const { scale, norm } = scaleProfile(matrix);
  const factor = factorProfile(matrix, PIVOT_FLOOR);
  const system: System = { prepared, clusters, unknowns, factor, scale, norm };
  return { system, free: factor.smallest < SUSPICIOUS_PIVOT ? freeMovements(system, activeRestraints) : [] };
}

/** What a stiffness is before the springs of its supports: numbering, and the stiffness of the elements alone [N/m]. */
export interface Pipework {
  readonly unknowns: Unknowns;
  readonly stiffness: ProfileMatrix;
}

/**
 * Numbers the unknowns and assembles the elements. Rods that lean and rates of springs change nothing of it.
 *
 * @param prepared - the frame
 * @param clusters - bodies and joints that stand
 * @param activeRestraints - what the supports do; only which of them are rigid counts
 * @returns numbering and stiffness [N/m]
 * @throws EngineError as `numberUnknowns`
 * @source statics
 */
export function numberPipework(
  prepared: PreparedFrame,
  clusters: Clusters,
  activeRestraints: readonly ActiveRestraint[],
): Pipework {
  const unknowns = numberUnknowns(prepared, clusters, activeRestraints);
  return { unknowns, stiffness: assembleElements(prepared, clusters, unknowns) };
}

/** A factored stiffness with what it leaves free. */
export interface BuiltSystem {
  readonly system: System;
  readonly free: readonly FreeMovement[];
}

/**
 * Estimate of the reciprocal condition number of the scaled stiffness.
 *
 * @param system - factored stiffness
 * @returns 1 at best [-]
 * @source statics
 */
export function systemCondition(system: System): number {
  return reciprocalCondition(system.factor, system.norm);
}
