import { EngineError } from '../../issues/issue.js';
import type { Movement, Vec3, Wrench } from '../../model/conventions.js';
import { add, between, cross, scale, subtract } from '../../model/vector.js';
import type { ActiveRestraint } from '../contact/active-restraint.js';
import { type ConditionLoads, jointLoads } from './condition-loads.js';
import { springForce } from './elements/element-forces.js';
import { addWrench, NO_WRENCH } from './elements/rigid-arm.js';
import { undeterminedShares } from './recovery/undetermined-shares.js';
import type { ConditionResponse, RestraintState, SupportResponse } from './response.js';
import type { Solution } from './solve-condition.js';
import { balanceOf } from './system/balance.js';
import { constraintForces } from './system/eliminate.js';
import { roundingForce } from './system/rounding-force.js';
import type { System } from './system/system.js';

/** Residual of the balance past which an answer is refused [-]. */
export const LARGEST_IMBALANCE = 1e-8;

/**
 * Turns a solution into named results: movements, support loads, end wrenches, joints, weight and balance.
 *
 * Loads of rigid restraints are what their points lack for balance; where several rigid restraints hold one rigid
 * body more often than needed, they share with the least sum of squares and are marked as undetermined.
 *
 * @param system - factored stiffness
 * @param loads - what acted [N]
 * @param activeRestraints - what the supports did [N/m], [m], [N]
 * @param solution - movements [m], [rad] and forces [N], [N·m]
 * @param outcome - state of every restraint by support name, rounds taken [-], and the least force by which balance is
 *   measured [N]
 * @returns results by name [m], [rad], [N], [N·m]
 * @throws EngineError `mechanics.unbalanced`; data: `condition`, `residual`, `limit`
 * @source statics
 */
export function respond(
  system: System,
  loads: ConditionLoads,
  activeRestraints: readonly ActiveRestraint[],
  solution: Solution,
  outcome: {
    readonly states: Readonly<Record<string, readonly RestraintState[]>>;
    readonly rounds: number;
    readonly least?: number;
  },
): ConditionResponse {
  const { prepared, clusters } = system;
  const { frame } = prepared;
  const forces = rowForces(system, solution);
  const supports: Record<string, SupportResponse> = {};
  const reactions = frame.supports.map((): Wrench => NO_WRENCH);
  const react = (activeRestraint: ActiveRestraint, force: number) => {
    const push = scale(activeRestraint.direction, -force);
    const wrench: Wrench =
      activeRestraint.acts === 'translation'
        ? { force: push, moment: [0, 0, 0] }
        : { force: [0, 0, 0], moment: push };
    reactions[activeRestraint.support] = addWrench(reactions[activeRestraint.support]!, wrench);
  };
  for (const activeRestraint of activeRestraints)
    if (Number.isFinite(activeRestraint.stiffness))
      react(activeRestraint, springForce(activeRestraint, solution.movements));
  system.unknowns.rows.forEach((row, index) => {
    if (row.of.kind === 'hold') react(activeRestraints[row.of.activeRestraint]!, forces[index]!);
  });
  const shares = undeterminedShares(system, activeRestraints);
  frame.supports.forEach((support, index) => {
    const undetermined = shares.get(index);
    supports[support.name] = {
      load: reactions[index]!,
      states: outcome.states[support.name]!,
      ...(undetermined && { undetermined }),
    };
  });
  const { balance, weight } = balanceOf(
    prepared,
    clusters,
    loads,
    supports,
    Math.max(outcome.least ?? 0, roundingForce(prepared, solution.movements).force),
  );
  if (!(balance.residual <= LARGEST_IMBALANCE)) {
    throw new EngineError('mechanics.unbalanced', {
      condition: loads.condition.name,
      residual: balance.residual,
      limit: LARGEST_IMBALANCE,
    });
  }
  return {
    name: loads.condition.name,
    movements: namedMovements(prepared.pointNames, solution.movements),
    supports,
    members: namedEnds(system, solution),
    joints: jointWrenches(system, loads, solution, forces),
    weight,
    balance,
    rounds: outcome.rounds,
  };
}

/**
 * Forces of all constraint rows, from what their nodes lack for balance.
 *
 * @param system - constraint rows and groups
 * @param solution - forces on points [N], [N·m]
 * @returns force of every row on its points along its direction [N] or [N·m]
 * @source statics
 */
