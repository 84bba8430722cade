import { emptyProfile, type ProfileMatrix } from '../../../algebra/profile-matrix.js';
import type { Vec3 } from '../../../model/conventions.js';
import type { ActiveRestraint } from '../../contact/active-restraint.js';
import { armMatrix } from '../elements/joint-element.js';
import type { PreparedFrame } from '../prepare-frame.js';
import type { Clusters } from './cluster.js';
import type { Unknowns } from './unknowns.js';

/**
 * Stiffness on the unknowns: every element and every spring, carried over by Φ of its points.
 *
 *     K = Σ [Φ_from; Φ_to]ᵀ [Tᵀ S T, −Tᵀ S; −S T, S] [Φ_from; Φ_to] + Σ k (Φᵀ d) (Φᵀ d)ᵀ
 *
 * @param prepared - elements [N/m]
 * @param clusters - which joints stand
 * @param unknowns - numbering and Φ
 * @param activeRestraints - springs of the supports [N/m], [N·m/rad]
 * @returns profile matrix [N/m]
 * @source beam-theory
 */
export function assembleStiffness(
  prepared: PreparedFrame,
  clusters: Clusters,
  unknowns: Unknowns,
  activeRestraints: readonly ActiveRestraint[],
): ProfileMatrix {
  const matrix = assembleElements(prepared, clusters, unknowns);
  addSupportStiffness(matrix, unknowns, activeRestraints);
  return matrix;
}

/**
 * Stiffness of the elements alone: the first sum of `assembleStiffness`.
 *
 * @param prepared - elements [N/m]
 * @param clusters - which joints stand
 * @param unknowns - numbering and Φ
 * @returns profile matrix [N/m]
 * @source beam-theory
 */
export function assembleElements(
  prepared: PreparedFrame,
  clusters: Clusters,
  unknowns: Unknowns,
): ProfileMatrix {
  const matrix = emptyProfile(unknowns.first);
  const near = new Float64Array(36);
  const cross = new Float64Array(36);
  for (let e = 0; e < prepared.elementCount; e++) {
    if (e >= prepared.memberCount && clusters.jointStands[e - prepared.memberCount] === false) continue;
    const S = prepared.stiffness.subarray(36 * e, 36 * e + 36);
    const arm: Vec3 = [prepared.arm[3 * e]!, prepared.arm[3 * e + 1]!, prepared.arm[3 * e + 2]!];
    endBlocks(S, arm, near, cross);
    const from = prepared.from[e]!;
    const to = prepared.to[e]!;
    addBlock(matrix, unknowns, from, from, near, true);
    addBlock(matrix, unknowns, from, to, cross, false);
    addBlock(matrix, unknowns, to, to, S, true);
  }
  return matrix;
}

/**
 * Adds the springs of the supports: the second sum of `assembleStiffness`.
 *
 * @param matrix - changed [N/m]
 * @param unknowns - numbering and Φ
 * @param activeRestraints - what the supports do; rigid ones are constraints, not springs
 * @returns nothing [-]
 * @source statics
 */
export function addSupportStiffness(
  matrix: ProfileMatrix,
  unknowns: Unknowns,
  activeRestraints: readonly ActiveRestraint[],
): void {
  const block = new Float64Array(36);
  for (const activeRestraint of activeRestraints) {
    if (!Number.isFinite(activeRestraint.stiffness) || activeRestraint.stiffness === 0) continue;
    block.fill(0);
    const shift = activeRestraint.acts === 'translation' ? 0 : 3;
    for (let i = 0; i < 3; i++) {
      for (let j = 0; j < 3; j++) {
        block[6 * (i + shift) + j + shift] =
          activeRestraint.stiffness * activeRestraint.direction[i]! * activeRestraint.direction[j]!;
      }
    }
    addBlock(matrix, unknowns, activeRestraint.point, activeRestraint.point, block, true);
  }
}

/**
 * Blocks of an element at its `from` end and between its ends.
 *
 *     near = Tᵀ S T,   cross = −Tᵀ S
 *
 * @param S - stiffness at the `to` end, 6 × 6 [N/m]
 * @param arm - from end to end [m]
 * @param near - filled here, 6 × 6 [N/m]
 * @param cross - filled here, 6 × 6 [N/m]
 * @returns nothing [-]
 * @source beam-theory
 */
export function endBlocks(S: Float64Array, arm: Vec3, near: Float64Array, cross: Float64Array): void {
  const T = armMatrix(arm);
  for (let j = 0; j < 6; j++) {
    for (let i = 0; i < 3; i++) cross[6 * i + j] = -S[6 * i + j]!;
    for (let i = 3; i < 6; i++) {
      let sum = S[6 * i + j]!;
      for (let p = 0; p < 3; p++) sum += T[6 * p + i]! * S[6 * p + j]!;
      cross[6 * i + j] = -sum;
    }
  }
  for (let i = 0; i < 6; i++) {
    for (let j = 0; j < 3; j++) near[6 * i + j] = -cross[6 * i + j]!;
    for (let j = 3; j < 6; j++) {
      let sum = cross[6 * i + j]!;
      for (let p = 0; p < 3; p++) sum += cross[6 * i + p]! * T[6 * p + j]!;
      near[6 * i + j] = -sum;
    }
  }
}

/**
 * Adds Φ_aᵀ B Φ_b to a profile matrix; a block between two points also stands transposed on the other side.
 *
 * @param matrix - changed [N/m]
 * @param unknowns - numbering and Φ
 * @param a - point of the rows [-]
 * @param b - point of the columns [-]
 * @param block - 6 × 6 by rows [N/m]
 * @param isOwn - true for the symmetric block of one point, false for a block between two ends [-]
 * @returns nothing [-]
 * @source statics
 */
export function addBlock(
  matrix: ProfileMatrix,
  unknowns: Unknowns,
  a: number,
  b: number,
  block: Float64Array,
  isOwn: boolean,
): void {
  const { pointGroup, groups, offset, phiStart, phi } = unknowns;
  const { diagonal, values } = matrix;
  const ga = pointGroup[a]!;
  const gb = pointGroup[b]!;
  const na = groups[ga]!.free;
  const nb = groups[gb]!.free;
  const oa = offset[ga]!;
  const ob = offset[gb]!;
  const startA = phiStart[a]!;
  const startB = phiStart[b]!;
  const right = startB === -1 ? block : timesPhi(block, phi, startB, nb);
  for (let r = 0; r < na; r++) {
    const row = oa + r;
    for (let c = isOwn ? r : 0; c < nb; c++) {
      let value = 0;
      if (startA === -1) value = right[r * nb + c]!;
      else for (let i = 0; i < 6; i++) value += phi[startA + i * na + r]! * right[i * nb + c]!;
      if (value === 0) continue;
      const column = ob + c;
      // Both ends on one group: the block and its transpose fall on the same triangle.
      if (row === column && !isOwn) value *= 2;
      if (row <= column) values[diagonal[column]! - column + row]! += value;
      else values[diagonal[row]! - row + column]! += value;
    }
  }
}

function timesPhi(block: Float64Array, phi: Float64Array, start: number, free: number): Float64Array {
  const out = new Float64Array(6 * free);
  for (let i = 0; i < 6; i++) {
    for (let k = 0; k < 6; k++) {
      const value = block[6 * i + k]!;
      if (value === 0) continue;
      for (let c = 0; c < free; c++) out[i * free + c]! += value * phi[start + k * free + c]!;
    }
  }
  return out;
}
