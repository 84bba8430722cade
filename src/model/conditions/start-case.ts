import {
  type FieldSpeed,
  greatestTorqueAssumed,
  type InertiaRange,
  lockedRotorCurrentAssumed,
  synchronousSpeed,
  turningInertia,
} from '../../catalog/index.js';
import type { Installation, Motor, StartMethod } from '../../input/installation.js';
import type { Citation } from '../../sources/index.js';
import type { Vec3 } from '../conventions.js';
import { add } from '../vector.js';

/** A torque of the motor and where it is from. */
export interface StartTorque {
  /** [N·m] */
  readonly value: number;
  /** True where the file does not give it. */
  readonly assumed: boolean;
  readonly citation: Citation;
}

/** Way of starting with every number it needs. */
export type CompleteStart =
  | Exclude<StartMethod, { readonly kind: 'soft starter' }>
  | (Extract<StartMethod, { readonly kind: 'soft starter' }> & {
      /** Over full-load current [-]. */
      readonly lockedRotorCurrent: number;
    });

/** Everything the start of a set is worked out from, in SI. */
export interface StartCase {
  /** Shaft power [W] and full-load speed [rad/s] of the motor. */
  readonly rating: { readonly power: number; readonly speed: number };
  /** Field the speed belongs to; absent where the speed fits no motor on a 50 or 60 Hz supply. */
  readonly field?: FieldSpeed;
  readonly lockedRotor: StartTorque;
  readonly breakdown: StartTorque;
  readonly method: CompleteStart;
  /** What the water takes at running speed. */
  readonly duty: {
    /** [m³/s] */
    readonly flow: number;
    /** [m] */
    readonly head: number;
    /** [kg/m³] */
    readonly density: number;
    /** Without it the torque of the rated motor is taken [-]. */
    readonly efficiency?: number;
  };
  /** Bounds of the inertia of all that turns; absent where nothing bounds them. */
  readonly inertia?: InertiaRange;
  /** Damping over critical damping [-]. */
  readonly damping: number;
  /** Top of the motor on the shaft axis [m]. */
  readonly top: Vec3;
  /** From there to the rim of the motor [m]. */
  readonly radius: number;
}

/**
 * The start of an installation's pump, with assumed values where the file gives none: torques as great as they may be,
 * inertia as a range, no damping. The input lists the same values as assumptions.
 *
 * @param installation - motor, duty, damping and outline
 * @returns the case
 * @source nema-mg-1, motor-inertia-list
 */
export function startCase(installation: Installation): StartCase {
  const { pump, service, limits } = installation;
  const { motor, duty } = pump;
  const { power, speed } = motor;
  const field = synchronousSpeed({ speed });
  const inertia = turningInertia({
    power,
    speed,
    ...(motor.inertia && { motorInertia: motor.inertia.value }),
    ...(pump.rotorInertia && { pumpInertia: pump.rotorInertia.value }),
  });
  return {
    rating: { power, speed },
    ...(field && { field }),
    ...torques(motor),
    method: completeStart(motor),
    duty: {
      flow: duty.flow,
      head: duty.head,
      density: service.density.running.value,
      ...(duty.efficiency !== undefined && { efficiency: duty.efficiency }),
    },
    ...(inertia && { inertia }),
    damping: limits.damping?.value ?? 0,
    top: add(pump.position, [0, 0, pump.outline.motorTop.value]),
    radius: pump.outline.motorDiameter.value / 2,
  };
}

function torques(motor: Motor): Pick<StartCase, 'lockedRotor' | 'breakdown'> {
  const { lockedRotorTorque, breakdownTorque } = motor;
  const given = (value: number): StartTorque => ({
    value,
    assumed: false,
    citation: { source: 'input', clause: 'torque of the motor', confidence: 'read' },
  });
  const listed = greatestTorqueAssumed({ power: motor.power });
  const greatest = Math.max((listed.value * motor.power) / motor.speed, lockedRotorTorque?.value ?? 0);
  const breakdown: StartTorque =
    breakdownTorque === undefined
      ? { value: greatest, assumed: true, citation: listed.citation }
      : given(breakdownTorque.value);
  return {
    breakdown,
    lockedRotor:
      lockedRotorTorque === undefined ? { ...breakdown, assumed: true } : given(lockedRotorTorque.value),
  };
}

function completeStart(motor: Motor): CompleteStart {
  const { start } = motor;
  if (start === undefined) return { kind: 'across the line' };
  if (start.kind !== 'soft starter') return start;
  return {
    ...start,
    lockedRotorCurrent: motor.lockedRotorCurrent?.value ?? lockedRotorCurrentAssumed().value,
  };
}
