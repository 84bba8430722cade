import type { Movement, Vec3, Wrench } from '../../model/conventions.js';
import type { Frame, FrameCondition } from '../../model/frame/frame.js';
import { dot } from '../../model/vector.js';
import { conditionLoads } from './condition-loads.js';
import { prepareFrame } from './prepare-frame.js';
import { pointOffsets } from './recovery/point-offsets.js';
import { respond } from './respond.js';
import type { ConditionResponse } from './response.js';
import { solveCondition } from './solve-condition.js';
import { frameSolver } from './solve-frame.js';

/** Something put on a frame that already stands. */
export interface Disturbance {
  readonly loads?: readonly { readonly point: string; readonly wrench: Wrench }[];
  /** Movement of supports, by name [m]. */
  readonly imposed?: Readonly<Record<string, Vec3>>;
  /** Misfit of joints, by name [m], [rad]. */
  readonly misfit?: Readonly<Record<string, Movement>>;
}

/** What a disturbance alone does, with the condition that describes it. */
export interface Disturbed {
  /** Without weight, heat and pressure: what acts is the disturbance. */
  readonly condition: FrameCondition;
  readonly response: ConditionResponse;
}

/** A frame that stands in one condition, every one-way support in the state that condition gave it. */
export interface StandingFrame {
  readonly frame: Frame;
  readonly condition: FrameCondition;
  readonly response: ConditionResponse;
  readonly disturb: (disturbance: Disturbance) => Disturbed;
  /** Another condition of the same frame, every support free to do what it then does. */
  readonly solve: (condition: FrameCondition) => ConditionResponse;
}

/**
 * Solves one condition and keeps its stiffness, so that small changes can be worked out on it one after the other.
 *
 * What lifts stays lifted, what holds goes on holding, what slips goes on slipping under the friction it had: changes
 * are linear, so that the answer for a unit is the answer for any amount that leaves those states as they are.
 *
 * @param frame - the frame
 * @param condition - the condition it stands in
 * @returns response, and the function that works out changes
 * @throws EngineError as `solveFrame`
 * @source beam-theory
 */
export function standingFrame(frame: Frame, condition: FrameCondition): StandingFrame {
  const solver = frameSolver(prepareFrame(frame));
  const { response, converged } = solver(condition);
  const { system, rounds } = converged;
  // The elements as they are with rods engaged and play used up or not.
  const { prepared } = system;
  const states = Object.fromEntries(
    Object.entries(response.supports).map(([name, support]) => [name, support.states]),
  );
  const springs = converged.activeRestraints
    .map((activeRestraint) => activeRestraint.stiffness)
    .filter(Number.isFinite);
  const stiffest = prepared.stiffness.reduce(
    (most, value) => Math.max(most, Math.abs(value)),
    Math.max(0, ...springs),
  );
  const disturb = (disturbance: Disturbance): Disturbed => {
    const { imposed, ...without } = condition;
    const still: FrameCondition = {
      ...without,
      gravity: [0, 0, 0],
      temperature: frame.installationTemperature,
      pressure: 0,
      loads: disturbance.loads ?? [],
      imposed: disturbance.imposed ?? {},
      misfit: disturbance.misfit ?? {},
    };
    const loads = conditionLoads(prepared, system.clusters, still);
    const activeRestraints = converged.activeRestraints.map((activeRestraint) => {
      const carried = disturbance.imposed?.[frame.supports[activeRestraint.support]!.name];
      const moves = carried !== undefined && activeRestraint.acts === 'translation';
      return { ...activeRestraint, preload: 0, at: moves ? dot(carried, activeRestraint.direction) : 0 };
    });
    const { offsets } = pointOffsets(system, loads, activeRestraints);
    const solution = solveCondition(system, loads, activeRestraints, offsets);
    const least = stiffest * largestMovement(disturbance);
    const response = respond(system, loads, activeRestraints, solution, { states, rounds, least });
    return { condition: still, response };
  };
  return { frame, condition, response, disturb, solve: (other) => solver(other).response };
}

/** A movement may meet no resistance at all: what is left of the forces then is rounding of those that cancelled. */
function largestMovement({ imposed = {}, misfit = {} }: Disturbance): number {
  const parts = [
    ...Object.values(imposed),
    ...Object.values(misfit).flatMap(({ translation, rotation }) => [translation, rotation]),
  ];
  return Math.max(0, ...parts.flat().map(Math.abs));
}
