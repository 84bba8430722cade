/** Outlines on paper of solids of the room, and what two outlines share. */
import {
  type Capsule,
  type ConvexSolid,
  type Cylinder,
  directionOf,
  lengthOf,
  minus,
  perpendicularsOf,
  piecesOf,
  plus,
  type Solid,
  type Box as SolidBox,
  type TurnedBox,
  times,
  type Vec3,
} from '../../geometry/index.js';
import type { Xy } from '../drawing.js';
import { type Projection, project } from '../isometric/projection.js';
import type { Box } from '../plane.js';

/** Points round a rim. */
const ROUND = 24;

/**
 * Outlines of the pieces of a solid.
 *
 * @param solid - the solid [m]
 * @param projection - view, scale and origin
 * @returns one convex outline a piece, on paper [-]
 */
export function outlinesOf(solid: Solid, projection: Projection): readonly (readonly Xy[])[] {
  return piecesOf(solid).map((piece) => hullOf(pointsOf(piece).map((point) => project(projection, point))));
}

function pointsOf(piece: ConvexSolid): readonly Vec3[] {
  switch (piece.kind) {
    case 'box':
      return cornersOf(piece);
    case 'turned-box':
      return turnedCorners(piece);
    case 'polytope':
      return piece.corners;
    case 'cylinder':
    case 'capsule':
      return roundPoints(piece);
    case 'swept':
      return piece.along.reduce<readonly Vec3[]>(
        (points, vector) => points.concat(points.map((point) => plus(point, vector))),
        roundPoints(piece.solid),
      );
  }
}

function cornersOf({ low, high }: SolidBox): readonly Vec3[] {
  return [0, 1, 2, 3, 4, 5, 6, 7].map(
    (bits): Vec3 => [bits & 1 ? high[0] : low[0], bits & 2 ? high[1] : low[1], bits & 4 ? high[2] : low[2]],
  );
}

function turnedCorners({ centre, size, bearing }: TurnedBox): readonly Vec3[] {
  const [cos, sin] = [Math.cos(bearing), Math.sin(bearing)];
  const half = times(size, 0.5);
  return cornersOf({ kind: 'box', low: times(half, -1), high: half }).map(
    ([x, y, z]): Vec3 => plus(centre, [x * cos + y * sin, y * cos - x * sin, z]),
  );
}

function roundPoints({ kind, from, to, radius }: Cylinder | Capsule): readonly Vec3[] {
  const run = minus(to, from);
  const axis: Vec3 = lengthOf(run) > 0 ? directionOf(run) : [0, 0, 1];
  const [first, second] = perpendicularsOf(axis);
  const rim = (centre: Vec3): readonly Vec3[] =>
    Array.from({ length: ROUND }, (_, index): Vec3 => {
      const turn = (2 * Math.PI * index) / ROUND;
      return plus(
        centre,
        plus(times(first, radius * Math.cos(turn)), times(second, radius * Math.sin(turn))),
      );
    });
  const rims = [...rim(from), ...rim(to)];
  if (kind === 'cylinder') return rims;
  const ball = (centre: Vec3): readonly Vec3[] =>
    Array.from({ length: ROUND }, (_, index) => index).flatMap((index) => {
      const turn = (2 * Math.PI * index) / ROUND;
      const round = times(axis, radius * Math.sin(turn));
      return [first, second].map((side) => plus(centre, plus(round, times(side, radius * Math.cos(turn)))));
    });
  return [...rims, ...ball(from), ...ball(to)];
}

/** Smallest convex outline round places, by the two chains of least slope. */
function hullOf(places: readonly Xy[]): readonly Xy[] {
  const sorted = [...places].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const chain = (points: readonly Xy[]): readonly Xy[] => {
    const kept: Xy[] = [];
    for (const point of points) {
      while (kept.length > 1 && turn(kept.at(-2) as Xy, kept.at(-1) as Xy, point) <= 1e-9) kept.pop();
      kept.push(point);
    }
    return kept.slice(0, -1);
  };
  return [...chain(sorted), ...chain([...sorted].reverse())];
}

function turn(a: Xy, b: Xy, c: Xy): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}

/**
 * What two convex outlines share.
 *
 * @param subject - outline [-]
 * @param clip - convex outline, in the same sense round as `outlinesOf` gives [-]
 * @returns outline; nothing where they are apart [-]
 */
export function sharedOutline(subject: readonly Xy[], clip: readonly Xy[]): readonly Xy[] | undefined {
  let rest = subject;
  clip.forEach((from, index) => {
    const to = clip[(index + 1) % clip.length] ?? from;
    const inside = (point: Xy): boolean => turn(from, to, point) >= 0;
    rest = rest.flatMap((point, at): readonly Xy[] => {
      const next = rest[(at + 1) % rest.length] ?? point;
      const own = inside(point) ? [point] : [];
      return inside(point) === inside(next) ? own : [...own, crossing(point, next, from, to)];
    });
  });
  return rest.length > 2 ? rest : undefined;
}

function crossing(a: Xy, b: Xy, from: Xy, to: Xy): Xy {
  const [before, after] = [turn(from, to, a), turn(from, to, b)];
  const share = before / (before - after);
  return [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
}

/** A window as an outline, in the sense round of `outlinesOf`. @param window - box [-] @returns its corners [-] */
export function windowOutline({ left, right, top, bottom }: Box): readonly Xy[] {
  return [
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ];
}

/** Smallest box round places. @param places - at least one [-] @returns box [-] */
export function boxRound(places: readonly Xy[]): Box {
  const [xs, ys] = [places.map((place) => place[0]), places.map((place) => place[1])];
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}
