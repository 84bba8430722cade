import type { Vec3 } from './installation.js';

/** Directions nearer than this to a right angle, or to each other, are taken to be so [-]. */
const SAME = 1e-6;

/**
 * Scalar product of two directions.
 *
 * @param a - direction [-]
 * @param b - direction [-]
 * @returns the product [-]
 */
export function dot(a: Vec3, b: Vec3): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/**
 * The direction back.
 *
 * @param a - direction [-]
 * @returns its opposite [-]
 */
export function opposite(a: Vec3): Vec3 {
  return [0 - a[0], 0 - a[1], 0 - a[2]];
}

function cross(a: Vec3, b: Vec3): Vec3 {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

function unit(a: Vec3): Vec3 {
  const size = Math.hypot(...a);
  return [a[0] / size + 0, a[1] / size + 0, a[2] / size + 0];
}

/**
 * Whether two directions lie on one line, the same way or back.
 *
 * @param a - unit vector [-]
 * @param b - unit vector [-]
 * @returns true where they do [-]
 */
export function isParallel(a: Vec3, b: Vec3): boolean {
  return Math.hypot(...cross(a, b)) < SAME;
}

/**
 * Whether two directions are one.
 *
 * @param a - unit vector [-]
 * @param b - unit vector [-]
 * @returns true where they are [-]
 */
export function isSame(a: Vec3, b: Vec3): boolean {
  return isParallel(a, b) && dot(a, b) > 0;
}

/**
 * Whether two directions stand square to each other.
 *
 * @param a - unit vector [-]
 * @param b - unit vector [-]
 * @returns true where they do [-]
 */
export function isAcross(a: Vec3, b: Vec3): boolean {
  return Math.abs(dot(a, b)) < SAME;
}

/**
 * How far the pipe turns from one direction to another.
 *
 * @param a - unit vector [-]
 * @param b - unit vector [-]
 * @returns angle from 0 to π [rad]
 */
export function angleBetween(a: Vec3, b: Vec3): number {
  return Math.atan2(Math.hypot(...cross(a, b)), dot(a, b));
}

/**
 * Directions a guide holds: across the pipe. A level pipe is free to rise.
 *
 * @param along - direction of the pipe, unit vector [-]
 * @returns unit vectors [-]
 */
export function guideDirections(along: Vec3): readonly Vec3[] {
  const up: Vec3 = [0, 0, 1];
  if (isParallel(along, up))
    return [
      [1, 0, 0],
      [0, 1, 0],
    ];
  const level = unit(cross(along, up));
  return isAcross(along, up) ? [level] : [level, unit(cross(level, along))];
}
