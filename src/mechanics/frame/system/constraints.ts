import type { Movement, Vec3 } from '../../../model/conventions.js';
import { between, cross, dot, scale, subtract } from '../../../model/vector.js';
import type { ActiveRestraint } from '../../contact/active-restraint.js';
import type { PreparedFrame } from '../prepare-frame.js';
import type { Clusters } from './cluster.js';

/**
 * One linear condition on the movements of one or two nodes: Σ c · q = value. A rigid support gives one on one node; a
 * rigid direction of a joint one between two nodes.
 */
export interface ConstraintRow {
  readonly nodes: readonly number[];
  /** Six numbers per node: translations [-], rotations [m]. */
  readonly coefficients: readonly Float64Array[];
  /** Points whose own growth counts, with the share of it along the direction. */
  readonly points: readonly { readonly point: number; readonly share: Vec3 }[];
  /** The hold, or the joint and which of its directions. */
  readonly of:
    | { readonly kind: 'hold'; readonly activeRestraint: number }
    | {
        readonly kind: 'joint';
        readonly joint: number;
        readonly direction: Vec3;
        readonly acts: 'translation' | 'rotation';
      };
}

/**
 * All constraint rows: rigid holds, then the rigid directions of joints that stand.
 *
 *     support:  d · (u + θ × r) = value             r from the node to the point
 *     joint:    d · (u at the middle, `to` side − `from` side) = value
 *
 * @param prepared - the frame
 * @param clusters - nodes of the points
 * @param activeRestraints - what the supports do
 * @returns rows [-]
 * @source statics
 */
export function constraintRows(
  prepared: PreparedFrame,
  clusters: Clusters,
  activeRestraints: readonly ActiveRestraint[],
): readonly ConstraintRow[] {
  const rows: ConstraintRow[] = [];
  activeRestraints.forEach((activeRestraint, index) => {
    if (Number.isFinite(activeRestraint.stiffness)) return;
    const node = clusters.nodeOf[activeRestraint.point]!;
    const origin = prepared.places[clusters.nodePoint[node]!]!;
    const arm = subtract(prepared.places[activeRestraint.point]!, origin);
    rows.push({
      nodes: [node],
      coefficients: [coefficients(activeRestraint.direction, activeRestraint.acts, arm, 1)],
      points:
        activeRestraint.acts === 'translation'
          ? [{ point: activeRestraint.point, share: activeRestraint.direction }]
          : [],
      of: { kind: 'hold', activeRestraint: index },
    });
  });
  prepared.jointDirections.forEach((directions, index) => {
    if (clusters.jointStands[index] === false) return;
    const from = prepared.from[prepared.memberCount + index]!;
    const to = prepared.to[prepared.memberCount + index]!;
    const ends = { from: prepared.places[from]!, to: prepared.places[to]! };
    const middle = between(ends.from, ends.to, 0.5);
    for (const { direction, acts, stiffness } of directions) {
      if (Number.isFinite(stiffness)) continue;
      const side = (point: number, sign: number) => {
        const node = clusters.nodeOf[point]!;
        const arm = subtract(middle, prepared.places[clusters.nodePoint[node]!]!);
        return { node, values: coefficients(direction, acts, arm, sign) };
      };
      const near = side(from, -1);
      const far = side(to, 1);
      const same = near.node === far.node;
      // Both ends on one rigid body: nothing moves between them, so there is nothing to hold.
      if (same) continue;
      rows.push({
        nodes: [near.node, far.node],
        coefficients: [near.values, far.values],
        points:
          acts === 'translation'
            ? [
                { point: from, share: scale(direction, -1) },
                { point: to, share: direction },
              ]
            : [],
        of: { kind: 'joint', joint: index, direction, acts },
      });
    }
  });
  return rows;
}

function coefficients(
  direction: Vec3,
  acts: 'translation' | 'rotation',
  arm: Vec3,
  sign: number,
): Float64Array {
  if (acts === 'rotation') return Float64Array.from([0, 0, 0, ...scale(direction, sign)]);
  return Float64Array.from([...scale(direction, sign), ...scale(cross(arm, direction), sign)]);
}

/**
 * What each constraint row must equal in one condition: the set position of the hold less the growth of the point
 * along it, or the misfit and play of the joint less the growth across it.
 *
 * @param rows - constraint rows
 * @param activeRestraints - set positions [m]
 * @param growth - growth of each point, three numbers a point [m]
 * @param misfit - misfit and play of a joint by its number, where it has any [m], [rad]
 * @returns values [m] or [rad]
 * @source statics
 */
export function rowValues(
  rows: readonly ConstraintRow[],
  activeRestraints: readonly ActiveRestraint[],
  growth: Float64Array,
  misfit: (joint: number) => Movement | undefined,
): Float64Array {
  return Float64Array.from(rows, (row) => {
    const { of } = row;
    let value = 0;
    if (of.kind === 'hold') value = activeRestraints[of.activeRestraint]!.at;
    else {
      const apart = misfit(of.joint);
      if (apart !== undefined) {
        value = dot(of.acts === 'translation' ? apart.translation : apart.rotation, of.direction);
      }
    }
    for (const { point, share } of row.points) {
      const grown: Vec3 = [growth[3 * point]!, growth[3 * point + 1]!, growth[3 * point + 2]!];
      value -= dot(share, grown);
    }
    return value;
  });
}
