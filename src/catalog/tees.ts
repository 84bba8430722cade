import type { Catalogued } from './catalogued.js';
import { type CataloguedPipe, findPipe } from './find-pipe.js';
import { nominalSize } from './nominal-size.js';
import { INCH, POUND } from './printed-units.js';

/** A butt-weld tee as the user names it. */
export interface TeeQuery {
  /** Size of the run. */
  readonly nps: string;
  /** Size of the outlet; the run's size when left out. */
  readonly branchNps?: string;
  readonly schedule: string;
  readonly material: string;
}

/** A tee of the tables. */
export interface CataloguedTee {
  /** [m] */
  readonly centreToRunEnd: Catalogued;
  /** [m] */
  readonly centreToBranchEnd: Catalogued;
  /** [kg] */
  readonly mass: Catalogued;
}

/** Size, centre to end [in], the larger of the listed STD and XS weights [lb] (lists differ by up to 19 %). */
const straightTees: readonly (readonly [
  nps: string,
  centreToEnd: number,
  standard?: number,
  extraStrong?: number,
])[] = [
  ['1', 1.5],
  ['1-1/4', 1.88],
  ['1-1/2', 2.25],
  ['2', 2.5, 3.5, 4],
  ['2-1/2', 3, 6, 7],
  ['3', 3.38, 7.4, 9.5],
  ['3-1/2', 3.75],
  ['4', 4.12, 12, 15.8],
  ['5', 4.88, 21, 26],
  ['6', 5.62, 34, 42],
  ['8', 7, 55, 75],
  ['10', 8.5, 85, 105],
  ['12', 10, 120, 160],
  ['14', 11, 165, 240],
  ['16', 12, 202, 280],
  ['18', 13.5, 258, 332],
  ['20', 15, 342, 480],
  ['24', 17, 528, 610],
];

/** Run size, then outlet sizes with centre to outlet end [in]; from memory of the standard. */
const reducingOutlets: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  '2': { '1': 2, '1-1/4': 2.25, '1-1/2': 2.38 },
  '2-1/2': { '1': 2.25, '1-1/4': 2.5, '1-1/2': 2.62, '2': 2.75 },
  '3': { '1-1/4': 2.75, '1-1/2': 2.88, '2': 3, '2-1/2': 3.25 },
  '4': { '1-1/2': 3.38, '2': 3.5, '2-1/2': 3.75, '3': 3.88, '3-1/2': 4 },
  '5': { '2': 4.12, '2-1/2': 4.25, '3': 4.38, '3-1/2': 4.5, '4': 4.62 },
  '6': { '2-1/2': 4.75, '3': 4.88, '3-1/2': 5, '4': 5.12, '5': 5.38 },
  '8': { '3-1/2': 6, '4': 6.12, '5': 6.38, '6': 6.62 },
  '10': { '4': 7.25, '5': 7.5, '6': 7.62, '8': 8 },
  '12': { '5': 8.5, '6': 8.62, '8': 9, '10': 9.5 },
  '14': { '6': 9.38, '8': 9.75, '10': 10.12, '12': 10.62 },
  '16': { '6': 10.38, '8': 10.75, '10': 11.12, '12': 11.62, '14': 12 },
  '18': { '8': 11.75, '10': 12.12, '12': 12.62, '14': 13, '16': 13 },
  '20': { '8': 12.75, '10': 13.12, '12': 13.62, '14': 14, '16': 14, '18': 14.5 },
  '24': { '10': 15.12, '12': 15.62, '14': 16, '16': 16, '18': 16.5, '20': 17 },
};

/** Tees are thicker than their pipe: body of sizes without a listed weight, taken at the excess of the middle sizes. */
const UNLISTED_EXCESS = 1.4;

/**
 * Lengths and mass of a butt-weld tee, straight or with a reducing outlet.
 *
 *     straight, STD or XS: the larger listed weight
 *     other walls: listed STD mass × pipe mass per length / STD pipe mass per length
 *     reducing: straight mass × (2 C w + (M - D/2) w_outlet) / ((3 C - D/2) w)
 *
 * C centre to run end, M centre to outlet end, D outside diameter of the run, w pipe mass per length. Copper is the
 * same geometry of tube without excess. Tee weights are the weakest of the fittings.
 *
 * @param query - labels [-]
 * @returns lengths [m] and mass [kg], or undefined where a size is unknown or no such tee is listed
 * @source asme-b16.9, page-estimator, fitting-weight-lists
 */
