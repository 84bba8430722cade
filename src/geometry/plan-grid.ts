import type { Net } from './least-path.js';
import type { PlanPoint } from './plan-body.js';
import type { Box } from './solid.js';

/** Places on a grid over a room, and start and goal, with the room left about each. */
export interface PlanGrid extends Omit<Net, 'prolonged'> {
  readonly placeOf: (place: number) => PlanPoint;
  /** Distance to the nearest obstacle [m]. */
  readonly clearanceOf: (place: number) => number;
  /** What no distance exceeds: half the smaller extent of the room [m]. */
  readonly most: number;
  /** [m] */
  readonly step: number;
}

/**
 * Grid over the plan of a room, every place joined to the eight about it; start and goal are joined to the places about
 * them and, when near, to each other.
 *
 * @param start - where ways begin [m]
 * @param goal - where ways end [m]
 * @param finest - step wanted [m]
 * @param room - the room [m]
 * @param clearanceAt - distance from a place to the nearest obstacle [m]
 * @returns the grid; its step is larger than wanted where there would be too many places [m]
 */
export function planGrid(
  start: PlanPoint,
  goal: PlanPoint,
  finest: number,
  room: Box,
  clearanceAt: (place: PlanPoint) => number,
): PlanGrid {
  const [west, south] = room.low;
  const [east, north] = [room.high[0] - west, room.high[1] - south];
  const longer = Math.max(east, north);
  const step = Math.max(finest, Math.sqrt((east * north) / MOST), longer / MOST);
  const columns = Math.max(1, Math.floor(east / step));
  const rows = Math.max(1, Math.floor(north / step));
  // The grid stands in the middle of the room, so that what is left over is shared by both sides.
  const [left, bottom] = [west + (east - (columns - 1) * step) / 2, south + (north - (rows - 1) * step) / 2];
  const count = columns * rows;
  const placeOf = (place: number): PlanPoint => {
    if (place >= count) return place === count ? start : goal;
    return [left + (place % columns) * step, bottom + Math.floor(place / columns) * step];
  };
  // Measured when first asked for: a short way does not see most of the room.
  const clearances = new Map<number, number>();
  const clearanceOf = (place: number): number => {
    const known = clearances.get(place);
    if (known !== undefined) return known;
    const measured = clearanceAt(placeOf(place));
    clearances.set(place, measured);
    return measured;
  };
  const block = (column: number, row: number, reach: number): readonly number[] => {
    const places: number[] = [];
    for (let y = Math.max(0, row - reach); y <= Math.min(rows - 1, row + reach); y++)
      for (let x = Math.max(0, column - reach); x <= Math.min(columns - 1, column + reach); x++)
        places.push(y * columns + x);
    return places;
  };
  const about = ([x, y]: PlanPoint): readonly number[] =>
    block(Math.round((x - left) / step), Math.round((y - bottom) / step), 1);
  const [aboutStart, aboutGoal] = [new Set(about(start)), new Set(about(goal))];
  const endsMeet = Math.hypot(start[0] - goal[0], start[1] - goal[1]) <= 2 * step;
  return {
    count: count + 2,
    start: count,
    goal: count + 1,
    step,
    placeOf,
    clearanceOf,
    most: Math.min(east, north) / 2,
    neighbours: (place) => {
      if (place === count) return endsMeet ? [...aboutStart, count + 1] : [...aboutStart];
      if (place === count + 1) return [...aboutGoal];
      const near = block(place % columns, Math.floor(place / columns), 1).filter((other) => other !== place);
      return aboutGoal.has(place) ? [...near, count + 1] : near;
    },
  };
}

/** Largest number of places on the grid [-]. */
const MOST = 20_000;
