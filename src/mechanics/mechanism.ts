import { solveProfile } from '../algebra/profile-factor.js';
import { product } from '../algebra/singular-values.js';
import { EngineError } from '../issues/issue.js';
import type { Vec3 } from '../model/conventions.js';
import { cross, dot, norm, scale, subtract } from '../model/vector.js';
import { endForces, movementAlong, pointForces } from './element-forces.js';
import type { Hold } from './hold.js';
import type { System } from './system.js';
import { gatherForces, spreadMovements } from './unknowns.js';

/** A movement that nothing resists. */
export interface FreeMovement {
  /** Six numbers a point [-]. */
  readonly movements: Float64Array;
  /** Energy over the square of the scaled movement [-]. */
  readonly ratio: number;
}

/**
 * Throws when the stiffness leaves a movement free, and says which.
 *
 * Six vectors are iterated with the factor, whose vanished pivots were raised; those along which the elements and
 * springs, taken one by one, store no energy are free movements.
 *
 * @param system - factored stiffness with at least one suspicious pivot
 * @param holds - springs of the supports [N/m]
 * @param condition - name of the condition [-]
 * @returns nothing when everything is held [-]
 * @throws EngineError `mechanics.mechanism`; data: `movement` in words, `points` that move most, `condition`,
 *   `held` (`loose` when the piece has no support at all, else `partly`)
 * @source statics
 */
export function refuseMechanism(system: System, holds: readonly Hold[], condition: string): void {
  const free = freeMovements(system, holds);
  if (free.length === 0) return;
  throw new EngineError('mechanics.mechanism', { ...describe(system, holds, free), condition });
}

/** Energy ratio under which a movement counts as free: a few times what rounding leaves [-]. */
const FREE_RATIO = 3e-15;

/**
 * Movements that nothing resists, found by inverse iteration.
 *
 * @param system - factored stiffness
 * @param holds - springs of the supports [N/m]
 * @returns orthonormal free movements, at most six [-]
 * @source statics
 */
export function freeMovements(system: System, holds: readonly Hold[]): readonly FreeMovement[] {
  const { unknowns, factor, scale: scales } = system;
  const n = unknowns.size;
  const count = Math.min(6, n);
  const vectors: Float64Array[] = [];
  for (let v = 0; v < count; v++) vectors.push(startVector(n, v));
  for (let round = 0; round < 4; round++) {
    for (let v = 0; v < count; v++) {
      solveProfile(factor, vectors[v]!);
      normalise(vectors, v);
    }
  }
  const free: FreeMovement[] = [];
  for (const vector of vectors) {
    const { movements, energy } = storedEnergy(
      system,
      holds,
      vector.map((value, i) => value * scales[i]!),
    );
    if (energy <= FREE_RATIO) free.push({ movements, ratio: energy });
  }
  return free;
}

/** Numbers that look random but are the same every time. */
function startVector(n: number, seed: number): Float64Array {
  let state = 12345 + 7919 * seed;
  return Float64Array.from({ length: n }, () => {
    state = (state * 1103515245 + 12345) % 2147483648;
    return state / 1073741824 - 1;
  });
}

function normalise(vectors: readonly Float64Array[], v: number): void {
  const vector = vectors[v]!;
  const shrink = (factor: number) => {
    for (let i = 0; i < vector.length; i++) vector[i]! *= factor;
  };
  shrink(1 / Math.sqrt(product(vector, vector)));
  for (let pass = 0; pass < 2; pass++) {
    for (let w = 0; w < v; w++) {
      const share = product(vector, vectors[w]!);
      for (let i = 0; i < vector.length; i++) vector[i]! -= share * vectors[w]![i]!;
    }
    shrink(1 / Math.sqrt(product(vector, vector)));
  }
}

function storedEnergy(
  system: System,
  holds: readonly Hold[],
  z: Float64Array,
): { readonly movements: Float64Array; readonly energy: number } {
  const { prepared, clusters, unknowns } = system;
  const size = 6 * prepared.places.length;
  const movements = spreadMovements(unknowns, z, new Float64Array(size), new Float64Array(size));
  const ends = {
    from: new Float64Array(6 * prepared.elementCount),
    to: new Float64Array(6 * prepared.elementCount),
  };
  endForces(prepared, clusters, movements, undefined, ends);
  const forces = pointForces(prepared, clusters, ends, undefined, new Float64Array(size));
  for (const hold of holds) {
    if (!Number.isFinite(hold.stiffness)) continue;
    const force = hold.stiffness * movementAlong(hold, movements);
    const at = 6 * hold.point + (hold.acts === 'translation' ? 0 : 3);
    for (let i = 0; i < 3; i++) forces[at + i]! -= force * hold.direction[i]!;
  }
  const gathered = gatherForces(unknowns, forces, new Float64Array(unknowns.size));
  return { movements, energy: Math.abs(product(gathered, z)) };
}

