import type { Vec3 } from '../../../model/conventions.js';

/**
 * An elastic member between two points, described at its `to` end with the `from` end held:
 *
 *     e = u_to − T u_from − e₀        what the member is stretched, bent and twisted by
 *     s = S e                         wrench of the point on the `to` end
 *     T = [1  −[a×]; 0  1]            rigid movement from one end to the other, a = arm
 *     e₀ = D w + ε a                  free movement of the end under weight w per length and thermal strain ε
 *
 * Forces found in this form balance over each member to the last digit, whatever the rounding of u.
 */
export interface Element {
  /** S in plan axes, 6 × 6 by rows [N/m, N, N·m]. */
  readonly stiffness: Float64Array;
  /** From the `from` end to the `to` end [m]. */
  readonly arm: Vec3;
  /** D in plan axes, 6 × 3 by rows: end movement for a load of one per length [m²/N, m/N]. */
  readonly weightMovement: Float64Array;
  /** Length along the member [m]. */
  readonly length: number;
  /** Centroid of the line of the member, from the `from` end [m]. */
  readonly centroid: Vec3;
}

/** Three unit vectors: along the member, and two across. */
export interface Axes {
  readonly along: Vec3;
  readonly inPlane: Vec3;
  readonly across: Vec3;
}

/**
 * Turns a 6 × 6 matrix from local axes to plan axes: R K Rᵀ on each 3 × 3 block.
 *
 * @param local - matrix in local axes, by rows [-]
 * @param axes - local axes [-]
 * @returns matrix in plan axes [-]
 * @source beam-theory
 */
export function turnMatrix(local: Float64Array, axes: Axes): Float64Array {
  const r = [axes.along, axes.inPlane, axes.across];
  const turned = new Float64Array(36);
  for (let blockRow = 0; blockRow < 6; blockRow += 3) {
    for (let blockColumn = 0; blockColumn < 6; blockColumn += 3) {
      for (let i = 0; i < 3; i++) {
        for (let j = 0; j < 3; j++) {
          let sum = 0;
          for (let a = 0; a < 3; a++) {
            const ra = r[a]![i]!;
            if (ra === 0) continue;
            for (let b = 0; b < 3; b++) sum += ra * local[(blockRow + a) * 6 + blockColumn + b]! * r[b]![j]!;
          }
          turned[(blockRow + i) * 6 + blockColumn + j] = sum;
        }
      }
    }
  }
  return turned;
}

/**
 * Turns a 6 × 3 matrix (movement for a force) from local axes to plan axes.
 *
 * @param local - matrix in local axes, by rows [-]
 * @param axes - local axes [-]
 * @returns matrix in plan axes [-]
 * @source beam-theory
 */
export function turnTall(local: Float64Array, axes: Axes): Float64Array {
  const r = [axes.along, axes.inPlane, axes.across];
  const turned = new Float64Array(18);
  for (let block = 0; block < 6; block += 3) {
    for (let i = 0; i < 3; i++) {
      for (let j = 0; j < 3; j++) {
        let sum = 0;
        for (let a = 0; a < 3; a++) {
          for (let b = 0; b < 3; b++) sum += r[a]![i]! * local[(block + a) * 3 + b]! * r[b]![j]!;
        }
        turned[(block + i) * 3 + j] = sum;
      }
    }
  }
  return turned;
}
