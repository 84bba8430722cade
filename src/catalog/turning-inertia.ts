import type { Citation } from '../sources/index.js';
import { startableLoadInertia, twoPoleRotorInertia } from './motor-inertia.js';
import { synchronousSpeed } from './synchronous-speed.js';

/** What is known of a set that has to be brought up to speed. */
export interface TurningSet {
  /** Shaft power of the motor [W]. */
  readonly power: number;
  /** Full-load speed [rad/s]. */
  readonly speed: number;
  /** Inertia of the motor's rotor, where given [kg·m²]. */
  readonly motorInertia?: number;
  /** Inertia of impeller, shaft and coupling, where given [kg·m²]. */
  readonly pumpInertia?: number;
}

/** Bounds of the inertia of all that turns. */
export interface InertiaRange {
  /** [kg·m²] */
  readonly least: number;
  /** Equal to the least where both rotors are given [kg·m²]. */
  readonly most: number;
  readonly citation: Citation;
  /** How the bounds were found. */
  readonly how: 'both given' | 'motor given' | 'pump given' | 'by power';
}

/** Ends of the published list of rotors [W]: a larger motor has no lighter rotor than the last listed. */
const LAST_LISTED = 22_000;

/**
 * Between which bounds the inertia of both rotors together lies.
 *
 * Both given: their sum. The motor's alone: from that to twice it, a pump's rotor and the water in it having less than
 * the motor's. Otherwise from the two-pole rotor of that power, the lightest there is, to the load a motor of that
 * power must be able to start, on top of what is given.
 *
 * @param set - power, speed and what is given
 * @returns bounds [kg·m²]; undefined where no published value bounds them
 * @source motor-inertia-list, nema-mg-1, common-practice
 */
export function turningInertia(set: TurningSet): InertiaRange | undefined {
  const { motorInertia, pumpInertia } = set;
  if (motorInertia !== undefined && pumpInertia !== undefined) {
    const both = motorInertia + pumpInertia;
    return {
      least: both,
      most: both,
      how: 'both given',
      citation: { source: 'input', clause: 'inertia of motor and pump', confidence: 'read' },
    };
  }
  if (motorInertia !== undefined) {
    return {
      least: motorInertia,
      most: 2 * motorInertia,
      how: 'motor given',
      citation: {
        source: 'common-practice',
        clause: "a pump's rotor has less inertia than its motor's",
        confidence: 'common practice',
      },
    };
  }
  const rotor = twoPoleRotorInertia({ power: Math.min(set.power, LAST_LISTED) });
  const field = synchronousSpeed(set);
  if (rotor === undefined || field === undefined) return undefined;
  // The formula is one of 60 Hz; taken at the lower speed of the shaft it errs to the heavy side.
  const load = startableLoadInertia({ power: set.power, synchronousSpeed: field.synchronousSpeed });
  const least = rotor.value + (pumpInertia ?? 0);
  return {
    least,
    most: least + load.value,
    how: pumpInertia === undefined ? 'by power' : 'pump given',
    citation: rotor.citation,
  };
}
