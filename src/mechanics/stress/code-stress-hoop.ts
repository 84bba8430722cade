/** Stress around the pipe from internal pressure, and the wall that pressure asks for. */
import type { PressurisedTube } from './code-stress.js';

/**
 * Hoop stress by the thin-wall form on the outside diameter.
 *
 *     S = P D / (2 t)
 *
 * @param state - tube [m] and gauge pressure [Pa]
 * @returns hoop stress [Pa]
 * @source asme-b31.1 para 104.1.2, read in the B31.3 example that uses the same form
 */
export function hoopStress(state: PressurisedTube): number {
  return (state.pressure * state.tube.outsideDiameter) / (2 * state.tube.wall);
}

/** What the pressure design of a wall needs. */
export interface PressureDesign {
  /** Gauge pressure P [Pa]. */
  readonly pressure: number;
  /** Outside diameter D [m]. */
  readonly outsideDiameter: number;
  /** Allowable stress S [Pa]. */
  readonly allowable: number;
  /** Quality factor of the weld E [-]. */
  readonly quality: number;
  /** Coefficient y of the code, 0.4 for ferritic steel below 482 °C [-]. */
  readonly coefficient: number;
}

/**
 * Wall that internal pressure asks for, without corrosion and mill allowance.
 *
 *     t = P D / [2 (S E + P y)]
 *
 * @param design - pressure and allowable stress [Pa], outside diameter [m], quality and coefficient [-]
 * @returns required wall [m]
 * @source asme-b31.3 para 304.1.2 eq (3a), read in appendix S example 1
 */
export function pressureDesignWall(design: PressureDesign): number {
  const { pressure: P, outsideDiameter: D, allowable: S, quality: E, coefficient: y } = design;
  return (P * D) / (2 * (S * E + P * y));
}
