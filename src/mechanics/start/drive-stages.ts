import { EngineError } from '../../issues/issue.js';
import { breakdownSlip, type MotorTorques, motorTorqueAt } from './motor-torque.js';
import { type StartMethod, startTorqueShare } from './start-method.js';
import { resistingTorque, type StartingLoad } from './starting-load.js';

/** A stretch of a start with one torque curve. */
export interface DriveStage {
  /** What drives: reduced voltage before a changeover, or what brings the set to its running speed. */
  readonly purpose: 'reduced' | 'full' | 'limited current' | 'ramp';
  /** Torque on the shaft [N·m] at a speed [rad/s] and a time since the start [s]. Later never means less. */
  readonly torqueAt: (speed: number, time: number) => number;
  /** Time after which the torque depends on speed alone [s]. */
  readonly rise?: number;
  /** Speed at which the stage ends [rad/s]. */
  readonly to: number;
}

/** A set to be started. */
export interface StartingSet {
  readonly motor: MotorTorques;
  readonly load: StartingLoad;
  readonly method: StartMethod;
}

/** A start is over at this share of the speed the set settles at, which it comes to ever more slowly [-]. */
const STARTED = 0.999;

/** Speeds looked at on the way up [-]. */
const SPEEDS = 1000;

/**
 * Torque curves of a start, one after the other. The current limit of a soft starter holds the voltage down by
 *
 *     (V/V_n)² = min(1, (I/I_l)² (s² + s_b²) / (s² (1 + s_b²)))     current of an induction motor at slip s
 *
 * Its voltage may also rise with time, torque with the square of it. A drive gives what its ramp asks, never more than its limit; where the limit holds it back the ramp waits:
 *
 *     T = min(T_limit, J ω_n / t_ramp + T_load)
 *
 * @param set - motor, load and way of starting
 * @param inertia - of all that turns; without it the ramp of a drive is not known and its limit stands [kg·m²]
 * @returns the stages in order
 * @throws EngineError `mechanics.never-reaches-speed`, `mechanics.out-of-range`
 * @source dynamics, motor-start-pages
 */
export function driveStages(set: StartingSet, inertia?: number): readonly DriveStage[] {
  const { motor, load, method } = set;
  const { share } = startTorqueShare(method);
  const full = (speed: number) => motorTorqueAt(motor, speed);
  if (method.kind === 'variable-speed drive') {
    checkRamp(method.ramp);
    const limit = share * motor.fullLoad;
    const ramp = inertia === undefined ? limit : (inertia * load.runningSpeed) / method.ramp;
    const torqueAt = (speed: number) => Math.min(limit, ramp + resistingTorque(load, speed));
    return [{ purpose: 'ramp', torqueAt, to: STARTED * load.runningSpeed }];
  }
  const end = STARTED * settledSpeed(motor, load);
  if (method.kind === 'across the line') return [{ purpose: 'full', torqueAt: full, to: end }];
  if (method.kind === 'soft starter') {
    return softStages({ motor, share, end, ramp: method.ramp ?? 0 });
  }
  const reduced = (speed: number) => share * full(speed);
  const change =
    method.changeover === undefined
      ? worstChangeover(set, reduced, end)
      : Math.min(end, method.changeover * load.runningSpeed);
  if (!(change > 0))
    throw new EngineError('mechanics.out-of-range', { what: 'speed of the changeover', value: change });
  return [
    { purpose: 'reduced', torqueAt: reduced, to: change },
    { purpose: 'full', torqueAt: full, to: end },
  ];
}

/**
 * Speed at which a motor on full voltage and its load settle: where the falling end of the curve meets the load.
 *
 * @param motor - torques and speeds
 * @param load - what holds back
 * @returns speed [rad/s]
 * @throws EngineError `mechanics.never-reaches-speed` when the load exceeds breakdown torque
 * @source dynamics
 */
export function settledSpeed(motor: MotorTorques, load: StartingLoad): number {
  let low = motor.synchronousSpeed * (1 - breakdownSlip(motor));
  let high = motor.synchronousSpeed;
  const net = (speed: number) => motorTorqueAt(motor, speed) - resistingTorque(load, speed);
  if (!(net(low) > 0))
    throw new EngineError('mechanics.never-reaches-speed', {
      reached: Math.floor((100 * low) / load.runningSpeed),
    });
  for (let round = 0; round < 60; round += 1) {
    const middle = (low + high) / 2;
    if (net(middle) > 0) low = middle;
    else high = middle;
  }
  return low;
}

/** Limited current as far as it limits, then full voltage; both no faster than the ramp of the voltage. */
function softStages(soft: {
  readonly motor: MotorTorques;
  readonly share: number;
  readonly end: number;
  readonly ramp: number;
}): readonly DriveStage[] {
  const { motor, share, end, ramp } = soft;
  if (ramp !== 0) checkRamp(ramp);
  const risen = (time: number) => (time < ramp ? (time / ramp) ** 2 : 1);
  const limited = (speed: number, time: number) =>
    motorTorqueAt(motor, speed) * Math.min(voltageSquared(motor, share, speed), risen(time));
  const unlimited = (speed: number, time: number) => motorTorqueAt(motor, speed) * risen(time);
  return [
    { purpose: 'limited current', torqueAt: limited, to: Math.min(end, freeSpeed(motor, share)), rise: ramp },
    { purpose: 'full', torqueAt: unlimited, to: end, rise: ramp },
  ];
}

function checkRamp(ramp: number): void {
  if (!(ramp > 0 && Number.isFinite(ramp)))
    throw new EngineError('mechanics.out-of-range', { what: 'time of the ramp', value: ramp });
}

/** Speed from which the motor takes no more than the limit on full voltage: s² = share s_b² / (1 + s_b² − share). */
function freeSpeed(motor: MotorTorques, share: number): number {
  const squared = breakdownSlip(motor) ** 2;
  const slip = Math.sqrt((share * squared) / (1 + squared - share));
  return motor.synchronousSpeed * (1 - Math.min(1, slip));
}

function voltageSquared(motor: MotorTorques, share: number, speed: number): number {
  const slip = 1 - speed / motor.synchronousSpeed;
  const atBreakdown = breakdownSlip(motor);
  const current = (slip ** 2 * (1 + atBreakdown ** 2)) / (slip ** 2 + atBreakdown ** 2);
  return current <= share ? 1 : share / current;
}

/** Of the speeds that reduced voltage can reach, the one at which full voltage throws in the most. */
function worstChangeover(set: StartingSet, reduced: (speed: number) => number, end: number): number {
  let worst = 0;
  let most = Number.NEGATIVE_INFINITY;
  for (let step = 0; step <= SPEEDS; step += 1) {
    const speed = (end * step) / SPEEDS;
    const resisting = resistingTorque(set.load, speed);
    if (!(reduced(speed) > resisting)) break;
    const net = motorTorqueAt(set.motor, speed) - resisting;
    if (net > most && step > 0) {
      most = net;
      worst = speed;
    }
  }
  if (worst === 0) throw new EngineError('mechanics.changeover-not-reached', { reached: 0 });
  return worst;
}
