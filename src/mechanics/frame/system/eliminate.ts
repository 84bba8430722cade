import {
  orthogonalComplement,
  type SingularValues,
  singularValues,
} from '../../../algebra/singular-values.js';
import { EngineError } from '../../../issues/issue.js';
import { norm, subtract } from '../../../model/vector.js';
import type { PreparedFrame } from '../prepare-frame.js';
import type { Clusters } from './cluster.js';
import type { ConstraintRow } from './constraints.js';

/**
 * Nodes tied to each other or to the ground by constraint rows, and what is left free of them.
 *
 * With y the movements of the nodes (rotations times a length of the group, so that all are in metres):
 *
 *     C y = d     →     y = N z + C⁺ d,   C = U Σ Vᵀ,   N square to V
 *
 * z are the unknowns of the group; the forces of the constraints follow as (Cᵀ)⁺ of what the nodes lack, which among
 * redundant rows is the share with the least sum of squares.
 */
export interface Group {
  readonly nodes: readonly number[];
  /** Numbers of its constraint rows. */
  readonly rows: readonly number[];
  /** Number of unknowns z. */
  readonly free: number;
  /** Length that makes rotations comparable with translations [m]. */
  readonly length: number;
  /** N, one vector per unknown, six numbers per node; absent where nothing is constrained and N is one. */
  readonly basis?: readonly Float64Array[];
  readonly decomposition?: SingularValues;
}

/**
 * Collects nodes into groups and eliminates their constraints.
 *
 * @param prepared - the frame
 * @param clusters - nodes
 * @param rows - constraint rows
 * @returns groups, and the group of each node with its place in it [-]
 * @throws EngineError `mechanics.rigid-group-too-large` when more than 150 nodes are tied to each other by rigid
 *   directions of joints; data: `nodes`, `limit`
 * @source statics
 */
export function eliminate(
  prepared: PreparedFrame,
  clusters: Clusters,
  rows: readonly ConstraintRow[],
): { readonly groups: readonly Group[]; readonly groupOf: Int32Array; readonly placeIn: Int32Array } {
  const { nodeCount } = clusters;
  const groupOf = new Int32Array(nodeCount).fill(-1);
  const placeIn = new Int32Array(nodeCount);
  const root = leaders(nodeCount, rows);
  const rowsOf = new Map<number, number[]>();
  rows.forEach((row, index) => {
    const leader = root[row.nodes[0]!]!;
    const list = rowsOf.get(leader);
    if (list === undefined) rowsOf.set(leader, [index]);
    else list.push(index);
  });
  const members: number[][] = [];
  for (let node = 0; node < nodeCount; node++) {
    const leader = root[node]!;
    if (groupOf[leader] === -1) groupOf[leader] = members.push([]) - 1;
    const group = groupOf[leader]!;
    groupOf[node] = group;
    placeIn[node] = members[group]!.push(node) - 1;
  }
  const groups = members.map((nodes): Group => {
    const own = rowsOf.get(root[nodes[0]!]!);
    if (own === undefined) return { nodes, rows: [], free: 6, length: 1 };
    if (nodes.length > LARGEST_GROUP) {
      throw new EngineError('mechanics.rigid-group-too-large', { nodes: nodes.length, limit: LARGEST_GROUP });
    }
    const length = reach(prepared, clusters, nodes);
    const size = 6 * nodes.length;
    const dense = own.map((index) => {
      const line = new Float64Array(size);
      const row = rows[index]!;
      row.nodes.forEach((node, side) => {
        for (let c = 0; c < 6; c++) {
          line[6 * placeIn[node]! + c]! += row.coefficients[side]![c]! / (c < 3 ? 1 : length);
        }
      });
      return line;
    });
    return { nodes, rows: own, length, ...decomposed(dense, size) };
  });
  return { groups, groupOf, placeIn };
}

type Decomposed = Required<Pick<Group, 'free' | 'basis' | 'decomposition'>>;

/** Rows and what came of them, the latest last. */
const recent: { readonly dense: readonly Float64Array[]; readonly of: Decomposed }[] = [];

/**
 * Rank, and what is square to the rows. A support that lets go, a condition or a question changes few groups of a frame:
 * the same rows come again and again, number for number, and what came of the last of them is kept.
 */
function decomposed(dense: readonly Float64Array[], size: number): Decomposed {
  const before = recent.find((each) => isSame(each.dense, dense));
  if (before !== undefined) return before.of;
  const decomposition = singularValues(dense, RANK_TOLERANCE);
  const basis = orthogonalComplement(decomposition.right, size);
  const of = { free: basis.length, basis, decomposition };
  if (size > LARGEST_KEPT) return of;
  if (recent.push({ dense, of }) > KEPT) recent.shift();
  return of;
}

