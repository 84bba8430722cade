import { type ConvexBody, reachOf } from './convex-body.js';
import { type PlanBody, type PlanPoint, planBodies, planDistance, planLine } from './plan-body.js';
import type { Box, NamedSolid } from './solid.js';

/** Room left about places and lines in plan. */
export interface PlanClearance {
  readonly bodies: readonly PlanBody[];
  /** Distance from a place to the nearest obstacle or edge; zero outside the room [m]. */
  readonly at: (place: PlanPoint) => number;
  /** Whether a line keeps a distance from every obstacle and edge. */
  readonly keeps: (from: PlanPoint, to: PlanPoint, distance: number) => boolean;
}

/** Name of the edge of the room among the obstacles. */
export const ROOM_EDGE = 'edge of the room';

/**
 * Room left in plan between obstacles and the edges of a room.
 *
 * @param obstacles - solids by name [m]
 * @param room - its plan bounds the ways, its heights say which obstacles count [m]
 * @returns functions of place and line [m]
 */
export function planClearance(obstacles: readonly NamedSolid[], room: Box): PlanClearance {
  const bodies = [...planBodies(obstacles, room), ...edgesOf(room)];
  const rows = bodies.map(({ body }) => ({
    body,
    box: [
      -reachOf(body, [-1, 0, 0]) - body.rounding,
      -reachOf(body, [0, -1, 0]) - body.rounding,
      reachOf(body, [1, 0, 0]) + body.rounding,
      reachOf(body, [0, 1, 0]) + body.rounding,
    ] as const,
    known: knownDistance(body),
    // What was last measured bounds what can be found nearby: a distance changes no more than the place does.
    last: { place: [0, 0] as PlanPoint, distance: 0 },
  }));
  const outside = ([east, north]: PlanPoint): boolean =>
    !(east >= room.low[0] && east <= room.high[0] && north >= room.low[1] && north <= room.high[1]);
  return {
    bodies,
    at: (place) => {
      if (outside(place)) return 0;
      let least = Number.POSITIVE_INFINITY;
      const line = planLine(place, place);
      const bounds = rows
        .map((row) => ({
          row,
          bound: Math.max(row.last.distance - apart(place, row.last.place), toBox(row.box, place)),
        }))
        .sort((one, other) => one.bound - other.bound);
      for (const { row, bound } of bounds) {
        if (bound >= least) break;
        const distance = row.known?.(place) ?? planDistance(line, row.body);
        row.last = { place, distance };
        least = Math.min(least, distance);
      }
      return least;
    },
    keeps: (from, to, distance) => {
      const middle: PlanPoint = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
      const half = apart(from, to) / 2;
      const line = planLine(from, to);
      return rows.every(
        ({ body, box }) =>
          toBox(box, middle) - half >= distance || planDistance(line, body) >= distance - SLIGHT,
      );
    },
  };
}

/**
 * Distance of two places in plan.
 *
 * @param a - one place [m]
 * @param b - other place [m]
 * @returns distance [m]
 */
export function apart(a: PlanPoint, b: PlanPoint): number {
  return levelLength(a[0] - b[0], a[1] - b[1]);
}

function edgesOf({ low, high }: Box): readonly PlanBody[] {
  const corners: readonly [PlanPoint, PlanPoint, PlanPoint, PlanPoint] = [
    [low[0], low[1]],
    [high[0], low[1]],
    [high[0], high[1]],
    [low[0], high[1]],
  ];
  return corners.map((from, index) => ({
    name: ROOM_EDGE,
    body: planLine(from, corners[(index + 1) % 4] ?? from),
  }));
}

/** Distance of a place from what has a formula for it: boxes, upright cylinders and lines; the others are measured. */
function knownDistance({ solid, corners, rounding }: ConvexBody): ((place: PlanPoint) => number) | undefined {
  if (solid.kind === 'box') {
    const box = [solid.low[0], solid.low[1], solid.high[0], solid.high[1]] as const;
    return (place) => toBox(box, place);
  }
  if (solid.kind === 'cylinder' && solid.from[0] === solid.to[0] && solid.from[1] === solid.to[1])
    return ([x, y]) => Math.max(0, levelLength(x - solid.from[0], y - solid.from[1]) - solid.radius);
  const [from, to, ...others] = corners;
  if (solid.kind !== 'capsule' || from === undefined || to === undefined || others.length > 0)
    return undefined;
  const [east, north] = [to[0] - from[0], to[1] - from[1]];
  const square = east * east + north * north;
  return ([x, y]) => {
    const share = square > 0 ? ((x - from[0]) * east + (y - from[1]) * north) / square : 0;
    const at = Math.min(1, Math.max(0, share));
    return Math.max(0, levelLength(x - from[0] - at * east, y - from[1] - at * north) - rounding);
  };
}

function toBox(
  [west, south, east, north]: readonly [number, number, number, number],
  [x, y]: PlanPoint,
): number {
  return levelLength(Math.max(west - x, 0, x - east), Math.max(south - y, 0, y - north));
}

/** Not Math.hypot: a way through a room asks for tens of thousands of these. */
function levelLength(east: number, north: number): number {
  return Math.sqrt(east * east + north * north);
}

/** Lack of distance that counts as none [m]. */
const SLIGHT = 1e-9;
