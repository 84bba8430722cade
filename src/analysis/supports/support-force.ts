import type { SolvedCondition } from '../conditions.js';

/**
 * Size of the force of the pipe on a support. For a hanger this is the pull along the rods, swing included.
 *
 * @param condition - solved condition
 * @param mark - mark of the support
 * @returns length of the force [N], or undefined where the support was not solved
 */
export function supportForce(condition: SolvedCondition, mark: string): number | undefined {
  const force = condition.solved.supports[mark]?.load.force;
  return force === undefined ? undefined : Math.hypot(...force);
}
