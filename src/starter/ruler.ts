/** Lengths as a fitter writes them, rounded to what a tape shows. */
import type { UnitSystem } from '../units/index.js';

const INCH = 0.0254;
const FOOT_INCHES = 12;
/** Steps of a tape: half an inch, a centimetre [m]. */
const STEP: Readonly<Record<UnitSystem, number>> = { us: INCH / 2, si: 0.01 };

export interface Ruler {
  /** To the nearest step of the tape. */
  readonly round: (length: number) => number;
  /** To the step below, so that what is left over is never negative. */
  readonly down: (length: number) => number;
  /** As it stands in the file: `1 ft 9 1/2 in`, `450 mm`, `3.25 m`. */
  readonly text: (length: number) => string;
}

/**
 * A ruler of a system of units.
 *
 * @param units - system [-]
 * @returns rounding, and lengths as text [-]
 */
export function rulerOf(units: UnitSystem): Ruler {
  const step = STEP[units];
  const steps = (length: number): number => Math.round(length / step);
  return {
    round: (length) => steps(length) * step,
    down: (length) => Math.floor(length / step + 1e-9) * step,
    text: (length) => (units === 'us' ? feetAndInches(steps(length)) : metres(steps(length))),
  };
}

function feetAndInches(halves: number): string {
  const feet = Math.floor(halves / 2 / FOOT_INCHES);
  const rest = halves - feet * 2 * FOOT_INCHES;
  const whole = Math.floor(rest / 2);
  const inches = rest % 2 === 0 ? `${whole} in` : whole === 0 ? '1/2 in' : `${whole} 1/2 in`;
  if (feet === 0) return inches;
  return rest === 0 ? `${feet} ft` : `${feet} ft ${inches}`;
}

function metres(centimetres: number): string {
  return centimetres < 100 ? `${centimetres * 10} mm` : `${centimetres / 100} m`;
}
