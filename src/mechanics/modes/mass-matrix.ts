import { emptyProfile, type ProfileMatrix } from '../../algebra/profile-matrix.js';
import type { Vec3 } from '../../model/conventions.js';
import type { FrameCondition } from '../../model/frame/frame.js';
import { subtract } from '../../model/vector.js';
import { armMatrix } from '../frame/elements/joint-element.js';
import { lumpMass } from '../frame/present-mass.js';
import { addBlock } from '../frame/system/assemble.js';
import type { System } from '../frame/system/system.js';
import { memberMass } from './member-mass.js';

/** One block of mass between two points (or of one), kept to find what a movement carries along. */
export interface MassBlock {
  readonly a: number;
  readonly b: number;
  /** 6 × 6 by rows [kg]. */
  readonly values: Float64Array;
}

/**
 * Mass of everything that stands: consistent for members with their contents and covering; lumps of bodies at their
 * places with their rotary inertia; half of each joint at each of its ends.
 *
 * @param system - which bodies and joints stand
 * @param condition - contents and covering
 * @returns blocks of mass between points [kg], and the total [kg]
 * @source beam-theory
 */
export function massBlocks(
  system: System,
  condition: FrameCondition,
): { readonly blocks: readonly MassBlock[]; readonly total: number } {
  const { prepared, clusters } = system;
  const { frame, memberCount } = prepared;
  const blocks: MassBlock[] = [];
  let total = 0;
  frame.members.forEach((member, e) => {
    const S = prepared.stiffness.subarray(36 * e, 36 * e + 36);
    const [a, b] = [prepared.from[e]!, prepared.to[e]!];
    const { near, cross, far } = memberMass(frame, member, condition, S);
    blocks.push({ a, b: a, values: near }, { a, b, values: cross }, { a: b, b, values: far });
    total += near[0]! + 2 * cross[0]! + far[0]!;
  });
  const lump = (point: number, arm: Vec3, mass: number, inertia: Vec3) => {
    total += mass;
    const X = armMatrix(arm);
    const values = new Float64Array(36);
    for (let i = 0; i < 6; i++) {
      for (let j = 0; j < 6; j++) {
        for (let r = 0; r < 3; r++) values[6 * i + j]! += mass * X[6 * r + i]! * X[6 * r + j]!;
        if (i === j && i > 2) values[6 * i + j]! += inertia[i - 3]!;
      }
    }
    blocks.push({ a: point, b: point, values });
  };
  frame.bodies.forEach((body, index) => {
    if (clusters.bodyStands[index] === false) return;
    const point = prepared.pointNumber.get(body.points[0]!)!;
    for (const part of body.masses) {
      const arm = subtract(part.at, prepared.places[point]!);
      lump(point, arm, lumpMass(part, condition), part.inertia ?? [0, 0, 0]);
    }
  });
  frame.joints.forEach((joint, index) => {
    if (clusters.jointStands[index] === false || joint.mass === 0) return;
    for (const ends of [prepared.from, prepared.to]) {
      lump(ends[memberCount + index]!, [0, 0, 0], joint.mass / 2, [0, 0, 0]);
    }
  });
  return { blocks, total };
}

/**
 * Mass on the unknowns, scaled as the stiffness is: S Φᵀ M Φ S.
 *
 * @param system - numbering, Φ and scales
 * @param blocks - mass between points [kg]
 * @returns profile matrix [kg]
 * @source beam-theory
 */
export function assembleMass(system: System, blocks: readonly MassBlock[]): ProfileMatrix {
  const { unknowns, scale } = system;
  const matrix = emptyProfile(unknowns.first);
  for (const { a, b, values } of blocks) addBlock(matrix, unknowns, a, b, values, a === b);
  for (let j = 0; j < matrix.size; j++) {
    const base = matrix.diagonal[j]! - j;
    for (let i = matrix.first[j]!; i <= j; i++) matrix.values[base + i]! *= scale[i]! * scale[j]!;
  }
  return matrix;
}

/**
 * Momentum of a movement in the three directions: what it carries along as a whole.
 *
 * @param blocks - mass between points [kg]
 * @param movements - six numbers a point [m], [rad]
 * @returns Σ of mass times movement, east, north and up [kg]
 * @source statics
 */
export function momentumOf(blocks: readonly MassBlock[], movements: Float64Array): Vec3 {
  const sum: [number, number, number] = [0, 0, 0];
  for (const { a, b, values } of blocks) {
    for (let i = 0; i < 3; i++) {
      for (let j = 0; j < 6; j++) {
        sum[i]! += values[6 * i + j]! * movements[6 * b + j]!;
        // The other triangle: the transposed block acts on the other point.
        if (a !== b) sum[i]! += values[6 * j + i]! * movements[6 * a + j]!;
      }
    }
  }
  return sum;
}
