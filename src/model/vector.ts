import type { Vec3 } from './conventions.js';

/** Sum of two vectors. @param a - any unit @param b - same unit @returns same unit @source statics */
export const add = (a: Vec3, b: Vec3): Vec3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
/** Difference a − b. @param a - any unit @param b - same unit @returns same unit @source statics */
export const subtract = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
/** Vector times number. @param a - any unit @param factor - [-] @returns unit of a @source statics */
export const scale = (a: Vec3, factor: number): Vec3 => [a[0] * factor, a[1] * factor, a[2] * factor];
/** Scalar product. @param a - any unit @param b - any unit @returns product of the units @source statics */
export const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
/** Vector product a × b. @param a - any unit @param b - any unit @returns product of the units @source statics */
export const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
/**
 * Length of a vector. Not by Math.hypot, which takes ten times as long to guard against numbers that no plant has.
 * @param a - any unit @returns unit of a @source statics
 */
export const norm = (a: Vec3): number => Math.sqrt(a[0] * a[0] + a[1] * a[1] + a[2] * a[2]);
/** Unit vector along a. @param a - any unit, not zero @returns [-] @source statics */
export const unit = (a: Vec3): Vec3 => scale(a, 1 / norm(a));
/** Point a + t (b − a). @param a - [m] @param b - [m] @param t - share from a to b [-] @returns [m] @source statics */
export const between = (a: Vec3, b: Vec3, t: number): Vec3 => add(a, scale(subtract(b, a), t));
/** Straight up. */
export const UP: Vec3 = [0, 0, 1];
