import { boundingBox } from './bounding-box.js';
import { bodyOf, type ConvexBody } from './convex-body.js';
import { coreGap } from './core-gap.js';
import { facesOf } from './exit-directions.js';
import { piecesOf } from './pieces.js';
import type { Box, Capsule, ConvexSolid, NamedSolid, Polytope } from './solid.js';
import { minus, plus, times, type Vec3, ZERO } from './vector.js';

/** A place in plan: east, north [m]. */
export type PlanPoint = readonly [number, number];

/** Shadow in plan of what stands between two heights, by name. */
export interface PlanBody {
  readonly name: string;
  readonly body: ConvexBody;
}

/**
 * Shadows in plan of all pieces of obstacles that reach between two heights. Boxes, upright cylinders and polytopes are
 * cut exactly at the heights, sloping pipes a radius beyond them; sloping cylinders and swept round solids are taken
 * whole, which can only make the way look narrower.
 *
 * @param obstacles - solids by name [m]
 * @param room - its lowest and highest points give the heights [m]
 * @returns one shadow for each piece [m]
 */
export function planBodies(obstacles: readonly NamedSolid[], room: Box): readonly PlanBody[] {
  const [low, high] = [room.low[2], room.high[2]];
  return obstacles.flatMap(({ name, solid }) =>
    piecesOf(solid).flatMap((piece) => {
      const box = boundingBox(piece);
      if (!(box.low[2] < high - SLIGHT && box.high[2] > low + SLIGHT)) return [];
      return [{ name, body: { ...bodyOf(piece), ...cutBetween(piece, low, high), flat: true } }];
    }),
  );
}

function cutBetween(piece: ConvexSolid, low: number, high: number): Partial<ConvexBody> {
  if (piece.kind === 'polytope') return { corners: cutPolytope(piece, low, high) };
  if (piece.kind === 'capsule') return { corners: cutPipe(piece, low, high) };
  return {};
}

function cutPolytope(polytope: Polytope, low: number, high: number): readonly Vec3[] {
  return facesOf(polytope).flatMap((face) =>
    face.flatMap((corner, index) => {
      const next = face[(index + 1) % face.length] ?? corner;
      const inside = corner[2] >= low && corner[2] <= high ? [corner] : [];
      return [...inside, ...[low, high].flatMap((height) => crossing(corner, next, height))];
    }),
  );
}

function crossing(from: Vec3, to: Vec3, height: number): readonly Vec3[] {
  const share = (height - from[2]) / (to[2] - from[2]);
  return share > 0 && share < 1 ? [plus(from, times(minus(to, from), share))] : [];
}

function cutPipe({ from, to, radius }: Capsule, low: number, high: number): readonly Vec3[] {
  const heights = [low - radius, high + radius];
  const within = [from, to].filter(([, , up]) => up >= low - radius && up <= high + radius);
  return [...within, ...heights.flatMap((height) => crossing(from, to, height))];
}

/**
 * Line in plan from one place to another, as something that has a distance.
 *
 * @param from - one end [m]
 * @param to - other end [m]
 * @returns shadow of the line [m]
 */
export function planLine(from: PlanPoint, to: PlanPoint): ConvexBody {
  const [a, b]: readonly [Vec3, Vec3] = [
    [from[0], from[1], 0],
    [to[0], to[1], 0],
  ];
  const solid: Capsule = { kind: 'capsule', from: a, to: b, radius: 0 };
  return { solid, corners: [a, b], rounding: 0, flat: true };
}

/**
 * Distance in plan of two shadows.
 *
 * @param a - first shadow [m]
 * @param b - second shadow [m]
 * @returns distance, zero when they touch or overlap [m]
 */
export function planDistance(a: ConvexBody, b: ConvexBody): number {
  return Math.max(0, coreGap(a, b, ZERO).distance - a.rounding - b.rounding);
}

/** Depth between the heights that counts as none, so that what stands on the floor below is not in the way [m]. */
const SLIGHT = 1e-9;
