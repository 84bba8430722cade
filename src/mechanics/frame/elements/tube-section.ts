import type { FrameBend, FrameMaterial, FramePipe, Tube } from '../../../model/frame/frame.js';

/** How easily one length of member gives way: strain or turn per metre for a force or moment of one. */
export interface Compliance {
  /** 1/(E A) [1/N]. */
  readonly axial: number;
  /** 1/(G A/2), or 0 without shear [1/N]. */
  readonly shear: number;
  /** 1/(G J) [1/(N·m²)]. */
  readonly torsion: number;
  /** k/(E I) [1/(N·m²)]. */
  readonly bending: number;
}

/** Geometry of a circular tube. */
export interface TubeSection {
  /** Metal area [m²]. */
  readonly area: number;
  /** Second moment of area [m⁴]. */
  readonly inertia: number;
  /** Area of the bore [m²]. */
  readonly bore: number;
}

/**
 * Area, second moment and bore of a circular tube of any thickness.
 *
 *     A = π (D² − d²)/4,   I = π (D⁴ − d⁴)/64,   J = 2 I
 *
 * @param tube - outside diameter and wall [m]
 * @returns metal area [m²], second moment [m⁴], bore [m²]
 * @source beam-theory
 */
export function tubeSection(tube: Tube): TubeSection {
  const outside = tube.outsideDiameter;
  // A wall of half the diameter is a solid bar.
  const inside = Math.max(0, outside - 2 * tube.wall);
  return {
    area: (Math.PI / 4) * (outside ** 2 - inside ** 2),
    inertia: (Math.PI / 64) * (outside ** 4 - inside ** 4),
    bore: (Math.PI / 4) * inside ** 2,
  };
}

/**
 * Compliance of a member per length: shear area half the metal area (thin tube), torsion by J = 2 I, bending of a
 * bend multiplied by its flexibility factor k in both planes.
 *
 * @param member - pipe or bend [m]
 * @param material - modulus [Pa] and Poisson's ratio [-]
 * @param withoutShear - true leaves shear deformation out [-]
 * @returns axial, shear, torsion and bending of one length
 * @source beam-theory
 */
export function memberCompliance(
  member: FramePipe | FrameBend,
  material: FrameMaterial,
  withoutShear: boolean,
): Compliance {
  const { area, inertia } = tubeSection(member.tube);
  const E = material.modulus;
  const G = E / (2 * (1 + material.poisson));
  return {
    axial: 1 / (E * area),
    shear: withoutShear ? 0 : 2 / (G * area),
    torsion: 1 / (G * 2 * inertia),
    bending: (member.kind === 'bend' ? member.flexibility : 1) / (E * inertia),
  };
}
