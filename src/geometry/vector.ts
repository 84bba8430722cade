import { EngineError } from '../issues/issue.js';

/** A point or a direction in space: east, north, up. [m] or [-]. */
export type Vec3 = readonly [number, number, number];

/**
 * Sum of two vectors.
 *
 * @param a - first vector [m]
 * @param b - second vector [m]
 * @returns a + b [m]
 */
export function plus(a: Vec3, b: Vec3): Vec3 {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
}

/**
 * Difference of two vectors.
 *
 * @param a - first vector [m]
 * @param b - second vector [m]
 * @returns a − b, the way from b to a [m]
 */
export function minus(a: Vec3, b: Vec3): Vec3 {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

/**
 * A vector made longer or shorter.
 *
 * @param a - vector [m]
 * @param factor - factor [-]
 * @returns a times the factor [m]
 */
export function times(a: Vec3, factor: number): Vec3 {
  return [a[0] * factor, a[1] * factor, a[2] * factor];
}

/**
 * Inner product of two vectors.
 *
 * @param a - first vector [m]
 * @param b - second vector [m]
 * @returns a · b [m²]
 */
export function dot(a: Vec3, b: Vec3): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/**
 * Vector product, perpendicular to both by the right hand.
 *
 * @param a - first vector [m]
 * @param b - second vector [m]
 * @returns a × b [m²]
 */
export function cross(a: Vec3, b: Vec3): Vec3 {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

/**
 * Length of a vector.
 *
 * @param a - vector [m]
 * @returns |a| [m]
 */
export function lengthOf(a: Vec3): number {
  // Not Math.hypot, which takes ten times as long to guard against numbers that no building has.
  return Math.sqrt(a[0] * a[0] + a[1] * a[1] + a[2] * a[2]);
}

/**
 * Direction of a vector.
 *
 * @param a - vector, not zero [m]
 * @returns a / |a| [-]
 * @throws EngineError `geometry.no-direction` when the vector is zero or not finite
 */
export function directionOf(a: Vec3): Vec3 {
  const length = lengthOf(a);
  if (!(length > 0) || !Number.isFinite(length))
    throw new EngineError('geometry.no-direction', { east: a[0], north: a[1], up: a[2] });
  // Dividing twice keeps vectors near the smallest number of the machine from losing their direction.
  const once: Vec3 = [a[0] / length, a[1] / length, a[2] / length];
  return times(once, 1 / lengthOf(once));
}

/**
 * Two directions that are perpendicular to a direction and to each other.
 *
 * @param axis - unit vector [-]
 * @returns two unit vectors that with the axis follow the right hand [-]
 */
export function perpendicularsOf(axis: Vec3): readonly [Vec3, Vec3] {
  const [x, y, z] = [Math.abs(axis[0]), Math.abs(axis[1]), Math.abs(axis[2])];
  const least: Vec3 = x <= y && x <= z ? [1, 0, 0] : y <= z ? [0, 1, 0] : [0, 0, 1];
  const first = directionOf(cross(axis, least));
  return [first, cross(axis, first)];
}

/** No movement [m]. */
export const ZERO: Vec3 = [0, 0, 0];

/** Straight up [-]. */
export const UP: Vec3 = [0, 0, 1];
