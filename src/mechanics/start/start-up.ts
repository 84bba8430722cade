import { type Coded, EngineError, type IssueCode } from '../../issues/issue.js';
import type { StartCase } from '../../model/conditions/start-case.js';
import { STANDARD_GRAVITY } from '../../model/conventions.js';
import type { FoundVibrations } from '../modes/find-vibrations.js';
import {
  type TopMovement,
  type TwistedSet,
  type TwistingMode,
  topMovement,
  twistedSet,
} from '../modes/twisted-set.js';
import { shaftDemand } from './affinity.js';
import { driveStages, type StartingSet } from './drive-stages.js';
import { stepFactor } from './dynamic-factor.js';
import { motorTorques, ratedTorque } from './motor-torque.js';
import { runUp } from './run-up.js';
import { coastDownTwist, startTwist, type TwistBound, twistBound } from './start-twist.js';
import { inertiasBetween } from './start-twist-range.js';
import { oscillatorResponse } from './step-response.js';

/** One run-up with one inertia. */
export interface StartRun {
  /** [kg·m²] */
  readonly inertia: number;
  /** Time to running speed [s]. */
  readonly duration: number;
  /** Magnitude of the largest twist [N·m], and the speed at which it acts [rad/s]. */
  readonly largestTwist: number;
  readonly atSpeed: number;
  /** Dynamic factor, the largest of the modes that twist the set [-]. */
  readonly factor: number;
  /** Movement of the motor top at its rim by time history on all modes, and by the factor [m]. */
  readonly top: TopMovement;
}

/** What a start does to the set. */
export interface WorkedStart {
  readonly kind: 'worked out';
  readonly set: StartingSet;
  /** What no inertia exceeds, before dynamics. */
  readonly bound: TwistBound;
  /** One for a given inertia, several over a range, none where nothing bounds it. */
  readonly runs: readonly StartRun[];
  /** The run whose twist times factor is the largest. */
  readonly worst?: StartRun;
  /** Whether the twist is that of a run, or the bound with the largest factor there is. */
  readonly by: 'run' | 'bound';
  /** Twist of the start put on slowly, magnitude [N·m]. */
  readonly staticTwist: number;
  /** [-] */
  readonly dynamicFactor: number;
  /** Twist at the moment the motor is switched off under load, with the factor of a step, magnitude [N·m]. */
  readonly stopTwist: number;
  /** Twist of the conditions `starting`: the larger of the start's and the stop's, dynamics included [N·m]. */
  readonly twist: number;
  readonly governs: 'start' | 'stop';
  readonly twisting: readonly TwistingMode[];
  /** Movement of the motor top at its rim under the twist of the conditions, small movements about running [m]. */
  readonly topMovement: number;
}

/** A start that cannot be worked out, or does not come to speed. */
export interface FailedStart {
  readonly kind: 'fails';
  readonly why: Coded;
}

export type StartUp = WorkedStart | FailedStart;

/** Inertias tried over a range [-]. */
const INERTIAS = 3;
/** Share of the twist the modes must carry for their factors to stand for all of it [-]. */
const CARRIED = 0.8;

/**
 * What a start does to a pump set in its pipes: twist about the shaft as inertia times acceleration, its dynamic
 * factor on the modes that twist the set, and the movement of the motor top.
 *
 *     twist of the conditions = twist put on slowly × dynamic factor
 *
 * With the inertia given, the factor is the largest of the twisting modes under that very run-up. With a range, a load
 * that is there at once (across the line, wye-delta, autotransformer) gets the factor of a step, and one that rises
 * (soft starter, drive) the worst of the range. Where the modes carry little of the twist, the factor of a step too.
 *
 * @param asked - the case, and the small movements of the frame about running
 * @param found - vibrations and movements
 * @returns twist, factor, runs and movement; or why there is no start
 * @source dynamics
 */
export function startUp(asked: StartCase, found: FoundVibrations): StartUp {
  const set = orFails(() => startingSet(asked), OF_THE_MOTOR);
  return 'kind' in set ? set : orFails(() => workedStart(asked, set, found), OF_THE_START);
}

/** Torques and speeds that no motor has, and starts that do not come to their end: answers, not faults. */
const OF_THE_MOTOR: readonly IssueCode[] = [
  'mechanics.no-field-speed',
  'mechanics.out-of-range',
  'mechanics.not-a-number',
];
const OF_THE_START: readonly IssueCode[] = [
  'mechanics.never-reaches-speed',
  'mechanics.changeover-not-reached',
];

