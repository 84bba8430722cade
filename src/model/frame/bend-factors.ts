import { EngineError } from '../../issues/issue.js';
import type { BendFactors } from '../layout/layout.js';

/** Dimensions of a smooth pipe bend. */
export interface BendDimensions {
  /** Centre-line radius [m]. */
  readonly bendRadius: number;
  /** [m] */
  readonly outsideDiameter: number;
  /** [m] */
  readonly wall: number;
  /** Ends with a flange, valve or other stiff part within one outside diameter. */
  readonly stiffEnds: 0 | 1 | 2;
}

/**
 * Flexibility and stress intensification of a smooth bend as the piping codes give them.
 *
 *     h = t R / r²             flexibility characteristic, r = (D − t) / 2
 *     k = 1.65 / h             flexibility factor, in and out of plane
 *     i = 0.9 / h^(2/3)        stress intensification
 *     c = h^(1/6), h^(1/3)     multiplies k for one, two stiff ends
 *
 * Appendix D lets c lower i as well. It is not lowered here: c is remembered, not read, and what makes an end stiff is
 * taken more widely than in the code (a valve, a flange up to a diameter away), where the bend may still become oval.
 *
 * k and i are never less than 1. Pressure stiffening is left out: at building pressures it is below one per cent.
 *
 * @param bend - dimensions [m]
 * @returns h, k, i and the stiffening used [-]
 * @throws EngineError `model.bend-radius-too-small` when the radius is under the mean radius of the pipe; data [m]
 * @source asme-b31.1 (appendix D, editions to 2018, memory)
 * @example
 * bendFactors({ bendRadius: 0.1524, outsideDiameter: 0.1143, wall: 0.00602, stiffEnds: 0 }).flexibility // 5.27
 */
export function bendFactors(bend: BendDimensions): BendFactors {
  const r = (bend.outsideDiameter - bend.wall) / 2;
  if (!(bend.bendRadius >= r)) {
    throw new EngineError('model.bend-radius-too-small', { bendRadius: bend.bendRadius, meanRadius: r });
  }
  const h = (bend.wall * bend.bendRadius) / r ** 2;
  // h above 1 means a bend so thick that the correction would stiffen it beyond plain pipe; the code stops at 1.
  const stiffening = bend.stiffEnds === 0 ? 1 : Math.min(1, h ** (bend.stiffEnds === 1 ? 1 / 6 : 1 / 3));
  return {
    characteristic: h,
    flexibility: Math.max(1, (stiffening * 1.65) / h),
    intensification: Math.max(1, 0.9 / h ** (2 / 3)),
    stiffEnds: bend.stiffEnds,
    stiffening,
  };
}
