import { wrenchOnBody } from '../../mechanics/frame/recovery/wrench-on-body.js';
import type { Wrench } from '../../model/conventions.js';
import type { PlacedFlangeJoint } from '../../model/layout/layout.js';
import type { SolvedCondition } from '../conditions.js';
import type { Subject } from '../subject.js';

/** What tries to open a flange joint. */
export interface JointLoad {
  /** Resultant of the two moments that bend the joint [N·m]. */
  readonly bendingMoment: number;
  /** Pull along the pipe, zero when it pushes [N]. */
  readonly tension: number;
}

/**
 * Bending moment and pull at the gasket, read on the rigid body on the pump's side of the joint, or where that side is
 * no rigid body, on the other side.
 *
 * @param joint - flange joint
 * @param condition - solved condition
 * @param subject - layout with its frame
 * @returns moment [N·m] and pull [N], or undefined where no rigid body meets the joint
 */
export function jointLoad(
  joint: PlacedFlangeJoint,
  condition: SolvedCondition,
  subject: Subject,
): JointLoad | undefined {
  const { frame } = subject.layout;
  const meets = (name: string | undefined): boolean =>
    frame.bodies.some((body) => body.name === name && body.points.includes(joint.point));
  // Seen from the near body the pipe beyond pulls along the axis; seen from the far body, against it.
  const far = joint.sides[1].owner;
  const read = meets(joint.body)
    ? { body: joint.body, outward: 1 }
    : meets(far)
      ? { body: far, outward: -1 }
      : undefined;
  if (read === undefined) return undefined;
  const wrench = wrenchOnBody(frame, condition.acts, condition.solved, read.body, joint.point);
  const [x, y, z] = joint.axis;
  const along = ([a, b, c]: Wrench['force']): number => a * x + b * y + c * z;
  const twist = along(wrench.moment);
  return {
    bendingMoment: Math.hypot(
      wrench.moment[0] - twist * x,
      wrench.moment[1] - twist * y,
      wrench.moment[2] - twist * z,
    ),
    tension: Math.max(0, read.outward * along(wrench.force)),
  };
}
