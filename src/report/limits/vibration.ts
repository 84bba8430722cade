/** What vibration keeps to: the limit of the file, else the published zones as a comparison. */
import { citationOf } from '../../analysis/citation-of.js';
import type { Installation } from '../../input/installation.js';
import type { Citation } from '../../sources/index.js';
import type { FieldLimit } from './field-limit.js';

const ZONES: Citation = {
  source: 'iso-10816-7',
  clause: 'category II, boundary between zones B and C',
  confidence: 'memory',
};
/** Power up to which the lower set of zones holds, and the boundaries between zones [W], [m/s]. */
const LARGE = 200e3;
const UP_TO_LARGE = [3.2e-3, 5.1e-3, 8.5e-3] as const;
const ABOVE = [4.2e-3, 6.1e-3, 9.5e-3] as const;
/** Pumps below this power are outside the scope of the zones [W]. */
const LEAST_POWER = 1e3;

/** Boundaries of the published zones for pumps of general use: new, long-term, limited time, damage. */
export interface VibrationZones {
  /** r.m.s. velocity between the zones, rising [m/s]. */
  readonly boundaries: readonly [number, number, number];
  readonly citation: Citation;
}

/**
 * Published zones for a motor power.
 *
 * @param power - rated power of the motor [W]
 * @returns boundaries [m/s]; nothing below the scope of the standard
 */
export function vibrationZones(power: number): VibrationZones | undefined {
  if (power < LEAST_POWER) return undefined;
  return { boundaries: power <= LARGE ? UP_TO_LARGE : ABOVE, citation: ZONES };
}

/** Words for the zone a velocity falls into. */
export const ZONE_WORDS = ['as new', 'for long running', 'for a limited time', 'may damage'] as const;

/**
 * Zone of a velocity.
 *
 * @param velocity - r.m.s. [m/s]
 * @param zones - boundaries
 * @returns one of the four words
 */
export function zoneOf(velocity: number, { boundaries }: VibrationZones): (typeof ZONE_WORDS)[number] {
  const [ab, bc, cd] = boundaries;
  if (velocity <= ab) return ZONE_WORDS[0];
  if (velocity <= bc) return ZONE_WORDS[1];
  return velocity <= cd ? ZONE_WORDS[2] : ZONE_WORDS[3];
}

/**
 * The limit vibration is held against.
 *
 * @param installation - limits and motor
 * @returns the file's limit; else the boundary of long running, a comparison; nothing for the smallest pumps
 */
export function vibrationLimit({ limits, pump }: Installation): FieldLimit | undefined {
  const given = limits.vibration;
  if (given !== undefined) {
    return { value: given.value, measured: 'velocity', words: 'at most', citation: citationOf(given, ZONES) };
  }
  const zones = vibrationZones(pump.motor.power);
  return (
    zones && { value: zones.boundaries[1], measured: 'velocity', words: 'at most', citation: zones.citation }
  );
}

/** Vibration with the pump stopped, over the limit when running [-]. */
export const STOPPED_SHARE = 0.25;
export const STOPPED: Citation = {
  source: 'hi-9.6.4',
  clause: 'vibration with the pump stopped, a quarter of the limit',
  confidence: 'read',
};

/** Boundary of damage for the largest machines of the general guide, flexible [m/s]: it was read. */
const LARGEST_MACHINES = 18e-3;
/** Over the boundary of damage nobody lets a pump run on [-]. */
const OVER_BOUNDARY = 1.25;

/**
 * Velocity past which no figure found lets a pump run on: a quarter over the boundary of the zone of damage, or over that of
 * the largest machines where the pump is too small for the zones.
 *
 * @param power - rated power of the motor [W]
 * @returns limit [m/s]
 */
export function damagingVelocity(power: number): FieldLimit {
  const boundary = vibrationZones(power)?.boundaries[2] ?? LARGEST_MACHINES;
  return {
    value: OVER_BOUNDARY * boundary,
    measured: 'velocity',
    words: 'at most',
    citation: { ...ZONES, clause: 'category II, a quarter over the boundary between zones C and D' },
  };
}
