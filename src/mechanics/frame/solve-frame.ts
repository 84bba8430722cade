import { EngineError } from '../../issues/issue.js';
import type { Frame, FrameCondition } from '../../model/frame/frame.js';
import { type ActiveRestraint, restraintsKey, rigidKey } from '../contact/active-restraint.js';
import { type Contact, contactsOf, stateWord } from '../contact/contact.js';
import type { Converged } from '../contact/iterate-contacts.js';
import { type ConvergedFrame, iterateFrame } from '../contact/iterate-frame.js';
import { type JointPlayState, jointPlays, playKey, withPlay } from '../contact/joint-play.js';
import { conditionLoads } from './condition-loads.js';
import { movementAlong } from './elements/element-forces.js';
import { type PreparedFrame, prepareFrame } from './prepare-frame.js';
import { respond } from './respond.js';
import type { ConditionResponse, Response, RestraintState, UnsolvedCondition } from './response.js';
import {
  type BuiltSystem,
  buildSystem,
  numberPipework,
  type Pipework,
  systemCondition,
} from './system/build-system.js';
import { type Clusters, joinClusters } from './system/cluster.js';
import { energyOf, LARGEST_ENERGY_ERROR } from './system/energy.js';
import type { System } from './system/system.js';

/**
 * Solves a frame in all its conditions.
 *
 * Conditions that leave the same bodies standing and the same supports holding share one factored stiffness. A
 * condition marked `whatIf` that cannot stand is listed as unsolved instead of ending the run.
 *
 * @param frame - points, members, bodies, joints, supports and conditions, SI
 * @returns movements [m], [rad], loads and wrenches [N], [N·m] by condition, and how far they can be trusted
 * @throws EngineError `mechanics.mechanism`, `mechanics.supports-conflict`, `mechanics.contact-alternates`,
 *   `mechanics.joint-alternates`, `mechanics.swing-unsettled`, `mechanics.unbalanced`, `mechanics.energy`, and as
 *   `validateFrame`
 * @source beam-theory
 */
export function solveFrame(frame: Frame): Response {
  const solver = frameSolver(prepareFrame(frame));
  const conditions: Record<string, ConditionResponse> = {};
  const used = new Set<System>();
  const unsolved: Record<string, UnsolvedCondition> = {};
  let residual = 0;
  let energy = 0;
  for (const condition of frame.conditions) {
    try {
      const { response, converged } = solver(condition);
      conditions[condition.name] = response;
      used.add(converged.system);
      residual = Math.max(residual, converged.solution.residual);
      energy = Math.max(energy, response.energy ?? 0);
    } catch (error) {
      // For a question of the sort 'what if this hanger is slack', falling down is an answer and not a failure.
      if (condition.whatIf !== true || !(error instanceof EngineError)) throw error;
      unsolved[condition.name] = { code: error.code, data: error.data };
    }
  }
  return { conditions, unsolved, quality: { residual, energy, ...systemQuality([...used]) } };
}

/** One condition solved, with the numbers behind the names. */
export interface SolvedCondition {
  readonly response: ConditionResponse;
  readonly converged: ConvergedFrame;
}

/**
 * A solver that keeps factored stiffnesses from one condition to the next.
 *
 * @param prepared - the frame with its elements
 * @returns function that solves one condition
 * @throws EngineError as `solveFrame`
 * @source beam-theory
 */
export function frameSolver(prepared: PreparedFrame): (condition: FrameCondition) => SolvedCondition {
  const systems = new Map<string, BuiltSystem>();
  const pipeworks = new Map<string, Pipework>();
  const clustersByKey = new Map<string, Clusters>();
  const pipeworkFor = (
    standing: PreparedFrame,
    clusters: Clusters,
    activeRestraints: readonly ActiveRestraint[],
    joints: string,
  ): Pipework => {
    const key = joints + rigidKey(activeRestraints);
    const known = pipeworks.get(key) ?? numberPipework(standing, clusters, activeRestraints);
    pipeworks.set(key, known);
    return known;
  };
  return (condition) => {
    const removed = [...condition.removed].sort().join('\u0000');
    const clusters = clustersByKey.get(removed) ?? joinClusters(prepared, condition);
    clustersByKey.set(removed, clusters);
    const loads = conditionLoads(prepared, clusters, condition);
    const contacts = contactsOf(prepared, clusters, condition);
    const plays = jointPlays(prepared, clusters);
    const systemFor = (
      activeRestraints: readonly ActiveRestraint[],
      playStates: readonly JointPlayState[],
    ): BuiltSystem => {
      // Friction, leaning rods and bent joints change the stiffness a little every round: such systems are not kept.
      const isBent = playStates.some(({ turning }) => turning === 'limit');
      const isPassing =
        isBent ||
        activeRestraints.some(
          (activeRestraint) =>
            activeRestraint.role !== 'normal' &&
            Number.isFinite(activeRestraint.stiffness) &&
            activeRestraint.stiffness > 0,
        );
      const joints = `${removed}|${playKey(playStates)}|`;
      const key = isPassing ? undefined : joints + restraintsKey(activeRestraints);
      const known = key === undefined ? undefined : systems.get(key);
      if (known !== undefined) return known;
      const standing = withPlay(prepared, plays, playStates);
      const pipework = isBent
        ? numberPipework(standing, clusters, activeRestraints)
        : pipeworkFor(standing, clusters, activeRestraints, joints);
      const built = buildSystem(standing, clusters, activeRestraints, pipework);
      if (key !== undefined) systems.set(key, built);
      return built;
    };
    const converged = iterateFrame({ prepared, contacts, plays, loads, systemFor });
    const { system, activeRestraints, solution, rounds, joints } = converged;
    const states = namedStates(prepared, contacts, converged);
    const answered = respond(system, converged.loads, activeRestraints, solution, { states, rounds });
    const energy = energyOf(converged);
    if (!(energy <= LARGEST_ENERGY_ERROR)) {
      throw new EngineError('mechanics.energy', {
        condition: condition.name,
        error: energy,
        limit: LARGEST_ENERGY_ERROR,
      });
    }
    const response: ConditionResponse = {
      ...answered,
      ...(plays.length > 0 && { jointStates: joints }),
      energy,
    };
    return { response, converged };
  };
}

function systemQuality(systems: readonly System[]) {
  return {
    reciprocalCondition: systems.reduce((least, system) => Math.min(least, systemCondition(system)), 1),
    unknowns: systems.reduce((most, system) => Math.max(most, system.unknowns.size), 0),
    profile: systems.reduce((most, system) => Math.max(most, system.factor.lower.length), 0),
  };
}

function namedStates(
  prepared: PreparedFrame,
  contacts: readonly Contact[],
  converged: Converged,
): Record<string, readonly RestraintState[]> {
  const named: Record<string, RestraintState[]> = {};
  for (const support of prepared.frame.supports) named[support.name] = support.restraints.map(() => 'absent');
  contacts.forEach((contact, index) => {
    const support = prepared.frame.supports[contact.support]!;
    const movement = movementAlong(contact, converged.solution.movements);
    named[support.name]![contact.restraint] = stateWord(contact, converged.states[index]!, movement);
  });
  return named;
}
