import { EngineError } from '../issues/issue.js';
import type { Polytope } from './solid.js';
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
  ZERO,
} from './vector.js';

/**
 * The smallest solid with flat faces that holds all points. Every plane through three points that has all others on one
 * side is a face: slow for thousands of points, and never misled by points in one plane or on one line.
 *
 * @param points - points in any order; those inside are left out [m]
 * @returns corners and faces [m]
 * @throws EngineError `geometry.no-volume` when the points lie in one plane or nearly (a hundred-thousandth), or are more than 300
 */
export function polytopeOf(points: readonly Vec3[]): Polytope {
  const size = Math.max(0, ...points.map((point) => lengthOf(minus(point, points[0] ?? point))));
  const near = NEAR * size;
  const distinct = withoutRepeats(points, near);
  const failure = new EngineError('geometry.no-volume', { corners: distinct.length, most: MOST });
  if (distinct.length > MOST || !Number.isFinite(size)) throw failure;
  const faces = facesAround(distinct, near);
  if (faces.length < 4) throw failure;
  const used = [...new Set(faces.flat())].sort((one, other) => one - other);
  const renumbered = new Map(used.map((index, place) => [index, place]));
  return {
    kind: 'polytope',
    corners: distinct.filter((_, index) => renumbered.has(index)),
    faces: faces.map((face) => face.map((index) => renumbered.get(index) ?? 0)),
  };
}

function withoutRepeats(points: readonly Vec3[], near: number): readonly Vec3[] {
  const kept: Vec3[] = [];
  for (const point of points)
    if (!kept.some((other) => lengthOf(minus(point, other)) <= near)) kept.push(point);
  return kept;
}

function facesAround(points: readonly Vec3[], near: number): readonly (readonly number[])[] {
  const found = new Map<string, readonly number[]>();
  points.forEach((a, i) => {
    points.slice(i + 1).forEach((b, j) => {
      for (const c of points.slice(i + j + 2)) {
        const square = cross(minus(b, a), minus(c, a));
        const longest = Math.max(lengthOf(minus(b, a)), lengthOf(minus(c, a)));
        if (!(lengthOf(square) > (THIN / NEAR) * near * longest)) continue;
        const outward = outwardOf(points, a, directionOf(square), near);
        if (outward === undefined) continue;
        const members = points.flatMap((point, index) =>
          Math.abs(dot(minus(point, a), outward)) <= near ? [index] : [],
        );
        const key = members.join(' ');
        if (!found.has(key)) found.set(key, ringOf(points, members, outward, near));
      }
    });
  });
  return [...found.values()];
}

/** The direction square to a plane that has no point before it; nothing when there are points on both sides. */
function outwardOf(points: readonly Vec3[], on: Vec3, square: Vec3, near: number): Vec3 | undefined {
  let [before, behind] = [false, false];
  for (const point of points) {
    const height = dot(minus(point, on), square);
    if (height > near) before = true;
    if (height < -near) behind = true;
    if (before && behind) return undefined;
  }
  if (!before && !behind) return undefined;
  return before ? times(square, -1) : square;
}

/** Corners of a face in order, anticlockwise seen from outside; points on its sides or inside it are left out. */
function ringOf(
  points: readonly Vec3[],
  members: readonly number[],
  outward: Vec3,
  near: number,
): readonly number[] {
  const corners = members.map((index) => ({ index, point: points[index] ?? ZERO }));
  const middle = times(
    corners.reduce<Vec3>((sum, { point }) => plus(sum, point), ZERO),
    1 / corners.length,
  );
  const [first, second] = perpendicularsOf(outward);
  const round = corners
    .map(({ index, point }) => {
      const off = minus(point, middle);
      const [x, y] = [dot(off, first), dot(off, second)];
      return { index, x, y, angle: Math.atan2(y, x), reach: Math.hypot(x, y) };
    })
    .filter(({ reach }) => reach > near)
    .sort((one, other) => one.angle - other.angle);
  // The one farthest from the middle is a corner for certain: begin and end there.
  const start = round.reduce(
    (best, { reach }, place) => (reach > (round[best]?.reach ?? 0) ? place : best),
    0,
  );
  const kept: typeof round = [];
  for (const next of [...round.slice(start), ...round.slice(0, start + 1)]) {
    for (;;) {
      const last = kept.at(-1);
      const before = kept.at(-2);
      if (last === undefined || before === undefined) break;
      const [dx, dy] = [next.x - before.x, next.y - before.y];
      if ((last.x - before.x) * dy - (last.y - before.y) * dx > near * Math.hypot(dx, dy)) break;
      kept.pop();
    }
    kept.push(next);
  }
  return kept.slice(0, -1).map(({ index }) => index);
}

/** Distance against the size of the whole below which points are one, or in one plane [-]. */
const NEAR = 1e-9;

/** Height of a triangle against the size of the whole below which it does not tell its plane [-]. */
const THIN = 1e-5;

/** Largest number of points [-]. */
const MOST = 300;
