/** What a drawing needs of space beyond the model's vectors. */
import type { Vec3 } from '../model/conventions.js';
import { add, between, cross, dot, norm, scale, subtract } from '../model/vector.js';

/** Place s times a direction away from a. @param a - place [m] @param direction - direction [-] @param s - how far [m] @returns place [m] */
export const along = (a: Vec3, direction: Vec3, s: number): Vec3 => add(a, scale(direction, s));

/** Unit vector; up for a vector without length, so that a drawing never fails on a degenerate part. @param a - vector [m] @returns unit vector [-] */
export function directionOf(a: Vec3): Vec3 {
  const length = norm(a);
  return length > 1e-9 ? scale(a, 1 / length) : [0, 0, 1];
}

/** Distance of two places. @param a - place [m] @param b - place [m] @returns distance [m] */
export const apart = (a: Vec3, b: Vec3): number =>
  Math.sqrt((a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2 + (a[2] - b[2]) ** 2);

/** Share of the way from a to b, 0 to 1, at which a segment comes nearest to p. @param p - place [m] @param a - end [m] @param b - end [m] @returns share [-] */
export function nearestShare(p: Vec3, a: Vec3, b: Vec3): number {
  const run = subtract(b, a);
  const square = dot(run, run);
  if (square < 1e-18) return 0;
  return Math.min(1, Math.max(0, dot(subtract(p, a), run) / square));
}

/** A level direction at right angles to another; east where that one is upright. @param a - direction [-] @returns level unit vector [-] */
export function levelAcross(a: Vec3): Vec3 {
  const level: Vec3 = [a[0], a[1], 0];
  return norm(level) < 1e-6 ? [1, 0, 0] : cross([0, 0, 1], directionOf(level));
}

/**
 * Points along a circular arc, both ends included.
 *
 *     p(t) = c + (sin((1 − t) θ) a + sin(t θ) b) / sin θ     a, b: radii to the ends, θ: angle between them
 *
 * @param arc - ends and centre, less than half a turn [m]
 * @param steps - number of pieces [-]
 * @returns places in order [m]
 */
export function arcPoints(
  arc: { readonly from: Vec3; readonly to: Vec3; readonly centre: Vec3 },
  steps: number,
): readonly Vec3[] {
  const a = subtract(arc.from, arc.centre);
  const b = subtract(arc.to, arc.centre);
  const angle = Math.acos(Math.min(1, Math.max(-1, dot(directionOf(a), directionOf(b)))));
  const sine = Math.sin(angle);
  const inside = Array.from({ length: Math.max(0, steps - 1) }, (_, i): Vec3 => {
    const t = (i + 1) / steps;
    if (sine < 1e-9) return between(arc.from, arc.to, t);
    return along(along(arc.centre, a, Math.sin((1 - t) * angle) / sine), b, Math.sin(t * angle) / sine);
  });
  return [arc.from, ...inside, arc.to];
}
