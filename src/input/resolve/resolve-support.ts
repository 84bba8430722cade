import { rodRating } from '../../catalog/index.js';
import { type Path, pathText } from '../draft.js';
import type { RodAssembly, SupportKind, SupportPart, Vec3 } from '../installation.js';
import type { WalkStep } from '../schema/piping.js';
import { guideDirections } from '../vectors.js';
import { catalogued, given, practice } from './reading.js';
import type { Pipe } from './resolve-pipe.js';
import { partBase, type Walking } from './walking.js';

const UP: Vec3 = [0, 0, 1];
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
  };
  const rating =
    'rating' in support && support.rating !== undefined
      ? { rating: given(support.rating, [...path, 'rating']) }
      : {};
  const spring = file['spring-hanger'];
  if (kind === 'spring-hanger' && spring) {
    return {
      kind,
      ...common,
      rods: rodAssembly(walking, spring, path),
      spring: springData(walking, spring, path),
      holds: [UP],
      oneWay: false,
    };
  }
  if (kind === 'hanger')
    return { kind, ...common, rods: rodAssembly(walking, support, path), holds: [UP], oneWay: true };
  return {
    kind,
    ...common,
    ...rating,
    holds: held(kind, travel),
    oneWay: kind === 'rest' || kind === 'stand',
  };
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

type FileHanger = Partial<
  Pick<NonNullable<FileSupports['hanger']>, 'rods' | 'rod' | 'length' | 'rod-rating' | 'attachment-rating'>
> & { readonly mark: string };

function rodAssembly(walking: Walking, file: FileHanger, path: Path): RodAssembly {
  const { reading } = walking;
  if (file.rods === undefined) {
    reading.assumeAlike('rods', file.mark, [...path, 'rods'], {
      what: 'number of rods',
      value: '1',
      citation: practice('one rod to a clevis'),
      effect: 'A trapeze shares its load between two',
    });
  }
  const own = file['rod-rating'];
  const listed = file.rod === undefined ? undefined : rodRating({ size: file.rod, edition: walking.rods });
  const rating = own !== undefined ? given(own, [...path, 'rod-rating']) : listed && catalogued(listed);
  const attachment = file['attachment-rating'];
  return {
    count: file.rods ?? 1,
    ...(file.rod !== undefined && { size: file.rod }),
    ...(file.length !== undefined && { length: file.length }),
    ...(rating && { rating }),
    ...(attachment !== undefined && { attachmentRating: given(attachment, [...path, 'attachment-rating']) }),
  };
}

/** The support given under an elbow or a diffuser; its path is that of the part. */
export function attached(file: FileSupports | undefined, spot: Spot): { readonly support?: SupportPart } {
  const support = file && resolveSupport(file, { ...spot, path: [...spot.path, 'support'] });
  return support ? { support } : {};
}
