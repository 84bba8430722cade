import { EngineError } from '../../../issues/issue.js';
import type { Movement } from '../../../model/conventions.js';
import { add } from '../../../model/vector.js';
import type { ActiveRestraint } from '../../contact/active-restraint.js';
import type { ConditionLoads } from '../condition-loads.js';
import { rowValues } from '../system/constraints.js';
import { particularMovement } from '../system/eliminate.js';
import type { System } from '../system/system.js';

/** Rigid supports or joints of one rigid part that cannot all have their position. */
export interface Conflict {
  /** Numbers of all constraint rows of the part, with how far each is from its position at best [m] or [rad]. */
  readonly rows: readonly { readonly row: number; readonly beyond: number }[];
}

/**
 * Movement of every point when no unknown moves: imposed movement of its group, and its growth.
 *
 * @param system - groups and constraint rows
 * @param loads - growth of bodies [m]
 * @param activeRestraints - set positions [m]
 * @returns six numbers a point [m], [rad]; or the conflict that leaves no such movement
 * @source statics
 */
export function pointOffsets(
  system: System,
  loads: ConditionLoads,
  activeRestraints: readonly ActiveRestraint[],
): { readonly offsets: Float64Array; readonly conflict?: Conflict } {
  const { prepared, clusters, unknowns } = system;
  const offsets = new Float64Array(6 * prepared.places.length);
  const values = rowValues(unknowns.rows, activeRestraints, loads.growth, misfitOf(system, loads));
  const particular: (Float64Array | undefined)[] = [];
  for (const group of unknowns.groups) {
    if (group.decomposition === undefined) {
      particular.push(undefined);
      continue;
    }
    const { movement, conflict } = particularMovement(group, values);
    if (conflict !== undefined) return { offsets, conflict };
    particular.push(movement);
  }
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
  return { offsets };
}

/**
 * Misfit and play of a joint together: where its rigid directions stand.
 *
 * @param system - for the names of joints
 * @param loads - misfit of the condition and play that is used up [m], [rad]
 * @returns function from the number of a joint to its movement across, or undefined where it has none [m], [rad]
 * @source statics
 */
export function misfitOf(system: System, loads: ConditionLoads): (joint: number) => Movement | undefined {
  const { joints } = system.prepared.frame;
  return (joint) => {
    const misfit = loads.condition.misfit?.[joints[joint]!.name];
    const play = loads.play?.get(joint);
    if (misfit === undefined || play === undefined) return misfit ?? play;
    return {
      translation: add(misfit.translation, play.translation),
      rotation: add(misfit.rotation, play.rotation),
    };
  };
}

/**
 * The error that names the supports and joints of a conflict.
 *
 * @param system - constraint rows
 * @param activeRestraints - what the supports do
 * @param conflict - the conflict
 * @param condition - name of the condition [-]
 * @returns EngineError `mechanics.supports-conflict`; data: `condition`, `supports`, `by` [m]
 * @source statics
 */
export function conflictError(
  system: System,
  activeRestraints: readonly ActiveRestraint[],
  conflict: Conflict,
  condition: string,
): EngineError {
  const { supports, joints } = system.prepared.frame;
  const names = conflict.rows
    .filter(({ beyond }) => beyond !== 0)
    .map(({ row }) => {
      const { of } = system.unknowns.rows[row]!;
      return of.kind === 'hold'
        ? supports[activeRestraints[of.activeRestraint]!.support]!.name
        : joints[of.joint]!.name;
    });
  const by = conflict.rows.reduce((most, { beyond }) => Math.max(most, Math.abs(beyond)), 0);
  return new EngineError('mechanics.supports-conflict', { condition, supports: [...new Set(names)], by });
}
