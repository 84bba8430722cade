import { EngineError } from '../issues/issue.js';
import { bodyOf, type ConvexBody } from './convex-body.js';
import { piecesOf } from './pieces.js';
import { reachAgainst, signedGap } from './signed-gap.js';
import type { Solid } from './solid.js';
import { type Conflict, conflictAlong, SLIGHT } from './travel.js';
import { directionOf, perpendicularsOf, plus, times, type Vec3, ZERO } from './vector.js';

/** A movement that makes one solid clear another. */
export interface ClearingMove {
  /** [m] */
  readonly vector: Vec3;
  /** [m] */
  readonly length: number;
  /** Lower bound of the length of any movement that clears; equal to the length when that is known to be the least [m]. */
  readonly atLeast: number;
}

type Pair = readonly [ConvexBody, ConvexBody];

/**
 * Smallest movement of a solid that brings it clear of another.
 *
 * Exact for convex solids. Of solids of several pieces the movement found always clears; it is the least when one pair
 * of pieces decides, and else the best of many directions, each followed until it is clear and then improved.
 *
 * @param a - solid that moves [m]
 * @param b - solid that stays [m]
 * @param clearance - distance wanted between them [m]
 * @returns the movement, zero when it is clear already [m]
 * @throws EngineError `geometry.no-clearance` when the clearance is negative
 */
export function penetrationMove(a: Solid, b: Solid, clearance: number): ClearingMove {
  const pairs = pairsOf(a, b, clearance);
  const single = pairs
    .map(([one, other]) => moveOfPair(one, other, clearance))
    .filter(({ length }) => length > 0)
    .sort((one, other) => other.length - one.length);
  const [longest] = single;
  if (longest === undefined) return { vector: ZERO, length: 0, atLeast: 0 };
  if (pairs.length === 1) return longest;
  const atLeast = longest.length;
  const moveAlong = (direction: Vec3): ClearingMove => {
    const length = wayAlong(pairs, direction, clearance);
    return { vector: times(direction, length), length, atLeast };
  };
  const starts = [...single.map(({ vector }) => directionOf(vector)), ...evenDirections()];
  let best = moveAlong(directionOf(longest.vector));
  for (const start of starts) {
    if (best.length <= atLeast + SLIGHT) return { ...best, atLeast: best.length };
    best = shorter(best, moveAlong(start));
  }
  for (let turn = FIRST_TURN; turn > LAST_TURN; turn /= 2) {
    const direction = directionOf(best.vector);
    const [first, second] = perpendicularsOf(direction);
    for (let step = 0; step < NEIGHBOURS; step++) {
      const angle = (2 * Math.PI * step) / NEIGHBOURS;
      const off = plus(times(first, Math.cos(angle)), times(second, Math.sin(angle)));
      best = shorter(best, moveAlong(directionOf(plus(direction, times(off, turn)))));
    }
  }
  return best;
}

function shorter(one: ClearingMove, other: ClearingMove): ClearingMove {
  return other.length < one.length ? other : one;
}

/**
 * Smallest movement of a solid in a given direction that brings it clear of another.
 *
 * @param a - solid that moves [m]
 * @param b - solid that stays [m]
 * @param direction - direction of the movement [-]
 * @param clearance - distance wanted between them [m]
 * @returns the movement, zero when it is clear already [m]
 * @throws EngineError `geometry.no-direction` when the direction is zero
 * @throws EngineError `geometry.no-clearance` when the clearance is negative
 */
export function smallestMoveAlong(a: Solid, b: Solid, direction: Vec3, clearance: number): ClearingMove {
  const along = directionOf(direction);
  const length = wayAlong(pairsOf(a, b, clearance), along, clearance);
  return { vector: times(along, length), length, atLeast: length };
}

function pairsOf(a: Solid, b: Solid, clearance: number): readonly Pair[] {
  if (!(clearance >= 0)) throw new EngineError('geometry.no-clearance', { clearance });
  const others = piecesOf(b).map(bodyOf);
  return piecesOf(a)
    .map(bodyOf)
    .flatMap((one) => others.map((other): Pair => [one, other]));
}

function moveOfPair(a: ConvexBody, b: ConvexBody, clearance: number): ClearingMove {
  const { gap, direction } = signedGap(a, b, ZERO);
  if (gap >= clearance) return { vector: ZERO, length: 0, atLeast: 0 };
  const length = reachAgainst(a, b, ZERO, direction) + a.rounding + b.rounding + clearance;
  return length > 0
    ? { vector: times(direction, length), length, atLeast: length }
    : { vector: ZERO, length: 0, atLeast: 0 };
}

/** Way until every pair is clear: past one conflict after the other, as long as they overlap. */
function wayAlong(pairs: readonly Pair[], direction: Vec3, clearance: number): number {
  const conflicts = pairs
    .map(([a, b]) => conflictAlong(a, b, direction, clearance))
    .filter((conflict): conflict is Conflict => conflict !== undefined)
    .sort((one, other) => one.from - other.from);
  let way = 0;
  for (const { from, to } of conflicts) if (from < way - SLIGHT && to > way) way = to;
  return way;
}

/** Directions spread evenly over the sphere. */
function evenDirections(): readonly Vec3[] {
  return Array.from({ length: EVEN }, (_, index): Vec3 => {
    const up = 1 - (2 * index + 1) / EVEN;
    const round = Math.sqrt(1 - up * up);
    const angle = Math.PI * (3 - Math.sqrt(5)) * index;
    return [round * Math.cos(angle), round * Math.sin(angle), up];
  });
}

/** Directions tried for solids of several pieces [-]. */
const EVEN = 120;

/** Directions tried about the best at each turn [-]. */
const NEIGHBOURS = 8;

/** First and last turn of the search about the best direction [rad]. */
const FIRST_TURN = 0.2;
const LAST_TURN = 1e-7;
