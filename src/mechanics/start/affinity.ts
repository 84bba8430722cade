/** What a pump does at one speed; any of it in whatever coherent unit. */
export interface PumpState {
  /** [m³/s] */
  readonly flow: number;
  /** [m] */
  readonly head: number;
  /** Shaft power [W]. */
  readonly power: number;
}

/**
 * The same point of a pump's curve at another speed.
 *
 *     flow ~ n     head ~ n²     power ~ n³     (and torque ~ n²)
 *
 * @param state - flow [m³/s], head [m] and power [W] at the first speed
 * @param speedRatio - second speed over first [-]
 * @returns flow, head and power at the second speed
 * @source doe-fundamentals HT-03 p. 50, read
 */
export function atOtherSpeed(state: PumpState, speedRatio: number): PumpState {
  return {
    flow: state.flow * speedRatio,
    head: state.head * speedRatio ** 2,
    power: state.power * speedRatio ** 3,
  };
}

/** Where a pump works, and in what. */
export interface PumpDuty {
  /** [m³/s] */
  readonly flow: number;
  /** [m] */
  readonly head: number;
  /** Density of the liquid [kg/m³]. */
  readonly density: number;
  /** Standard or local gravity [m/s²]. */
  readonly gravity: number;
  /** Pump efficiency, above 0 and at most 1 [-]. */
  readonly efficiency: number;
  /** [rad/s] */
  readonly speed: number;
}

/** What the shaft must bring to a duty. */
export interface ShaftDemand {
  /** Given to the liquid [W]. */
  readonly waterPower: number;
  /** At the shaft [W]. */
  readonly shaftPower: number;
  /** At the shaft [N·m]. */
  readonly torque: number;
}

/**
 * Power and torque a duty asks of the shaft.
 *
 *     water power = ρ g Q H     shaft power = water power / η     torque = shaft power / ω
 *
 * @param duty - flow, head, liquid, efficiency and speed
 * @returns powers and torque [N·m]
 * @source statics
 */
export function shaftDemand(duty: PumpDuty): ShaftDemand {
  const waterPower = duty.density * duty.gravity * duty.flow * duty.head;
  const shaftPower = waterPower / duty.efficiency;
  return { waterPower, shaftPower, torque: shaftPower / duty.speed };
}