export function findTee(query: TeeQuery): CataloguedTee | undefined {
  const run = findPipe(query);
  const outlet = findPipe({ ...query, nps: query.branchNps ?? query.nps });
  const listed = straightTees.find(([nps]) => nps === run?.nps);
  if (run === undefined || outlet === undefined || listed === undefined) return undefined;
  const straight = outlet.nps === run.nps;
  const toOutlet = straight ? listed[1] : reducingOutlets[run.nps]?.[outlet.nps];
  if (toOutlet === undefined) return undefined;
  const remembered = listed[2] === undefined;
  const entry = {
    table: query.material === 'copper' ? 'copper tees' : 'butt-weld tees',
    row: `NPS ${run.nps} × ${outlet.nps} ${run.schedule}`,
  };
  const length = (inches: number, known: boolean): Catalogued => ({
    ...entry,
    value: inches * INCH,
    citation:
      query.material === 'copper'
        ? { source: 'asme-b16.22', clause: 'taken as for butt-weld tees', confidence: 'common practice' }
        : { source: 'asme-b16.9', clause: 'tees, centre to end', confidence: known ? 'read' : 'memory' },
  });
  const C = listed[1] * INCH;
  const D = run.outsideDiameter;
  const body = 2 * C * run.massPerLength + (toOutlet * INCH - D / 2) * outlet.massPerLength;
  const whole = (3 * C - D / 2) * run.massPerLength;
  return {
    centreToRunEnd: length(listed[1], !remembered),
    centreToBranchEnd: length(toOutlet, !remembered && straight),
    mass: { ...entry, ...teeMass(query, run, { whole, ratio: body / whole, straight }) },
  };
}

function teeMass(
  query: TeeQuery,
  run: CataloguedPipe,
  body: { readonly whole: number; readonly ratio: number; readonly straight: boolean },
): Pick<Catalogued, 'value' | 'citation' | 'how'> {
  const row = straightTees.find(([nps]) => nps === run.nps);
  const standard = findPipe({ ...query, material: 'carbon steel', schedule: 'STD' });
  const extraStrong = findPipe({ ...query, material: 'carbon steel', schedule: 'XS' });
  const computed = {
    source: 'fitting-weight-lists',
    clause: 'tees, from the pipe wall',
    confidence: 'computed',
  } as const;
  if (query.material === 'copper')
    return { value: body.whole * body.ratio, citation: computed, how: 'tube lengths of the body' };
  const steel = query.material === 'carbon steel';
  const asListed =
    steel && run.wall === standard?.wall
      ? row?.[2]
      : steel && run.wall === extraStrong?.wall
        ? row?.[3]
        : undefined;
  if (asListed !== undefined && body.straight) {
    return {
      value: asListed * POUND,
      citation: { source: 'fitting-weight-lists', clause: 'tees, larger of the lists', confidence: 'read' },
    };
  }
  if (asListed !== undefined) {
    const how = 'listed straight tee × ratio of the bodies';
    return { value: asListed * POUND * body.ratio, citation: computed, how };
  }
  const scaled =
    row?.[2] === undefined || standard === undefined
      ? undefined
      : row[2] * (run.massPerLength / standard.massPerLength);
  if (scaled !== undefined) {
    const how = 'listed STD tee × ratio of pipe masses × ratio of the bodies';
    return { value: scaled * POUND * body.ratio, citation: computed, how };
  }
  const how = `pipe lengths of the body × ${UNLISTED_EXCESS}`;
  return { value: body.whole * body.ratio * UNLISTED_EXCESS, citation: computed, how };
}

/**
 * Run sizes of tees.
 *
 * @returns size labels from the smallest up [-]
 * @source asme-b16.9
 */
export function teeSizes(): readonly string[] {
  return straightTees.map(([nps]) => nps);
}

/**
 * Outlet sizes made for a run size, the straight tee included.
 *
 * @param nps - run size label [-]
 * @returns size labels from the smallest up; empty where the run size is unknown [-]
 * @source asme-b16.9
 */
export function teeBranches(nps: string): readonly string[] {
  const label = nominalSize(nps);
  if (label === undefined || !straightTees.some(([size]) => size === label)) return [];
  const outlets = reducingOutlets[label] ?? {};
  return [...teeSizes().filter((size) => outlets[size] !== undefined), label];
}
