import { bodyOf } from './convex-body.js';
import { piecesOf } from './pieces.js';
import type { NamedSolid, Solid } from './solid.js';
import { conflictAlong, SLIGHT } from './travel.js';
import { directionOf, UP, type Vec3 } from './vector.js';

/** How far something can be moved, and what stops it. */
export interface FreeTravel {
  /** Way until it touches, or the limit asked for [m]. */
  readonly distance: number;
  /** Name of what it touches; absent when nothing stands in the way up to the limit. */
  readonly stoppedBy?: string;
}

/**
 * How far a solid can be lifted straight up before it touches an obstacle.
 *
 * @param solid - the solid [m]
 * @param obstacles - solids by name [m]
 * @param limit - largest lift that is of interest [m]
 * @returns the way and the obstacle; zero when an obstacle is overlapped already [m]
 */
export function freeVerticalDistance(
  solid: Solid,
  obstacles: readonly NamedSolid[],
  limit: number,
): FreeTravel {
  return freeTravel(solid, obstacles, UP, limit);
}

/**
 * How far a solid can be moved straight in a direction before it touches an obstacle. What it touches at the start and
 * slides along or moves away from does not stop it.
 *
 * @param solid - the solid [m]
 * @param obstacles - solids by name [m]
 * @param direction - direction of the movement [-]
 * @param limit - largest way that is of interest [m]
 * @returns the way and the obstacle; of equal ones the first [m]
 * @throws EngineError `geometry.no-direction` when the direction is zero
 */
export function freeTravel(
  solid: Solid,
  obstacles: readonly NamedSolid[],
  direction: Vec3,
  limit: number,
): FreeTravel {
  const along = directionOf(direction);
  const moving = piecesOf(solid).map(bodyOf);
  let free: FreeTravel = { distance: limit };
  for (const { name, solid: obstacle } of obstacles)
    for (const still of piecesOf(obstacle).map(bodyOf))
      for (const piece of moving) {
        const conflict = conflictAlong(piece, still, along, 0);
        if (conflict === undefined || conflict.to <= SLIGHT) continue;
        const distance = Math.max(0, conflict.from);
        if (distance < free.distance) free = { distance, stoppedBy: name };
      }
  return free;
}
