import type { Citation } from '../sources/index.js';
import { FOOT, INCH } from './printed-units.js';

/** What faces the equipment: nothing live or grounded, something grounded, live parts. The conditions of the table. */
export type OppositeSide = 'nothing' | 'grounded' | 'live';

/** Largest voltage to ground of the row [V], depth by what faces the equipment [ft], and where the row was found. */
const depths: readonly {
  readonly to: number;
  readonly row: string;
  readonly feet: Readonly<Record<OppositeSide, number>>;
  readonly seen: 'two sources' | 'memory';
}[] = [
  { to: 150, row: '0 to 150 V', feet: { nothing: 3, grounded: 3, live: 3 }, seen: 'two sources' },
  { to: 600, row: '151 to 600 V', feet: { nothing: 3, grounded: 3.5, live: 4 }, seen: 'two sources' },
  { to: 1000, row: '601 to 1000 V', feet: { nothing: 3, grounded: 4, live: 5 }, seen: 'memory' },
];

/** Condition of the table by its printed letters: of the regulation, and of the code. */
const condition: Readonly<Record<OppositeSide, string>> = {
  nothing: 'A or 1',
  grounded: 'B or 2',
  live: 'C or 3',
};

/** Working space in front of one panel. */
export interface WorkingDepth {
  /** [m] */
  readonly depth: number;
  /** Row of the table: `151 to 600 V`. */
  readonly row: string;
  readonly citation: Citation;
}

/** What the depth is looked up by. */
export interface WorkingDepthQuery {
  /** Voltage to ground [V]. */
  readonly toGround: number;
  readonly opposite: OppositeSide;
}

/**
 * Depth of the working space in front of equipment that may be worked on live. The regulation prints the first two rows;
 * the third is in later editions of the code alone. Work on it takes the voltage to ground, 277 V on a 480 V wye.
 *
 * @param query - voltage to ground [V] and what faces the equipment
 * @returns depth [m], or undefined above the last row
 * @source osha-1910-303, nfpa-70
 */
export function workingDepth({ toGround, opposite }: WorkingDepthQuery): WorkingDepth | undefined {
  const found = depths.find(({ to }) => toGround <= to);
  if (found === undefined || !(toGround > 0)) return undefined;
  const { row, feet, seen } = found;
  const citation: Citation =
    seen === 'memory'
      ? {
          source: 'nfpa-70',
          clause: `110.26(A)(1), ${row}, condition ${condition[opposite]}`,
          confidence: seen,
        }
      : {
          source: 'osha-1910-303',
          clause: `(g), table S-1, ${row}, condition ${condition[opposite]}, as NFPA 70, 110.26(A)(1)`,
          confidence: seen,
        };
  return { depth: feet[opposite] * FOOT, row, citation };
}

/** Least width [m]: 30 in, or that of the equipment where it is wider. */
export const WORKING_WIDTH = 30 * INCH;
/** Least height from the floor [m]: 6.5 ft, or that of the equipment where it is higher. */
export const WORKING_HEIGHT = 6.5 * FOOT;

/** Height over a panel that is kept for the electrical installation, or up to the structure where that is lower [m]: 6 ft. */
export const DEDICATED_HEIGHT = 6 * FOOT;
export const DEDICATED_CITATION: Citation = {
  source: 'nfpa-70',
  clause: '110.26(E), dedicated space to 6 ft above the equipment or to the structure',
  confidence: 'memory',
};

/** Farthest that a disconnect stands from its motor and still counts as in sight [m]: 50 ft. */
export const IN_SIGHT = 50 * FOOT;
export const IN_SIGHT_CITATION: Citation = {
  source: 'nfpa-70',
  clause: '430.102, in sight and within 50 ft, as told on electrical trade pages',
  confidence: 'read',
};