function isSame(some: readonly Float64Array[], others: readonly Float64Array[]): boolean {
  if (some.length !== others.length || some[0]!.length !== others[0]!.length) return false;
  for (let row = 0; row < some.length; row++) {
    const [one, other] = [some[row]!, others[row]!];
    for (let c = 0; c < one.length; c++) if (!Object.is(one[c], other[c])) return false;
  }
  return true;
}

/** How many decompositions are kept, and up to how many columns, so that no more than some megabytes are [-]. */
const KEPT = 200;
const LARGEST_KEPT = 120;
/** Most nodes that may hang together by rigid directions of joints [-]. */
const LARGEST_GROUP = 150;
/** Singular values below this share of the largest count as a repeated constraint [-]. */
const RANK_TOLERANCE = 1e-9;

function leaders(count: number, rows: readonly ConstraintRow[]): Int32Array {
  const parent = Int32Array.from({ length: count }, (_, index) => index);
  const find = (node: number): number => {
    let top = node;
    while (parent[top] !== top) top = parent[top]!;
    for (let at = node; parent[at] !== top; ) {
      const next = parent[at]!;
      parent[at] = top;
      at = next;
    }
    return top;
  };
  for (const row of rows) {
    if (row.nodes.length < 2) continue;
    const a = find(row.nodes[0]!);
    const b = find(row.nodes[1]!);
    parent[Math.max(a, b)] = Math.min(a, b);
  }
  return parent.map((_, node) => find(node));
}

/** Size of the group: the furthest a node stands from the first, at least a metre where there is one node. */
function reach(prepared: PreparedFrame, clusters: Clusters, nodes: readonly number[]): number {
  const first = prepared.places[clusters.nodePoint[nodes[0]!]!]!;
  const far = nodes.map((node) => norm(subtract(prepared.places[clusters.nodePoint[node]!]!, first)));
  return Math.max(...far) || 1;
}

/**
 * Movement of the nodes of a group that satisfies its constraint rows with nothing else moving: C⁺ d.
 *
 * @param group - the group
 * @param values - what each constraint row must equal, by row number [m]
 * @returns six numbers a node, rotations in radians [m], [rad]; and, where not
 *   every row can be satisfied, how far each is beyond its value in the least-squares fit
 * @source statics
 */
export function particularMovement(
  group: Group,
  values: Float64Array,
): {
  readonly movement: Float64Array;
  readonly conflict?: { readonly rows: readonly { readonly row: number; readonly beyond: number }[] };
} {
  const size = 6 * group.nodes.length;
  const movement = new Float64Array(size);
  const { decomposition, rows } = group;
  if (decomposition === undefined) return { movement };
  const wanted = rows.map((row) => values[row]!);
  const largest = wanted.reduce((a, b) => Math.max(a, Math.abs(b)), 0);
  if (largest === 0) return { movement };
  const reached = new Float64Array(rows.length);
  for (let s = 0; s < decomposition.rank; s++) {
    const left = decomposition.left[s]!;
    let share = 0;
    for (let r = 0; r < rows.length; r++) share += left[r]! * wanted[r]!;
    const right = decomposition.right[s]!;
    for (let c = 0; c < size; c++) movement[c]! += (right[c]! * share) / decomposition.values[s]!;
    for (let r = 0; r < rows.length; r++) reached[r]! += left[r]! * share;
  }
  for (let c = 0; c < size; c++) if (c % 6 > 2) movement[c]! /= group.length;
  const tolerance = 1e-9 * largest + 1e-15;
  const beyond = rows.map((row, r) => {
    const by = reached[r]! - wanted[r]!;
    return { row, beyond: Math.abs(by) > tolerance / 1000 ? by : 0 };
  });
  return beyond.some((each) => Math.abs(each.beyond) > tolerance)
    ? { movement, conflict: { rows: beyond } }
    : { movement };
}

/**
 * Forces of the constraint rows of a group that balance its nodes; among redundant rows the share with the least
 * sum of squares.
 *
 * @param group - the group
 * @param lacking - wrench each node needs from the constraints, six numbers a node [N], [N·m]
 * @param forces - force of every row, by row number, filled here [N] or [N·m]
 * @returns nothing [-]
 * @source statics
 */
export function constraintForces(group: Group, lacking: Float64Array, forces: Float64Array): void {
  const { decomposition, rows, length } = group;
  if (decomposition === undefined) return;
  for (let s = 0; s < decomposition.rank; s++) {
    const right = decomposition.right[s]!;
    let share = 0;
    for (let c = 0; c < lacking.length; c++) share += (right[c]! * lacking[c]!) / (c % 6 > 2 ? length : 1);
    share /= decomposition.values[s]!;
    const left = decomposition.left[s]!;
    for (let r = 0; r < rows.length; r++) forces[rows[r]!]! += left[r]! * share;
  }
}
