/**
 * Axes, order of freedoms and signs, fixed in one place.
 *
 * - x east, y north, z up; right-handed; SI units, radians, kelvin.
 * - Freedoms of a point in order: ux, uy, uz, rx, ry, rz. Rotations follow the right hand.
 * - A wrench is a force and a moment about the point it is given at.
 * - Nozzle loads: as the pipe acts on the pump, about the centre of the flange face.
 * - Support loads: as the pipe acts on the support; a pipe that rests on a stand loads it with a negative z force.
 * - Member end wrenches: as the point acts on the member's end, in global axes.
 * - Tension in a member is positive; gauge pressure is positive inwards-out.
 */

/** A point or direction in space: east, north, up. [m] or [-]. */
export type Vec3 = readonly [number, number, number];

/** A force and a moment about a stated point. */
export interface Wrench {
  /** [N] */
  readonly force: Vec3;
  /** [N·m] */
  readonly moment: Vec3;
}

/** A small movement of a point. */
export interface Movement {
  /** [m] */
  readonly translation: Vec3;
  /** [rad] */
  readonly rotation: Vec3;
}

/** Standard acceleration of gravity [m/s²]. CGPM 1901, exact by definition. */
export const STANDARD_GRAVITY = 9.80665;
