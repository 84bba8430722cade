import { type ConvexBody, farthestPoint, reachOf } from './convex-body.js';
import { type DifferencePoint, mixOf, nearestOfSimplex } from './nearest-of-simplex.js';
import { refineDirection } from './refine-direction.js';
import { cross, directionOf, dot, lengthOf, minus, plus, times, type Vec3, ZERO } from './vector.js';

/** How far two bodies without their balls are apart. */
export interface CoreGap {
  /** Zero when they share a point [m]. */
  readonly distance: number;
  /** How much smaller the distance could be at most [m]. */
  readonly uncertainty: number;
  /** Nearest points; one common point when they share one [m]. */
  readonly onA: Vec3;
  readonly onB: Vec3;
  /** Unit vector from the second to the first; zero when they share a point [-]. */
  readonly direction: Vec3;
}

/**
 * Distance of two convex bodies without their balls, with the first moved. The point of their difference nearest to the
 * origin is approached through simplices of its farthest points; every round gives an upper bound (the point found) and
 * a lower one (the plane through the farthest point), and it ends when the two meet.
 *
 * @param a - first body [m]
 * @param b - second body [m]
 * @param shift - movement of the first [m]
 * @returns distance, uncertainty and nearest points, those on the first after its movement [m]
 * After Gilbert, Johnson and Keerthi, IEEE Journal of Robotics and Automation 4 (1988) 193.
 */
export function coreGap(a: ConvexBody, b: ConvexBody, shift: Vec3): CoreGap {
  const farthest = (towards: Vec3): DifferencePoint => {
    const ofA = farthestPoint(a, towards);
    const ofB = farthestPoint(b, times(towards, -1));
    const onA = plus(ofA.point, shift);
    const corner = minus(plus(ofA.corner, shift), ofB.corner);
    return { point: minus(onA, ofB.point), onA, onB: ofB.point, corner };
  };
  const start = farthest([1, 0, 0]);
  let carriers: readonly DifferencePoint[] = [start];
  let shares: readonly number[] = [1];
  let nearest = start.point;
  let uncertainty = lengthOf(nearest);
  for (let round = 0; round < ROUNDS; round++) {
    const distance = lengthOf(nearest);
    if (distance <= TOUCH)
      return { ...pointsOf(carriers, shares), distance: 0, uncertainty: 0, direction: ZERO };
    const next = farthest(times(nearest, -1 / distance));
    uncertainty = Math.min(uncertainty, Math.max(0, distance - dot(next.point, nearest) / distance));
    if (uncertainty <= ENOUGH * Math.max(1, distance)) break;
    const known = carriers.some(({ point }) => lengthOf(minus(point, next.point)) === 0);
    const found = known ? undefined : nearestOfSimplex([...carriers, next]);
    if (found === undefined) break;
    if (found.inside)
      return { ...pointsOf(found.carriers, found.shares), distance: 0, uncertainty: 0, direction: ZERO };
    if (!(lengthOf(found.point) < distance)) break;
    ({ carriers, shares } = found);
    nearest = found.point;
  }
  return refined(
    a,
    b,
    shift,
    { ...pointsOf(carriers, shares), distance: lengthOf(nearest), uncertainty },
    carriers,
  );
}

/**
 * A rim is met between points of it, a little inside; the direction square to what was met (a corner, an edge or a face
 * of the hull of corners) is made exact instead, and what the two bodies leave free along it is the distance.
 */
function refined(
  a: ConvexBody,
  b: ConvexBody,
  shift: Vec3,
  found: Omit<CoreGap, 'direction'>,
  carriers: readonly DifferencePoint[],
): CoreGap {
  const rough = directionOf(minus(found.onA, found.onB));
  const plain = { ...found, direction: rough };
  const discs = [a.disc, b.disc].filter((disc) => disc !== undefined);
  if (discs.length === 0 || a.flat || b.flat) return plain;
  const [corner, ...others] = carriers.map((carrier) => carrier.corner);
  if (corner === undefined) return plain;
  const edges = others.map((other) => minus(other, corner)).filter((each) => lengthOf(each) > 0);
  const start = times(rough, -1);
  const tried = [
    refineDirection({ corner, discs }, start),
    ...edges.map((edge) => refineDirection({ corner, discs, edge: directionOf(edge) }, start)),
    ...squaresTo(edges, start),
    ...discs.map(({ axis }) => times(axis, dot(axis, start) < 0 ? -1 : 1)),
  ];
  let best = plain;
  for (const towards of tried) {
    const certain = -(reachOf(a, towards) + dot(shift, towards) + reachOf(b, times(towards, -1)));
    if (!(certain > best.distance - best.uncertainty)) continue;
    const distance = Math.min(certain, found.distance);
    best = { ...plain, direction: times(towards, -1), distance, uncertainty: found.distance - distance };
  }
  return best;
}

/** Directions square to two edges at a time, on the side of the start. */
function squaresTo(edges: readonly Vec3[], start: Vec3): readonly Vec3[] {
  return edges.flatMap((edge, index) =>
    edges.slice(index + 1).flatMap((other) => {
      const square = cross(edge, other);
      if (!(lengthOf(square) > PARALLEL * lengthOf(edge) * lengthOf(other))) return [];
      return [times(directionOf(square), dot(square, start) < 0 ? -1 : 1)];
    }),
  );
}

function pointsOf(
  carriers: readonly DifferencePoint[],
  shares: readonly number[],
): Pick<CoreGap, 'onA' | 'onB'> {
  return {
    onA: mixOf(
      carriers.map(({ onA }) => onA),
      shares,
    ),
    onB: mixOf(
      carriers.map(({ onB }) => onB),
      shares,
    ),
  };
}

/** Distance taken as touching [m]; far below anything that is built, far above the rounding of coordinates. */
export const TOUCH = 1e-12;

/** Uncertainty at which the search ends [m] at distances up to a metre, and in proportion beyond. */
const ENOUGH = 1e-14;

/** Sine below which two edges count as parallel [-]. */
const PARALLEL = 1e-9;

/** Rounds after which the search ends in any case [-]. */
const ROUNDS = 300;
