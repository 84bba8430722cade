import { largestOnUnit } from '../../../algebra/largest-on-unit.js';
import { EngineError } from '../../../issues/issue.js';
import type { Wrench } from '../../../model/conventions.js';
import type { Frame, FrameBend, FrameCondition, FramePipe } from '../../../model/frame/frame.js';
import { dot, norm, scale, subtract } from '../../../model/vector.js';
import { addWrench, movedWrench } from '../elements/rigid-arm.js';
import { massPerLength } from '../present-mass.js';
import type { ConditionResponse } from '../response.js';
import { type MemberPath, memberNamed, memberPath } from './member-path.js';

/** What one cross-section carries: the part after the section acting on the part before it. */
export interface SectionForces {
  /** Place as a share of the length from the `from` end [-]. */
  readonly share: number;
  /** Along the member, tension positive [N]. */
  readonly axial: number;
  /** Along the in-plane axis, and square to the plane (see `MemberPath.axes`) [N]. */
  readonly shearInPlane: number;
  readonly shearOutOfPlane: number;
  /** About the member [N·m]. */
  readonly torsion: number;
  /** About the axis square to the plane: bends a bend in its plane, a level pipe up and down [N·m]. */
  readonly bendingInPlane: number;
  /** About the in-plane axis [N·m]. */
  readonly bendingOutOfPlane: number;
  /** Resultant of the two bending moments, and of all three moments [N·m]. */
  readonly bending: number;
  readonly moment: number;
  /** The same in plan axes, about the middle of the section. */
  readonly wrench: Wrench;
}

/**
 * What cross-sections of a member carry, exact with its distributed weight.
 *
 *     wrench at x = wrench of the `to` point, moved to x, + weight of the stretch from x to `to`
 *
 * @param frame - the frame solved
 * @param condition - the condition solved, for the weight
 * @param response - its response
 * @param member - name of the member [-]
 * @param shares - places as shares of the length from the `from` end [-]
 * @returns one entry per share [N], [N·m]
 * @throws EngineError `mechanics.unknown-name`
 * @source beam-theory
 */
export function memberForces(
  frame: Frame,
  condition: FrameCondition,
  response: ConditionResponse,
  member: string,
  shares: readonly number[],
): readonly SectionForces[] {
  const found = memberNamed(frame, member);
  const path = memberPath(frame, found);
  const at = sectionWrenches(frame, condition, response, found, path);
  return shares.map((share) => sectionForces(path, share, at(share)));
}

/**
 * Where a member carries its largest moment (resultant of torsion and both bending moments).
 *
 * @param frame - the frame solved
 * @param condition - the condition solved
 * @param response - its response
 * @param member - name of the member [-]
 * @returns forces of that section [N], [N·m]
 * @throws EngineError `mechanics.unknown-name`
 * @source beam-theory
 */
export function largestMoment(
  frame: Frame,
  condition: FrameCondition,
  response: ConditionResponse,
  member: string,
): SectionForces {
  const found = memberNamed(frame, member);
  const path = memberPath(frame, found);
  const at = sectionWrenches(frame, condition, response, found, path);
  const largest = largestOnUnit((share) => norm(at(share).moment), 32);
  return sectionForces(path, largest.at, at(largest.at));
}

/**
 * Wrench on the cross-section of a member at any share of its length, in plan axes, about the section.
 *
 * @param frame - the frame solved
 * @param condition - for the weight
 * @param response - for the end wrenches [N], [N·m]
 * @param member - pipe or bend
 * @param path - its line
 * @returns wrench by share: what lies after the section, on what lies before it [N], [N·m]
 * @throws EngineError `mechanics.unknown-name` when the response does not hold the member
 * @source statics
 */
export function sectionWrenches(
  frame: Frame,
  condition: FrameCondition,
  response: ConditionResponse,
  member: FramePipe | FrameBend,
  path: MemberPath,
): (share: number) => Wrench {
  const ends = response.members[member.name];
  const end = frame.points[member.to];
  if (ends === undefined || end === undefined) {
    throw new EngineError('mechanics.unknown-name', { at: response.name, name: member.name });
  }
  const perLength = scale(condition.gravity, massPerLength(member, condition));
  return (share) => {
    const here = path.place(share);
    const weight: Wrench = { force: scale(perLength, path.length * (1 - share)), moment: [0, 0, 0] };
    return addWrench(
      movedWrench(ends.to, subtract(end, here)),
      movedWrench(weight, subtract(path.centroid(share, 1), here)),
    );
  };
}

function sectionForces(path: MemberPath, share: number, wrench: Wrench): SectionForces {
  const { along, inPlane, across } = path.axes(share);
  const bendingInPlane = dot(wrench.moment, across);
  const bendingOutOfPlane = dot(wrench.moment, inPlane);
  return {
    share,
    axial: dot(wrench.force, along),
    shearInPlane: dot(wrench.force, inPlane),
    shearOutOfPlane: dot(wrench.force, across),
    torsion: dot(wrench.moment, along),
    bendingInPlane,
    bendingOutOfPlane,
    bending: Math.hypot(bendingInPlane, bendingOutOfPlane),
    moment: norm(wrench.moment),
    wrench,
  };
}
