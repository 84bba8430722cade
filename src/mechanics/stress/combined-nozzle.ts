/** Combined rule for the loads of both nozzles of a process pump on a baseplate. */
import type { Vec3, Wrench } from '../../model/conventions.js';

/** Resultants allowed by the table for one nozzle. */
export interface TableResultants {
  /** [N] */
  readonly force: number;
  /** [N·m] */
  readonly moment: number;
}

/**
 * Interaction of the resultant force and moment on one nozzle.
 *
 *     FR / (1.5 FRT) + MR / (1.5 MRT), to be at most 2
 *
 * @param load - force [N] and moment [N·m] on the nozzle
 * @param table - resultant force [N] and moment [N·m] of the table
 * @returns the sum of the two shares [-]
 * @source api-610 annex F.1 condition 2, read in a page that reproduces the 8th edition
 */
export function nozzleInteraction(load: Wrench, table: TableResultants): number {
  return Math.hypot(...load.force) / (1.5 * table.force) + Math.hypot(...load.moment) / (1.5 * table.moment);
}

/**
 * Loads of several nozzles moved to one point.
 *
 *     F = Σ F        M = Σ (M + r × F), r from the point to each flange
 *
 * @param nozzles - where each nozzle stands [m] and its force [N] and moment [N·m]
 * @param about - the point the loads are moved to [m]
 * @returns total force [N] and moment [N·m] about the point
 * @source statics
 */
export function loadsMovedTo(
  nozzles: readonly { readonly at: Vec3; readonly load: Wrench }[],
  about: Vec3,
): Wrench {
  let force: Vec3 = [0, 0, 0];
  let moment: Vec3 = [0, 0, 0];
  for (const { at, load } of nozzles) {
    const [x, y, z] = [at[0] - about[0], at[1] - about[1], at[2] - about[2]];
    const [fx, fy, fz] = load.force;
    force = [force[0] + fx, force[1] + fy, force[2] + fz];
    moment = [
      moment[0] + load.moment[0] + y * fz - z * fy,
      moment[1] + load.moment[1] + z * fx - x * fz,
      moment[2] + load.moment[2] + x * fy - y * fx,
    ];
  }
  return { force, moment };
}
