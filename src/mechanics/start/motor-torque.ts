import { EngineError } from '../../issues/issue.js';

/** What a nameplate says. */
export interface MotorRating {
  /** Shaft power [W]. */
  readonly power: number;
  /** Speed at full load [rad/s]. */
  readonly speed: number;
}

/** Three points of a motor's torque curve and where they stand. */
export interface MotorTorques {
  /** [N·m] */
  readonly fullLoad: number;
  /** At standstill [N·m]. */
  readonly lockedRotor: number;
  /** The greatest near running speed [N·m]. */
  readonly breakdown: number;
  /** [rad/s] */
  readonly fullLoadSpeed: number;
  /** Speed of the field, at which the motor gives nothing [rad/s]. */
  readonly synchronousSpeed: number;
}

/**
 * Torque at the shaft of a motor at its rating.
 *
 *     T = P / ω
 *
 * @param rating - power and speed
 * @returns full-load torque [N·m]
 * @throws EngineError `mechanics.out-of-range`
 * @source statics
 */
export function ratedTorque(rating: MotorRating): number {
  positive(rating.power, 'power of the motor');
  positive(rating.speed, 'speed of the motor');
  return rating.power / rating.speed;
}

/** Shares of full-load torque and the speed of the field. */
export interface MotorShares {
  /** [-] */
  readonly lockedRotor: number;
  /** [-] */
  readonly breakdown: number;
  /** [rad/s] */
  readonly synchronousSpeed: number;
}

/**
 * Torques of a motor from its rating and the shares of full-load torque it gives at standstill and at most.
 *
 * @param rating - power and full-load speed
 * @param shares - locked rotor and breakdown over full load [-], speed of the field [rad/s]
 * @returns torques [N·m] and speeds [rad/s]
 * @throws EngineError `mechanics.out-of-range` unless breakdown exceeds full load and the field outruns the shaft
 * @source statics
 */
export function motorTorques(rating: MotorRating, shares: MotorShares): MotorTorques {
  const fullLoad = ratedTorque(rating);
  positive(shares.lockedRotor, 'locked-rotor torque of the motor');
  refuse(!(shares.breakdown > 1), 'breakdown torque over full-load torque', shares.breakdown);
  const slip = 1 - rating.speed / shares.synchronousSpeed;
  refuse(!(slip > 0 && slip < 1), 'slip of the motor at full load', slip);
  const motor = {
    fullLoad,
    lockedRotor: shares.lockedRotor * fullLoad,
    breakdown: shares.breakdown * fullLoad,
    fullLoadSpeed: rating.speed,
    synchronousSpeed: shares.synchronousSpeed,
  };
  refuse(!(breakdownSlip(motor) < 1), 'slip of the motor at breakdown', breakdownSlip(motor));
  return motor;
}

/**
 * Slip at which a motor gives its breakdown torque, so that the curve also goes through full load.
 *
 *     s_b = s_f (k + √(k² − 1))     k breakdown over full-load torque, s_f slip at full load
 *
 * @param motor - torques [N·m] and speeds [rad/s]
 * @returns slip at breakdown [-]
 * @source dynamics
 */
export function breakdownSlip(motor: MotorTorques): number {
  const k = motor.breakdown / motor.fullLoad;
  return (1 - motor.fullLoadSpeed / motor.synchronousSpeed) * (k + Math.sqrt(k ** 2 - 1));
}

/**
 * Torque of a motor on full voltage at a speed: a smooth curve through standstill, breakdown, full load and the speed
 * of the field.
 *
 *     K(s) = 2 / (s/s_b + s_b/s)                                 shape of an induction motor, 1 at breakdown
 *     T = T_b K(s)                                               from breakdown to the speed of the field
 *     T = T_l + (T_b − T_l) (K(s) − K(1)) / (1 − K(1))           from standstill to breakdown
 *
 * The dip many motors have on the way (pull-up torque) is left out: it lengthens the start and lowers the twist.
 *
 * @param motor - torques [N·m] and speeds [rad/s]
 * @param speed - speed of the shaft [rad/s]
 * @returns torque on the shaft [N·m]
 * @source dynamics
 */
export function motorTorqueAt(motor: MotorTorques, speed: number): number {
  const slip = 1 - speed / motor.synchronousSpeed;
  const atBreakdown = breakdownSlip(motor);
  const shape = torqueShape(slip, atBreakdown);
  if (slip <= atBreakdown) return motor.breakdown * shape;
  const atStandstill = torqueShape(1, atBreakdown);
  const share = (shape - atStandstill) / (1 - atStandstill);
  return motor.lockedRotor + (motor.breakdown - motor.lockedRotor) * share;
}

function torqueShape(slip: number, atBreakdown: number): number {
  return slip === 0 ? 0 : 2 / (slip / atBreakdown + atBreakdown / slip);
}

function positive(value: number, what: string): void {
  refuse(!(value > 0 && Number.isFinite(value)), what, value);
}

function refuse(wrong: boolean, what: string, value: number): void {
  if (wrong) throw new EngineError('mechanics.out-of-range', { what, value });
}
