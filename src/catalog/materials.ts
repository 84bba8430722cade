import type { Citation } from '../sources/index.js';
import { betweenRows, type Catalogued, type Pairs } from './catalogued.js';
import { densityOf } from './metal-densities.js';
import { fahrenheit, PSI } from './printed-units.js';

/** Elastic and thermal data of a metal of the catalogue. */
export interface CataloguedMaterial {
  /** `carbon steel`, `stainless steel`, `copper`, `cast iron` or `ductile iron`. */
  readonly id: string;
  /** Name with the grades meant. */
  readonly name: string;
  /** Young's modulus at 70 °F [Pa]. */
  readonly modulus: Catalogued;
  /** Poisson's ratio [-]. */
  readonly poisson: number;
  /** [kg/m³] */
  readonly density: number;
  readonly densityCitation: Citation;
  /** Thermal strain from 70 °F: temperature [K] and strain [-], rising in temperature. */
  readonly expansion: Pairs;
  readonly expansionCitation: Citation;
  /** Least yield strength at ambient temperature [Pa]. */
  readonly yieldStrength?: Catalogued;
}

interface PrintedMaterial {
  readonly id: string;
  readonly name: string;
  /** Temperature [°F] and modulus [10⁶ psi]. */
  readonly modulus: Pairs;
  readonly modulusCitation: Citation;
  readonly poisson: number;
  /** Temperature [°F] and mean coefficient from 70 °F [10⁻⁶/°F]. */
  readonly coefficients: Pairs;
  readonly expansionCitation: Citation;
  readonly yield?: { readonly psi: number; readonly citation: Citation };
}

const cold = 'below 70 °F the 70 °F coefficient is kept';
const casting = (clause: string): Citation => ({
  source: 'iron-castings-handbook',
  clause,
  confidence: 'memory',
});

/**
 * One basis for expansion: mean coefficients of Section II Part D, table TE-1. The older B31.1 appendix and B31.9
 * give 2 to 5 % less for carbon steel; the edition is named wherever the value is printed.
 */
// biome-ignore format: one row of the table on one line
const printed: readonly PrintedMaterial[] = [
  {
    id: 'carbon steel',
    name: 'carbon steel, ASTM A53 grade B or A106 grade B',
    modulus: [[70, 29.5], [200, 28.8], [300, 28.3], [400, 27.7], [500, 27.3]],
    modulusCitation: {
      source: 'asme-b31.1',
      clause: 'modulus table, 1995 edition, carbon steel to 0.3 % carbon',
      confidence: 'two sources',
    },
    poisson: 0.3,
    coefficients: [[-20, 6.4], [70, 6.4], [100, 6.5], [150, 6.6], [200, 6.7], [250, 6.8], [300, 6.9], [350, 7], [400, 7.1]],
    expansionCitation: {
      source: 'asme-bpvc-ii-d',
      clause: `table TE-1 group 1, 2001 and 2010; ${cold}`,
      confidence: 'two sources',
    },
    yield: {
      psi: 35000,
      citation: { source: 'asme-bpvc-ii-d', clause: 'specification minimum, grade B', confidence: 'read' },
    },
  },
  {
    id: 'stainless steel',
    name: 'austenitic stainless steel, 304 or 316',
    modulus: [[70, 28.3], [200, 27.6], [300, 27], [400, 26.5], [500, 25.8]],
    modulusCitation: {
      source: 'asme-b31.1',
      clause: 'modulus table, 1995 edition, austenitic steel',
      confidence: 'two sources',
    },
    poisson: 0.3,
    coefficients: [[-20, 8.5], [70, 8.5], [100, 8.6], [150, 8.8], [200, 8.9], [250, 9.1], [300, 9.2], [350, 9.4], [400, 9.5]],
    expansionCitation: {
      source: 'asme-bpvc-ii-d',
      clause: `table TE-1 group 3; ${cold}`,
      confidence: 'memory',
    },
    yield: {
      psi: 30000,
      citation: {
        source: 'asme-bpvc-ii-d',
        clause: 'specification minimum, 304 and 316',
        confidence: 'memory',
      },
    },
  },
  {
    id: 'copper',
    name: 'copper C12200, ASTM B88 tube',
    modulus: [[70, 17], [200, 16.7], [300, 16.5], [400, 16.2]],
    modulusCitation: {
      source: 'asme-b31.9',
      clause: 'table 919.3.1 at ambient; fall with temperature from memory',
      confidence: 'read',
    },
    poisson: 0.33,
    coefficients: [[-20, 9.5], [400, 9.5]],
    expansionCitation: {
      source: 'asme-b31.9',
      clause: 'table 919.3.1, single value 9.5 × 10⁻⁶ per °F',
      confidence: 'read',
    },
    yield: {
      psi: 30000,
      citation: {
        source: 'ashrae-systems',
        clause: 'hard drawn tube; brazing softens it',
        confidence: 'read',
      },
    },
  },
  {
    id: 'cast iron',
    name: 'grey cast iron, ASTM A126 class B',
    modulus: [[70, 14.5]],
    modulusCitation: casting('grey iron of middle strength; 12 to 18 × 10⁶ psi by grade'),
    poisson: 0.26,
    coefficients: [[-20, 6], [400, 6]],
    expansionCitation: casting('grey iron, 6.0 × 10⁻⁶ per °F'),
  },
  {
    id: 'ductile iron',
    name: 'ductile iron, ASTM A395 or A536',
    modulus: [[70, 24]],
    modulusCitation: casting('ductile iron, 23 to 25 × 10⁶ psi'),
    poisson: 0.28,
    coefficients: [[-20, 6.2], [400, 6.2]],
    expansionCitation: casting('ductile iron, 6.2 × 10⁻⁶ per °F'),
  },
];

