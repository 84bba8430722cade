import type { Citation, SourceId } from '../sources/index.js';
import { densityOf } from './metal-densities.js';
import { nominalInches, nominalSize } from './nominal-size.js';
import { copperTubes, type PrintedPipe, type PrintedWall, stainlessPipes, steelPipes } from './pipe-sizes.js';
import { INCH } from './printed-units.js';
import { tubeMassPerLength } from './tube-properties.js';

/** A pipe as the user names it. */
export interface PipeQuery {
  /** `6`, `NPS 6`, `2 1/2`, `DN 150`. */
  readonly nps: string;
  /** `STD`, `40`, `sch 40`, `10S`; for copper `L`, `K`, `M`. */
  readonly schedule: string;
  /** `carbon steel`, `stainless steel` or `copper`. */
  readonly material: string;
}

/** A pipe of the tables. */
export interface CataloguedPipe {
  /** Label of the catalogue: `2-1/2`. */
  readonly nps: string;
  readonly schedule: string;
  /** [m] */
  readonly outsideDiameter: number;
  /** [m] */
  readonly wall: number;
  /** Metal mass per length, computed from the wall [kg/m]. */
  readonly massPerLength: number;
  /** Of the wall. */
  readonly citation: Citation;
  /** Of the mass. */
  readonly massCitation: Citation;
}

/** Stainless pipe is also made to the walls of the steel table; its own table comes first. */
const tables: Readonly<Record<string, readonly (readonly [SourceId, readonly PrintedPipe[]])[]>> = {
  'carbon steel': [['asme-b36.10m', steelPipes]],
  'stainless steel': [
    ['asme-b36.19m', stainlessPipes],
    ['asme-b36.10m', steelPipes],
  ],
  copper: [['astm-b88', copperTubes]],
};

/** Words for schedules that are written out. */
const scheduleWords: ReadonlyMap<string, string> = new Map([
  ['STANDARD', 'STD'],
  ['STANDARD WEIGHT', 'STD'],
  ['EXTRA STRONG', 'XS'],
  ['XH', 'XS'],
]);

/**
 * The one label by which a schedule or a tube type stands in the tables.
 *
 * @param label - `sch 40`, `Schedule 40`, `std`, `type L`, `10s` [-]
 * @returns `40`, `STD`, `L`, `10S` [-]
 * @source asme-b36.10m
 */
export function scheduleLabel(label: string): string {
  const bare = label
    .trim()
    .toUpperCase()
    .replace(/^(SCHEDULE|SCH|TYPE)\b\.?\s*/, '');
  return scheduleWords.get(bare) ?? bare;
}

/**
 * Outside diameter, wall and metal mass of a pipe or tube of the tables.
 *
 *     mass per length = π (D - t) t ρ, with ρ 0.2833 lb/in³ steel, 0.29 stainless, 0.323 copper
 *
 * @param query - size, schedule and material as labels [-]
 * @returns diameters [m] and mass [kg/m], or undefined where a label is unknown
 * @source asme-b36.10m, asme-b36.19m, astm-b88 (read in hi-data-book and copper-tube-handbook )
 */
export function findPipe(query: PipeQuery): CataloguedPipe | undefined {
  const nps = nominalSize(query.nps);
  const schedule = scheduleLabel(query.schedule);
  const density = densityOf(query.material);
  if (nps === undefined || density === undefined) return undefined;
  for (const [source, table] of tablesOf(query.material)) {
    const pipe = table.find(([size]) => size === nps);
    const printed = pipe?.[2].find(([label]) => label === schedule);
    if (pipe !== undefined && printed !== undefined) return pipeOf(source, pipe, printed, density);
  }
  return undefined;
}

/** A name that every object carries, such as `Object`, is no material. */
function tablesOf(material: string): readonly (readonly [SourceId, readonly PrintedPipe[]])[] {
  return Object.hasOwn(tables, material) ? (tables[material] ?? []) : [];
}

function pipeOf(source: SourceId, pipe: PrintedPipe, printed: PrintedWall, density: number): CataloguedPipe {
  const tube = { outsideDiameter: pipe[1] * INCH, wall: printed[1] * INCH };
  return {
    ...tube,
    nps: pipe[0],
    schedule: printed[0],
    massPerLength: tubeMassPerLength(tube, density),
    citation: { source, clause: 'dimensions table', confidence: printed[2] },
    massCitation: { source, clause: 'from diameter, wall and density of the metal', confidence: 'computed' },
  };
}

/**
 * Nominal sizes the catalogue holds.
 *
 * @param material - `carbon steel`, `stainless steel` or `copper`; all when left out [-]
 * @returns labels from the smallest up [-]
 * @source asme-b36.10m, asme-b36.19m, astm-b88
 */
export function pipeSizes(material?: string): readonly string[] {
  const wanted = material === undefined ? Object.values(tables).flat() : tablesOf(material);
  const labels = new Set(wanted.flatMap(([, table]) => table.map(([nps]) => nps)));
  return [...labels].sort((a, b) => (nominalInches(a) ?? 0) - (nominalInches(b) ?? 0));
}

/**
 * Schedules or tube types of one size.
 *
 * @param nps - nominal size label [-]
 * @param material - `carbon steel`, `stainless steel` or `copper` [-]
 * @returns labels as `findPipe` accepts them; empty where the size or the material is unknown [-]
 * @source asme-b36.10m, asme-b36.19m, astm-b88
 */
export function pipeSchedules(nps: string, material: string): readonly string[] {
  const label = nominalSize(nps);
  const found = tablesOf(material).flatMap(([, table]) => table.filter(([size]) => size === label));
  return [...new Set(found.flatMap(([, , walls]) => walls.map(([schedule]) => schedule)))];
}
