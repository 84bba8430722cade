/** What four gaps round a flange face say: how far apart, how far out of parallel, towards which side. */

import type { Vec3 } from '../model/conventions.js';
import type { NozzleAxes } from '../model/nozzle-axes.js';
import { scale } from '../model/vector.js';

/** Four gaps at the ends of two diameters, in the axes of the nozzle [m]. */
export interface FourGaps {
  readonly up: number;
  readonly across: number;
  readonly down: number;
  readonly back: number;
}

/** The plane through four gaps. */
export interface FaceGaps {
  /** Gap at the centre [m]. */
  readonly mean: number;
  /** Difference of the gap across the face, where it is largest [m]. */
  readonly difference: number;
  /** Unit vector towards the widest place; zero for even gaps. */
  readonly widest: Vec3;
  /** How far each of the four is off the plane: faces not flat, or a slip of the feeler [m]. */
  readonly offPlane: number;
  /** Turn of the line's face against the pump's, about the cross axis and about the upright [rad]. */
  readonly sideways: number;
  readonly upright: number;
}

/**
 * The plane through four gaps, by least squares:
 *
 *     g(φ) = m + a cos φ + b sin φ      a = (g_up − g_down) / 2,  b = (g_across − g_back) / 2
 *     difference across the face 2 √(a² + b²),  off the plane (g_up + g_down − g_across − g_back) / 4
 *
 * A gap that is wider on top is a turn of the line's face about the cross axis in the negative sense; one that is
 * wider on the cross side is a turn about the upright in the positive sense.
 *
 * @param gaps - four gaps [m]
 * @param diameter - of the circle they were read on [m]
 * @param axes - axes of the nozzle
 * @returns mean and difference [m], direction, turns [rad]
 * @source statics
 */
export function faceGaps(gaps: FourGaps, diameter: number, axes: NozzleAxes): FaceGaps {
  const { up, across, down, back } = gaps;
  const [a, b] = [(up - down) / 2, (across - back) / 2];
  const slope = Math.hypot(a, b);
  const towards: Vec3 = [
    a * axes.upright[0] + b * axes.across[0],
    a * axes.upright[1] + b * axes.across[1],
    a * axes.upright[2] + b * axes.across[2],
  ];
  return {
    mean: (up + across + down + back) / 4,
    difference: 2 * slope,
    widest: slope > 0 ? scale(towards, 1 / slope) : [0, 0, 0],
    offPlane: Math.abs(up + down - across - back) / 4,
    sideways: (-2 * a) / diameter,
    upright: (2 * b) / diameter,
  };
}
