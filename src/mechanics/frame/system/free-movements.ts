import { solveProfile } from '../../../algebra/profile-factor.js';
import { product } from '../../../algebra/singular-values.js';
import type { ActiveRestraint } from '../../contact/active-restraint.js';
import { endForces, movementAlong, pointForces } from '../elements/element-forces.js';
import type { System } from './system.js';
import { gatherForces, spreadMovements } from './unknowns.js';

/** A movement that nothing resists. */
export interface FreeMovement {
  /** Six numbers a point [-]. */
  readonly movements: Float64Array;
  /** Energy over the square of the scaled movement [-]. */
  readonly ratio: number;
}

/** Energy ratio under which a movement counts as free: a few times what rounding leaves [-]. */
const FREE_RATIO = 3e-15;

/**
 * Movements that nothing resists: six vectors are iterated with the factor, whose vanished pivots were raised; those
 * along which the elements and springs, taken one by one, store no energy are free.
 *
 * @param system - factored stiffness
 * @param activeRestraints - springs of the supports [N/m]
 * @returns orthonormal free movements, at most six [-]
 * @source statics
 */
export function freeMovements(
  system: System,
  activeRestraints: readonly ActiveRestraint[],
): readonly FreeMovement[] {
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
      activeRestraints,
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
  activeRestraints: readonly ActiveRestraint[],
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
  for (const activeRestraint of activeRestraints) {
    if (!Number.isFinite(activeRestraint.stiffness)) continue;
    const force = activeRestraint.stiffness * movementAlong(activeRestraint, movements);
    const at = 6 * activeRestraint.point + (activeRestraint.acts === 'translation' ? 0 : 3);
    for (let i = 0; i < 3; i++) forces[at + i]! -= force * activeRestraint.direction[i]!;
  }
  const gathered = gatherForces(unknowns, forces, new Float64Array(unknowns.size));
  return { movements, energy: Math.abs(product(gathered, z)) };
}
