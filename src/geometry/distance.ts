import { bodyOf } from './convex-body.js';
import { TOUCH } from './core-gap.js';
import { piecesOf } from './pieces.js';
import { type SignedGap, signedGap } from './signed-gap.js';
import type { NamedSolid, Solid } from './solid.js';
import { type Vec3, ZERO } from './vector.js';

/** How far two solids are apart. */
export interface Separation {
  /** Zero when they touch or overlap [m]. */
  readonly distance: number;
  /** True when they touch or overlap. */
  readonly overlap: boolean;
  /** Shortest way out of the overlap; of solids of several pieces, that of the pair in deepest [m]. */
  readonly depth: number;
  /** Nearest points, or twice a point they share [m]. */
  readonly onA: Vec3;
  readonly onB: Vec3;
  /** Unit vector along which the first moves away from the second the quickest [-]. */
  readonly direction: Vec3;
}

/**
 * Distance of two solids, or how deep they overlap.
 *
 * @param a - first solid [m]
 * @param b - second solid [m]
 * @returns distance, nearest points, and the depth where they overlap [m]
 * @throws EngineError `geometry.not-a-solid` when a size is negative or a number is not finite
 */
export function distanceBetween(a: Solid, b: Solid): Separation {
  const { gap, direction, onA, onB } = leastGap(a, b);
  const overlap = gap <= TOUCH;
  return { distance: overlap ? 0 : gap, overlap, depth: Math.max(0, -gap), onA, onB, direction };
}

/** Gap of the two pieces that are nearest, or in deepest. */
function leastGap(a: Solid, b: Solid): SignedGap {
  const bodies = piecesOf(b).map(bodyOf);
  const gaps = piecesOf(a)
    .map(bodyOf)
    .flatMap((one) => bodies.map((other) => signedGap(one, other, ZERO)));
  return gaps.reduce((least, each) => (each.gap < least.gap ? each : least));
}

/**
 * Whether two solids touch or overlap.
 *
 * @param a - first solid [m]
 * @param b - second solid [m]
 * @returns true when their distance is zero [-]
 */
export function intersects(a: Solid, b: Solid): boolean {
  return distanceBetween(a, b).overlap;
}

/** The obstacle nearest to a solid. */
export interface NearestObstacle extends Separation {
  readonly name: string;
}

/**
 * The obstacle that is nearest to a solid, or that it is deepest in; of equal ones the first.
 *
 * @param solid - the solid [m]
 * @param obstacles - solids by name [m]
 * @returns name and separation, the solid being the first of the two; nothing when there is no obstacle [m]
 */
export function nearestObstacle(solid: Solid, obstacles: readonly NamedSolid[]): NearestObstacle | undefined {
  let nearest: NearestObstacle | undefined;
  for (const { name, solid: obstacle } of obstacles) {
    const separation = distanceBetween(solid, obstacle);
    if (nearest === undefined || signed(separation) < signed(nearest)) nearest = { name, ...separation };
  }
  return nearest;
}

function signed({ overlap, distance, depth }: Separation): number {
  return overlap ? -depth : distance;
}
