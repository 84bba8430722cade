/** Equal springs under one rigid base, as what holds its middle. */
import type { BaseSprings } from '../../input/installation.js';
import type { Movement, Vec3 } from '../conventions.js';
import { UP } from '../vector.js';
import type { Restraint } from './frame.js';
import { rigidRestraint } from './part-supports.js';

/** A spread below this share of the largest counts as none [-]. */
const NOTHING = 1e-12;

/**
 * What a group of equal springs does to the middle it stands around. With k upright and s sideways of one, n of them at
 * (x, y) from their middle:
 *
 *     upright n k,   sideways n s each way,   about the upright axis s Σ (x² + y²)
 *     rocking k [Σ y², −Σ x y; −Σ x y, Σ x²],   held about its principal axes
 *
 * Exact for a rigid base and small movements, since the springs stand at one height. Without places the springs hold
 * upright alone.
 *
 * @param springs - rates [N/m], load of one as set [N], places [m]
 * @returns restraints [N/m], [N·m/rad], the upright one first, with the load of all of them [N]
 * @source statics
 */
export function springGroup({ rate, load, count, places, side }: BaseSprings): readonly Restraint[] {
  const up: Restraint = { ...rigidRestraint(UP), stiffness: rate * count, preload: load.value * count };
  const level = (direction: Vec3, acts: Restraint['acts'], stiffness: number): Restraint => ({
    ...rigidRestraint(direction, acts),
    stiffness,
  });
  const sideways =
    side === undefined
      ? []
      : [level([1, 0, 0], 'translation', side * count), level([0, 1, 0], 'translation', side * count)];
  if (places === undefined) return [up, ...sideways];
  const sum = (of: (place: Vec3) => number) => places.reduce((total, place) => total + of(place), 0);
  const about = { east: sum(([, y]) => y * y), north: sum(([x]) => x * x), both: -sum(([x, y]) => x * y) };
  const turned = Math.atan2(2 * about.both, about.east - about.north) / 2;
  const half = Math.hypot((about.east - about.north) / 2, about.both);
  const middle = (about.east + about.north) / 2;
  const [cos, sin] = [Math.cos(turned), Math.sin(turned)];
  const rocking = [
    level([cos, sin, 0], 'rotation', rate * (middle + half)),
    level([-sin, cos, 0], 'rotation', rate * (middle - half)),
  ].filter(({ stiffness }) => stiffness > NOTHING * rate * middle);
  const turning = (side ?? 0) * (about.east + about.north);
  return [up, ...sideways, ...rocking, ...(turning > 0 ? [level(UP, 'rotation', turning)] : [])];
}

/**
 * What each spring of a group carries once the base has moved: load as set, less the rate times how far its top rises.
 *
 *     F = F₀ − k (w + θ_east y − θ_north x)
 *
 * @param springs - rate [N/m], load as set [N], places [m]
 * @param movement - of the middle of the group [m], [rad]
 * @returns down on each spring, in the order of the file; below 0 it would have to pull [N]
 * @source statics
 */
export function springLoads(springs: BaseSprings, movement: Movement): readonly number[] {
  const { rate, load, count } = springs;
  const places = springs.places ?? Array.from({ length: count }, (): Vec3 => [0, 0, 0]);
  const { translation, rotation } = movement;
  return places.map(([x, y]) => load.value - rate * (translation[2] + rotation[0] * y - rotation[1] * x));
}
