import type { Citation } from '../sources/index.js';
import type { Catalogued } from './catalogued.js';
import { ironFlanges, type PrintedIronFlange, type PrintedSteelFlange, steelFlanges } from './flanges.js';
import { densityOf } from './metal-densities.js';
import { labelInches, nominalSize } from './nominal-size.js';
import { INCH, POUND } from './printed-units.js';

/** Flange of a standard, as the user names it. */
export interface FlangeQuery {
  /** `B16.5` or `B16.1`. */
  readonly standard: string;
  /** `150` or `300`; `125` or `250`. */
  readonly class: string;
  readonly nps: string;
  /** `weld-neck`, `slip-on`, `blind`; `integral` and `grooved adapter` give drilling and no mass. */
  readonly type: string;
}

/** What the joint checks need of a flange. */
export interface CataloguedJoint {
  readonly nps: string;
  /** [m] */
  readonly outsideDiameter: number;
  /** [m] */
  readonly boltCircle: number;
  readonly bolts: number;
  /** Bolt size label such as `3/4`. */
  readonly bolt: string;
  /** [m]; absent where the standard makes the face flat. */
  readonly raisedFaceDiameter?: number;
}

/** A flange of the tables. */
export interface CataloguedFlange {
  readonly standard: 'B16.5' | 'B16.1';
  readonly class: string;
  /** Face as the standard makes it. */
  readonly face: 'raised' | 'flat';
  readonly joint: CataloguedJoint;
  /** Thickness with the raised face [m]. */
  readonly thickness: number;
  /** Gasket face to weld [m]; 0 for a slip-on, whose pipe runs to the face. Absent for `integral` and adapters. */
  readonly length?: Catalogued;
  /** [kg]; absent where the flange is part of a casing, or where no list was found. */
  readonly mass?: Catalogued;
  /** Of the drilling and the diameters. */
  readonly citation: Citation;
}

/** Height of the raised face of class 150 to 300 [in]. */
const RAISED_FACE = 0.06;
/** Bolt holes are this much wider than the bolt [in]. */
const HOLE_ALLOWANCE = 0.125;
/** Listed slip-on weights exceed the bare geometry by a tenth in the middle (fillets, tolerances). */
const SLIP_ON_ALLOWANCE = 1.1;

const fiveTable = 'flanges to ASME B16.5';
const oneTable = 'flanges to ASME B16.1';

/**
 * Drilling, thickness, length and mass of a flange of the tables.
 *
 * Weld-neck mass is listed. A blind is its disc less the bolt holes. A slip-on is disc, face and hub less bore and
 * holes, times 1.1. Iron flanges are listed nowhere with a weight; a blind is computed in the same way.
 *
 * @param query - standard, class, size and type as labels [-]
 * @returns dimensions [m] and mass [kg], or undefined where a label is unknown
 * @source asme-b16.5, asme-b16.1, flange-weight-list
 */
export function findFlange(query: FlangeQuery): CataloguedFlange | undefined {
  const nps = nominalSize(query.nps);
  if (query.standard === 'B16.5' && (query.class === '150' || query.class === '300')) {
    const row = steelFlanges[query.class].find(([size]) => size === nps);
    return row === undefined ? undefined : steelFlange(query.class, row, query.type);
  }
  if (query.standard === 'B16.1' && (query.class === '125' || query.class === '250')) {
    const row = ironFlanges[query.class].find(([size]) => size === nps);
    return row === undefined ? undefined : ironFlange(query.class, row, query.type);
  }
  return undefined;
}

