import type { Catalogued } from './catalogued.js';
import { type CataloguedPipe, findPipe } from './find-pipe.js';
import { nominalInches, nominalSize } from './nominal-size.js';
import { INCH, POUND } from './printed-units.js';

/** A butt-weld elbow as the user names it. */
export interface ElbowQuery {
  readonly nps: string;
  readonly schedule: string;
  readonly material: string;
  readonly radius: 'long' | 'short';
  /** Turn [rad]. */
  readonly angle: number;
}

/** An elbow of the tables. */
export interface CataloguedElbow {
  /** Centre-line radius [m]. */
  readonly radius: Catalogued;
  /** Corner to end [m]. */
  readonly centreToEnd: Catalogued;
  /** [kg] */
  readonly mass: Catalogued;
}

/** Listed weights [lb] of 90 degree long-radius elbows: nominal size, STD, XS. */
const longElbows: readonly (readonly [nps: string, standard: number, extraStrong: number])[] = [
  ['2', 1.5, 2.1],
  ['2-1/2', 3, 4],
  ['3', 4.7, 6.3],
  ['4', 8.9, 12.4],
  ['5', 15.1, 21.4],
  ['6', 23.5, 35.3],
  ['8', 47, 71],
  ['10', 83, 112],
  ['12', 123, 162],
  ['14', 158, 208],
  ['16', 207, 273],
  ['18', 263, 347],
  ['20', 323, 428],
  ['24', 468, 622],
];

/** Listed weights [lb] of 90 degree short-radius elbows: nominal size, STD, XS. */
const shortElbows: readonly (readonly [nps: string, standard: number, extraStrong: number])[] = [
  ['3', 3, 4],
  ['6', 15.2, 23],
  ['16', 135, 177],
  ['18', 171, 225],
  ['24', 305, 404],
];

/** Corner to end [in] of 45 degree long-radius elbows, a little over R tan 22.5° in the small sizes. */
const halfElbows: Readonly<Record<string, number>> = {
  '2': 1.38,
  '2-1/2': 1.75,
  '3': 2,
  '4': 2.5,
  '5': 3.12,
  '6': 3.75,
  '8': 5,
  '10': 6.25,
  '12': 7.5,
  '14': 8.75,
  '16': 10,
  '18': 11.25,
  '20': 12.5,
  '24': 15,
};

/** Listed long-radius weights exceed arc length times pipe weight by 4 to 5 %, short-radius ones by 1 to 3 %. */
const EXCESS = { long: 1.045, short: 1.02 } as const;

/**
 * Radius, length and mass of a butt-weld elbow.
 *
 *     radius 1.5 NPS long, 1.0 NPS short        centre to end R tan(angle / 2)
 *     mass = listed 90 degree mass × angle / 90°, STD and XS walls of carbon steel
 *     otherwise R × angle × pipe mass per length × 1.045 (long) or 1.02 (short)
 *
 * Copper: the same geometry stands in for solder fittings, whose makers' dimensions differ; computed.
 *
 * @param query - labels, radius and turn [rad]
 * @returns lengths [m] and mass [kg], or undefined where pipe or turn is not usable
 * @source asme-b16.9, page-estimator, fitting-weight-lists
 */
export function findElbow(query: ElbowQuery): CataloguedElbow | undefined {
  const pipe = findPipe(query);
  const inches = nominalInches(query.nps);
  if (pipe === undefined || inches === undefined) return undefined;
  if (!(query.angle > 0 && query.angle < Math.PI)) return undefined;
  const R = (query.radius === 'long' ? 1.5 : 1) * inches * INCH;
  const copper = query.material === 'copper';
  const source = copper ? ('asme-b16.22' as const) : ('asme-b16.9' as const);
  const row = `NPS ${pipe.nps} ${pipe.schedule}, ${query.radius} radius`;
  const entry = { table: copper ? 'copper elbows' : 'butt-weld elbows', row };
  return {
    radius: {
      ...entry,
      value: R,
      citation: copper
        ? { source, clause: 'taken as for butt-weld elbows', confidence: 'common practice' }
        : { source, clause: 'centre to end of 90 degree elbows', confidence: 'read' },
    },
    centreToEnd: centreToEnd(query, pipe.nps, R, entry),
    mass: { ...entry, ...elbowMass(query, pipe, R) },
  };
}

function centreToEnd(
  query: ElbowQuery,
  nps: string,
  R: number,
  entry: { readonly table: string; readonly row: string },
): Catalogued {
  const listed = halfElbows[nps];
  const half = query.radius === 'long' && Math.abs(query.angle - Math.PI / 4) < 1e-6;
  if (half && listed !== undefined && query.material !== 'copper') {
    const citation = { source: 'asme-b16.9', clause: '45 degree elbows', confidence: 'read' } as const;
    return { ...entry, value: listed * INCH, citation };
  }
  return {
    ...entry,
    value: R * Math.tan(query.angle / 2),
    citation: { source: 'asme-b16.9', clause: 'R tan(angle / 2)', confidence: 'computed' },
    how: 'R tan(angle / 2)',
  };
}

type MassEntry = Pick<Catalogued, 'value' | 'citation' | 'how'>;

function elbowMass(query: ElbowQuery, pipe: CataloguedPipe, R: number): MassEntry {
  const share = query.angle / (Math.PI / 2);
  const listed = listedPounds(query, pipe);
  if (listed !== undefined) {
    const whole = Math.abs(share - 1) < 1e-6;
    const source = query.radius === 'long' ? ('fitting-weight-lists' as const) : ('page-estimator' as const);
    return {
      value: listed * share * POUND,
      citation: {
        source,
        clause: `90 degree ${query.radius} radius`,
        confidence: whole ? 'read' : 'computed',
      },
      ...(whole ? {} : { how: 'listed 90 degree mass × angle / 90°' }),
    };
  }
  const excess = query.material === 'copper' ? 1 : EXCESS[query.radius];
  return {
    value: R * query.angle * pipe.massPerLength * excess,
    citation: { source: 'fitting-weight-lists', clause: 'from the pipe wall', confidence: 'computed' },
    how: `arc length × pipe mass per length × ${excess}`,
  };
}

/** The lists hold carbon steel of STD and XS wall; schedules of the same wall share the entry. */
function listedPounds(query: ElbowQuery, pipe: CataloguedPipe): number | undefined {
  if (query.material !== 'carbon steel') return undefined;
  const list = query.radius === 'long' ? longElbows : shortElbows;
  const listed = list.find(([nps]) => nps === pipe.nps);
  const wallOf = (schedule: string) => findPipe({ ...query, schedule })?.wall;
  if (pipe.wall === wallOf('STD')) return listed?.[1];
  return pipe.wall === wallOf('XS') ? listed?.[2] : undefined;
}

/**
 * Nominal sizes with a listed elbow weight; other sizes of pipe are computed.
 *
 * @returns size labels from the smallest up [-]
 * @source asme-b16.9
 */
export function elbowSizes(): readonly string[] {
  return longElbows.map(([nps]) => nps).filter((nps) => nominalSize(nps) !== undefined);
}