function describe(
  system: System,
  holds: readonly Hold[],
  free: readonly FreeMovement[],
): { readonly movement: string; readonly points: readonly string[]; readonly held: string } {
  const { prepared, unknowns } = system;
  const size = (movements: Float64Array, point: number) =>
    Math.hypot(movements[6 * point]!, movements[6 * point + 1]!, movements[6 * point + 2]!);
  const turning = (movements: Float64Array, point: number) =>
    Math.hypot(movements[6 * point + 3]!, movements[6 * point + 4]!, movements[6 * point + 5]!);
  // The piece of the frame that moves most; other pieces may be free too, one is named at a time.
  let piece = -1;
  let most = -1;
  for (let point = 0; point < prepared.places.length; point++) {
    const group = unknowns.pointGroup[point]!;
    if (group === -1) continue;
    const moves = size(free[0]!.movements, point) + 1e-3 * turning(free[0]!.movements, point);
    if (moves > most) {
      most = moves;
      piece = unknowns.pieceOf[group]!;
    }
  }
  const points = prepared.places
    .map((_, point) => point)
    .filter(
      (point) => unknowns.pointGroup[point] !== -1 && unknowns.pieceOf[unknowns.pointGroup[point]!] === piece,
    );
  const held = holds.some((hold) => points.includes(hold.point)) ? 'partly' : 'loose';
  const shift = freeShift(free, points);
  const movements = shift?.movements ?? free[0]!.movements;
  const furthest = (measure: (movements: Float64Array, point: number) => number) =>
    points.toSorted((a, b) => measure(movements, b) - measure(movements, a) || a - b);
  const byShift = furthest(size);
  const byTurn = furthest(turning);
  const largest = size(movements, byShift[0]!);
  const reach = Math.max(
    ...points.map((p) => norm(subtract(prepared.places[p]!, prepared.places[byTurn[0]!]!))),
  );
  const turns = turning(movements, byTurn[0]!) * Math.max(reach, 0.1) > 0.5 * largest;
  const movement =
    shift?.words ?? (turns ? turnWords(movements, byTurn[0]!) : shiftWords(movements, byShift[0]!));
  const ranked = turns && largest < 1e-6 * turning(movements, byTurn[0]!) ? byTurn : byShift;
  return { movement, points: ranked.slice(0, 3).map((point) => prepared.pointNames[point]!), held };
}

/** A shift of the whole piece along an axis, where that lies among the free movements. */
function freeShift(
  free: readonly FreeMovement[],
  points: readonly number[],
): { readonly words: string; readonly movements: Float64Array } | undefined {
  const words = ['moves east or west', 'moves north or south', 'moves up or down'];
  for (const axis of [2, 0, 1]) {
    // Least squares: the mix of free movements nearest to one metre along the axis at every point.
    const mix = nearestMix(free, points, axis);
    if (mix === undefined) continue;
    return { words: words[axis]!, movements: mix };
  }
  return undefined;
}

function nearestMix(
  free: readonly FreeMovement[],
  points: readonly number[],
  axis: number,
): Float64Array | undefined {
  const pick = (movements: Float64Array) =>
    Float64Array.from(points.flatMap((p) => [...movements.subarray(6 * p, 6 * p + 6)]));
  const basis: { readonly part: Float64Array; readonly whole: Float64Array }[] = [];
  for (const { movements } of free) {
    const part = pick(movements);
    const whole = Float64Array.from(movements);
    const before = Math.sqrt(product(part, part));
    for (const other of basis) {
      const share = product(part, other.part);
      for (let i = 0; i < part.length; i++) part[i]! -= share * other.part[i]!;
      for (let i = 0; i < whole.length; i++) whole[i]! -= share * other.whole[i]!;
    }
    const length = Math.sqrt(product(part, part));
    if (!(length > 1e-6 * before)) continue;
    basis.push({ part: part.map((v) => v / length), whole: whole.map((v) => v / length) });
  }
  const target = Float64Array.from(points.flatMap(() => [0, 1, 2, 3, 4, 5].map((i) => (i === axis ? 1 : 0))));
  const mix = new Float64Array(free[0]!.movements.length);
  let covered = 0;
  for (const { part, whole } of basis) {
    const share = product(part, target);
    covered += share * share;
    for (let i = 0; i < mix.length; i++) mix[i]! += share * whole[i]!;
  }
  return covered > 0.999 * points.length ? mix : undefined;
}

function shiftWords(movements: Float64Array, point: number): string {
  const [axis, name] = nearestAxis([
    movements[6 * point]!,
    movements[6 * point + 1]!,
    movements[6 * point + 2]!,
  ]);
  const words = ['moves east or west', 'moves north or south', 'moves up or down'];
  return axis === -1 ? `moves along ${name}` : words[axis]!;
}

function turnWords(movements: Float64Array, point: number): string {
  const at = 6 * point + 3;
  const [axis, name] = nearestAxis([movements[at]!, movements[at + 1]!, movements[at + 2]!]);
  const words = [
    'turns about an east-west line',
    'turns about a north-south line',
    'turns about the vertical',
  ];
  return axis === -1 ? `turns about ${name}` : words[axis]!;
}

/** The axis within eight degrees of a direction, else the direction in words. */
function nearestAxis(direction: Vec3): readonly [number, string] {
  const unit = scale(direction, 1 / norm(direction));
  for (let axis = 0; axis < 3; axis++) if (Math.abs(unit[axis]!) > 0.99) return [axis, ''];
  const level = norm(cross(unit, [0, 0, 1]));
  if (level < 0.5) return [-1, 'a line near the vertical'];
  const bearing = (Math.round((Math.atan2(unit[0], unit[1]) * 180) / Math.PI) + 360) % 180;
  const slope = Math.abs(dot(unit, [0, 0, 1])) > 0.14 ? ', sloping' : '';
  return [-1, `a line bearing ${bearing} degrees from north${slope}`];
}
