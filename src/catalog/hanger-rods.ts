import type { Citation } from '../sources/index.js';
import type { Catalogued } from './catalogued.js';
import { labelInches } from './nominal-size.js';
import { INCH, POUND_FORCE } from './printed-units.js';

/** Size, threads per inch (coarse), root area [in²], load older and later [lb]. Older is the lower at every size. */
const rods: readonly (readonly [
  size: string,
  threads: number,
  rootArea: number,
  older: number,
  later?: number,
])[] = [
  ['1/4', 20, 0.027, 240, 300],
  ['5/16', 18, 0.046, 410],
  ['3/8', 16, 0.068, 610, 730],
  ['1/2', 13, 0.126, 1130, 1350],
  ['5/8', 11, 0.202, 1810, 2160],
  ['3/4', 10, 0.302, 2710, 3230],
  ['7/8', 9, 0.419, 3770, 4480],
  ['1', 8, 0.552, 4960, 5900],
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: a printed root area
  ['1-1/8', 7, 0.693, 6230],
  ['1-1/4', 7, 0.889, 8000, 9500],
  ['1-3/8', 6, 1.053, 9470],
  ['1-1/2', 6, 1.293, 11630, 13800],
  ['1-5/8', 5.5, 1.515, 13630],
  ['1-3/4', 5, 1.744, 15690, 18600],
  ['1-7/8', 5, 2.048, 18430],
  ['2', 4.5, 2.292, 20690, 24600],
  ['2-1/4', 4.5, 3.021, 27200, 32300],
  ['2-1/2', 4, 3.716, 33500, 39800],
  ['2-3/4', 4, 4.619, 41600, 49400],
  ['3', 4, 5.621, 50600, 60100],
];

/** Sizes of the later set that were read on a page; the others follow root area times 10,700 psi, from memory. */
const laterRead = new Set(['1/4', '3/8', '1/2', '5/8', '3/4']);

/** Which set of rod ratings. */
export type RodEdition = 'older' | 'later';

/** A threaded hanger rod of carbon steel. */
export interface CataloguedRod {
  readonly size: string;
  /** Nominal diameter [m]. */
  readonly diameter: number;
  /** Area at the root of the thread [m²]. */
  readonly rootArea: number;
  /** Travel of a nut per turn [m]. */
  readonly pitch: number;
  /** Of area and pitch. */
  readonly citation: Citation;
}

/**
 * Diameter, root area and thread of a hanger rod.
 *
 * @param size - label such as `5/8`, `1-1/4`, `5/8 in` [-]
 * @returns diameter and pitch [m], root area [m²], or undefined where the size is unknown
 * @source facility-piping-handbook, asme-b1.1
 */
export function findRod(size: string): CataloguedRod | undefined {
  const row = rodRow(size);
  if (row === undefined) return undefined;
  return {
    size: row[0],
    diameter: (labelInches(row[0]) ?? Number.NaN) * INCH,
    rootArea: row[2] * INCH ** 2,
    pitch: INCH / row[1],
    citation: {
      source: 'facility-piping-handbook',
      clause: 'table 2.10, root area; coarse thread',
      confidence: 'read',
    },
  };
}

/**
 * Rated load of one rod, carbon steel, up to 650 °F for the older set; the temperature limit of the later set was
 * not verified.
 *
 * @param query - size label and set [-]
 * @returns load [N], or undefined where the size is unknown or the set does not hold it
 * @source facility-piping-handbook, mss-sp-58
 */
export function rodRating(query: {
  readonly size: string;
  readonly edition: RodEdition;
}): Catalogued | undefined {
  const row = rodRow(query.size);
  const pounds = query.edition === 'older' ? row?.[3] : row?.[4];
  if (row === undefined || pounds === undefined) return undefined;
  const older = query.edition === 'older';
  return {
    value: pounds * POUND_FORCE,
    table: `hanger rods, ${query.edition} ratings`,
    row: `${row[0]} in`,
    citation: {
      source: 'mss-sp-58',
      clause: older ? '1993 and before, also B31.1 table 121.7.2(A); to 650 °F' : '2002 and later',
      confidence: older || laterRead.has(row[0]) ? 'read' : 'memory',
    },
  };
}

function rodRow(size: string): (typeof rods)[number] | undefined {
  const inches = labelInches(size);
  return inches === undefined ? undefined : rods.find(([label]) => labelInches(label) === inches);
}

/**
 * Rod sizes of a set.
 *
 * @param edition - set of ratings; all sizes when left out [-]
 * @returns size labels from the smallest up [-]
 * @source mss-sp-58
 */
export function rodSizes(edition?: RodEdition): readonly string[] {
  return rods.filter((row) => edition !== 'later' || row[4] !== undefined).map(([size]) => size);
}
