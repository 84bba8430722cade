import { coreGap } from './core-gap.js';
import { type PlanBody, type PlanPoint, planDistance, planLine } from './plan-body.js';
import { dot, type Vec3, ZERO } from './vector.js';

/** Where a way is narrowest. */
export interface NarrowPlace {
  readonly at: PlanPoint;
  /** Width free there; zero when it is blocked [m]. */
  readonly width: number;
  /** What it is narrow between; one name when one thing alone narrows it. */
  readonly between: readonly string[];
}

/**
 * The free width at a place: between the nearest obstacle and one as near on the other side, measured between the two
 * themselves where that agrees with what is free at the place; else twice the distance to the nearest.
 *
 * @param at - the place [m]
 * @param bodies - obstacles in plan by name [m]
 * @param step - how exact the place is [m]
 * @returns width and names [m]
 */
export function narrowPlaceAt(at: PlanPoint, bodies: readonly PlanBody[], step: number): NarrowPlace {
  const place = planLine(at, at);
  const around = bodies
    .map((each) => {
      const { distance, direction } = coreGap(place, each.body, ZERO);
      return { ...each, distance: Math.max(0, distance - each.body.rounding), direction };
    })
    .sort((one, other) => one.distance - other.distance);
  const [nearest] = around;
  if (nearest === undefined) return { at, width: Number.POSITIVE_INFINITY, between: [] };
  if (nearest.distance === 0) return { at, width: 0, between: [nearest.name] };
  const alone = { at, width: 2 * nearest.distance, between: [nearest.name] };
  const opposite = around.find(({ direction }) => isOpposite(direction, nearest.direction));
  if (opposite === undefined || opposite.distance - nearest.distance > 2 * step) return alone;
  const gap = planDistance(nearest.body, opposite.body);
  const across = nearest.distance + opposite.distance;
  const width = gap > 0 && across - gap <= 2 * step ? gap : across;
  return { at, width, between: [...new Set([nearest.name, opposite.name])] };
}

function isOpposite(one: Vec3, other: Vec3): boolean {
  return dot(one, other) < OPPOSITE;
}

/** Cosine of the angle from which two obstacles stand on opposite sides: 120 degrees [-]. */
const OPPOSITE = -0.5;
