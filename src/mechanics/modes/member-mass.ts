import { gaussLegendre } from '../../algebra/gauss-legendre.js';
import type { Vec3 } from '../../model/conventions.js';
import type { Frame, FrameBend, FrameCondition, FramePipe } from '../../model/frame/frame.js';
import { add, cross, dot, scale, subtract } from '../../model/vector.js';
import { turnMatrix } from '../frame/elements/element.js';
import { armMatrix } from '../frame/elements/joint-element.js';
import { type Compliance, memberCompliance, tubeSection } from '../frame/elements/tube-section.js';
import { massPerLength } from '../frame/present-mass.js';
import { type MemberPath, memberPath } from '../frame/recovery/member-path.js';

/** Blocks of the mass of a member: at its `from` end, between its ends, at its `to` end; 6 × 6 by rows [kg]. */
export interface MassBlocks {
  readonly near: Float64Array;
  readonly cross: Float64Array;
  readonly far: Float64Array;
}

/** Exact for the cubic shape of a pipe squared, and to 1e-10 for arcs up to a right angle. */
const OUTER = gaussLegendre(6);
const INNER = gaussLegendre(10);
const UNITS: readonly Vec3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

/**
 * Consistent mass of a member: the mass of each length moves as the member bends under its end forces.
 *
 *     u(s) = H(s) [u_from; u_to],   H = [T_s − G S T,  G S],   M = ∫ Hᵀ diag(m, m, m, j) H ds
 *     G(s): movement at s for a wrench at the `to` end with the `from` end held
 *
 * Metal also has rotary inertia, m r² about the cross axes and twice that about its own axis (r² = I/A), unless the
 * frame leaves shear out, for comparison with slender beams. Contents and covering do not turn with the pipe.
 *
 * @param frame - the frame
 * @param member - pipe or bend
 * @param condition - contents and covering
 * @param S - stiffness at the `to` end, 6 × 6 [N/m]
 * @returns blocks in plan axes [kg]
 * @source beam-theory
 */
export function memberMass(
  frame: Frame,
  member: FramePipe | FrameBend,
  condition: FrameCondition,
  S: Float64Array,
): MassBlocks {
  const slender = frame.options?.withoutShear === true;
  const path = memberPath(frame, member);
  const f = memberCompliance(member, frame.materials[member.material]!, slender);
  const mass = massPerLength(member, condition) * path.length;
  const { inertia, area } = tubeSection(member.tube);
  const rotary = slender ? 0 : (member.mass.metal * path.length * inertia) / area;
  const T = armMatrix(subtract(path.place(1), path.place(0)));
  const blocks = { near: new Float64Array(36), cross: new Float64Array(36), far: new Float64Array(36) };
  OUTER.points.forEach((share, g) => {
    const weight = OUTER.weights[g]!;
    const far = multiply(movementForEndWrench(member, path, f, share), S);
    const swept = multiply(far, T);
    const near = armMatrix(subtract(path.place(share), path.place(0))).map((value, i) => value - swept[i]!);
    const { along } = path.axes(share);
    addSquare(blocks.near, near, near, along, weight * mass, weight * rotary);
    addSquare(blocks.cross, near, far, along, weight * mass, weight * rotary);
    addSquare(blocks.far, far, far, along, weight * mass, weight * rotary);
  });
  return blocks;
}

/** block += m A_tᵀ B_t + j A_rᵀ (1 + t tᵀ) B_r, with t along the member. */
function addSquare(
  block: Float64Array,
  A: Float64Array,
  B: Float64Array,
  along: Vec3,
  mass: number,
  rotary: number,
): void {
  for (let i = 0; i < 6; i++) {
    for (let j = 0; j < 6; j++) {
      let sum = 0;
      for (let r = 0; r < 3; r++) sum += A[6 * r + i]! * B[6 * r + j]!;
      sum *= mass;
      if (rotary > 0) {
        let alongA = 0;
        let alongB = 0;
        for (let r = 0; r < 3; r++) {
          const a = A[6 * (r + 3) + i]!;
          const b = B[6 * (r + 3) + j]!;
          sum += rotary * a * b;
          alongA += a * along[r]!;
          alongB += b * along[r]!;
        }
        sum += rotary * alongA * alongB;
      }
      block[6 * i + j]! += sum;
    }
  }
}

/** G(s) in plan axes, 6 × 6 by rows. */
function movementForEndWrench(
  member: FramePipe | FrameBend,
  path: MemberPath,
  f: Compliance,
  share: number,
): Float64Array {
  const L = path.length;
  const s = share * L;
  if (member.kind === 'pipe') {
    const G = new Float64Array(36);
    const lateral = f.bending * ((L * s ** 2) / 2 - s ** 3 / 6) + f.shear * s;
    const slope = f.bending * (L * s - s ** 2 / 2);
    G[0] = f.axial * s;
    G[7] = G[14] = lateral;
    G[21] = f.torsion * s;
    G[28] = G[35] = f.bending * s;
    G[11] = (f.bending * s ** 2) / 2;
    G[16] = -G[11]!;
    G[31] = slope;
    G[26] = -slope;
    return turnMatrix(G, path.axes(0));
  }
  const G = new Float64Array(36);
  const here = path.place(share);
  const end = path.place(1);
  INNER.points.forEach((point, g) => {
    const at = path.place(point * share);
    const { along } = path.axes(point * share);
    const weight = INNER.weights[g]! * s;
    const give = (vector: Vec3, lengthwise: number, square: number): Vec3 =>
      add(scale(vector, square), scale(along, (lengthwise - square) * dot(vector, along)));
    UNITS.forEach((unit, c) => {
      const strain = give(unit, f.axial, f.shear);
      const swing = give(cross(subtract(end, at), unit), f.torsion, f.bending);
      const turn = give(unit, f.torsion, f.bending);
      const lever = subtract(here, at);
      const byForce = add(strain, cross(swing, lever));
      const byMoment = cross(turn, lever);
      for (let r = 0; r < 3; r++) {
        G[6 * r + c]! += weight * byForce[r]!;
        G[6 * (r + 3) + c]! += weight * swing[r]!;
        G[6 * r + c + 3]! += weight * byMoment[r]!;
        G[6 * (r + 3) + c + 3]! += weight * turn[r]!;
      }
    });
  });
  return G;
}

function multiply(A: Float64Array, B: Float64Array): Float64Array {
  const C = new Float64Array(36);
  for (let i = 0; i < 6; i++) {
    for (let k = 0; k < 6; k++) {
      const a = A[6 * i + k]!;
      if (a === 0) continue;
      for (let j = 0; j < 6; j++) C[6 * i + j]! += a * B[6 * k + j]!;
    }
  }
  return C;
}
