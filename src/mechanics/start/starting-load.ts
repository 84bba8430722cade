/** What holds a set back while it gains speed. */
export interface StartingLoad {
  /** Speed at the duty [rad/s]. */
  readonly runningSpeed: number;
  /** Torque the water takes at that speed [N·m]. */
  readonly dutyTorque: number;
  /** Torque of seals and bearings, the same at every speed [N·m]. */
  readonly friction: number;
}

/**
 * Torque of the water at a speed: with the square of the speed, as on one point of the pump's curve.
 *
 * @param load - torque and speed at the duty
 * @param speed - speed of the shaft [rad/s]
 * @returns torque against the rotation [N·m]
 * @source doe-fundamentals
 */
export function waterTorque(load: StartingLoad, speed: number): number {
  return load.dutyTorque * (speed / load.runningSpeed) ** 2;
}

/**
 * Torque against the rotation of a turning shaft: water and friction.
 *
 * @param load - torque and speed at the duty, friction
 * @param speed - speed of the shaft [rad/s]
 * @returns torque against the rotation [N·m]
 * @source doe-fundamentals
 */
export function resistingTorque(load: StartingLoad, speed: number): number {
  return waterTorque(load, speed) + load.friction;
}
