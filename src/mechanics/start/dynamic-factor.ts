import { EngineError } from '../../issues/issue.js';

/**
 * Largest movement of an oscillator under a load put on at once and held, over the movement under the same load put on
 * slowly.
 *
 *     1 + exp(−π ζ / √(1 − ζ²))     2 without damping
 *
 * @param dampingRatio - damping over critical damping, from 0 to below 1 [-]
 * @returns dynamic factor, from 1 to 2 [-]
 * @throws EngineError `mechanics.out-of-range`
 * @source dynamic-loading sec. 2.2.1, fig. 2.5 (without damping); dynamics
 */
export function stepFactor(dampingRatio: number): number {
  checkDamping(dampingRatio);
  return 1 + Math.exp((-Math.PI * dampingRatio) / Math.sqrt(1 - dampingRatio ** 2));
}

/** A load that rises evenly and is then held, on an oscillator. */
export interface LoadRise {
  /** Time from nothing to the full load [s]. */
  readonly riseTime: number;
  /** Frequency of the oscillator [Hz]. */
  readonly frequency: number;
}

/**
 * Dynamic factor of a load that rises evenly and is then held, without damping.
 *
 *     1 + |sin(π t_r/T)| / (π t_r/T)     2 for no rise time, 1 for a rise over whole periods
 *
 * @param rise - time of the rise and frequency [Hz]
 * @returns dynamic factor, from 1 to 2 [-]
 * @throws EngineError `mechanics.out-of-range`
 * @source dynamics
 */
export function riseFactor(rise: LoadRise): number {
  const { riseTime, frequency } = rise;
  if (!(riseTime >= 0))
    throw new EngineError('mechanics.out-of-range', { what: 'time of the rise', value: riseTime });
  checkFrequency(frequency);
  const angle = Math.PI * riseTime * frequency;
  return angle === 0 ? 2 : 1 + Math.abs(Math.sin(angle)) / angle;
}

/**
 * Refuses a damping ratio that no oscillator has. Damping is never assumed: it comes from the caller, and 0 is allowed.
 *
 * @param dampingRatio - damping over critical damping [-]
 * @throws EngineError `mechanics.out-of-range`
 * @source dynamics
 */
export function checkDamping(dampingRatio: number): void {
  if (!(dampingRatio >= 0 && dampingRatio < 1))
    throw new EngineError('mechanics.out-of-range', { what: 'damping ratio', value: dampingRatio });
}

/**
 * Refuses a frequency that no oscillator has.
 *
 * @param frequency - frequency [Hz]
 * @throws EngineError `mechanics.out-of-range`
 * @source dynamics
 */
export function checkFrequency(frequency: number): void {
  if (!(frequency > 0 && Number.isFinite(frequency)))
    throw new EngineError('mechanics.out-of-range', { what: 'frequency', value: frequency });
}
