import type { Vec3 } from '../model/conventions.js';
import type { FrameCondition, FrameSupport, Restraint } from '../model/frame.js';
import { dot } from '../model/vector.js';
import type { Clusters } from './cluster.js';
import type { PreparedFrame } from './prepare-frame.js';

/**
 * One direction in which a support acts on a point at the moment: rigidly (u·d = at) or as a spring
 * (force on the point along d: preload − stiffness × (u·d − at)).
 */
export interface Hold {
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
}

/**
 * Whether a restraint is held by a travel stop: in a stopped support the springs that carry a preload; where none
 * does, every spring.
 *
 * @param support - the support
 * @param restraint - one of its restraints
 * @param condition - names the stopped supports
 * @returns true when it acts rigidly because of its stop [-]
 * @source mss-sp-58
 */
export function isStopped(support: FrameSupport, restraint: Restraint, condition: FrameCondition): boolean {
  if (!condition.stopped.includes(support.name) || !Number.isFinite(restraint.stiffness)) return false;
  const loaded = support.restraints.some((other) => other.preload !== 0);
  return loaded ? restraint.preload !== 0 : true;
}

/**
 * Movement of the support itself along a restraint.
 *
 * @param support - the support
 * @param restraint - one of its restraints
 * @param condition - with further imposed movement [m]
 * @returns movement along the direction [m] or [rad]
 * @source statics
 */
export function imposedMovement(
  support: FrameSupport,
  restraint: Restraint,
  condition: FrameCondition,
): number {
  const further = condition.imposed?.[support.name];
  if (further === undefined || restraint.acts === 'rotation') return restraint.imposed;
  return restraint.imposed + dot(further, restraint.direction);
}

/**
 * What every restraint does while all of them hold both ways: sense, gap and friction are not asked for.
 *
 * @param prepared - the frame
 * @param clusters - which points are there
 * @param condition - absent and stopped supports, imposed movements [m]
 * @returns holds in the order of the frame [N/m, m, N]
 * @source statics
 */
export function twoWayHolds(
  prepared: PreparedFrame,
  clusters: Clusters,
  condition: FrameCondition,
): readonly Hold[] {
  const holds: Hold[] = [];
  const absent = new Set(condition.absent);
  prepared.frame.supports.forEach((support, supportIndex) => {
    const point = prepared.pointNumber.get(support.point)!;
    if (absent.has(support.name) || clusters.nodeOf[point] === -1) return;
    support.restraints.forEach((restraint, restraintIndex) => {
      const stiffness = isStopped(support, restraint, condition)
        ? Number.POSITIVE_INFINITY
        : restraint.stiffness;
      if (stiffness === 0 && restraint.preload === 0) return;
      holds.push({
        support: supportIndex,
        restraint: restraintIndex,
        point,
        direction: restraint.direction,
        acts: restraint.acts,
        stiffness,
        at: imposedMovement(support, restraint, condition),
        preload: restraint.preload,
      });
    });
  });
  return holds;
}

/**
 * Text that is the same for two lists of holds that give the same stiffness.
 *
 * @param holds - what acts
 * @returns key [-]
 * @source statics
 */
export function holdsKey(holds: readonly Hold[]): string {
  return holds
    .map((hold) => `${hold.support}.${hold.restraint}.${hold.direction.join(',')}.${hold.stiffness}`)
    .join(';');
}
