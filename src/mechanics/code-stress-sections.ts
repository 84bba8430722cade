/** Moments and axial force inside a member, from the wrench at its start and the weight along it. */
import { boreArea } from '../model/bore-area.js';
import type { Vec3, Wrench } from '../model/conventions.js';
import type { Frame, FrameBend, FrameCondition, FrameMember } from '../model/frame.js';
import { add, cross, dot, norm, scale, subtract, unit } from '../model/vector.js';

/** What one cross-section of a member carries. */
export interface SectionForce {
  /** Distance from the start as a share of the length [-]. */
  readonly share: number;
  /** Moment on the cut, global axes [N·m]. */
  readonly moment: Vec3;
  /** Force along the pipe, tension positive [N]. */
  readonly axial: number;
}

/** A stretch of member from its start: where it ends, which way it goes there, where its weight acts. */
interface Stretch {
  readonly at: Vec3;
  readonly tangent: Vec3;
  readonly centroid: Vec3;
  readonly length: number;
}

/**
 * Moment and axial force at a share of the length of a member, by balance of the stretch before the cut.
 *
 *     M = −[M₀ + (x₀ − x) × F₀ + (c − x) × w s]        N = −(F₀ + w s) · t
 *
 * @param frame - points of the member [m]
 * @param condition - gravity [m/s²], contents [kg/m³], covering
 * @param member - pipe or bend
 * @param start - wrench of the start point on the member, about that point [N] [N·m]
 * @param share - distance from the start as a share of the length [-]
 * @returns moment [N·m] and axial force [N] that the rest of the member exerts on the stretch
 * @source statics
 */
export function sectionForce(
  frame: Frame,
  condition: FrameCondition,
  member: FrameMember,
  start: Wrench,
  share: number,
): SectionForce {
  const from = frame.points[member.from] as Vec3;
  const { at, tangent, centroid, length } = stretchTo(frame, member, share);
  const weight = scale(weightPerLength(condition, member), length);
  const carried = add(start.force, weight);
  const moment = add(
    add(start.moment, cross(subtract(from, at), start.force)),
    cross(subtract(centroid, at), weight),
  );
  return { share, moment: scale(moment, -1), axial: -dot(carried, tangent) };
}

/**
 * Share of the length of a straight pipe at which its moment in the plane of its own weight is stationary.
 *
 * @param frame - points of the member [m]
 * @param condition - gravity [m/s²], contents [kg/m³], covering
 * @param member - pipe or bend
 * @param start - wrench of the start point on the member [N] [N·m]
 * @returns share between 0 and 1 [-], or undefined on a bend, on a riser, or where it lies outside
 * @source statics
 */
export function largestMomentShare(
  frame: Frame,
  condition: FrameCondition,
  member: FrameMember,
  start: Wrench,
): number | undefined {
  if (member.kind === 'bend') return undefined;
  const run = subtract(frame.points[member.to] as Vec3, frame.points[member.from] as Vec3);
  const turn = cross(unit(run), weightPerLength(condition, member));
  const square = dot(turn, turn);
  if (!(square > 0)) return undefined;
  const share = -dot(cross(unit(run), start.force), turn) / square / norm(run);
  return share > 0 && share < 1 ? share : undefined;
}

/**
 * Weight along a member, as the frame counts it: metal, covering where it is on, contents where they are in.
 *
 * @param condition - gravity [m/s²], contents [kg/m³], covering
 * @param member - mass along it [kg/m], tube [m]
 * @returns force per length, global axes [N/m]
 * @source statics
 */
export function weightPerLength(condition: FrameCondition, member: FrameMember): Vec3 {
  const isDrained = condition.drained.includes(member.contentsGroup);
  const contents = isDrained ? 0 : condition.contentsDensity * boreArea(member.tube);
  const covering = condition.covering ? member.mass.covering : 0;
  return scale(condition.gravity, member.mass.metal + covering + contents);
}

function stretchTo(frame: Frame, member: FrameMember, share: number): Stretch {
  const from = frame.points[member.from] as Vec3;
  const to = frame.points[member.to] as Vec3;
  if (member.kind === 'bend') return arcTo(member, from, to, share);
  const run = subtract(to, from);
  const at = add(from, scale(run, share));
  return {
    at,
    tangent: unit(run),
    centroid: add(from, scale(run, share / 2)),
    length: norm(run) * share,
  };
}

function arcTo({ centre }: FrameBend, from: Vec3, to: Vec3, share: number): Stretch {
  const spoke = subtract(from, centre);
  const radius = norm(spoke);
  const out = unit(spoke);
  const last = subtract(to, centre);
  const along = unit(subtract(last, scale(out, dot(last, out))));
  const angle = Math.atan2(dot(last, along), dot(last, out)) * share;
  const place = (x: number, y: number): Vec3 =>
    add(centre, add(scale(out, radius * x), scale(along, radius * y)));
  // The centroid of an arc from 0 to φ lies at (sin φ / φ, (1 − cos φ) / φ) of the radius.
  const centroid = angle === 0 ? from : place(Math.sin(angle) / angle, (1 - Math.cos(angle)) / angle);
  return {
    at: place(Math.cos(angle), Math.sin(angle)),
    tangent: add(scale(out, -Math.sin(angle)), scale(along, Math.cos(angle))),
    centroid,
    length: radius * angle,
  };
}
