import { EngineError } from '../issues/issue.js';
import { leastPath } from './least-path.js';
import { type NarrowPlace, narrowPlaceAt } from './narrow-place.js';
import type { PlanPoint } from './plan-body.js';
import { apart, type PlanClearance, planClearance } from './plan-clearance.js';
import { type PlanGrid, planGrid } from './plan-grid.js';
import type { Box, NamedSolid } from './solid.js';

/** Whether something of a width comes through a room, and where it is narrowest. */
export interface FreeRoute {
  /** Corners of a way along which the whole width is free, checked exactly; absent when none was found [m]. */
  readonly route?: readonly PlanPoint[];
  /** Length of the way; absent when none was found [m]. */
  readonly length?: number;
  /** Narrowest place of the widest way there is. */
  readonly narrowest: NarrowPlace;
  /** Step of the grid. A way that is wider than asked by √2 times the step is always found [m]. */
  readonly step: number;
}

/**
 * Way in plan for a disc of a given width, from one place to another between obstacles. It is looked for on a grid of an
 * eighth of the width, coarser where the room would need more than 20 000 places; every part of the way that is given is
 * then checked against the obstacles themselves. A way given is free for certain. When none is given, none is as wide as
 * the width and √2 steps; one that is wide enough by less may have been missed, and then the narrowest place is no
 * narrower than the width.
 *
 * @param start - where it begins [m]
 * @param goal - where it is to end [m]
 * @param obstacles - solids by name [m]
 * @param width - width that must be free all along [m]
 * @param room - its plan bounds the way; obstacles count where they reach between its lowest and highest points [m]
 * @returns the way if there is one, and the narrowest place [m]
 * @throws EngineError `geometry.no-plan` when the width is not above zero or the room has no extent
 */
export function freeRoute(
  start: PlanPoint,
  goal: PlanPoint,
  obstacles: readonly NamedSolid[],
  width: number,
  room: Box,
): FreeRoute {
  const [east, north] = [room.high[0] - room.low[0], room.high[1] - room.low[1]];
  const deep = room.high[2] > room.low[2];
  if (!(width > 0) || !(east > 0) || !(north > 0) || !deep || !Number.isFinite(width + east + north))
    throw new EngineError('geometry.no-plan', { width, east, north });
  const clearance = planClearance(obstacles, room);
  const grid = planGrid(start, goal, width / 8, room, clearance.at);
  const narrowest = narrowPlaceAt(narrowestOf(grid, width / 2), clearance.bodies, grid.step);
  const way = shortestWay(grid, clearance, width / 2);
  if (way === undefined) return { narrowest, step: grid.step };
  const route = pulledTight(way, clearance, width / 2);
  const length = route.reduce((sum, place, index) => sum + apart(place, route[index - 1] ?? place), 0);
  return { route, length, narrowest, step: grid.step };
}

function shortestWay(
  grid: PlanGrid,
  clearance: PlanClearance,
  wanted: number,
): readonly PlanPoint[] | undefined {
  const path = leastPath({
    ...grid,
    prolonged: (cost, from, to) => {
      const free = Math.min(grid.clearanceOf(from), grid.clearanceOf(to));
      if (free < wanted) return undefined;
      const [a, b] = [grid.placeOf(from), grid.placeOf(to)];
      const length = apart(a, b);
      // Between two places the room left shrinks by no more than half the step: most steps need no closer look.
      return free - length / 2 >= wanted || clearance.keeps(a, b, wanted) ? cost + length : undefined;
    },
  });
  return path?.map(grid.placeOf);
}

/**
 * Narrowest place of the widest way; where everything is blocked, the first blocked place of the way least blocked. The
 * ends do not count while the width is free about them: what stands or is put down by a wall is near to it by intent.
 */
function narrowestOf(grid: PlanGrid, wanted: number): PlanPoint {
  const ends = [grid.start, grid.goal].map(grid.placeOf);
  const atEnd = (place: number): boolean =>
    grid.clearanceOf(place) >= wanted && ends.some((end) => apart(grid.placeOf(place), end) <= 2 * wanted);
  const narrowing = (place: number): number => (atEnd(place) ? 0 : grid.most - grid.clearanceOf(place));
  const widest = leastPath({
    ...grid,
    prolonged: (cost, from, to) => Math.max(cost, narrowing(from), narrowing(to)),
  });
  const way = widest ?? [grid.start, grid.goal];
  const between = way.filter((place) => !atEnd(place));
  const open = leastOf(between.length > 0 ? between : way, grid.clearanceOf);
  if (grid.clearanceOf(open) > 0) return grid.placeOf(open);
  const through = leastPath({
    ...grid,
    prolonged: (cost, from, to) => {
      const length = apart(grid.placeOf(from), grid.placeOf(to));
      return cost + (grid.clearanceOf(to) > 0 ? length : BLOCKED * length);
    },
  });
  return grid.placeOf(leastOf(through ?? way, grid.clearanceOf));
}

function leastOf(places: readonly number[], of: (place: number) => number): number {
  return places.reduce((least, place) => (of(place) < of(least) ? place : least));
}

/** Leaves out every corner that a straight line past it makes needless. */
function pulledTight(
  way: readonly PlanPoint[],
  clearance: PlanClearance,
  wanted: number,
): readonly PlanPoint[] {
  const kept: PlanPoint[] = way.slice(0, 1);
  let corner = way[0];
  let last = corner;
  for (const place of way.slice(1)) {
    if (corner !== undefined && last !== undefined && !clearance.keeps(corner, place, wanted)) {
      kept.push(last);
      corner = last;
    }
    last = place;
  }
  return last === undefined || way.length < 2 ? kept : [...kept, last];
}

/** How much longer a step over a blocked place counts [-]. */
const BLOCKED = 1000;
