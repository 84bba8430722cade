import type { ConvexBody } from './convex-body.js';
import { coreGap } from './core-gap.js';
import { reachAgainst, signedGap } from './signed-gap.js';
import { dot, times, type Vec3, ZERO } from './vector.js';

/** Part of a straight movement on which two bodies are nearer than a clearance. */
export interface Conflict {
  /** Where the clearance begins to be missed; below zero when that lies behind [m]. */
  readonly from: number;
  /** Where it is met again [m]. */
  readonly to: number;
}

/**
 * Part of the straight movement of a body, taken both ways without end, on which it is nearer to another than a
 * clearance. Touching and sliding along count as clear.
 *
 * @param a - body that moves [m]
 * @param b - body that stays [m]
 * @param direction - unit vector [-]
 * @param clearance - distance to be kept [m]
 * @returns the part, or nothing when the clearance is met all along [m]
 */
export function conflictAlong(
  a: ConvexBody,
  b: ConvexBody,
  direction: Vec3,
  clearance: number,
): Conflict | undefined {
  const to = clearFrom(a, b, direction, clearance);
  const back = to === undefined ? undefined : clearFrom(a, b, times(direction, -1), clearance);
  if (to === undefined || back === undefined) return undefined;
  const from = -back;
  if (!(to - from > SLIGHT)) return undefined;
  const middle = signedGap(a, b, times(direction, (from + to) / 2)).gap;
  return middle < clearance - SLIGHT ? { from, to } : undefined;
}

/**
 * Where, coming back from far off against the direction, the clearance is first missed. The distance of convex bodies
 * is a convex function of the way, so Newton's method from the far side comes nearer without ever going past.
 */
function clearFrom(a: ConvexBody, b: ConvexBody, direction: Vec3, clearance: number): number | undefined {
  const wanted = clearance + a.rounding + b.rounding;
  let at = reachAgainst(a, b, ZERO, direction) + wanted;
  for (let round = 0; round < ROUNDS; round++) {
    const core = coreGap(a, b, times(direction, at));
    const excess = core.distance - wanted;
    if (excess <= CLOSE) return at;
    const slope = dot(core.direction, direction);
    if (!(slope > 0)) return undefined;
    const next = at - excess / slope;
    if (!(next < at)) return at;
    at = next;
  }
  return at;
}

/** Depth or length of a conflict that counts as none [m]. */
export const SLIGHT = 1e-9;

/** Excess of distance at which the search ends [m]. */
const CLOSE = 1e-12;

/** Rounds after which the search ends in any case [-]. */
const ROUNDS = 100;
