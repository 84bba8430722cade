import type { Frame, FrameCondition } from '../model/frame.js';
import { buildSystem, systemCondition } from './build-system.js';
import { type Clusters, joinClusters } from './cluster.js';
import { conditionLoads } from './condition-loads.js';
import { type Hold, holdsKey, isStopped, twoWayHolds } from './hold.js';
import { type PreparedFrame, prepareFrame } from './prepare-frame.js';
import { respond } from './respond.js';
import type { ConditionResponse, Response, RestraintState } from './response.js';
import { solveCondition } from './solve-condition.js';
import type { System } from './system.js';

/**
 * Solves a frame in all its conditions.
 *
 * Conditions that leave the same bodies standing and the same supports holding share one factored stiffness.
 *
 * @param frame - points, members, bodies, joints, supports and conditions, SI
 * @returns movements [m], [rad], loads and wrenches [N], [N·m] by condition, and how far they can be trusted
 * @throws EngineError `mechanics.mechanism`, `mechanics.supports-conflict`, `mechanics.unbalanced`, and as
 *   `validateFrame`
 * @source beam-theory
 */
export function solveFrame(frame: Frame): Response {
  const prepared = prepareFrame(frame);
  const systems = new Map<string, System>();
  const clustersByKey = new Map<string, Clusters>();
  const conditions: Record<string, ConditionResponse> = {};
  let residual = 0;
  for (const condition of frame.conditions) {
    const removed = [...condition.removed].sort().join('\u0000');
    const clusters = clustersByKey.get(removed) ?? joinClusters(prepared, condition);
    clustersByKey.set(removed, clusters);
    const loads = conditionLoads(prepared, clusters, condition);
    const holds = twoWayHolds(prepared, clusters, condition);
    const key = `${removed}|${holdsKey(holds)}`;
    const system = systems.get(key) ?? buildSystem(prepared, clusters, holds, condition.name);
    systems.set(key, system);
    const solution = solveCondition(system, loads, holds);
    residual = Math.max(residual, solution.residual);
    const outcome = { states: twoWayStates(prepared, holds, condition), rounds: 1 };
    conditions[condition.name] = respond(system, loads, holds, solution, outcome);
  }
  return { conditions, quality: { residual, ...systemQuality([...systems.values()]) } };
}

function systemQuality(systems: readonly System[]) {
  return {
    reciprocalCondition: systems.reduce((least, system) => Math.min(least, systemCondition(system)), 1),
    unknowns: systems.reduce((most, system) => Math.max(most, system.unknowns.size), 0),
    profile: systems.reduce((most, system) => Math.max(most, system.factor.lower.length), 0),
  };
}

function twoWayStates(
  prepared: PreparedFrame,
  holds: readonly Hold[],
  condition: FrameCondition,
): Record<string, readonly RestraintState[]> {
  const states: Record<string, RestraintState[]> = {};
  for (const support of prepared.frame.supports)
    states[support.name] = support.restraints.map(() => 'absent');
  for (const hold of holds) {
    const support = prepared.frame.supports[hold.support]!;
    const restraint = support.restraints[hold.restraint]!;
    states[support.name]![hold.restraint] = isStopped(support, restraint, condition) ? 'stopped' : 'holding';
  }
  return states;
}
