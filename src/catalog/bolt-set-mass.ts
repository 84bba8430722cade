import type { Catalogued } from './catalogued.js';
import { findFlange } from './find-flange.js';
import { densityOf } from './metal-densities.js';
import { labelInches } from './nominal-size.js';
import { INCH } from './printed-units.js';

/** Studs and nuts of one joint. */
export interface BoltSet {
  /** Number of studs; two nuts each. */
  readonly studs: number;
  /** Size label. */
  readonly bolt: string;
  /** [m] */
  readonly studLength: number;
  /** Studs and nuts of the whole joint [kg]. */
  readonly mass: Catalogued;
}

/** Gasket thickness taken between the faces [in]. */
const GASKET = 0.125;

/** Coarse threads per inch up to 1 in; larger flange studs have 8. */
const coarseThreads: Readonly<Record<string, number>> = { '5/8': 11, '3/4': 10, '7/8': 9, '1': 8 };

/**
 * Estimated mass of the studs and nuts that close one joint of two equal flanges.
 *
 *     stud length  L = 2 t + g + 2 (d + 1.5 / n)      nut height d, one and a half threads clear
 *     stud         π/4 (d - 0.6495 / n)² L            at the pitch diameter
 *     nut          (0.866 F² - π/4 d²) d              heavy hexagon, F = 1.5 d + 1/8 in across flats
 *     mass = number × (stud + 2 nuts) × 0.2833 lb/in³
 *
 * t is the flange thickness with raised face, g a gasket of 1/8 in, n threads per inch.
 *
 * @param query - standard, class and nominal size [-]
 * @returns stud length [m] and mass [kg], or undefined where the flange is unknown
 * @source asme-b1.1, asme-b18.2.2
 */
export function boltSetMass(query: {
  readonly standard: string;
  readonly class: string;
  readonly nps: string;
}): BoltSet | undefined {
  const flange = findFlange({ ...query, type: 'integral' });
  const density = densityOf('carbon steel');
  const d = labelInches(flange?.joint.bolt ?? '');
  if (flange === undefined || density === undefined || d === undefined) return undefined;
  const { bolt, bolts, nps } = flange.joint;
  const n = coarseThreads[bolt] ?? 8;
  const L = (2 * flange.thickness) / INCH + GASKET + 2 * (d + 1.5 / n);
  const F = 1.5 * d + 0.125;
  const stud = (Math.PI / 4) * (d - 0.6495 / n) ** 2 * L;
  const nut = ((Math.sqrt(3) / 2) * F ** 2 - (Math.PI / 4) * d ** 2) * d;
  return {
    studs: bolts,
    bolt,
    studLength: L * INCH,
    mass: {
      value: bolts * (stud + 2 * nut) * INCH ** 3 * density,
      table: 'studs and nuts of a flanged joint',
      row: `${bolts} × ${bolt} in, ${flange.standard} class ${flange.class} NPS ${nps}`,
      citation: {
        source: 'asme-b18.2.2',
        clause: 'from bolt size and flange thickness',
        confidence: 'computed',
      },
      how: 'studs at pitch diameter over both flanges, gasket and nuts; heavy hexagon nuts',
    },
  };
}
