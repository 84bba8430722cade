import { EngineError } from '../../../issues/issue.js';
import type { Vec3 } from '../../../model/conventions.js';
import type { Frame, FrameBend, FramePipe } from '../../../model/frame/frame.js';
import { add, between, norm, scale, subtract } from '../../../model/vector.js';
import { arcOf } from '../elements/bend-element.js';
import type { Axes } from '../elements/element.js';
import { pipeAxes } from '../elements/pipe-element.js';

/** Line of a member by share of its length from its `from` end. */
export interface MemberPath {
  /** [m] */
  readonly length: number;
  /** Place at a share of the length [m]. */
  readonly place: (share: number) => Vec3;
  /**
   * Axes of the cross-section there: along the member; in its plane (towards the centre of a bend; up, or north on a
   * riser, for a pipe); and square to its plane.
   */
  readonly axes: (share: number) => Axes;
  /** Middle of the stretch between two shares: where its weight acts [m]. */
  readonly centroid: (from: number, to: number) => Vec3;
}

/**
 * Finds a member by its name.
 *
 * @param frame - the frame
 * @param name - of the member [-]
 * @returns the member
 * @throws EngineError `mechanics.unknown-name`; data: `at`, `name`
 * @source statics
 */
export function memberNamed(frame: Frame, name: string): FramePipe | FrameBend {
  const member = frame.members.find((each) => each.name === name);
  if (member === undefined) throw new EngineError('mechanics.unknown-name', { at: 'members', name });
  return member;
}

/**
 * The line of a pipe or bend.
 *
 * @param frame - for the places of its points [m]
 * @param member - pipe or bend
 * @returns places, axes and centroids along it [m]
 * @throws EngineError as `arcOf`
 * @source statics
 */
export function memberPath(frame: Frame, member: FramePipe | FrameBend): MemberPath {
  const from = frame.points[member.from]!;
  const to = frame.points[member.to]!;
  if (member.kind === 'pipe') {
    const axes = pipeAxes(subtract(to, from));
    return {
      length: norm(subtract(to, from)),
      place: (share) => between(from, to, share),
      axes: () => axes,
      centroid: (a, b) => between(from, to, (a + b) / 2),
    };
  }
  const arc = arcOf(member.name, { from, to, centre: member.centre });
  const { radius, angle } = arc;
  const toPlan = (x: number, y: number): Vec3 => add(scale(arc.axes.along, x), scale(arc.axes.inPlane, y));
  return {
    length: radius * angle,
    place: (share) =>
      add(arc.centre, toPlan(radius * Math.cos(share * angle), radius * Math.sin(share * angle))),
    axes: (share) => {
      const c = Math.cos(share * angle);
      const s = Math.sin(share * angle);
      return { along: toPlan(-s, c), inPlane: toPlan(-c, -s), across: arc.axes.across };
    },
    centroid: (a, b) => {
      const middle = ((a + b) / 2) * angle;
      const half = ((b - a) / 2) * angle;
      const distance = half === 0 ? radius : (radius * Math.sin(half)) / half;
      return add(arc.centre, toPlan(distance * Math.cos(middle), distance * Math.sin(middle)));
    },
  };
}
