import type { Movement, Vec3, Wrench } from '../../../model/conventions.js';
import { add, cross, scale } from '../../../model/vector.js';

/** No force and no moment. */
export const NO_WRENCH: Wrench = { force: [0, 0, 0], moment: [0, 0, 0] };

/**
 * The same wrench about another point.
 *
 *     F' = F,   M' = M + a × F     a from the new point to the old one
 *
 * @param wrench - force [N] and moment [N·m]
 * @param arm - from the new point to the point the wrench is given at [m]
 * @returns force [N] and moment [N·m] about the new point
 * @source statics
 */
export function movedWrench(wrench: Wrench, arm: Vec3): Wrench {
  return { force: wrench.force, moment: add(wrench.moment, cross(arm, wrench.force)) };
}

/**
 * Sum of two wrenches about the same point.
 *
 * @param a - force [N] and moment [N·m]
 * @param b - force [N] and moment [N·m]
 * @returns force [N] and moment [N·m]
 * @source statics
 */
export function addWrench(a: Wrench, b: Wrench): Wrench {
  return { force: add(a.force, b.force), moment: add(a.moment, b.moment) };
}

/**
 * The wrench turned round: what acts on the other side.
 *
 * @param wrench - force [N] and moment [N·m]
 * @returns force [N] and moment [N·m]
 * @source statics
 */
export function reversedWrench(wrench: Wrench): Wrench {
  return { force: scale(wrench.force, -1), moment: scale(wrench.moment, -1) };
}

/**
 * Movement of another point of the same rigid body.
 *
 *     u' = u + θ × a,   θ' = θ
 *
 * @param movement - translation [m] and rotation [rad]
 * @param arm - from the known point to the other [m]
 * @returns translation [m] and rotation [rad]
 * @source statics
 */
export function movedMovement(movement: Movement, arm: Vec3): Movement {
  return {
    translation: add(movement.translation, cross(movement.rotation, arm)),
    rotation: movement.rotation,
  };
}
