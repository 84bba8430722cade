import type { Movement, Vec3 } from '../../../model/conventions.js';
import type { FrameJoint } from '../../../model/frame/frame.js';
import { add, between, cross, dot, scale, subtract, unit } from '../../../model/vector.js';
import type { Element } from './element.js';

/** One direction of a joint, acting at the middle between its two points. */
export interface JointDirection {
  readonly direction: Vec3;
  readonly acts: 'translation' | 'rotation';
  /** [N/m] or [N·m/rad]; Infinity is rigid. */
  readonly stiffness: number;
}

/**
 * Axis of a joint, turned so that it points from `from` to `to`; where both stand in one place, as given.
 *
 * @param joint - the joint
 * @param ends - places of its points [m]
 * @returns unit vector [-]
 * @source statics
 */
export function jointAxis(joint: FrameJoint, ends: { readonly from: Vec3; readonly to: Vec3 }): Vec3 {
  const axis = unit(joint.axis);
  return dot(axis, subtract(ends.to, ends.from)) < 0 ? scale(axis, -1) : axis;
}

/**
 * The six directions of a joint: along its axis, two across, about its axis, two bending.
 *
 * @param joint - stiffnesses [N/m], [N·m/rad]
 * @param axis - its axis [-]
 * @returns six directions with stiffness [N/m], [N·m/rad]
 * @source statics
 */
export function jointDirections(joint: FrameJoint, axis: Vec3): readonly JointDirection[] {
  const size = axis.map(Math.abs);
  const least = size.indexOf(Math.min(...size));
  const first = unit(cross(axis, [least === 0 ? 1 : 0, least === 1 ? 1 : 0, least === 2 ? 1 : 0]));
  const second = cross(axis, first);
  return [
    { direction: axis, acts: 'translation', stiffness: joint.axial },
    { direction: first, acts: 'translation', stiffness: joint.lateral },
    { direction: second, acts: 'translation', stiffness: joint.lateral },
    { direction: axis, acts: 'rotation', stiffness: joint.torsion },
    { direction: first, acts: 'rotation', stiffness: joint.bending },
    { direction: second, acts: 'rotation', stiffness: joint.bending },
  ];
}

/**
 * The elastic part of a joint as an element: springs between two rigid arms that meet at the middle.
 *
 *     S = Xᵀ K X,   K = Σ k d dᵀ,   X = [1  −[a×]; 0  1] from the `to` point to the middle
 *
 * Rigid directions have no stiffness here; they are constraints (see `constraints.ts`).
 *
 * @param directions - six directions with stiffness [N/m], [N·m/rad]
 * @param ends - places of its points [m]
 * @returns the element, in plan axes [N/m]
 * @source statics
 */
export function jointElement(
  directions: readonly JointDirection[],
  ends: { readonly from: Vec3; readonly to: Vec3 },
): Element {
  const K = new Float64Array(36);
  for (const { direction, acts, stiffness } of directions) {
    if (!Number.isFinite(stiffness) || stiffness === 0) continue;
    const shift = acts === 'translation' ? 0 : 3;
    for (let i = 0; i < 3; i++) {
      for (let j = 0; j < 3; j++)
        K[6 * (i + shift) + j + shift]! += stiffness * direction[i]! * direction[j]!;
    }
  }
  const a = subtract(between(ends.from, ends.to, 0.5), ends.to);
  const X = armMatrix(a);
  const S = new Float64Array(36);
  for (let i = 0; i < 6; i++) {
    for (let j = 0; j < 6; j++) {
      let sum = 0;
      for (let p = 0; p < 6; p++) {
        const x = X[p * 6 + i]!;
        if (x === 0) continue;
        for (let q = 0; q < 6; q++) sum += x * K[p * 6 + q]! * X[q * 6 + j]!;
      }
      S[i * 6 + j] = sum;
    }
  }
  const arm = subtract(ends.to, ends.from);
  return { stiffness: S, arm, weightMovement: new Float64Array(18), length: 0, centroid: scale(arm, 0.5) };
}

/**
 * Free movement of the `to` end of a joint whose springs are slack away from where it was set: the play at the middle,
 * carried to the end.
 *
 *     e₀ = X⁻¹ play
 *
 * @param play - movement of the `to` side against the `from` side, at the middle [m], [rad]
 * @param ends - places of its points [m]
 * @returns six numbers [m], [rad]
 * @source statics
 */
export function playAtEnd(play: Movement, ends: { readonly from: Vec3; readonly to: Vec3 }): Float64Array {
  const a = subtract(between(ends.from, ends.to, 0.5), ends.to);
  return Float64Array.from([...subtract(play.translation, cross(play.rotation, a)), ...play.rotation]);
}

/**
 * How far the `to` side of a joint has moved against its `from` side, at the middle between its points.
 *
 *     u_to + θ_to × (c − p_to) − u_from − θ_from × (c − p_from)
 *
 * @param ends - places of its points [m]
 * @param from - movement of the `from` point [m], [rad]
 * @param to - movement of the `to` point [m], [rad]
 * @returns movement across the joint [m], [rad]
 * @source statics
 */
export function movementAcross(
  ends: { readonly from: Vec3; readonly to: Vec3 },
  from: Movement,
  to: Movement,
): Movement {
  const middle = between(ends.from, ends.to, 0.5);
  const at = (moved: Movement, place: Vec3) =>
    add(moved.translation, cross(moved.rotation, subtract(middle, place)));
  return {
    translation: subtract(at(to, ends.to), at(from, ends.from)),
    rotation: subtract(to.rotation, from.rotation),
  };
}

/**
 * Matrix of a rigid arm: movement of its far end from the movement of its near end.
 *
 *     X = [1  −[a×]; 0  1]
 *
 * @param a - from the near end to the far end [m]
 * @returns 6 × 6 by rows [m]
 * @source statics
 */
export function armMatrix(a: Vec3): Float64Array {
  const X = new Float64Array(36);
  for (let i = 0; i < 6; i++) X[i * 7] = 1;
  X[4] = a[2];
  X[5] = -a[1];
  X[9] = -a[2];
  X[11] = a[0];
  X[15] = a[1];
  X[16] = -a[0];
  return X;
}
