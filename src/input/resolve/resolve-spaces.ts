/** Spaces to be kept free, with the maker's or the owner's numbers. */

import type { Installation, Line, Part, Pump, ServiceSpace, SpacePurpose } from '../installation.js';
import type { Path } from '../pending-issue.js';
import type { FileContent } from '../schema/file-schema.js';
import { type InputContext, nearest } from './input-context.js';

type FileSpace = NonNullable<FileContent['service-spaces']>[number];
type Key = Exclude<keyof FileSpace, 'purpose' | 'owner' | 'source'>;

interface Keys {
  readonly needed: readonly Key[];
  readonly allowed: readonly Key[];
}

const IN_FRONT: Keys = { needed: ['at', 'side', 'width', 'depth', 'height'], allowed: ['from'] };

/** What each purpose is described by; any other key says nothing of it. */
const KEYS: Readonly<Record<SpacePurpose, Keys>> = {
  'motor withdrawal': { needed: ['height'], allowed: [] },
  'coupling and seal': { needed: ['depth', 'width'], allowed: ['side', 'height'] },
  'wrench room': { needed: ['reach'], allowed: [] },
  'working space': { needed: ['width', 'depth'], allowed: ['height', 'side'] },
  handle: { needed: ['at', 'side', 'from', 'reach', 'depth', 'angle'], allowed: ['start'] },
  drain: IN_FRONT,
  vent: IN_FRONT,
  gauge: IN_FRONT,
  aisle: { needed: ['width', 'height', 'through'], allowed: [] },
  'casing lift-out': { needed: ['height'], allowed: [] },
};

const FULL_TURN = 2 * Math.PI;

/**
 * The spaces of the file, each with what its purpose needs.
 *
 * @param reading - where issues go [-]
 * @param file - content of the file [-]
 * @param lines - lines, for the names of valves and fittings [-]
 * @param pump - outline of the pump [-]
 * @returns spaces, SI; nothing where the file has none [-]
 */
export function resolveSpaces(
  reading: InputContext,
  file: FileContent,
  lines: readonly Line[],
  pump: Pump,
): Pick<Installation, 'serviceSpaces'> {
  const spaces = file['service-spaces'];
  if (spaces === undefined) return {};
  const parts = lines.flatMap(({ walk }) => partNames(walk));
  const seen = new Set<string>();
  return {
    serviceSpaces: spaces.map((space, index) => {
      const path: Path = ['service-spaces', index];
      const key = `${space.purpose} ${space.owner} ${space.at ?? ''} ${space.purpose === 'aisle' ? index : ''}`;
      if (seen.has(key)) reading.report('input.space-twice', path, { purpose: space.purpose });
      seen.add(key);
      checkKeys(reading, space, path);
      checkPlaces(reading, space, path, parts);
      if (space.purpose === 'motor withdrawal' && pump.outline.withdrawal !== undefined)
        reading.report('input.withdrawal-twice', [...path, 'height'], {}, 'key');
      return resolved(space, `service-spaces[${index}]`);
    }),
  };
}

function checkKeys(reading: InputContext, space: FileSpace, path: Path): void {
  const { needed, allowed } = KEYS[space.purpose];
  const lever = space.angle !== undefined && space.angle < FULL_TURN - 1e-9;
  const wanted: readonly Key[] = lever && space.purpose === 'handle' ? [...needed, 'start'] : needed;
  for (const key of wanted)
    if (space[key] === undefined) reading.report('input.missing', [...path, key], { key }, 'holder');
  for (const key of Object.keys(space) as (keyof FileSpace)[]) {
    if (key === 'purpose' || key === 'owner' || key === 'source') continue;
    if (space[key] !== undefined && !wanted.includes(key) && !allowed.includes(key))
      reading.report('input.space-key-idle', [...path, key], { key, purpose: space.purpose }, 'key');
  }
}

function checkPlaces(reading: InputContext, space: FileSpace, path: Path, parts: readonly string[]): void {
  const { at, side, angle, start, purpose } = space;
  if (at !== undefined && !parts.includes(at))
    reading.report('input.space-unknown-part', [...path, 'at'], nearest(at, parts));
  const anyway = purpose === 'handle' || purpose === 'drain' || purpose === 'vent' || purpose === 'gauge';
  if (side !== undefined && side[2] !== 0 && !anyway)
    reading.report('input.space-not-level', [...path, 'side'], { purpose });
  if (angle !== undefined && angle > FULL_TURN + 1e-9)
    reading.report('input.too-large', [...path, 'angle'], {
      found: reading.print(angle, 'angle'),
      most: reading.print(FULL_TURN, 'angle'),
    });
  if (start !== undefined && side !== undefined && Math.abs(dotOf(start, side)) > 1 - 1e-6)
    reading.report('input.lever-along-stem', [...path, 'start']);
}

function dotOf(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, component, axis) => sum + component * (b[axis] ?? 0), 0);
}

function resolved(space: FileSpace, path: string): ServiceSpace {
  const { through, ...rest } = space;
  const found = Object.fromEntries(Object.entries(rest).filter(([, value]) => value !== undefined));
  return {
    ...(found as Omit<ServiceSpace, 'path' | 'through'>),
    ...(through && { through: through.map(({ east, north }) => [east, north] as const) }),
    path,
  };
}

function partNames(walk: readonly Part[]): readonly string[] {
  return walk.flatMap((part) =>
    part.kind === 'tee' ? [part.name, ...partNames(part.side.walk)] : [part.name],
  );
}
