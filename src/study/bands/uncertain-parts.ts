/** Which values are off together: by part, by make, or by table of the catalogue. */
import type { Installation, Part } from '../../input/installation.js';

/** A part with the line it stands in. */
export interface PartInLine {
  readonly part: Part;
  readonly line: string;
}

/**
 * All parts of all lines, legs of tees included.
 *
 * @param installation - as read
 * @returns parts in walking order
 */
export function everyPart(installation: Installation): readonly PartInLine[] {
  return installation.lines.flatMap(({ walk, name }) => partsOf(walk).map((part) => ({ part, line: name })));
}

function partsOf(walk: readonly Part[]): readonly Part[] {
  return walk.flatMap((part) => (part.kind === 'tee' ? [part, ...partsOf(part.side.walk)] : [part]));
}

/**
 * With what a part's weight is off. Parts of one kind that are given the same weight are taken to be of one make.
 *
 * @param part - the part
 * @returns `pipe`, `flanges`, `fittings`, the row of the catalogue, or the make; undefined without weight
 */
export function massOwner(part: Part): string | undefined {
  if (part.kind === 'straight') return 'pipe';
  if (!('mass' in part)) return undefined;
  const { origin, value } = part.mass;
  if (origin.kind === 'given' || origin.kind === 'assumed') return `${makeOf(part)} of ${value} kg`;
  if (part.kind === 'flange') return 'flanges';
  if (part.kind === 'elbow' || part.kind === 'tee' || part.kind === 'reducer') return 'fittings';
  return origin.kind === 'catalogue' ? `${origin.table} ${origin.row}` : part.name;
}

/**
 * With what the stiffness of a connector or coupling is off.
 *
 * @param part - the part
 * @returns its make
 */
export function stiffnessOwner(
  part: Extract<Part, { kind: 'flexible-connector' | 'grooved-joint' }>,
): string {
  return `${makeOf(part)} of ${Object.values(part.stiffness).join(', ')}`;
}

function makeOf(part: Part): string {
  return part.kind === 'valve' ? part.valve : part.kind;
}