function orFails<Result>(work: () => Result, codes: readonly IssueCode[]): Result | FailedStart {
  try {
    return work();
  } catch (error) {
    if (error instanceof EngineError && codes.includes(error.code)) return { kind: 'fails', why: error.told };
    throw error;
  }
}

function workedStart(asked: StartCase, set: StartingSet, found: FoundVibrations): WorkedStart {
  const bound = twistBound(set);
  const twisted = twistedSet(found, asked);
  const step = stepFactor(asked.damping);
  const runs = inertiasOf(asked).map((inertia) => oneRun(asked, set, inertia, twisted));
  const worst = runs.reduce<StartRun | undefined>(
    (most, run) => (most === undefined || dynamicTwist(run) > dynamicTwist(most) ? run : most),
    undefined,
  );
  const rises = asked.method.kind === 'soft starter' || asked.method.kind === 'variable-speed drive';
  const isGiven = asked.inertia?.how === 'both given';
  const byBound = bound.largest * step;
  const isRun = worst !== undefined && (isGiven || rises || dynamicTwist(worst) > byBound);
  const started = isRun ? dynamicTwist(worst) : byBound;
  const staticTwist = isRun ? worst.largestTwist : bound.largest;
  const stopTwist = coastDownTwist(set.load) * step;
  const twist = Math.max(started, stopTwist);
  return {
    kind: 'worked out',
    set,
    bound,
    runs,
    ...(worst && { worst }),
    by: isRun ? 'run' : 'bound',
    staticTwist,
    dynamicFactor: staticTwist > 0 ? started / staticTwist : step,
    stopTwist,
    twist,
    governs: stopTwist > started ? 'stop' : 'start',
    twisting: twisted.modes.filter(({ share }) => share >= SHOWN),
    topMovement: twisted.topUnderUnit * twist,
  };
}

/** Modes with less of the twist than this are not listed [-]. */
const SHOWN = 0.02;

const dynamicTwist = (run: StartRun): number => run.largestTwist * run.factor;

function startingSet(asked: StartCase): StartingSet {
  const { rating, field, duty } = asked;
  if (field === undefined) throw new EngineError('mechanics.no-field-speed', { speed: rating.speed });
  const fullLoad = ratedTorque(rating);
  const motor = motorTorques(rating, {
    lockedRotor: asked.lockedRotor.value / fullLoad,
    breakdown: asked.breakdown.value / fullLoad,
    // A speed printed as that of the field itself still has some slip.
    synchronousSpeed: Math.max(field.synchronousSpeed, rating.speed * LEAST_SLIP),
  });
  const dutyTorque =
    duty.efficiency === undefined
      ? fullLoad
      : shaftDemand({ ...duty, efficiency: duty.efficiency, gravity: STANDARD_GRAVITY, speed: rating.speed })
          .torque;
  return {
    motor,
    load: { runningSpeed: rating.speed, dutyTorque, friction: 0 },
    method: asked.method,
  };
}

/** Least ratio of the speed of the field to that of the shaft [-]. */
const LEAST_SLIP = 1.002;

function inertiasOf({ inertia }: StartCase): readonly number[] {
  return inertia === undefined ? [] : inertiasBetween({ ...inertia, count: INERTIAS });
}

function oneRun(asked: StartCase, set: StartingSet, inertia: number, twisted: TwistedSet): StartRun {
  const start = runUp({ inertia, load: set.load, stages: driveStages(set, inertia) });
  const { history, largest, atSpeed } = startTwist(start);
  const dampingRatio = asked.damping;
  const carried = twisted.modes.reduce((sum, { share }) => sum + share, 0);
  const factors = twisted.modes
    .slice(0, FACTORED)
    .map(({ frequency }) => oscillatorResponse({ frequency, dampingRatio }, history).factor);
  const factor = carried < CARRIED ? stepFactor(dampingRatio) : Math.max(1, ...factors);
  return {
    inertia,
    duration: start.duration,
    largestTwist: Math.abs(largest),
    atSpeed,
    factor,
    top: topMovement(twisted, { history, dampingRatio, factor, largest: Math.abs(largest) }),
  };
}

/** Modes whose own factor is worked out: those that carry most of the twist [-]. */
const FACTORED = 3;
