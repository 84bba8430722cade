/** Round tube [m]. */
export interface Tube {
  readonly outsideDiameter: number;
  readonly wall: number;
}

/** What follows from the two diameters of a tube. */
export interface TubeProperties {
  /** Inside diameter [m]. */
  readonly bore: number;
  /** [m²] */
  readonly metalArea: number;
  /** Open area [m²]. */
  readonly boreArea: number;
  /** Second moment of area I [m⁴]. */
  readonly secondMoment: number;
  /** Section modulus Z [m³]. */
  readonly sectionModulus: number;
}

/**
 * Bore, areas, second moment and section modulus of a round tube.
 *
 *     d = D - 2 t     A = π (D - t) t     I = π (D⁴ - d⁴) / 64     Z = 2 I / D
 *
 * @param tube - outside diameter and wall [m]
 * @returns bore [m], areas [m²], second moment [m⁴], section modulus [m³]
 * @source beam-theory
 */
export function tubeProperties(tube: Tube): TubeProperties {
  const { outsideDiameter: D, wall: t } = tube;
  const d = D - 2 * t;
  const secondMoment = (Math.PI * (D ** 4 - d ** 4)) / 64;
  return {
    bore: d,
    metalArea: Math.PI * (D - t) * t,
    boreArea: (Math.PI * d ** 2) / 4,
    secondMoment,
    sectionModulus: (2 * secondMoment) / D,
  };
}

/**
 * Metal mass per length of a round tube.
 *
 *     m = π (D - t) t ρ
 *
 * @param tube - outside diameter and wall [m]
 * @param density - of the metal [kg/m³]
 * @returns mass per length [kg/m]
 * @source statics
 */
export function tubeMassPerLength(tube: Tube, density: number): number {
  return tubeProperties(tube).metalArea * density;
}
