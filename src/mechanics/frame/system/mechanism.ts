import { product } from '../../../algebra/singular-values.js';
import { EngineError } from '../../../issues/issue.js';
import type { Vec3 } from '../../../model/conventions.js';
import { cross, dot, norm, scale, subtract } from '../../../model/vector.js';
import type { ActiveRestraint } from '../../contact/active-restraint.js';
import type { FreeMovement } from './free-movements.js';
import type { System } from './system.js';

/**
 * The error that says which movement nothing resists.
 *
 * @param system - factored stiffness
 * @param activeRestraints - what the supports do
 * @param free - free movements, at least one
 * @param condition - name of the condition [-]
 * @returns EngineError `mechanics.mechanism`; data: `movement` in words, `points` that move most, `condition`, `held`
 *   (`loose` when the piece has no support at all, else `partly`)
 * @source statics
 */
export function mechanismError(
  system: System,
  activeRestraints: readonly ActiveRestraint[],
  free: readonly FreeMovement[],
  condition: string,
): EngineError {
  return new EngineError('mechanics.mechanism', { ...describe(system, activeRestraints, free), condition });
}

function describe(
  system: System,
  activeRestraints: readonly ActiveRestraint[],
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
  const held = activeRestraints.some((activeRestraint) => points.includes(activeRestraint.point))
    ? 'partly'
    : 'loose';
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
