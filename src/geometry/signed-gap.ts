import type { ConvexBody } from './convex-body.js';
import { reachOf } from './convex-body.js';
import { type CoreGap, coreGap, TOUCH } from './core-gap.js';
import { leastExit } from './least-exit.js';
import { dot, lengthOf, minus, plus, times, type Vec3 } from './vector.js';

/** Gap between two convex bodies, negative where they overlap. */
export interface SignedGap {
  /** Distance, or minus the depth of the overlap [m]. */
  readonly gap: number;
  /** Unit vector along which the first body moves away from the second the quickest [-]. */
  readonly direction: Vec3;
  /** Nearest points; one common point where they overlap [m]. */
  readonly onA: Vec3;
  readonly onB: Vec3;
}

/**
 * Gap between two convex bodies, the first moved before: the distance without their balls less the radii of the balls,
 * and where they overlap even without, minus the shortest way out.
 *
 * @param a - first body [m]
 * @param b - second body [m]
 * @param shift - movement of the first [m]
 * @returns gap, direction and nearest points [m]
 */
export function signedGap(a: ConvexBody, b: ConvexBody, shift: Vec3): SignedGap {
  const core = coreGap(a, b, shift);
  const rounding = a.rounding + b.rounding;
  if (core.distance > NEAR && core.uncertainty < UNCERTAIN) {
    const gap = core.distance - rounding;
    return { ...surfacePoints(a, b, core, gap), gap, direction: core.direction };
  }
  const exit = leastExit(a, b, shift);
  const apart = core.distance > TOUCH;
  const certain = apart ? -reachAgainst(a, b, shift, core.direction) : Number.NEGATIVE_INFINITY;
  const better = certain > -exit.depth ? { ...core, certain } : { ...exit, certain: -exit.depth };
  // Planes bound the distance from below, more sharply than points of a rim do from above; without a rim both are exact.
  const round = a.disc !== undefined || b.disc !== undefined;
  const least = Math.max(better.certain, core.distance - core.uncertainty);
  const distance = round ? Math.min(core.distance, least) : core.distance;
  const gap = (apart ? distance : -Math.max(0, exit.depth)) - rounding;
  return { ...surfacePoints(a, b, core, gap), gap, direction: better.direction };
}

/**
 * How far the first body must move in a direction until the second leaves it: less than nothing when they are apart.
 *
 * @param a - body that moves [m]
 * @param b - body that stays [m]
 * @param shift - movement of the first before [m]
 * @param direction - unit vector of the movement [-]
 * @returns reach of the difference against the direction, without the balls [m]
 */
export function reachAgainst(a: ConvexBody, b: ConvexBody, shift: Vec3, direction: Vec3): number {
  const towards = times(direction, -1);
  return reachOf(a, towards) + dot(shift, towards) + reachOf(b, direction);
}

/** Points on the surfaces; where the balls overlap, the middle of what they share. */
function surfacePoints(
  a: ConvexBody,
  b: ConvexBody,
  core: CoreGap,
  gap: number,
): Pick<SignedGap, 'onA' | 'onB'> {
  const apart = minus(core.onA, core.onB);
  const length = lengthOf(apart);
  if (length === 0) return { onA: core.onA, onB: core.onB };
  const onA = minus(core.onA, times(apart, a.rounding / length));
  const onB = plus(core.onB, times(apart, b.rounding / length));
  if (gap > 0) return { onA, onB };
  const common = times(plus(onA, onB), 0.5);
  return { onA: common, onB: common };
}

/** Distance of the cores under which the shortest way out is looked at too, since its direction is sharper [m]. */
const NEAR = 1e-7;

/** Uncertainty of the distance from which it is looked at too [m]. */
const UNCERTAIN = 1e-10;