export function rowForces(system: System, solution: Pick<Solution, 'pointForces'>): Float64Array {
  const { prepared, clusters, unknowns } = system;
  const forces = new Float64Array(unknowns.rows.length);
  if (forces.length === 0) return forces;
  const lacking = unknowns.groups.map((group) =>
    group.decomposition === undefined ? undefined : new Float64Array(6 * group.nodes.length),
  );
  for (let point = 0; point < prepared.places.length; point++) {
    const node = clusters.nodeOf[point]!;
    if (node === -1) continue;
    const own = lacking[unknowns.groupOf[node]!];
    if (own === undefined) continue;
    const at = 6 * unknowns.placeIn[node]!;
    const f = solution.pointForces;
    const force: Vec3 = [f[6 * point]!, f[6 * point + 1]!, f[6 * point + 2]!];
    const arm = subtract(prepared.places[point]!, prepared.places[clusters.nodePoint[node]!]!);
    const moment = cross(arm, force);
    for (let i = 0; i < 3; i++) {
      own[at + i]! -= force[i]!;
      own[at + 3 + i]! -= f[6 * point + 3 + i]! + moment[i]!;
    }
  }
  unknowns.groups.forEach((group, index) => {
    const own = lacking[index];
    if (own !== undefined) constraintForces(group, own, forces);
  });
  return forces;
}

/**
 * Force of every hold on its point along its direction.
 *
 * @param system - constraint rows
 * @param activeRestraints - what the supports do
 * @param solution - movements [m] and forces [N]
 * @returns force or moment of each hold [N] or [N·m]
 * @source statics
 */
export function restraintForces(
  system: System,
  activeRestraints: readonly ActiveRestraint[],
  solution: Solution,
): Float64Array {
  const forces = Float64Array.from(activeRestraints, (activeRestraint) =>
    Number.isFinite(activeRestraint.stiffness) ? springForce(activeRestraint, solution.movements) : 0,
  );
  const rows = rowForces(system, solution);
  system.unknowns.rows.forEach((row, index) => {
    if (row.of.kind === 'hold') forces[row.of.activeRestraint] = rows[index]!;
  });
  return forces;
}

function jointWrenches(
  system: System,
  loads: ConditionLoads,
  solution: Solution,
  forces: Float64Array,
): ConditionResponse['joints'] {
  const { prepared, clusters, unknowns } = system;
  const { frame, memberCount, places } = prepared;
  const rigid = new Map<number, { force: Vec3; moment: Vec3 }>();
  unknowns.rows.forEach((row, index) => {
    if (row.of.kind !== 'joint') return;
    const sum = rigid.get(row.of.joint) ?? { force: [0, 0, 0], moment: [0, 0, 0] };
    const push = scale(row.of.direction, forces[index]!);
    if (row.of.acts === 'translation') sum.force = add(sum.force, push);
    else sum.moment = add(sum.moment, push);
    rigid.set(row.of.joint, sum);
  });
  const joints: Record<string, { from: Wrench; to: Wrench }> = {};
  frame.joints.forEach((joint, index) => {
    if (clusters.jointStands[index] === false) {
      joints[joint.name] = { from: NO_WRENCH, to: NO_WRENCH };
      return;
    }
    const e = memberCount + index;
    const [fromLoad, toLoad] = jointLoads(prepared, index, loads.condition);
    const ends = { from: places[prepared.from[e]!]!, to: places[prepared.to[e]!]! };
    const middle = between(ends.from, ends.to, 0.5);
    const across = rigid.get(index) ?? NO_WRENCH;
    const side = (place: Vec3, sign: number, elastic: Wrench, own: Wrench): Wrench => {
      const force = scale(across.force, sign);
      const moment = add(scale(across.moment, sign), cross(subtract(middle, place), force));
      const spring = { force: scale(elastic.force, -1), moment: scale(elastic.moment, -1) };
      return addWrench(addWrench({ force, moment }, spring), own);
    };
    joints[joint.name] = {
      from: side(ends.from, -1, wrenchAt(solution.ends.from, e), fromLoad),
      to: side(ends.to, 1, wrenchAt(solution.ends.to, e), toLoad),
    };
  });
  return joints;
}

function namedMovements(names: readonly string[], movements: Float64Array): Record<string, Movement> {
  const named: Record<string, Movement> = {};
  names.forEach((name, point) => {
    const at = 6 * point;
    named[name] = {
      translation: [movements[at]!, movements[at + 1]!, movements[at + 2]!],
      rotation: [movements[at + 3]!, movements[at + 4]!, movements[at + 5]!],
    };
  });
  return named;
}

function namedEnds(system: System, solution: Solution): ConditionResponse['members'] {
  const named: Record<string, { from: Wrench; to: Wrench }> = {};
  system.prepared.frame.members.forEach((member, e) => {
    named[member.name] = { from: wrenchAt(solution.ends.from, e), to: wrenchAt(solution.ends.to, e) };
  });
  return named;
}

function wrenchAt(values: Float64Array, element: number): Wrench {
  const at = 6 * element;
  return {
    force: [values[at]!, values[at + 1]!, values[at + 2]!],
    moment: [values[at + 3]!, values[at + 4]!, values[at + 5]!],
  };
}
