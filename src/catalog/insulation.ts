import type { Catalogued } from './catalogued.js';

/** A kind of insulation with its density. */
export interface CataloguedInsulation {
  readonly kind: string;
  /** Typical density, the larger where sources disagree [kg/m³]. */
  readonly density: Catalogued;
  /** Lowest and highest density found [kg/m³]. */
  readonly range: readonly [number, number];
}

/** Kind, lowest, highest and typical density [kg/m³], how the typical value was found. */
const printed: readonly (readonly [
  kind: string,
  low: number,
  high: number,
  typical: number,
  clause: string,
  confidence: 'read' | 'two sources',
])[] = [
  ['calcium silicate', 190, 240, 240, 'calcium silicate, upper limit', 'two sources'],
  ['glass fibre', 48, 88, 64, 'preformed glass fibre sections', 'two sources'],
  ['mineral wool', 60, 160, 128, 'rock wool sections; lists disagree, the larger taken for load', 'read'],
  ['elastomeric foam', 60, 90, 80, 'expanded nitrile rubber', 'read'],
  ['cellular glass', 115, 138, 128, 'cellular glass', 'two sources'],
];

/**
 * Density of a kind of pipe insulation.
 *
 * @param kind - name as `insulationKinds` lists it [-]
 * @returns density [kg/m³] and its range, or undefined where the kind is unknown
 * @source insulation-handbook
 */
export function findInsulation(kind: string): CataloguedInsulation | undefined {
  const row = printed.find(([name]) => name === kind);
  if (row === undefined) return undefined;
  const [name, low, high, typical, clause, confidence] = row;
  return {
    kind: name,
    density: {
      value: typical,
      table: 'pipe insulation',
      row: name,
      citation: { source: 'insulation-handbook', clause, confidence },
    },
    range: [low, high],
  };
}

/**
 * Kinds of insulation in the table.
 *
 * @returns names [-]
 * @source insulation-handbook
 */
export function insulationKinds(): readonly string[] {
  return printed.map(([kind]) => kind);
}

/** Insulation round a pipe. */
export interface CoveringLayer {
  /** Of the bare pipe [m]. */
  readonly outsideDiameter: number;
  /** [m] */
  readonly thickness: number;
  /** [kg/m³] */
  readonly density: number;
  /** Jacket or cladding on the outside, in kilograms per square metre. */
  readonly jacketMassPerArea: number;
}

/**
 * Mass per length of insulation and jacket round a pipe.
 *
 *     m = π ρ t (D + t) + π (D + 2 t) × jacket mass per area
 *
 * @param layer - diameter and thickness [m], density [kg/m³], jacket in kilograms per square metre
 * @returns mass per length [kg/m]
 * @source statics
 */
export function coveringMass(layer: CoveringLayer): number {
  const { outsideDiameter: D, thickness: t, density, jacketMassPerArea } = layer;
  return Math.PI * (density * t * (D + t) + jacketMassPerArea * (D + 2 * t));
}
