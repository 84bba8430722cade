import type { Vec3 } from '../../../model/conventions.js';
import { cross, norm, scale, subtract, unit } from '../../../model/vector.js';
import { type Axes, type Element, turnMatrix, turnTall } from './element.js';
import type { Compliance } from './tube-section.js';

/**
 * Axes of a straight pipe: along it; up as far as that is across it (north for a riser); and across both.
 *
 * @param along - direction of the pipe [m]
 * @returns unit vectors; bending "in plane" turns about `across` [-]
 * @source beam-theory
 */
export function pipeAxes(along: Vec3): Axes {
  const t = unit(along);
  // Within a hundredth of a degree of plumb the pipe counts as a riser.
  const isRiser = Math.hypot(t[0], t[1]) < 1.7e-4;
  const across = unit(cross(t, isRiser ? [0, 1, 0] : [0, 0, 1]));
  return { along: t, inPlane: cross(across, t), across };
}

/**
 * Straight pipe with shear deformation (Timoshenko), with the `from` end held.
 *
 *     S: E A/L;  12 E I/(L³ (1+φ));  −6 E I/(L² (1+φ));  (4+φ) E I/(L (1+φ));  G J/L;   φ = 12 E I/(G A_s L²)
 *     D: L²/(2 E A);  L⁴/(8 E I) + L²/(2 G A_s);  L³/(6 E I)
 *
 * @param from - start [m]
 * @param to - end [m]
 * @param compliance - of one length
 * @returns the element, in plan axes [N/m]
 * @source beam-theory
 */
export function pipeElement(from: Vec3, to: Vec3, compliance: Compliance): Element {
  const arm = subtract(to, from);
  const L = norm(arm);
  const axes = pipeAxes(arm);
  const bending = 1 / compliance.bending;
  const phi = (12 * bending * compliance.shear) / L ** 2;
  const lateral = (12 * bending) / (L ** 3 * (1 + phi));
  const couple = (6 * bending) / (L ** 2 * (1 + phi));
  const turn = ((4 + phi) * bending) / (L * (1 + phi));
  const S = new Float64Array(36);
  S[0] = 1 / (compliance.axial * L);
  S[7] = lateral;
  S[14] = lateral;
  S[21] = 1 / (compliance.torsion * L);
  S[28] = turn;
  S[35] = turn;
  // A force along inPlane lifts and turns about +across; one along across turns about −inPlane.
  S[11] = -couple;
  S[31] = -couple;
  S[16] = couple;
  S[26] = couple;

  const D = new Float64Array(18);
  const sag = (compliance.bending * L ** 4) / 8 + (compliance.shear * L ** 2) / 2;
  const slope = (compliance.bending * L ** 3) / 6;
  D[0] = (compliance.axial * L ** 2) / 2;
  D[4] = sag;
  D[8] = sag;
  D[16] = slope;
  D[14] = -slope;
  return {
    stiffness: turnMatrix(S, axes),
    arm,
    weightMovement: turnTall(D, axes),
    length: L,
    centroid: scale(arm, 0.5),
  };
}
