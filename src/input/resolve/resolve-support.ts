import type { SupportKind, SupportPart, Vec3 } from '../installation.js';
import { type Path, pathText } from '../pending-issue.js';
import type { WalkStep } from '../schema/piping.js';
import { dot, guideDirections } from '../vectors.js';
import { given, offsetVector } from './input-context.js';
import type { Pipe } from './resolve-pipe.js';
import { resolveRods } from './resolve-rods.js';
import { resolveAnchorStructure, resolveFriction, resolveStructure } from './resolve-structure.js';
import { partBase, type Walking } from './walking.js';

const UP: Vec3 = [0, 0, 1];
/** Movements below this are none [m]. */
const FELT = 1e-9;
const EVERY: readonly Vec3[] = [[1, 0, 0], [0, 1, 0], UP];

/** Kinds of support, as they stand in the file. */
export const supportKinds: readonly SupportKind[] = [
  'hanger',
  'spring-hanger',
  'rest',
  'guide',
  'stop',
  'anchor',
  'stand',
];

type FileSupports = { readonly [Kind in SupportKind]?: WalkStep[Kind] | undefined };

/** Where a support stands. */
interface Spot {
  readonly walking: Walking;
  readonly path: Path;
  readonly travel: Vec3;
  readonly pipe: Pipe;
}

/**
 * The support of a map whose one key is its kind.
 *
 * @param file - the map [-]
 * @param spot - where it stands; the path is that of the map [-]
 * @returns the support, or undefined where the map holds none [-]
 */
export function resolveSupport(file: FileSupports, spot: Spot): SupportPart | undefined {
  const { walking, travel, pipe } = spot;
  const kind = supportKinds.find((key) => file[key] !== undefined);
  const support = kind === undefined ? undefined : file[kind];
  if (kind === undefined || !support) return undefined;
  const path: Path = [...spot.path, kind];
  const common = {
    ...partBase(support.mark, pathText(path), pipe),
    mark: support.mark,
    holdsRotation: kind === 'anchor',
    ...outOfPlace(walking, support, kind, spot.travel, path),
  };
  const rating =
    'rating' in support && support.rating !== undefined
      ? { rating: given(support.rating, [...path, 'rating']) }
      : {};
  const gap = file.guide?.gap ?? file.stop?.gap;
  const at = { path, mark: support.mark, alike: walking.assumed };
  const isResting = kind === 'rest' || kind === 'stand';
  const friction = isResting
    ? resolveFriction(walking.reading, file.rest?.friction ?? file.stand?.friction, at)
    : {};
  const spring = file['spring-hanger'];
  if (kind === 'spring-hanger' && spring) {
    return {
      kind,
      ...common,
      rods: resolveRods(walking, spring, path),
      // A spring is so much softer than what it hangs on that nothing is taken for it where nothing is said.
      ...(spring.structure !== undefined && resolveStructure(walking.reading, spring.structure, at)),
      spring: springData(walking, spring, path),
      holds: [UP],
      oneWay: false,
    };
  }
  if (kind === 'anchor') {
    const anchors = resolveAnchorStructure(walking.reading, file.anchor?.structure, {
      ...at,
      path: [...path, 'structure'],
    });
    return {
      kind,
      ...common,
      ...rating,
      ...(anchors && { structure: anchors.translation, structureTurning: anchors.rotation }),
      holds: held(kind, travel),
      oneWay: false,
    };
  }
  const structure = resolveStructure(walking.reading, structureOf(file), at);
  if (kind === 'hanger' && file.hanger) {
    const rods = resolveRods(walking, file.hanger, path);
    return { kind, ...common, rods, ...structure, holds: [UP], oneWay: true };
  }
  return {
    kind,
    ...common,
    ...rating,
    ...(gap !== undefined && { gap }),
    ...friction,
    ...structure,
    holds: held(kind, travel),
    oneWay: isResting,
  };
}

function structureOf({ hanger, rest, stand, guide, stop }: FileSupports) {
  return hanger?.structure ?? rest?.structure ?? stand?.structure ?? guide?.structure ?? stop?.structure;
}

/** A movement that no direction held can feel is told, as it was meant for something. */
function outOfPlace(
  { reading }: Walking,
  support: NonNullable<FileSupports[SupportKind]>,
  kind: SupportKind,
  travel: Vec3,
  path: Path,
): Pick<SupportPart, 'imposed'> {
  const offset = support['out-of-place'];
  if (!offset) return {};
  const imposed = offsetVector(offset);
  if (Math.hypot(...imposed) > 0 && held(kind, travel).every((along) => Math.abs(dot(along, imposed)) < FELT))
    reading.warn('input.out-of-place-unfelt', [...path, 'out-of-place'], { mark: support.mark, kind });
  return { imposed };
}

function springData(
  walking: Walking,
  file: NonNullable<FileSupports['spring-hanger']>,
  path: Path,
): NonNullable<SupportPart['spring']> {
  const { mark, rate, load, minimum, maximum } = file;
  if (minimum !== undefined && maximum !== undefined && !(maximum > minimum))
    walking.reading.report('input.spring-range', [...path, 'maximum'], { mark });
  else if ((minimum !== undefined && load < minimum) || (maximum !== undefined && load > maximum)) {
    walking.reading.warn('input.spring-out-of-range', [...path, 'load'], {
      mark,
      load: walking.reading.print(load, 'force'),
    });
  }
  return {
    rate,
    load: given(load, [...path, 'load']),
    ...(minimum !== undefined && { minimum }),
    ...(maximum !== undefined && { maximum }),
  };
}

function held(kind: SupportKind, travel: Vec3): readonly Vec3[] {
  if (kind === 'guide') return guideDirections(travel);
  if (kind === 'stop') return [travel];
  return kind === 'anchor' ? EVERY : [UP];
}

/** The support given under an elbow or a diffuser; its path is that of the part. */
export function attached(file: FileSupports | undefined, spot: Spot): { readonly support?: SupportPart } {
  const support = file && resolveSupport(file, { ...spot, path: [...spot.path, 'support'] });
  return support ? { support } : {};
}
