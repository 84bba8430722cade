import type { Disc } from './convex-body.js';
import {
  cross,
  directionOf,
  dot,
  lengthOf,
  minus,
  perpendicularsOf,
  plus,
  times,
  type Vec3,
} from './vector.js';

/**
 * Directions from which the least reach of two rims is looked for: evenly over the sphere, and in rings about both axes
 * that are as wide as the axes are apart, since nearly parallel discs have their least within that.
 *
 * @param discs - the discs [m]
 * @returns unit vectors [-]
 */
export function roundStarts(discs: readonly Disc[]): readonly Vec3[] {
  const starts: Vec3[] = [];
  for (let index = 0; index < EVEN; index++) {
    const up = 1 - (2 * index + 1) / EVEN;
    const round = Math.sqrt(1 - up * up);
    starts.push([round * Math.cos(GOLDEN_ANGLE * index), round * Math.sin(GOLDEN_ANGLE * index), up]);
  }
  const [first, second] = discs;
  if (first === undefined || second === undefined) return starts;
  const other = dot(first.axis, second.axis) < 0 ? times(second.axis, -1) : second.axis;
  const apart = lengthOf(cross(first.axis, other));
  const middles = [first.axis, other, directionOf(plus(first.axis, other))];
  const toward = minus(other, times(first.axis, dot(other, first.axis)));
  for (const middle of middles) {
    const across = minus(toward, times(middle, dot(toward, middle)));
    const along = lengthOf(across) > 0 ? directionOf(across) : perpendicularsOf(middle)[0];
    const square = cross(middle, along);
    for (const wide of [apart / 8, apart / 3, apart, 2 * apart, 0.05, 0.3].filter((each) => each > 0))
      for (let step = 0; step < 8; step++) {
        const angle = ((step + 0.5) * Math.PI) / 4;
        const off = plus(times(along, Math.cos(angle)), times(square, Math.sin(angle)));
        const start = directionOf(plus(middle, times(off, wide)));
        starts.push(start, times(start, -1));
      }
  }
  return starts;
}

/** Even starts over the sphere [-]. */
const EVEN = 240;

/** Turn from one even start to the next, which never falls into step [rad]. */
const GOLDEN_ANGLE = Math.PI * (3 - Math.sqrt(5));