/** Temperature from which expansion is counted [°F]. */
const BASE = 70;

/** Rows of the strain table are laid at these temperatures beside the printed ones [°F]. */
const coldRows = [-20, 0, 32];

/**
 * Modulus, density and thermal strain of a metal.
 *
 *     strain(T) = mean coefficient(T) × (T - 70 °F)
 *
 * @param id - name of the material [-]
 * @returns modulus [Pa], density [kg/m³], strain [-] by temperature [K], or undefined where the material is unknown
 * @source asme-bpvc-ii-d, asme-b31.1, asme-b31.9, iron-castings-handbook, metals-handbook
 */
export function findMaterial(id: string): CataloguedMaterial | undefined {
  const found = printed.find((material) => material.id === id);
  const density = densityOf(id);
  const ambient = found?.modulus[0];
  if (found === undefined || density === undefined || ambient === undefined) return undefined;
  const entry = { table: 'materials', row: found.name };
  return {
    id,
    name: found.name,
    modulus: { ...entry, value: ambient[1] * 1e6 * PSI, citation: found.modulusCitation },
    poisson: found.poisson,
    density,
    densityCitation: {
      source: 'metals-handbook',
      clause: 'density',
      confidence: id.endsWith('iron') ? 'memory' : 'read',
    },
    expansion: strainPairs(found.coefficients),
    expansionCitation: found.expansionCitation,
    ...(found.yield === undefined
      ? {}
      : { yieldStrength: { ...entry, value: found.yield.psi * PSI, citation: found.yield.citation } }),
  };
}

function strainPairs(coefficients: Pairs): Pairs {
  const rows = new Set([...coldRows, BASE, ...coefficients.map(([degrees]) => degrees)]);
  return [...rows]
    .sort((a, b) => a - b)
    .flatMap((degrees) => {
      const coefficient = betweenRows(coefficients, degrees);
      return coefficient === undefined
        ? []
        : [[fahrenheit(degrees), coefficient * 1e-6 * (degrees - BASE)] as const];
    });
}

/**
 * Young's modulus at a temperature; down to -20 °F the value at 70 °F is kept.
 *
 * @param id - name of the material [-]
 * @param temperature - of the metal [K]
 * @returns modulus [Pa], or undefined where material or temperature is outside the table
 * @source asme-b31.1, asme-b31.9
 */
export function modulusAt(id: string, temperature: number): number | undefined {
  const found = printed.find((material) => material.id === id);
  const ambient = found?.modulus[0];
  if (found === undefined || ambient === undefined) return undefined;
  const rows: Pairs = [[-20, ambient[1]], ...found.modulus];
  const millionPsi = betweenRows(
    rows.map(([degrees, value]) => [fahrenheit(degrees), value] as const),
    temperature,
  );
  return millionPsi === undefined ? undefined : millionPsi * 1e6 * PSI;
}

/**
 * Thermal strain from 70 °F at a temperature.
 *
 * @param id - name of the material [-]
 * @param temperature - of the metal [K]
 * @returns strain [-], or undefined where material or temperature is outside the table
 * @source asme-bpvc-ii-d
 */
export function thermalStrain(id: string, temperature: number): number | undefined {
  return betweenRows(findMaterial(id)?.expansion ?? [], temperature);
}

/**
 * Materials of the catalogue.
 *
 * @returns names as `findMaterial` accepts them [-]
 * @source metals-handbook
 */
export function materialNames(): readonly string[] {
  return printed.map(({ id }) => id);
}
