/** What all checks of access look at: the pump as solids, what may stand in the way, the lift. */

import type { Subject } from '../../analysis/subject.js';
import {
  boundingBox,
  type Capsule,
  distanceBetween,
  type FreeTravel,
  freeTravel,
  piecesOf,
  type Solid,
  type Vec3,
} from '../../geometry/index.js';
import type { Installation } from '../../input/installation.js';
import { type LiftGeometry, liftGeometry } from '../../model/room/lift-geometry.js';
import { type Obstacle, obstaclesOf } from '../../model/room/obstacles.js';
import { type PumpSolids, pumpSolids } from '../../model/room/pump-solids.js';
import { withdrawalOf } from '../../model/room/service-spaces.js';

/** What access is worked out from: no load is needed. */
export type AccessSubject = Pick<Subject, 'installation' | 'layout'>;

/** The pump, its surroundings and its lift. */
export interface Access {
  readonly pump: PumpSolids;
  readonly obstacles: readonly Obstacle[];
  readonly lift?: LiftGeometry;
  /** Height to draw the motor, where it is given [m]. */
  readonly withdrawal?: number;
  /** Document or path it is given in. */
  readonly withdrawalSource?: string;
}

const known = new WeakMap<Installation, Access>();

/**
 * The pump, its surroundings and its lift, worked out once for each installation.
 *
 * @param subject - installation and layout
 * @returns solids and heights [m]
 */
export function accessOf({ installation, layout }: AccessSubject): Access {
  const before = known.get(installation);
  if (before !== undefined) return before;
  const pump = pumpSolids(installation, layout);
  const lift = liftGeometry(installation, pump);
  const withdrawal = withdrawalOf(installation);
  const access: Access = {
    pump,
    obstacles: obstaclesOf(installation, layout),
    ...(lift && { lift }),
    ...(withdrawal && { withdrawal: withdrawal.height, withdrawalSource: withdrawal.source }),
  };
  known.set(installation, access);
  return access;
}

/** Farther than any room is looked at [m]. */
export const FAR = 10;

/**
 * How far a solid can be moved before it touches something; only obstacles that the movement can reach are looked at.
 *
 * @param solid - the solid [m]
 * @param direction - unit vector [-]
 * @param obstacles - what may stand in the way [m]
 * @param limit - largest way that is of interest [m]
 * @returns the way, and what stops it [m]
 */
export function wayBefore(
  solid: Solid,
  direction: Vec3,
  obstacles: readonly Obstacle[],
  limit: number,
): FreeTravel {
  let free: FreeTravel = { distance: limit };
  for (const piece of piecesOf(solid)) {
    const { low, high } = boundingBox(piece);
    // What is only touched along the way does not stop it: it is left out before the exact search.
    const reach = (axis: 0 | 1 | 2): readonly [number, number] => {
      const way = direction[axis] * free.distance;
      return [low[axis] + Math.min(0, way) + TOUCH, high[axis] + Math.max(0, way) - TOUCH];
    };
    const met = within(obstacles, [reach(0), reach(1), reach(2)]);
    const way = freeTravel(piece, met, direction, free.distance);
    if (way.distance < free.distance) free = way;
  }
  return free;
}

type Band = readonly [readonly [number, number], readonly [number, number], readonly [number, number]];

function within(obstacles: readonly Obstacle[], band: Band): readonly Obstacle[] {
  return obstacles.filter(({ box }) =>
    ([0, 1, 2] as const).every((axis) => box.low[axis] <= band[axis][1] && box.high[axis] >= band[axis][0]),
  );
}

/**
 * The obstacles whose surroundings meet those of a solid.
 *
 * @param solid - the solid [m]
 * @param obstacles - what may stand in the way [m]
 * @param beyond - how far round the solid is looked [m]
 * @returns those that may be that near
 */
export function near(solid: Solid, obstacles: readonly Obstacle[], beyond: number): readonly Obstacle[] {
  const { low, high } = boundingBox(solid);
  const reach = (axis: 0 | 1 | 2): readonly [number, number] => [low[axis] - beyond, high[axis] + beyond];
  return within(obstacles, [reach(0), reach(1), reach(2)]);
}

/**
 * What a solid overlaps.
 *
 * @param solid - the solid [m]
 * @param obstacles - what may stand in the way [m]
 * @returns the obstacle it is deepest in; nothing where it is free
 */
export function clashOf(solid: Solid, obstacles: readonly Obstacle[]): Obstacle | undefined {
  let deepest: { readonly obstacle: Obstacle; readonly depth: number } | undefined;
  for (const obstacle of near(solid, obstacles, 0)) {
    const { overlap, depth } = distanceBetween(solid, obstacle.solid);
    if (overlap && depth > TOUCH && depth > (deepest?.depth ?? 0)) deepest = { obstacle, depth };
  }
  return deepest?.obstacle;
}

/**
 * What the anchor of the lift hangs on: structure that the hoist may touch.
 *
 * @param access - lift and obstacles
 * @returns the obstacles without it
 */
export function withoutHolder({ lift, obstacles }: Access): readonly Obstacle[] {
  if (lift === undefined) return obstacles;
  const spot: Capsule = { kind: 'capsule', from: lift.anchor, to: lift.anchor, radius: HOLDER };
  const holders = new Set(
    near(spot, obstacles, 0).filter(
      ({ solid, kind }) => kind !== 'line' && distanceBetween(spot, solid).overlap,
    ),
  );
  return obstacles.filter((obstacle) => !holders.has(obstacle));
}

/** Depth that counts as touching only [m]. */
export const TOUCH = 1e-6;

/** How near to the anchor something is what it hangs on: 1 in [m]. */
const HOLDER = 0.0254;
