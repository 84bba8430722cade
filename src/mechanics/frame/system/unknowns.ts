import {
  connectedPieces,
  type Graph,
  graphOfPairs,
  reverseCuthillMcKee,
} from '../../../algebra/graph-ordering.js';
import { subtract } from '../../../model/vector.js';
import type { ActiveRestraint } from '../../contact/active-restraint.js';
import { armMatrix } from '../elements/joint-element.js';
import type { PreparedFrame } from '../prepare-frame.js';
import type { Clusters } from './cluster.js';
import { type ConstraintRow, constraintRows } from './constraints.js';
import { eliminate, type Group } from './eliminate.js';

/** From unknowns to movements of points: u = Φ z + offset, with Φ of the group the point belongs to. */
export interface Unknowns {
  readonly rows: readonly ConstraintRow[];
  readonly groups: readonly Group[];
  /** Group of each node, and the node's place in it. */
  readonly groupOf: Int32Array;
  readonly placeIn: Int32Array;
  /** Group of each point, −1 where nothing is joined to it. */
  readonly pointGroup: Int32Array;
  /** First unknown of each group, in solving order. */
  readonly offset: Int32Array;
  readonly size: number;
  /** First row each unknown can be coupled with: the profile. */
  readonly first: Int32Array;
  /** Where Φ of each point starts in `phi`, by rows; −1 where Φ is one. */
  readonly phiStart: Int32Array;
  readonly phi: Float64Array;
  /** Piece of the frame each group belongs to. */
  readonly pieceOf: Int32Array;
}

/**
 * Numbers the unknowns that the constraints leave, in an order that keeps the profile small.
 *
 * @param prepared - the frame
 * @param clusters - nodes of points
 * @param activeRestraints - what the supports do
 * @returns groups, order and Φ of every point [-], [m]
 * @throws EngineError as `eliminate`
 * @source statics
 */
export function numberUnknowns(
  prepared: PreparedFrame,
  clusters: Clusters,
  activeRestraints: readonly ActiveRestraint[],
): Unknowns {
  const rows = constraintRows(prepared, clusters, activeRestraints);
  const { groups, groupOf, placeIn } = eliminate(prepared, clusters, rows);
  const pointGroup = clusters.nodeOf.map((node) => (node === -1 ? -1 : groupOf[node]!));
  const graph = groupGraph(prepared, clusters, pointGroup, groups.length);
  const order = reverseCuthillMcKee(graph);
  const offset = new Int32Array(groups.length);
  let size = 0;
  for (const group of order) {
    offset[group] = size;
    size += groups[group]!.free;
  }
  const first = new Int32Array(size);
  for (const group of order) {
    let low = offset[group]!;
    for (let i = graph.start[group]!; i < graph.start[group + 1]!; i++) {
      const other = graph.neighbours[i]!;
      if (groups[other]!.free > 0 && offset[other]! < low) low = offset[other]!;
    }
    const end = offset[group]! + groups[group]!.free;
    for (let column = offset[group]!; column < end; column++) first[column] = low;
  }
  const { phiStart, phi } = pointMatrices(prepared, clusters, { groups, placeIn, pointGroup });
  const { pieceOf } = connectedPieces(graph);
  return { rows, groups, groupOf, placeIn, pointGroup, offset, size, first, phiStart, phi, pieceOf };
}

function groupGraph(
  prepared: PreparedFrame,
  clusters: Clusters,
  pointGroup: Int32Array,
  count: number,
): Graph {
  const pairs = new Int32Array(2 * prepared.elementCount);
  for (let e = 0; e < prepared.elementCount; e++) {
    if (e >= prepared.memberCount && clusters.jointStands[e - prepared.memberCount] === false) continue;
    pairs[2 * e] = pointGroup[prepared.from[e]!]!;
    pairs[2 * e + 1] = pointGroup[prepared.to[e]!]!;
  }
  return graphOfPairs(count, pairs);
}

