/** What tries to open a bolted flange joint beside the pressure in it. */
export interface FlangeOpening {
  /** Bending moment at the gasket [N·m]. */
  readonly bendingMoment: number;
  /** Pull along the pipe, not negative [N]. */
  readonly tension: number;
  /** Diameter of the gasket reaction [m]. */
  readonly gasketDiameter: number;
}

/**
 * Pressure that would load the bolts of a flange joint as much as a bending moment and a pull do.
 *
 *     Pe = 16 M / (π G³) + 4 F / (π G²)
 *
 * @param opening - moment [N·m], pull [N], diameter of the gasket reaction [m]
 * @returns equivalent pressure [Pa]
 * @source asme-bpvc-iii NC-3658, two sources
 */
export function equivalentPressure(opening: FlangeOpening): number {
  const { bendingMoment: M, tension: F, gasketDiameter: G } = opening;
  return (16 * M) / (Math.PI * G ** 3) + (4 * F) / (Math.PI * G ** 2);
}
