import type { Citation } from '../sources/index.js';
import { betweenRows, type Pairs } from './catalogued.js';
import { nominalInches } from './nominal-size.js';
import { BAR, celsius, fahrenheit, PSI } from './printed-units.js';

/** Which rating is asked for. */
export interface RatingQuery {
  /** `B16.5` or `B16.1`. */
  readonly standard: string;
  readonly class: string;
  /** `1.1` (carbon steel), `2.2` (316 stainless); `A126-B` for grey iron. */
  readonly materialGroup: string;
  /** Needed by B16.1, whose ratings fall above NPS 12. */
  readonly nps?: string;
}

/** Gauge pressure a flange may carry, by temperature. */
export interface FlangeRating {
  /** Temperature [K] and gauge pressure [Pa], rising in temperature. */
  readonly pairs: Pairs;
  readonly citation: Citation;
}

interface PrintedRating {
  readonly units: 'psi and degF' | 'bar and degC';
  readonly rows: Pairs;
  readonly citation: Citation;
}

const five = (clause: string, confidence: Citation['confidence']): Citation => ({
  source: 'asme-b16.5',
  clause,
  confidence,
});
const iron: Citation = {
  source: 'asme-b16.1',
  clause: 'pressure-temperature ratings, ASTM A126 class B',
  confidence: 'memory',
};

/**
 * Class 300 at 200 °F is 680 psi from the 2009 edition on and 675 before. The metric table of group 1.1 agrees with
 * these rows within its rounding.
 */
// biome-ignore format: one row of the table on one line
const printedRatings: Readonly<Record<string, PrintedRating>> = {
  'B16.5 150 1.1': {
    units: 'psi and degF',
    rows: [[-20, 285], [100, 285], [200, 260], [300, 230], [400, 200]],
    citation: five('group 1.1, class 150, 2003 edition and later', 'two sources'),
  },
  'B16.5 300 1.1': {
    units: 'psi and degF',
    rows: [[-20, 740], [100, 740], [200, 680], [300, 655], [400, 635]],
    citation: five('group 1.1, class 300, 2009 edition and later', 'read'),
  },
  'B16.5 150 2.2': {
    units: 'bar and degC',
    rows: [[-29, 19], [38, 19], [50, 18.4], [100, 16.2], [150, 14.8], [200, 13.7]],
    citation: five('group 2.2, class 150, 2003 edition and later', 'two sources'),
  },
  'B16.5 300 2.2': {
    units: 'bar and degC',
    rows: [[-29, 49.6], [38, 49.6], [50, 48.1], [100, 42.2], [150, 38.5], [200, 35.7]],
    citation: five('group 2.2, class 300, 2003 edition and later', 'two sources'),
  },
  'B16.1 125 A126-B up to 12': {
    units: 'psi and degF',
    rows: [[-20, 200], [150, 200], [200, 190], [225, 180], [250, 175], [275, 170], [300, 165]],
    citation: iron,
  },
  'B16.1 125 A126-B above 12': {
    units: 'psi and degF',
    rows: [[-20, 150], [150, 150], [200, 135], [225, 130], [250, 125], [275, 120], [300, 110]],
    citation: iron,
  },
  'B16.1 250 A126-B up to 12': {
    units: 'psi and degF',
    rows: [[-20, 500], [150, 500], [200, 460], [225, 440], [250, 415], [275, 395], [300, 375]],
    citation: iron,
  },
  'B16.1 250 A126-B above 12': {
    units: 'psi and degF',
    rows: [[-20, 300], [150, 300], [200, 280], [225, 270], [250, 260], [275, 250], [300, 240]],
    citation: iron,
  },
};

/**
 * Rated gauge pressure of a flange against temperature.
 *
 * @param query - standard, class, material group, and for B16.1 the nominal size [-]
 * @returns temperature [K] and gauge pressure [Pa] in pairs, or undefined where no rating is held
 * @source asme-b16.5, asme-b16.1
 */
export function flangeRating(query: RatingQuery): FlangeRating | undefined {
  const inches = nominalInches(query.nps ?? '');
  if (query.standard === 'B16.1' && inches === undefined) return undefined;
  const size = query.standard !== 'B16.1' ? '' : (inches ?? 0) > 12 ? ' above 12' : ' up to 12';
  const printed = printedRatings[`${query.standard} ${query.class} ${query.materialGroup}${size}`];
  if (printed === undefined) return undefined;
  const us = printed.units === 'psi and degF';
  return {
    pairs: printed.rows.map(([at, pressure]) =>
      us ? ([fahrenheit(at), pressure * PSI] as const) : ([celsius(at), pressure * BAR] as const),
    ),
    citation: printed.citation,
  };
}

/**
 * Material groups with a rating in the tables.
 *
 * @param standard - `B16.5` or `B16.1` [-]
 * @returns group labels; empty where the standard is unknown [-]
 * @source asme-b16.5, asme-b16.1
 */
export function flangeMaterialGroups(standard: string): readonly string[] {
  const groups = Object.keys(printedRatings).filter((key) => key.startsWith(`${standard} `));
  return [...new Set(groups.flatMap((key) => key.split(' ').slice(2, 3)))];
}

/**
 * Rated gauge pressure at one temperature, by straight line between rows; above the last row and below the first
 * there is none.
 *
 * @param pairs - temperature [K] and gauge pressure [Pa], rising in temperature
 * @param temperature - of the flange [K]
 * @returns gauge pressure [Pa], or undefined outside the table
 * @source asme-b16.5
 */
export function ratingAt(pairs: Pairs, temperature: number): number | undefined {
  return betweenRows(pairs, temperature);
}
