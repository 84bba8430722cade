import type { Vec3 } from '../../model/conventions.js';

/**
 * One direction in which a support acts on a point at the moment: rigidly (u·d = at) or as a spring
 * (force on the point along d: preload − stiffness × (u·d − at)).
 */
export interface ActiveRestraint {
  readonly support: number;
  readonly restraint: number;
  readonly point: number;
  readonly direction: Vec3;
  readonly acts: 'translation' | 'rotation';
  /** Infinity is rigid [N/m] or [N·m/rad]. */
  readonly stiffness: number;
  /** [m] or [rad] */
  readonly at: number;
  /** [N] or [N·m] */
  readonly preload: number;
  /** The contact it belongs to, and whether it acts along it or, by friction or as a rod that leans, across it. */
  readonly contact: number;
  readonly role: 'normal' | 'friction' | 'swing';
}

/**
 * Text that is the same for two lists of holds that give the same stiffness.
 *
 * @param activeRestraints - what acts
 * @returns key [-]
 * @source statics
 */
export function restraintsKey(activeRestraints: readonly ActiveRestraint[]): string {
  let key = '';
  for (const activeRestraint of activeRestraints) {
    // The direction of a restraint is its own; what acts across it may turn.
    const way = activeRestraint.role === 'normal' ? '' : activeRestraint.direction.join(',');
    const stiffness =
      activeRestraint.stiffness === Number.POSITIVE_INFINITY ? 'r' : String(activeRestraint.stiffness);
    key += `${activeRestraint.support}.${activeRestraint.restraint}.${way}${stiffness};`;
  }
  return key;
}

/**
 * Text that is the same for two lists of holds of which the same are rigid, at the same places of the list.
 *
 * @param activeRestraints - what acts
 * @returns key [-]
 * @source statics
 */
export function rigidKey(activeRestraints: readonly ActiveRestraint[]): string {
  let key = '';
  for (const activeRestraint of activeRestraints) {
    if (activeRestraint.stiffness === Number.POSITIVE_INFINITY) {
      const way = activeRestraint.role === 'normal' ? '' : activeRestraint.direction.join(',');
      key += `${activeRestraint.support}.${activeRestraint.restraint}.${way}`;
    }
    key += ';';
  }
  return key;
}
