/** Whether there is something to hang from, to stand on, and a clear way to it. */
import { intersects, type Solid } from '../../geometry/index.js';
import type { Vec3 } from '../../input/installation.js';
import { type Obstacle, obstaclesOf } from '../../model/room/obstacles.js';
import type { Situation } from './situation.js';

/** Shortest rod that can be made up, from the top of the pipe: clamp, nuts and attachment [m]. */
const SHORTEST_ROD = 0.15;
/** Longest rod that is put up anew, from the middle of the pipe [m]. */
const LONGEST_ROD = 4;
/** Tallest stand without bracing of its own [m]. */
const TALLEST_STAND = 2.5;
/** Lowest stand: a base plate and a saddle [m]. */
const LOWEST_STAND = 0.1;
/** Radius of what must stay clear round a rod or a leg [m]. */
const BESIDE = 0.025;
/** A hanger as near as this in plan hangs from the same structure [m]. */
const SAME_STRUCTURE = 8;

/** Where a rod can be fixed. */
export interface Overhead {
  /** Length of the rod from the middle of the pipe to the structure [m]; absent where no height is known. */
  readonly length?: number;
}

/** A point of pipe. */
export interface PipePoint {
  readonly at: Vec3;
  /** With its covering [m]. */
  readonly radius: number;
  readonly upright: boolean;
}

/** Looks for room; made once for each situation. */
export interface RoomForSupports {
  /**
   * A rod over a point of pipe; undefined where nothing can hang there. `own` is the length of a rod that moves there.
   * The rods of a clamp on a riser run beside it.
   */
  readonly hang: (pipe: PipePoint, own?: number) => Overhead | undefined;
  /** Whether a stand can carry a point of pipe. */
  readonly stand: (at: Vec3, radius: number) => boolean;
}

/**
 * Room for supports in an installation.
 *
 * @param situation - the installation and its layout
 * @returns questions that can be asked of it
 */
export function roomForSupports({ installation, layout }: Situation): RoomForSupports {
  // Rods go through a ceiling to what carries it, and stands end on the floor.
  const obstacles = obstaclesOf(installation, layout).filter(
    ({ kind }) => kind === 'line' || kind === 'object',
  );
  const objects = obstacles.filter(({ kind }) => kind === 'object');
  const beams = new Set(
    installation.room.objects.filter(({ kind }) => kind === 'beam').map(({ name }) => name),
  );
  const { floor, ceiling } = installation.room;
  const tops = layout.supports.flatMap(({ at, part }) =>
    part?.rods?.length === undefined ? [] : [{ at, top: at[2] + part.rods.length }],
  );
  const structureOver = (at: Vec3): number | undefined => {
    const near = tops
      .map(({ at: hung, top }) => ({ top, away: Math.hypot(hung[0] - at[0], hung[1] - at[1]) }))
      .filter(({ top, away }) => away < SAME_STRUCTURE && top > at[2] + SHORTEST_ROD)
      .sort((a, b) => a.away - b.away || a.top - b.top);
    if (near[0] !== undefined) return near[0].top;
    return ceiling !== undefined && ceiling > at[2] ? ceiling : undefined;
  };
  return {
    hang: ({ at, radius, upright }, own) => {
      const top = own === undefined ? structureOver(at) : at[2] + own;
      const start = at[2] + radius + 2 * BESIDE;
      // Nothing is known of what is overhead.
      if (top === undefined) return {};
      if (top - (at[2] + radius) < SHORTEST_ROD) return undefined;
      if (own === undefined && top - at[2] > LONGEST_ROD) return undefined;
      const met = along(upright ? objects : obstacles, at, start, top - 2 * BESIDE);
      const lowest = Math.min(...met.filter(({ name }) => beams.has(name)).map(({ box }) => box.low[2]));
      if (met.some(({ name, box }) => !beams.has(name) && box.low[2] < lowest)) return undefined;
      const end = Number.isFinite(lowest) ? lowest : top;
      return end - (at[2] + radius) < SHORTEST_ROD ? undefined : { length: end - at[2] };
    },
    stand: (at, radius) => {
      if (floor === undefined) return false;
      const height = at[2] - radius - floor;
      if (height < LOWEST_STAND || height > TALLEST_STAND) return false;
      return along(obstacles, at, floor + 2 * BESIDE, at[2] - radius - 2 * BESIDE).length === 0;
    },
  };
}

/** What an upright rod or leg would run through. */
function along(obstacles: readonly Obstacle[], at: Vec3, low: number, high: number): readonly Obstacle[] {
  if (!(high > low)) return [];
  const rod: Solid = {
    kind: 'capsule',
    from: [at[0], at[1], low],
    to: [at[0], at[1], high],
    radius: BESIDE,
  };
  return obstacles.filter(({ solid, box }) => {
    const apart =
      box.low[0] > at[0] + BESIDE ||
      box.high[0] < at[0] - BESIDE ||
      box.low[1] > at[1] + BESIDE ||
      box.high[1] < at[1] - BESIDE ||
      box.low[2] > high + BESIDE ||
      box.high[2] < low - BESIDE;
    return !apart && intersects(rod, solid);
  });
}
