import { type ConvexBody, type Disc, farthestPoint, reachOf } from './convex-body.js';
import { distinctLines, exitDirectionsOf, squaresTo } from './exit-directions.js';
import { refineDirection } from './refine-direction.js';
import { roundStarts } from './round-starts.js';
import { dot, minus, perpendicularsOf, plus, times, UP, type Vec3 } from './vector.js';

/** Shortest way out for a body that overlaps another. */
export interface LeastExit {
  /** Unit vector along which the first body leaves [-]. */
  readonly direction: Vec3;
  /** [m] */
  readonly depth: number;
}

/**
 * Shortest way by which a body without its ball leaves another: the least reach of their difference over all
 * directions. A ball that grows about the origin inside the difference first touches its surface where that is square
 * to one direction only: on a flat face, on an edge drawn round by a rim, or where two rims roll on each other. Faces
 * are tried one by one, edges by a search about the edge, rims by Newton's method from many starts. A direction too many
 * does no harm, since moving as far as the difference reaches always clears.
 *
 * @param a - body that moves [m]
 * @param b - body that stays [m]
 * @param shift - movement of the first before [m]
 * @returns direction and depth [m]
 */
export function leastExit(a: ConvexBody, b: ConvexBody, shift: Vec3): LeastExit {
  const reach = (towards: Vec3): number =>
    reachOf(a, towards) + dot(shift, towards) + reachOf(b, times(towards, -1));
  let least: LeastExit = { direction: times(UP, -1), depth: Number.POSITIVE_INFINITY };
  const offer = (towards: Vec3): void => {
    const depth = reach(towards);
    if (depth < least.depth) least = { direction: times(towards, -1), depth };
  };
  const ofA = exitDirectionsOf(a.solid);
  const ofB = exitDirectionsOf(b.solid);
  const edges = distinctLines([...ofA.edges, ...ofB.edges]);
  const flat = [
    ...ofA.squares,
    ...ofB.squares,
    ...squaresTo(ofA.edges, ofB.edges),
    ...edges.flatMap(perpendicularsOf),
    UP,
  ];
  for (const square of distinctLines(flat)) {
    offer(square);
    offer(times(square, -1));
  }
  const discs = [a.disc, b.disc].filter((disc) => disc !== undefined);
  if (discs.length === 0) return least;
  for (const edge of edges) for (const towards of leastAbout(edge, discs, reach)) offer(towards);
  if (discs.length < 2) return least;
  const starts = roundStarts(discs)
    .map((direction) => ({ direction, reach: reach(direction) }))
    .sort((one, other) => one.reach - other.reach)
    .slice(0, POLISHED);
  for (const { direction } of starts) {
    const corner = minus(
      plus(farthestPoint(a, direction).corner, shift),
      farthestPoint(b, times(direction, -1)).corner,
    );
    offer(refineDirection({ corner, discs }, direction));
  }
  return least;
}

/** Directions square to an edge in which the reach is least against its neighbours. */
function leastAbout(edge: Vec3, discs: readonly Disc[], reach: (towards: Vec3) => number): readonly Vec3[] {
  const [first, second] = perpendicularsOf(edge);
  const at = (angle: number): Vec3 => plus(times(first, Math.cos(angle)), times(second, Math.sin(angle)));
  const angles = anglesToTry(discs.map(({ axis }) => Math.atan2(dot(axis, second), dot(axis, first))));
  const reaches = angles.map((angle) => reach(at(angle)));
  const count = angles.length;
  return angles.flatMap((angle, index) => {
    const here = reaches[index] ?? Number.NaN;
    const before = (index + count - 1) % count;
    const after = (index + 1) % count;
    if (here > (reaches[before] ?? here) || here > (reaches[after] ?? here)) return [];
    const low = (angles[before] ?? angle) - (before > index ? FULL_TURN : 0);
    const high = (angles[after] ?? angle) + (after < index ? FULL_TURN : 0);
    return [at(leastBetween(low, high, (each) => reach(at(each))))];
  });
}

/** Equal steps all round, and finer and finer ones towards the axes, where the reach over a rim bends sharply. */
function anglesToTry(axes: readonly number[]): readonly number[] {
  const angles = Array.from({ length: EQUAL_STEPS }, (_, step) => (step * FULL_TURN) / EQUAL_STEPS);
  for (const axis of axes)
    for (const middle of [axis, axis + Math.PI])
      for (let power = 3; power <= FINEST_POWER; power++)
        angles.push(middle - 2 ** -power, middle + 2 ** -power);
  const wrapped = angles.map((angle) => ((angle % FULL_TURN) + FULL_TURN) % FULL_TURN);
  return [...new Set(wrapped)].sort((one, other) => one - other);
}

/** Golden section: the reach is flat at its least, so the angle need not be exact for the reach to be. */
function leastBetween(low: number, high: number, of: (angle: number) => number): number {
  let [from, to] = [low, high];
  let [inner, outer] = [to - GOLDEN * (to - from), from + GOLDEN * (to - from)];
  let [atInner, atOuter] = [of(inner), of(outer)];
  for (let round = 0; round < GOLDEN_ROUNDS; round++) {
    if (atInner <= atOuter) {
      [to, outer, atOuter] = [outer, inner, atInner];
      inner = to - GOLDEN * (to - from);
      atInner = of(inner);
    } else {
      [from, inner, atInner] = [inner, outer, atOuter];
      outer = from + GOLDEN * (to - from);
      atOuter = of(outer);
    }
  }
  return (from + to) / 2;
}

const FULL_TURN = 2 * Math.PI;

/** Golden section [-]. */
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** Rounds that bring a bracket of a tenth of a turn to a billionth of a radian [-]. */
const GOLDEN_ROUNDS = 44;

/** Steps all round an edge [-]. */
const EQUAL_STEPS = 48;

/** Finest step towards an axis, as a power of a half [-]. */
const FINEST_POWER = 22;

/** How many of the best starts are refined [-]. */
const POLISHED = 48;
