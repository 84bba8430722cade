/** Flanges of pumps, valves and suction diffusers, and the ratings a file gives. */
import { type CataloguedValve, findFlange, flangeClasses, flangeRating } from '../../catalog/index.js';
import type { BodyFlange, FlangeDimensions, ValvePart } from '../installation.js';
import { type Path, pathText } from '../pending-issue.js';
import type { FileContent } from '../schema/file-schema.js';
import { type InputContext, nearest } from './input-context.js';
import type { Step } from './walking.js';

type FileFlange = FileContent['pump']['suction']['flange'];
type FileRating = NonNullable<FileFlange['rating']>;

/** Material of a body as flanges know it. */
const MATERIALS: Readonly<Record<CataloguedValve['body'], BodyFlange['material']>> = {
  'cast steel': 'steel',
  'cast iron': 'cast iron',
  'ductile iron': 'ductile iron',
};

/**
 * A flange of a body: drilling by standard, class and size; rating given, or that of the standard where its material
 * has a table.
 *
 * @param reading - where issues go [-]
 * @param file - the flange in the file [-]
 * @param nps - nominal size [-]
 * @param path - of the flange [-]
 * @returns the flange, SI [-]
 */
export function resolveBodyFlange(
  reading: InputContext,
  file: FileFlange,
  nps: string,
  path: Path,
): BodyFlange {
  const { standard, class: pressureClass } = file;
  const isListed = standard === 'own' || describe(standard, pressureClass, nps) !== undefined;
  if (!isListed) {
    if (!flangeClasses(standard).includes(pressureClass))
      reading.report('input.unknown-class', [...path, 'class'], {
        ...nearest(pressureClass, flangeClasses(standard)),
        standard,
      });
    else
      reading.report('input.flange-not-listed', [...path, 'class'], {
        found: `${standard} class ${pressureClass}`,
        size: nps,
      });
  }
  const material = file.material ?? (standard === 'B16.1' ? 'cast iron' : 'unknown');
  return bodyFlange(reading, { ...file, material, face: file.face ?? 'unknown' }, nps, path);
}

/**
 * The flanges of a valve, both alike. Their standard follows from the class, their material from the file or from the
 * row of the catalogue; class 125 iron is flat by its standard. A class of no flange standard leaves them unknown.
 *
 * @param step - the step of the valve [-]
 * @param ends - how its ends are made [-]
 * @param listed - its row of the catalogue, if any [-]
 * @returns the flange, or nothing [-]
 */
export function valveFlange(
  { walking, path, pipe, file }: Step<'valve'>,
  ends: ValvePart['ends'],
  listed: CataloguedValve | undefined,
): Pick<ValvePart, 'flange'> {
  const { reading } = walking;
  if (ends !== 'flanged') {
    for (const key of ['face', 'material', 'rating'] as const)
      if (file[key] !== undefined) reading.report('input.not-flanged', [...path, key], { key, ends }, 'key');
    return {};
  }
  const nps = pipe.section.nps;
  const pressureClass = file.class ?? 'own';
  const standards = ['B16.5', 'B16.1'] as const;
  const standard = standards.find((name) => flangeClasses(name).includes(pressureClass)) ?? 'own';
  const saysNothing = [file.face, file.material, file.rating].every((value) => value === undefined);
  if (nps === undefined || (standard === 'own' && saysNothing)) return {};
  const known = describe(standard, pressureClass, nps);
  const iron = standard === 'B16.1' ? 'cast iron' : 'unknown';
  const material = file.material ?? (listed ? MATERIALS[listed.body] : iron);
  const face = file.face ?? (standard === 'B16.1' ? known?.face : undefined) ?? 'unknown';
  const { rating } = file;
  return {
    flange: bodyFlange(reading, { standard, class: pressureClass, material, face, rating }, nps, path),
  };
}

/**
 * A rating that the file gives.
 *
 * @param reading - where issues go [-]
 * @param rows - the rows of the file [-]
 * @param path - of the rating [-]
 * @returns temperature [K] and gauge pressure [Pa], rising in temperature; nothing where the file gives none
 */
export function givenRating(
  reading: InputContext,
  rows: FileRating | undefined,
  path: Path,
): Pick<FlangeDimensions, 'rating' | 'ratingCitation'> {
  if (rows === undefined) return {};
  rows.forEach((row, index) => {
    const before = rows[index - 1];
    if (before !== undefined && !(row.temperature > before.temperature))
      reading.report('input.rating-not-rising', [...path, index, 'temperature'], {
        found: reading.print(row.temperature, 'temperature'),
        before: reading.print(before.temperature, 'temperature'),
      });
  });
  return {
    rating: rows.map(({ temperature, pressure }) => [temperature, pressure] as const),
    ratingCitation: { source: 'input', clause: pathText(path), confidence: 'read' },
  };
}

type Described = Pick<BodyFlange, 'standard' | 'class' | 'face' | 'material'> & {
  readonly rating?: FileRating | undefined;
};

function bodyFlange(reading: InputContext, described: Described, nps: string, path: Path): BodyFlange {
  const { standard, class: pressureClass, face, material, rating } = described;
  return {
    ...(describe(standard, pressureClass, nps)?.joint ?? { nps }),
    ...listedRating(described, nps),
    ...givenRating(reading, rating, [...path, 'rating']),
    standard,
    class: pressureClass,
    face,
    material,
  };
}

function describe(standard: string, pressureClass: string, nps: string) {
  return findFlange({ standard, class: pressureClass, nps, type: 'integral' });
}

/** Ratings hang on the material; only those of cast iron and of carbon steel are in the tables. */
function listedRating(
  { standard, class: pressureClass, material }: Described,
  nps: string,
): Pick<FlangeDimensions, 'rating' | 'ratingCitation'> {
  const group = material === 'cast iron' ? 'A126-B' : material === 'steel' ? '1.1' : undefined;
  if (group === undefined) return {};
  const found = flangeRating({ standard, class: pressureClass, materialGroup: group, nps });
  return found ? { rating: found.pairs, ratingCitation: found.citation } : {};
}
