import { gaussLegendre } from '../../../algebra/gauss-legendre.js';
import { symmetricInverse } from '../../../algebra/small-inverse.js';
import { EngineError } from '../../../issues/issue.js';
import type { Vec3 } from '../../../model/conventions.js';
import { add, cross, dot, norm, scale, subtract, unit } from '../../../model/vector.js';
import { type Axes, type Element, turnMatrix, turnTall } from './element.js';
import type { Compliance } from './tube-section.js';

/** A circular arc in space. */
export interface Arc {
  /** [m] */
  readonly radius: number;
  /** Angle turned from end to end [rad]. */
  readonly angle: number;
  readonly centre: Vec3;
  /** Unit vectors: from the centre to the `from` end; along the arc there; square to the plane of the arc. */
  readonly axes: Axes;
}

/**
 * The arc between two points about a centre, the short way round.
 *
 * @param name - member name, for messages [-]
 * @param ends - start, end and centre [m]
 * @returns radius [m], angle [rad] and axes [-]
 * @throws EngineError `mechanics.bend-impossible` when the ends are not at one distance from the centre (within a
 *   millionth), or the arc turns by nothing or by half a circle or more; data: `member`
 * @source statics
 */
export function arcOf(
  name: string,
  ends: { readonly from: Vec3; readonly to: Vec3; readonly centre: Vec3 },
): Arc {
  const start = subtract(ends.from, ends.centre);
  const end = subtract(ends.to, ends.centre);
  const radius = norm(start);
  const normal = cross(start, end);
  const sine = norm(normal) / radius ** 2;
  const flat = norm(subtract(ends.to, ends.from));
  if (!(Math.abs(norm(end) - radius) <= 1e-6 * radius) || !(sine > 1e-9) || !(flat > 0)) {
    throw new EngineError('mechanics.bend-impossible', { member: name });
  }
  const along = unit(start);
  const across = unit(normal);
  const angle = Math.atan2(norm(normal), dot(start, end));
  return { radius, angle, centre: ends.centre, axes: { along, inPlane: cross(across, along), across } };
}

/**
 * Place on an arc, in the axes of the arc and from its centre.
 *
 *     x(φ) = R (cos φ, sin φ, 0)
 *
 * @param arc - the arc [m]
 * @param angle - angle from the `from` end [rad]
 * @returns place [m]
 * @source statics
 */
export function placeOnArc(arc: Arc, angle: number): Vec3 {
  return [arc.radius * Math.cos(angle), arc.radius * Math.sin(angle), 0];
}

/**
 * Exact circular arc, with the `from` end held: flexibility by integrating along the arc what each section gives.
 *
 *     F = ∫ Bᵀ f B R dφ,   B = [1 0; a× 1] with a from the section to the `to` end,   S = F⁻¹
 *     f = diag(1/EA, 1/GA_s, 1/GA_s, 1/GJ, k/EI, k/EI) along the tangent, the radius and the normal
 *     D = ∫ Bᵀ f [force and moment of the weight between the section and the `to` end] R dφ
 *
 * The integrands are polynomials in the angle times sines and cosines of up to four times the angle: twenty Gauss
 * points give them to rounding for any arc under half a circle. As k multiplies the bending of each length, an arc
 * cut into pieces gives the same answer. Coupling of axial force and curvature within the wall is left out, as in
 * every pipe flexibility analysis.
 *
 * @param arc - radius [m], angle [rad], axes [-]
 * @param compliance - of one length, bending with k
 * @returns the element, in plan axes [N/m]
 * @source beam-theory
 */
export function bendElement(arc: Arc, compliance: Compliance): Element {
  const { radius: R, angle } = arc;
  const F = new Float64Array(36);
  const D = new Float64Array(18);
  const end = placeOnArc(arc, angle);
  for (let g = 0; g < RULE.points.length; g++) {
    const phi = RULE.points[g]! * angle;
    const here = placeOnArc(arc, phi);
    const lever = subtract(end, here);
    const weight = RULE.weights[g]! * angle * R;
    const rest = R * (angle - phi);
    const moment: Vec3 = subtract(
      [R * R * (Math.sin(angle) - Math.sin(phi)), R * R * (Math.cos(phi) - Math.cos(angle)), 0],
      scale(here, rest),
    );
    for (let c = 0; c < 3; c++) {
      const e = UNITS[c]!;
      addColumn(F, 6, c, weight, sectionStrain(phi, compliance, e, cross(lever, e)), lever);
      addColumn(F, 6, c + 3, weight, sectionStrain(phi, compliance, NONE, e), lever);
      addColumn(D, 3, c, weight, sectionStrain(phi, compliance, scale(e, rest), cross(moment, e)), lever);
    }
  }
  const length = R * angle;
  const local = scale([Math.sin(angle), 1 - Math.cos(angle), 0], R / angle);
  const toPlan = (v: Vec3): Vec3 =>
    add(add(scale(arc.axes.along, v[0]), scale(arc.axes.inPlane, v[1])), scale(arc.axes.across, v[2]));
  return {
    stiffness: turnMatrix(symmetricInverse(F, 6), arc.axes),
    arm: toPlan(subtract(end, [R, 0, 0])),
    weightMovement: turnTall(D, arc.axes),
    length,
    centroid: toPlan(subtract(local, [R, 0, 0])),
  };
}

const RULE = gaussLegendre(20);
const UNITS: readonly Vec3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];
const NONE: Vec3 = [0, 0, 0];

/** Strain and curvature at angle phi for a force and a moment there, in the axes of the arc. */
function sectionStrain(phi: number, f: Compliance, force: Vec3, moment: Vec3): readonly [Vec3, Vec3] {
  const c = Math.cos(phi);
  const s = Math.sin(phi);
  const turn = (v: Vec3, alongTangent: number, square: number): Vec3 => {
    const tangent = alongTangent * (c * v[1] - s * v[0]);
    const radial = square * (c * v[0] + s * v[1]);
    return [c * radial - s * tangent, s * radial + c * tangent, square * v[2]];
  };
  return [turn(force, f.axial, f.shear), turn(moment, f.torsion, f.bending)];
}

/** Movement of the end: strain plus curvature × lever, and the curvature itself. */
function addColumn(
  matrix: Float64Array,
  width: number,
  column: number,
  weight: number,
  [strain, curvature]: readonly [Vec3, Vec3],
  lever: Vec3,
): void {
  const swing = cross(curvature, lever);
  for (let i = 0; i < 3; i++) {
    matrix[i * width + column]! += weight * (strain[i]! + swing[i]!);
    matrix[(i + 3) * width + column]! += weight * curvature[i]!;
  }
}
