import type { Disc } from './convex-body.js';
import { rimPoint } from './convex-body.js';
import {
  cross,
  directionOf,
  dot,
  lengthOf,
  minus,
  perpendicularsOf,
  plus,
  times,
  type Vec3,
} from './vector.js';

/** The part of a difference of two bodies that is smooth about a direction. */
export interface SmoothPart {
  /** Corner it hangs on [m]. */
  readonly corner: Vec3;
  readonly discs: readonly Disc[];
  /** Unit vector the direction must stay square to, when the part belongs to an edge [-]. */
  readonly edge?: Vec3;
}

/**
 * Direction in which a smooth part reaches least, from a start nearby, by Newton's method on the unit sphere.
 *
 *     h(n) = n·q + Σ r |n × u|                    reach; q corner, r and u radius and axis of a disc
 *     gradient along the sphere: p(n) − h n        p the farthest point
 *     second derivative:  Σ r / |n × u| t tᵀ − h   t along the rim
 *
 * @param part - corner, discs and edge [m]
 * @param start - unit vector to start from [-]
 * @returns unit vector with a reach that is never larger than at the start [-]
 */
export function refineDirection(part: SmoothPart, start: Vec3): Vec3 {
  let direction = part.edge === undefined ? start : squareTo(start, part.edge);
  let reach = smoothReach(part, direction);
  for (let round = 0; round < ROUNDS; round++) {
    const step = newtonStep(part, direction, reach);
    const size = lengthOf(step);
    if (!(size > SMALLEST_TURN && size < Number.POSITIVE_INFINITY)) break;
    let factor = Math.min(1, LARGEST_TURN / size);
    let better: Vec3 | undefined;
    for (let half = 0; half < HALVINGS && better === undefined; half++, factor /= 2) {
      const tried = directionOf(plus(direction, times(step, factor)));
      const there = smoothReach(part, tried);
      if (there < reach) [better, reach] = [tried, there];
    }
    if (better === undefined) break;
    direction = better;
  }
  return direction;
}

function smoothReach({ corner, discs }: SmoothPart, direction: Vec3): number {
  return discs.reduce(
    (reach, disc) => reach + disc.radius * lengthOf(cross(direction, disc.axis)),
    dot(corner, direction),
  );
}

/** Turn that Newton's method asks for, or one downhill where the second derivative is not positive. */
function newtonStep({ corner, discs, edge }: SmoothPart, n: Vec3, reach: number): Vec3 {
  const farthest = discs.reduce((point, disc) => plus(point, rimPoint(disc, n)), corner);
  const [first, second] = edge === undefined ? perpendicularsOf(n) : [cross(edge, n), undefined];
  let [xx, xy, yy] = [-reach, 0, -reach];
  for (const { axis, radius } of discs) {
    const rim = cross(axis, n);
    const size = lengthOf(rim);
    if (!(size > ON_AXIS)) continue;
    const factor = radius / size;
    const [x, y] = [dot(rim, first) / size, second === undefined ? 0 : dot(rim, second) / size];
    xx += factor * x * x;
    xy += factor * x * y;
    yy += factor * y * y;
  }
  const down: Vec3 = [-dot(farthest, first), second === undefined ? 0 : -dot(farthest, second), 0];
  if (second === undefined) return times(first, xx > 0 ? down[0] / xx : Math.sign(down[0]) * LARGEST_TURN);
  const determinant = xx * yy - xy * xy;
  const [x, y] =
    xx > 0 && determinant > 0
      ? [(yy * down[0] - xy * down[1]) / determinant, (xx * down[1] - xy * down[0]) / determinant]
      : [down[0] / Math.abs(reach), down[1] / Math.abs(reach)];
  return plus(times(first, x), times(second, y));
}

function squareTo(start: Vec3, edge: Vec3): Vec3 {
  const square = minus(start, times(edge, dot(start, edge)));
  return lengthOf(square) > 0 ? directionOf(square) : perpendicularsOf(edge)[0];
}

/** Rounds of Newton's method [-]. */
const ROUNDS = 40;

/** How often a step that goes too far is halved [-]. */
const HALVINGS = 30;

/** Sine below which a direction is that of the axis, where the rim has no one side [-]. */
const ON_AXIS = 1e-12;

/** Turn below which nothing is gained [rad]. */
const SMALLEST_TURN = 1e-16;

/** Largest turn in one step [rad]. */
const LARGEST_TURN = 0.3;
