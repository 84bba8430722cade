/** Rods of a hanger: how many, how strong, how far they stretch. */
import { findMaterial, findRod, rodRating } from '../../catalog/index.js';
import type { RodAssembly, Sourced } from '../installation.js';
import type { Path } from '../pending-issue.js';
import type { WalkStep } from '../schema/piping.js';
import { catalogued, computed, given, type InputContext, practice } from './input-context.js';
import type { Walking } from './walking.js';

type FileRods = NonNullable<WalkStep['hanger']> | NonNullable<WalkStep['spring-hanger']>;

/** Hanger rods are of this steel [-]. */
const ROD_STEEL = 'carbon steel';

/**
 * The rods of a hanger or spring hanger.
 *
 * @param walking - what the whole installation shares [-]
 * @param file - the hanger [-]
 * @param path - where it stands [-]
 * @returns count, size, length [m], stiffness [N/m], threads [1/m] and ratings [N]
 */
export function resolveRods(walking: Walking, file: FileRods, path: Path): RodAssembly {
  const { reading } = walking;
  const count = file.rods ?? 1;
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
  const rod = file.rod === undefined ? undefined : findRod(file.rod);
  const stiffness = rodStiffness(reading, file, count, path);
  return {
    count,
    ...(file.rod !== undefined && { size: file.rod }),
    ...(file.length !== undefined && { length: file.length }),
    ...(stiffness && { stiffness }),
    ...(rod && { threads: 1 / rod.pitch }),
    ...(rating && { rating }),
    ...(attachment !== undefined && { attachmentRating: given(attachment, [...path, 'attachment-rating']) }),
  };
}

function rodStiffness(reading: InputContext, file: FileRods, count: number, path: Path): Sourced | undefined {
  if ('rigid-rods' in file && file['rigid-rods'] === true) return undefined;
  const rod = file.rod === undefined ? undefined : findRod(file.rod);
  const steel = findMaterial(ROD_STEEL);
  if (!rod || !steel || file.length === undefined) {
    // The stretch of a rod is nothing beside that of the spring it carries.
    if ('rate' in file) return undefined;
    const missing = file.length === undefined ? 'length' : 'rod';
    reading.assumeAlike(`stiffness by ${missing}`, file.mark, [...path, missing], {
      what: 'stiffness of the rods',
      value: 'rigid',
      citation: practice(`rigid where no ${missing === 'rod' ? 'size' : missing} is given`),
      effect: 'Rods that stretch share their load with their neighbours',
    });
    return undefined;
  }
  const modulus = steel.modulus.value;
  const how = [
    reading.print(modulus, 'stress'),
    reading.print(rod.rootArea, 'area'),
    `${count} / ${reading.print(file.length, 'length')}`,
  ].join(' × ');
  return computed(
    (modulus * rod.rootArea * count) / file.length,
    `modulus × root area × rods / length = ${how}`,
    { ...rod.citation, confidence: 'computed' },
  );
}
