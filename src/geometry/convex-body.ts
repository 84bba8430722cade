import { EngineError } from '../issues/issue.js';
import type { ConvexSolid, TurnedBox } from './solid.js';
import { cross, directionOf, dot, lengthOf, minus, plus, times, type Vec3 } from './vector.js';

/** A flat round plate about the origin. */
export interface Disc {
  /** Unit vector square to the plate [-]. */
  readonly axis: Vec3;
  /** [m] */
  readonly radius: number;
}

/**
 * A convex solid as the sum of three simple ones: the hull of corners, a disc and a ball. What is told of it is how far
 * it reaches in a direction, which is the sum of what the three reach.
 */
export interface ConvexBody {
  readonly solid: ConvexSolid;
  /** [m] */
  readonly corners: readonly Vec3[];
  readonly disc?: Disc;
  /** Radius of the ball [m]. */
  readonly rounding: number;
  /** True when only its plan counts: it is taken as its shadow on the plane at height zero. */
  readonly flat?: boolean;
}

/**
 * A convex solid as the sum of corners, disc and ball.
 *
 * @param solid - any convex solid [m]
 * @returns the sum [m]
 * @throws EngineError `geometry.not-a-solid` when a size is negative or a number is not finite
 */
export function bodyOf(solid: ConvexSolid): ConvexBody {
  const body = { solid, ...partsOf(solid) };
  const numbers = [body.rounding, body.disc?.radius ?? 0, ...body.corners.flat()];
  if (body.corners.length === 0 || !(body.rounding >= 0) || !numbers.every(Number.isFinite))
    throw new EngineError('geometry.not-a-solid', { kind: solid.kind });
  return body;
}

type Parts = Pick<ConvexBody, 'corners' | 'disc' | 'rounding'>;

function partsOf(solid: ConvexSolid): Parts {
  switch (solid.kind) {
    case 'box':
      if (!solid.low.every((low, axis) => low <= (solid.high[axis] ?? Number.NaN)))
        throw new EngineError('geometry.not-a-solid', { kind: solid.kind });
      return { corners: boxCorners(solid.low, solid.high), rounding: 0 };
    case 'turned-box':
      if (!solid.size.every((size) => size >= 0))
        throw new EngineError('geometry.not-a-solid', { kind: solid.kind });
      return { corners: turnedBoxCorners(solid), rounding: 0 };
    case 'cylinder': {
      if (!(solid.radius >= 0) || !(lengthOf(minus(solid.to, solid.from)) > 0))
        throw new EngineError('geometry.not-a-solid', { kind: solid.kind });
      const axis = directionOf(minus(solid.to, solid.from));
      return { corners: [solid.from, solid.to], disc: { axis, radius: solid.radius }, rounding: 0 };
    }
    case 'capsule':
      return { corners: [solid.from, solid.to], rounding: solid.radius };
    case 'polytope':
      return { corners: solid.corners, rounding: 0 };
    case 'swept': {
      const base = partsOf(solid.solid);
      let corners = base.corners;
      for (const vector of solid.along)
        corners = corners.concat(corners.map((corner) => plus(corner, vector)));
      return { ...base, corners };
    }
  }
}

function boxCorners(low: Vec3, high: Vec3): readonly Vec3[] {
  return [low[2], high[2]].flatMap((z) =>
    [low[1], high[1]].flatMap((y) => [low[0], high[0]].map((x): Vec3 => [x, y, z])),
  );
}

/**
 * Unit vectors along the width and the depth of a turned box.
 *
 * @param bearing - clockwise from north seen from above [rad]
 * @returns width (east at zero) and depth (north at zero) [-]
 */
export function axesAtBearing(bearing: number): readonly [Vec3, Vec3] {
  const [sine, cosine] = [Math.sin(bearing), Math.cos(bearing)];
  return [
    [cosine, -sine, 0],
    [sine, cosine, 0],
  ];
}

function turnedBoxCorners({ centre, size, bearing }: TurnedBox): readonly Vec3[] {
  const [wide, deep] = axesAtBearing(bearing);
  const half = times(size, 0.5);
  return boxCorners(times(half, -1), half).map(([x, y, z]) =>
    plus(centre, plus(plus(times(wide, x), times(deep, y)), [0, 0, z])),
  );
}

/** A point of a body that reaches farthest in a direction, and the corner it belongs to. */
export interface FarthestPoint {
  /** [m] */
  readonly point: Vec3;
  /** [m] */
  readonly corner: Vec3;
}

/**
 * A point of the body without its ball that reaches farthest in a direction; exactly along the axis of a disc, the
 * middle of it.
 *
 * @param body - the body [m]
 * @param towards - direction of any length [-]
 * @returns the farthest point and its corner [m]
 */
export function farthestPoint(body: ConvexBody, towards: Vec3): FarthestPoint {
  const direction: Vec3 = body.flat ? [towards[0], towards[1], 0] : towards;
  let corner: Vec3 = [0, 0, 0];
  let reach = Number.NEGATIVE_INFINITY;
  for (const each of body.corners) {
    const here = dot(each, direction);
    if (here > reach) [corner, reach] = [each, here];
  }
  const point = body.disc === undefined ? corner : plus(corner, rimPoint(body.disc, direction));
  return { corner, point: body.flat ? [point[0], point[1], 0] : point };
}

/**
 * Point of a disc that reaches farthest in a direction.
 *
 * @param disc - the disc [m]
 * @param towards - direction of any length [-]
 * @returns a point on the rim, or the middle when the direction is the axis [m]
 */
export function rimPoint({ axis, radius }: Disc, towards: Vec3): Vec3 {
  // Twice crossing loses fewer digits near the axis than taking the part along the axis away.
  const across = cross(cross(axis, towards), axis);
  const length = lengthOf(across);
  return length > 0 ? times(across, radius / length) : [0, 0, 0];
}

/**
 * How far the body without its ball reaches in a direction.
 *
 * @param body - the body [m]
 * @param towards - unit vector [-]
 * @returns largest inner product of a point with the direction [m]
 */
export function reachOf(body: ConvexBody, towards: Vec3): number {
  const direction: Vec3 = body.flat ? [towards[0], towards[1], 0] : towards;
  let reach = Number.NEGATIVE_INFINITY;
  for (const corner of body.corners) reach = Math.max(reach, dot(corner, direction));
  return body.disc === undefined
    ? reach
    : reach + body.disc.radius * lengthOf(cross(direction, body.disc.axis));
}
