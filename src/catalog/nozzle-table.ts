import type { Citation } from '../sources/index.js';
import { nominalSize } from './nominal-size.js';
import { FOOT_POUND, POUND_FORCE } from './printed-units.js';

/** Eight values in the order FX FY FZ FR MX MY MZ MR. */
type PrintedLoads = readonly [number, number, number, number, number, number, number, number];

/**
 * Side-nozzle rows of the process-pump table: nominal size; lbf and ft·lbf; N and N·m. Forces of both unit systems
 * were read, SI moments are from memory and equal the converted US moments within their rounding.
 */
const rows: readonly (readonly [nps: string, us: PrintedLoads, si: PrintedLoads])[] = [
  ['2', [160, 200, 130, 290, 340, 170, 260, 460], [710, 890, 580, 1280, 460, 230, 350, 620]],
  ['3', [240, 300, 200, 430, 700, 350, 530, 950], [1070, 1330, 890, 1930, 950, 470, 720, 1280]],
  ['4', [320, 400, 260, 570, 980, 500, 740, 1330], [1420, 1780, 1160, 2560, 1330, 680, 1000, 1800]],
  ['6', [560, 700, 460, 1010, 1700, 870, 1300, 2310], [2490, 3110, 2050, 4480, 2300, 1180, 1760, 3130]],
  ['8', [850, 1100, 700, 1560, 2600, 1300, 1900, 3500], [3780, 4890, 3110, 6920, 3530, 1760, 2580, 4710]],
  ['10', [1200, 1500, 1000, 2200, 3700, 1800, 2800, 5000], [5340, 6670, 4450, 9630, 5020, 2440, 3800, 6750]],
  ['12', [1500, 1800, 1200, 2600, 4500, 2200, 3400, 6100], [6670, 8000, 5340, 11700, 6100, 2980, 4610, 8210]],
  ['14', [1600, 2000, 1300, 2900, 4700, 2300, 3500, 6300], [7120, 8900, 5780, 12780, 6370, 3120, 4750, 8540]],
  [
    '16',
    [1900, 2300, 1500, 3300, 5400, 2700, 4000, 7200],
    [8450, 10230, 6670, 14850, 7320, 3660, 5420, 9820],
  ],
];

/**
 * Loads allowed on a side nozzle, each with either sign. X is across, Y along the nozzle, Z along the shaft, which is
 * vertical on an in-line pump; R is the resultant.
 */
export interface NozzleTableLoads {
  /** [N] */
  readonly FX: number;
  readonly FY: number;
  readonly FZ: number;
  readonly FR: number;
  /** [N·m] */
  readonly MX: number;
  readonly MY: number;
  readonly MZ: number;
  readonly MR: number;
}

/** Row of the process-pump table. */
export interface ProcessPumpRow {
  readonly nps: string;
  /** As printed in SI [N, N·m]. */
  readonly si: NozzleTableLoads;
  /** As printed in US units, converted exactly [N, N·m]. */
  readonly us: NozzleTableLoads;
  /** As printed in US units, in lbf and ft·lbf, for the report alone. */
  readonly printedUs: NozzleTableLoads;
  /** Of the forces of both unit systems and the US moments. */
  readonly citation: Citation;
  /** Of the SI moments. */
  readonly siMomentCitation: Citation;
}

/**
 * Nozzle loads of the process-pump table for one nozzle of a vertical in-line pump. It belongs to pumps built to that
 * standard; for others it is a comparison, never the maker's limit.
 *
 * @param nps - nominal size of the flange [-]
 * @returns forces [N] and moments [N·m], or undefined where the table has no such size
 * @source api-610, forsthoffer-best-practice
 */
export function processPumpTable(nps: string): ProcessPumpRow | undefined {
  const label = nominalSize(nps);
  const row = rows.find(([size]) => size === label);
  if (row === undefined) return undefined;
  return {
    nps: row[0],
    si: named(row[2], 1, 1),
    us: named(row[1], POUND_FORCE, FOOT_POUND),
    printedUs: named(row[1], 1, 1),
    citation: {
      source: 'api-610',
      clause: 'table of nozzle loads, side nozzle, 8th to 12th editions',
      confidence: 'read',
    },
    siMomentCitation: {
      source: 'api-610',
      clause: 'table of nozzle loads, SI moments',
      confidence: 'memory',
    },
  };
}

function named(loads: PrintedLoads, force: number, moment: number): NozzleTableLoads {
  const [FX, FY, FZ, FR, MX, MY, MZ, MR] = loads;
  return {
    FX: FX * force,
    FY: FY * force,
    FZ: FZ * force,
    FR: FR * force,
    MX: MX * moment,
    MY: MY * moment,
    MZ: MZ * moment,
    MR: MR * moment,
  };
}

/**
 * Nominal sizes of the process-pump table.
 *
 * @returns size labels from the smallest up [-]
 * @source api-610
 */
export function processPumpSizes(): readonly string[] {
  return rows.map(([nps]) => nps);
}
