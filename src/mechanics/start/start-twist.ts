/**
 * The torque about its shaft with which a pump set twists the pipes that carry it. Motor, pump and liquid are one body;
 * what turns inside it matters to the outside only by its change of momentum. Twist is positive along the rotation of
 * the shaft, as a moment applied to the set.
 */
import { type DriveStage, driveStages, type StartingSet } from './drive-stages.js';
import type { RunUp } from './run-up.js';
import { resistingTorque } from './starting-load.js';
import type { LoadHistory } from './step-response.js';

/** Twist on a set while it starts. */
export interface StartTwist {
  /** Twist against time, with none at its end [N·m]. */
  readonly history: LoadHistory;
  /** The largest, against the rotation and so negative [N·m]. */
  readonly largest: number;
  /** Speed at which it acts [rad/s]. */
  readonly atSpeed: number;
}

/**
 * Twist of a set during its run-up. The stator feels the motor's reaction, the casing the drag of water and friction
 * along the rotation; what remains is opposite to the rotor's acceleration:
 *
 *     T = −T_motor + T_water + T_friction = −J dω/dt
 *
 * @param start - the run-up
 * @returns twist against time and its largest [N·m]
 * @source dynamics
 */
export function startTwist(start: RunUp): StartTwist {
  return {
    history: {
      time: [...start.time, start.duration],
      load: [...start.netTorque.map((torque) => -torque), 0],
    },
    largest: -start.largestNetTorque,
    atSpeed: start.atSpeed,
  };
}

/** What a start can at most do to the set, whatever its inertia. */
export interface TwistBound {
  /** Magnitude of the largest twist [N·m]. */
  readonly largest: number;
  /** Magnitude at standstill [N·m]. */
  readonly atStandstill: number;
  /** Largest magnitude after standstill [N·m]. */
  readonly underway: number;
  /** Speed at which that acts [rad/s]. */
  readonly underwaySpeed: number;
  /** What makes the largest. */
  readonly governs: 'standstill' | 'breakdown less load' | 'changeover' | 'current limit' | 'torque limit';
}

/** A motor that pulls as hard at breakdown gains a hair just after standstill; that still counts as standstill [-]. */
const CLEARLY = 1.01;

/** Speeds looked at in each stage [-]. */
const SPEEDS = 2000;

/**
 * Largest twist of a start where the inertia is not known. J dω/dt is the motor's torque less the load's, and both
 * depend on speed alone: inertia stretches the time and leaves the peak as it is. Under a drive the ramp would need the
 * inertia; without it the torque limit bounds the twist. A ramp of the voltage is taken as over.
 *
 *     largest = max over speed of (T_motor − T_water − T_friction)
 *
 * @param set - motor, load and way of starting
 * @returns magnitudes [N·m], speed [rad/s] and what governs
 * @throws EngineError `mechanics.never-reaches-speed`, `mechanics.changeover-not-reached`, `mechanics.out-of-range`
 * @source dynamics
 */
export function twistBound(set: StartingSet): TwistBound {
  const stages = driveStages(set);
  const atStandstill = Math.max(0, netAt(set, stages[0], 0));
  let underway = 0;
  let underwaySpeed = 0;
  let atChangeover = false;
  let from = 0;
  for (const [number, stage] of stages.entries()) {
    for (let step = number === 0 ? 1 : 0; step <= SPEEDS; step += 1) {
      const speed = from + ((stage.to - from) * step) / SPEEDS;
      const net = netAt(set, stage, speed);
      if (net <= underway) continue;
      underway = net;
      underwaySpeed = speed;
      atChangeover = number > 0 && step === 0;
    }
    from = stage.to;
  }
  // A soft starter has no changeover: its torque peaks where the current falls below the limit.
  const stepped = set.method.kind === 'soft starter' ? 'current limit' : 'changeover';
  const later = atChangeover ? stepped : 'breakdown less load';
  const governs =
    set.method.kind === 'variable-speed drive'
      ? 'torque limit'
      : underway > atStandstill * CLEARLY
        ? later
        : 'standstill';
  return { largest: Math.max(atStandstill, underway), atStandstill, underway, underwaySpeed, governs };
}

function netAt(set: StartingSet, stage: DriveStage | undefined, speed: number): number {
  return (stage?.torqueAt(speed, Number.POSITIVE_INFINITY) ?? 0) - resistingTorque(set.load, speed);
}

/** Swirl of the streams through the nozzles of a set. */
export interface NozzleSwirl {
  /** Mass of liquid a second [kg/s]. */
  readonly massFlow: number;
  /** Moment of velocity about the shaft of the stream leaving, positive along the rotation [m²/s]. */
  readonly leaving: number;
  /** The same of the stream entering [m²/s]. */
  readonly entering: number;
}

/**
 * Twist of a set at steady speed: next to nothing. The rotor's momentum does not change; the motor's reaction on the
 * stator and the drag of water and friction on the casing are equal and opposite and meet in the bracket between them,
 * which they load, not the pipes. Only swirl carried through the nozzles would remain, and the streams of an in-line
 * pump cross its shaft line with hardly any.
 *
 *     T = −ṁ (swirl leaving − swirl entering)
 *
 * @param swirl - flow and moments of velocity; none given means none carried
 * @returns twist on the set, positive along the rotation [N·m]
 * @source dynamics
 */
export function steadyTwist(swirl?: NozzleSwirl): number {
  if (swirl === undefined) return 0;
  return swirl.massFlow * (swirl.entering - swirl.leaving);
}

/**
 * Twist of a set at the moment its motor is switched off, the largest of the coast-down. The rotor slows, so the twist
 * is along the rotation, opposite to that of the start.
 *
 *     T = T_water + T_friction
 *
 * @param load - torque of the water at running speed and friction
 * @returns twist on the set, positive along the rotation [N·m]
 * @source dynamics
 */
export function coastDownTwist(load: StartingSet['load']): number {
  return resistingTorque(load, load.runningSpeed);
}
