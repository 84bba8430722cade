import type { Vec3 } from '../model/conventions.js';
import type { FrameJoint } from '../model/frame.js';
import { between, cross, dot, scale, subtract, unit } from '../model/vector.js';
import { type Element, turnMatrix } from './element.js';

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
 *     S = Xᵀ K X,   X = [1  −[a×]; 0  1] from the `to` point to the middle
 *
 * Rigid directions have no stiffness here; they are constraints (see `constraints.ts`).
 *
 * @param joint - stiffnesses [N/m], [N·m/rad]
 * @param ends - places of its points [m]
 * @returns the element, in plan axes [N/m]
 * @source statics
 */
export function jointElement(joint: FrameJoint, ends: { readonly from: Vec3; readonly to: Vec3 }): Element {
  const axis = jointAxis(joint, ends);
  const directions = jointDirections(joint, axis);
  const elastic = (stiffness: number) => (Number.isFinite(stiffness) ? stiffness : 0);
  const local = new Float64Array(36);
  [joint.axial, joint.lateral, joint.lateral, joint.torsion, joint.bending, joint.bending].forEach((k, i) => {
    local[i * 7] = elastic(k);
  });
  const K = turnMatrix(local, {
    along: axis,
    inPlane: directions[1]!.direction,
    across: directions[2]!.direction,
  });
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