function steelFlange(name: string, row: PrintedSteelFlange, type: string): CataloguedFlange | undefined {
  const [nps, outside, thickness, boltCircle, bolts, bolt, face, pounds, neckLength, hub, hubLength, bore] =
    row;
  const label = `class ${name} NPS ${nps}`;
  const base = {
    standard: 'B16.5' as const,
    class: name,
    face: 'raised' as const,
    joint: jointOf(nps, outside, boltCircle, bolts, bolt, face),
    thickness: (thickness + RAISED_FACE) * INCH,
    citation: { source: 'asme-b16.5', clause: 'dimensions tables', confidence: 'two sources' },
  } as const;
  const entry = (value: number, citation: Citation, how?: string): Catalogued => ({
    value,
    table: fiveTable,
    row: `${label} ${type}`,
    citation,
    ...(how === undefined ? {} : { how }),
  });
  const computed: Citation = { source: 'asme-b16.5', clause: 'from the dimensions', confidence: 'computed' };
  const holes = bolts * holeInches(bolt) ** 2 * thickness;
  const density = densityOf('carbon steel') ?? Number.NaN;
  const discMass = (squares: number) => (Math.PI / 4) * squares * INCH ** 3 * density;
  switch (type) {
    case 'weld-neck':
      return {
        ...base,
        length: entry(neckLength * INCH, {
          source: 'asme-b16.5',
          clause: 'length through hub',
          confidence: 'memory',
        }),
        mass: entry(pounds * POUND, {
          source: 'flange-weight-list',
          clause: 'weld-neck',
          confidence: 'read',
        }),
      };
    case 'slip-on': {
      const body = (outside ** 2 - bore ** 2) * thickness + (face ** 2 - bore ** 2) * RAISED_FACE - holes;
      const neck = (hub ** 2 - bore ** 2) * (hubLength - thickness - RAISED_FACE);
      return {
        ...base,
        length: entry(0, {
          source: 'common-practice',
          clause: 'pipe runs to the face',
          confidence: 'common practice',
        }),
        mass: entry(
          SLIP_ON_ALLOWANCE * discMass(body + neck),
          computed,
          'disc, face and hub less bore and holes, times 1.1',
        ),
      };
    }
    case 'blind':
      return {
        ...base,
        length: entry(base.thickness, base.citation),
        mass: entry(
          discMass(outside ** 2 * thickness + face ** 2 * RAISED_FACE - holes),
          computed,
          'disc and face less bolt holes',
        ),
      };
    case 'integral':
    case 'grooved adapter':
      return base;
    default:
      return undefined;
  }
}

function ironFlange(name: string, row: PrintedIronFlange, type: string): CataloguedFlange | undefined {
  const [nps, outside, thickness, boltCircle, bolts, bolt, face] = row;
  const base = {
    standard: 'B16.1' as const,
    class: name,
    face: face === undefined ? ('flat' as const) : ('raised' as const),
    joint: jointOf(nps, outside, boltCircle, bolts, bolt, face),
    thickness: thickness * INCH,
    citation: { source: 'asme-b16.1', clause: 'dimensions tables', confidence: 'read' },
  } as const;
  if (type === 'integral' || type === 'grooved adapter') return base;
  if (type !== 'blind') return undefined;
  const squares = outside ** 2 - bolts * holeInches(bolt) ** 2;
  const density = densityOf('cast iron') ?? Number.NaN;
  const entry = { table: oneTable, row: `class ${name} NPS ${nps} blind` };
  return {
    ...base,
    length: { ...entry, value: base.thickness, citation: base.citation },
    mass: {
      ...entry,
      value: (Math.PI / 4) * squares * thickness * INCH ** 3 * density,
      citation: { source: 'asme-b16.1', clause: 'from the dimensions', confidence: 'computed' },
      how: 'disc less bolt holes, grey iron',
    },
  };
}

function jointOf(
  nps: string,
  outside: number,
  boltCircle: number,
  bolts: number,
  bolt: string,
  face: number | undefined,
): CataloguedJoint {
  return {
    nps,
    outsideDiameter: outside * INCH,
    boltCircle: boltCircle * INCH,
    bolts,
    bolt,
    ...(face === undefined ? {} : { raisedFaceDiameter: face * INCH }),
  };
}

function holeInches(bolt: string): number {
  return (labelInches(bolt) ?? Number.NaN) + HOLE_ALLOWANCE;
}

/**
 * Classes of a flange standard in the tables.
 *
 * @param standard - `B16.5` or `B16.1` [-]
 * @returns class labels; empty where the standard is unknown [-]
 * @source asme-b16.5, asme-b16.1
 */
export function flangeClasses(standard: string): readonly string[] {
  if (standard === 'B16.5') return Object.keys(steelFlanges);
  return standard === 'B16.1' ? Object.keys(ironFlanges) : [];
}

/**
 * Types of flange `findFlange` answers for.
 *
 * @param standard - `B16.5` or `B16.1` [-]
 * @returns type labels; empty where the standard is unknown [-]
 * @source asme-b16.5, asme-b16.1
 */
export function flangeTypes(standard: string): readonly string[] {
  if (standard === 'B16.5') return ['weld-neck', 'slip-on', 'blind', 'integral', 'grooved adapter'];
  return standard === 'B16.1' ? ['blind', 'integral', 'grooved adapter'] : [];
}

/**
 * Nominal sizes of one class.
 *
 * @param query - standard and class [-]
 * @returns size labels from the smallest up; empty where the class is unknown [-]
 * @source asme-b16.5, asme-b16.1
 */
export function flangeSizes(query: { readonly standard: string; readonly class: string }): readonly string[] {
  const { standard, class: name } = query;
  if (standard === 'B16.5' && (name === '150' || name === '300'))
    return steelFlanges[name].map(([nps]) => nps);
  if (standard === 'B16.1' && (name === '125' || name === '250'))
    return ironFlanges[name].map(([nps]) => nps);
  return [];
}
