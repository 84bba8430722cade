import type { Vec3 } from './conventions.js';
import { cross, dot, norm, scale, subtract, UP, unit } from './vector.js';

/** The axes of a nozzle or flange face: along it, upright, and across both. Unit vectors. */
export interface NozzleAxes {
  /** Outward. */
  readonly along: Vec3;
  /** Up, square to the nozzle; north for a nozzle that stands upright itself. */
  readonly upright: Vec3;
  readonly across: Vec3;
}

/**
 * The axes in which a fitter and a table of nozzle loads speak of a flange face.
 *
 * @param axis - outward direction of the nozzle [-]
 * @returns three unit vectors [-]
 * @source statics
 */
export function nozzleAxes(axis: Vec3): NozzleAxes {
  const along = unit(axis);
  const up = subtract(UP, scale(along, dot(UP, along)));
  const upright: Vec3 = norm(up) > 1e-6 ? unit(up) : [0, 1, 0];
  return { along, upright, across: cross(along, upright) };
}
