/** Springs under a pump and what stands on them. */
import type { BaseSprings, Pump, Vec3 } from '../installation.js';
import type { Path } from '../pending-issue.js';
import type { FileContent } from '../schema/file-schema.js';
import { given, type InputContext, offsetVector } from './input-context.js';

type FileBase = NonNullable<FileContent['pump']['base']>;
type Base = NonNullable<Pump['base']>;

/**
 * Springs at their places, with the base moved to the middle of them, and the inertia base.
 *
 * @param context - where issues go [-]
 * @param file - the base as written, lengths [m]
 * @param position - where the base is said to stand [m]
 * @param mount - how the pump is held
 * @returns position of the middle of the springs [m], springs [N/m], [N] and mass [kg]
 */
export function resolveBaseSprings(
  context: InputContext,
  file: FileBase,
  position: Vec3,
  mount: Pump['mount'],
): Pick<Base, 'position' | 'springs' | 'inertiaBase'> {
  const path: Path = ['pump', 'base', 'springs'];
  const { springs } = file;
  const inertia = file['inertia-base'];
  if (mount === 'sprung' && !springs) context.report('input.missing', path, { key: 'springs' }, 'holder');
  if (mount !== 'sprung' && springs) context.report('input.springs-not-sprung', path, { mount }, 'key');
  if (mount !== 'sprung' && inertia)
    context.report('input.springs-not-sprung', ['pump', 'base', 'inertia-base'], { mount }, 'key');
  const { middle, places } = placesOf(context, springs, path);
  return {
    position: [position[0] + middle[0], position[1] + middle[1], position[2]],
    ...(springs && {
      springs: {
        rate: springs.rate,
        load: given(springs.load, [...path, 'load']),
        count: springs.count,
        ...(places && { places }),
        ...(springs.side !== undefined && { side: springs.side }),
      } satisfies BaseSprings,
    }),
    ...(inertia && {
      inertiaBase: {
        mass: given(inertia.weight, ['pump', 'base', 'inertia-base', 'weight'], inertia),
        below: inertia.below,
      },
    }),
  };
}

function placesOf(
  context: InputContext,
  springs: FileBase['springs'],
  path: Path,
): { readonly middle: Vec3; readonly places?: readonly Vec3[] } {
  if (springs?.at === undefined) return { middle: [0, 0, 0] };
  const at = springs.at.map(offsetVector);
  if (at.length !== springs.count)
    context.report('input.springs-places', [...path, 'at'], { places: at.length, count: springs.count });
  at.forEach(([, , up], index) => {
    if (up !== 0) context.report('input.base-up', [...path, 'at', index, 'up'], {}, 'key');
  });
  const mean = (axis: 0 | 1) => at.reduce((sum, place) => sum + place[axis], 0) / at.length;
  const middle: Vec3 = [mean(0), mean(1), 0];
  return { middle, places: at.map((place) => [place[0] - middle[0], place[1] - middle[1], 0]) };
}