/** Φ of every point: rigid arm from its node, times the basis of its group. */
function pointMatrices(
  prepared: PreparedFrame,
  clusters: Clusters,
  of: Pick<Unknowns, 'groups' | 'placeIn' | 'pointGroup'>,
): { readonly phiStart: Int32Array; readonly phi: Float64Array } {
  const { places } = prepared;
  const phiStart = new Int32Array(places.length).fill(-1);
  const isPlain = (point: number) => {
    const group = of.groups[of.pointGroup[point]!]!;
    return group.basis === undefined && clusters.nodePoint[clusters.nodeOf[point]!] === point;
  };
  let total = 0;
  for (let point = 0; point < places.length; point++) {
    if (of.pointGroup[point] === -1 || isPlain(point)) continue;
    phiStart[point] = total;
    total += 6 * of.groups[of.pointGroup[point]!]!.free;
  }
  const phi = new Float64Array(total);
  for (let point = 0; point < places.length; point++) {
    const start = phiStart[point]!;
    if (start === -1) continue;
    const node = clusters.nodeOf[point]!;
    const group = of.groups[of.pointGroup[point]!]!;
    const X = armMatrix(subtract(places[point]!, places[clusters.nodePoint[node]!]!));
    const at = 6 * of.placeIn[node]!;
    for (let column = 0; column < group.free; column++) {
      for (let row = 0; row < 6; row++) {
        let value = 0;
        if (group.basis === undefined) value = X[6 * row + column]!;
        else {
          const vector = group.basis[column]!;
          for (let c = 0; c < 6; c++) {
            value += (X[6 * row + c]! * vector[at + c]!) / (c < 3 ? 1 : group.length);
          }
        }
        phi[start + row * group.free + column] = value;
      }
    }
  }
  return { phiStart, phi };
}

/**
 * Movements of all points from the unknowns: u = Φ z + offset.
 *
 * @param unknowns - numbering and Φ
 * @param z - unknowns [m], [rad]
 * @param offsets - six numbers a point: growth and imposed movement [m], [rad]
 * @param movements - six numbers a point, filled here [m], [rad]
 * @returns the movements [m], [rad]
 * @source statics
 */
export function spreadMovements(
  unknowns: Unknowns,
  z: Float64Array,
  offsets: Float64Array,
  movements: Float64Array,
): Float64Array {
  const { pointGroup, offset, groups, phiStart, phi } = unknowns;
  movements.set(offsets);
  for (let point = 0; point < pointGroup.length; point++) {
    const group = pointGroup[point]!;
    if (group === -1) continue;
    const from = offset[group]!;
    const to = 6 * point;
    const start = phiStart[point]!;
    if (start === -1) {
      for (let i = 0; i < 6; i++) movements[to + i]! += z[from + i]!;
      continue;
    }
    const free = groups[group]!.free;
    for (let i = 0; i < 6; i++) {
      let sum = 0;
      for (let c = 0; c < free; c++) sum += phi[start + i * free + c]! * z[from + c]!;
      movements[to + i]! += sum;
    }
  }
  return movements;
}

/**
 * What forces on points do to the unknowns: Σ Φᵀ f.
 *
 * @param unknowns - numbering and Φ
 * @param forces - six numbers a point [N], [N·m]
 * @param gathered - one number an unknown, filled here [N], [N·m]
 * @returns the gathered forces [N], [N·m]
 * @source statics
 */
export function gatherForces(unknowns: Unknowns, forces: Float64Array, gathered: Float64Array): Float64Array {
  const { pointGroup, offset, groups, phiStart, phi } = unknowns;
  gathered.fill(0);
  for (let point = 0; point < pointGroup.length; point++) {
    const group = pointGroup[point]!;
    if (group === -1) continue;
    const to = offset[group]!;
    const from = 6 * point;
    const start = phiStart[point]!;
    if (start === -1) {
      for (let i = 0; i < 6; i++) gathered[to + i]! += forces[from + i]!;
      continue;
    }
    const free = groups[group]!.free;
    for (let i = 0; i < 6; i++) {
      const force = forces[from + i]!;
      if (force === 0) continue;
      for (let c = 0; c < free; c++) gathered[to + c]! += phi[start + i * free + c]! * force;
    }
  }
  return gathered;
}
