import type { Catalogued } from './catalogued.js';
import { findPipe } from './find-pipe.js';
import { nominalSize } from './nominal-size.js';
import { INCH, POUND } from './printed-units.js';

/** A butt-weld reducer as the user names it; concentric and eccentric share lengths and weights. */
export interface ReducerQuery {
  readonly large: string;
  readonly small: string;
  readonly schedule: string;
  readonly material: string;
  /** Schedule of the small end where it differs. */
  readonly smallSchedule?: string;
}

/** A reducer of the tables. */
export interface CataloguedReducer {
  /** End to end [m]. */
  readonly length: Catalogued;
  /** [kg] */
  readonly mass: Catalogued;
}

/** Large end, end-to-end length [in], small ends made (from memory), listed weights [lb] of STD and XS by small end. */
interface PrintedReducer {
  readonly large: string;
  readonly length: number;
  readonly small: readonly string[];
  readonly pounds?: Readonly<Record<string, readonly [standard: number, extraStrong?: number]>>;
}

const reducers: readonly PrintedReducer[] = [
  { large: '2', length: 3, small: ['3/4', '1', '1-1/4', '1-1/2'] },
  { large: '2-1/2', length: 3.5, small: ['1', '1-1/4', '1-1/2', '2'] },
  { large: '3', length: 3.5, small: ['1-1/4', '1-1/2', '2', '2-1/2'], pounds: { '2': [2.2, 2.9] } },
  { large: '4', length: 4, small: ['1-1/2', '2', '2-1/2', '3', '3-1/2'], pounds: { '3': [3.4] } },
  { large: '5', length: 5, small: ['2', '2-1/2', '3', '3-1/2', '4'], pounds: { '4': [6] } },
  { large: '6', length: 5.5, small: ['2-1/2', '3', '3-1/2', '4', '5'], pounds: { '5': [8.7, 12.6] } },
  { large: '8', length: 6, small: ['3-1/2', '4', '5', '6'], pounds: { '6': [13.2] } },
  { large: '10', length: 7, small: ['4', '5', '6', '8'], pounds: { '8': [22] } },
  { large: '12', length: 8, small: ['5', '6', '8', '10'], pounds: { '10': [34] } },
  { large: '14', length: 13, small: ['6', '8', '10', '12'], pounds: { '12': [60] } },
  { large: '16', length: 14, small: ['8', '10', '12', '14'], pounds: { '14': [78, 102] } },
  { large: '18', length: 15, small: ['10', '12', '14', '16'], pounds: { '16': [94, 123] } },
  { large: '20', length: 20, small: ['12', '14', '16', '18'], pounds: { '18': [125] } },
  { large: '24', length: 20, small: ['16', '18', '20'], pounds: { '20': [150] } },
];

/** Listed weights exceed the mean of both pipes over the length by 0 to 15 % (34 % in the smallest). */
const EXCESS = 1.1;

/**
 * Length and mass of a butt-weld reducer.
 *
 *     mass: the larger listed weight (STD and XS, first reduction), otherwise
 *     H (w_large + w_small) / 2 × 1.1         H end to end, w pipe mass per length
 *
 * @param query - labels [-]
 * @returns length [m] and mass [kg], or undefined where a size is unknown or no such reducer is listed
 * @source asme-b16.9, page-estimator, fitting-weight-lists
 */
export function findReducer(query: ReducerQuery): CataloguedReducer | undefined {
  const { schedule, material } = query;
  const large = findPipe({ nps: query.large, schedule, material });
  const small = findPipe({ nps: query.small, schedule: query.smallSchedule ?? schedule, material });
  const printed = reducers.find((row) => row.large === large?.nps);
  if (large === undefined || small === undefined || printed === undefined) return undefined;
  if (!printed.small.includes(small.nps)) return undefined;
  const copper = material === 'copper';
  const entry = {
    table: copper ? 'copper reducers' : 'butt-weld reducers',
    row: `NPS ${large.nps} × ${small.nps} ${large.schedule}`,
  };
  const length = printed.length * INCH;
  const listed = printed.pounds?.[small.nps];
  const wallOf = (label: string) => findPipe({ nps: query.large, schedule: label, material })?.wall;
  const equalEnds = query.smallSchedule === undefined;
  const pounds =
    material !== 'carbon steel' || !equalEnds
      ? undefined
      : large.wall === wallOf('STD')
        ? listed?.[0]
        : large.wall === wallOf('XS')
          ? listed?.[1]
          : undefined;
  return {
    length: {
      ...entry,
      value: length,
      citation: copper
        ? { source: 'asme-b16.22', clause: 'taken as for butt-weld reducers', confidence: 'common practice' }
        : {
            source: 'asme-b16.9',
            clause: 'reducers, end to end',
            confidence: printed.large === '2' ? 'memory' : 'read',
          },
    },
    mass:
      pounds === undefined
        ? {
            ...entry,
            value: (length * (large.massPerLength + small.massPerLength) * EXCESS) / 2,
            citation: {
              source: 'fitting-weight-lists',
              clause: 'reducers, from the pipe walls',
              confidence: 'computed',
            },
            how: `length × mean pipe mass per length × ${EXCESS}`,
          }
        : {
            ...entry,
            value: pounds * POUND,
            citation: {
              source: 'fitting-weight-lists',
              clause: 'reducers, larger of the lists',
              confidence: 'read',
            },
          },
  };
}

/**
 * Large ends of reducers.
 *
 * @returns size labels from the smallest up [-]
 * @source asme-b16.9
 */
export function reducerSizes(): readonly string[] {
  return reducers.map(({ large }) => large);
}

/**
 * Small ends made for a large end.
 *
 * @param large - size label of the large end [-]
 * @returns size labels from the smallest up; empty where the large end is unknown [-]
 * @source asme-b16.9
 */
export function reducerSmallEnds(large: string): readonly string[] {
  const label = nominalSize(large);
  return reducers.find((row) => row.large === label)?.small ?? [];
}
