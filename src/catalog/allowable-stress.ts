import type { Citation } from '../sources/index.js';
import { betweenRows, type Catalogued, type Pairs } from './catalogued.js';
import { fahrenheit, PSI } from './printed-units.js';

/** Which allowable stress is asked for. */
export interface AllowableQuery {
  readonly code: 'B31.9' | 'B31.1';
  /** `carbon steel`, `stainless steel` or `copper`. */
  readonly material: string;
  /** Of the metal [K]. */
  readonly temperature: number;
}

/**
 * Temperature [°F] and basic allowable stress [psi], without the factor of a longitudinal weld: weight and
 * expansion stresses run along the pipe, across no such weld. Where no value was sourced there is no row and the
 * user gives the stress: B31.9 stainless, B31.1 copper.
 */
// biome-ignore format: one row of the table on one line
const printed: Readonly<
  Record<string, { readonly rows: Pairs; readonly grade: string; readonly citation: Citation }>
> = {
  'B31.9 carbon steel': {
    grade: 'A53 grade B seamless or A106 grade B',
    rows: [[-20, 15000], [650, 15000]],
    citation: {
      source: 'ashrae-systems',
      clause: 'table after B31.9 (2004 and before), grade B seamless',
      confidence: 'read',
    },
  },
  'B31.9 copper': {
    grade: 'B88 hard drawn',
    rows: [[-20, 9000], [250, 9000]],
    citation: {
      source: 'ashrae-systems',
      clause: 'table after B31.9, hard drawn; brazed joints soften the tube',
      confidence: 'read',
    },
  },
  'B31.1 carbon steel': {
    grade: 'A53 grade B seamless or A106 grade B',
    rows: [[-20, 17100], [650, 17100]],
    citation: {
      source: 'asme-b31.1',
      clause: 'appendix A, 2007 edition and later; 15,000 psi before 1999',
      confidence: 'memory',
    },
  },
  'B31.1 stainless steel': {
    grade: 'TP304, lower line',
    rows: [[-20, 20000], [100, 20000], [200, 16700], [300, 15000], [400, 13800]],
    citation: {
      source: 'asme-b31.1',
      clause: 'appendix A, TP304, lower of the two lines',
      confidence: 'memory',
    },
  },
};

/**
 * Basic allowable stress of a piping code at a temperature, by straight line between rows.
 *
 * @param query - code, material and temperature [K]
 * @returns stress [Pa], or undefined where no value was sourced or the temperature is outside the table
 * @source ashrae-systems, asme-b31.1
 */
export function allowableStress(query: AllowableQuery): Catalogued | undefined {
  const found = printed[`${query.code} ${query.material}`];
  if (found === undefined) return undefined;
  const psi = betweenRows(
    found.rows.map(([degrees, stress]) => [fahrenheit(degrees), stress] as const),
    query.temperature,
  );
  if (psi === undefined) return undefined;
  return {
    value: psi * PSI,
    table: `allowable stress, ${query.code}`,
    row: found.grade,
    citation: found.citation,
  };
}

/**
 * Materials with an allowable stress in the tables.
 *
 * @param code - piping code [-]
 * @returns material names [-]
 * @source ashrae-systems, asme-b31.1
 */
export function allowableStressMaterials(code: AllowableQuery['code']): readonly string[] {
  return Object.keys(printed).flatMap((key) =>
    key.startsWith(`${code} `) ? [key.slice(code.length + 1)] : [],
  );
}
