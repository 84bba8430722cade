import type { Room, Sourced, Vec3 } from '../installation.js';
import type { Path } from '../pending-issue.js';
import type { FileContent } from '../schema/file-schema.js';
import { assumed, given, type InputContext, placeholder } from './input-context.js';
import { resolvePanel } from './resolve-electrical.js';
import { resolveLift, resolveWayOut } from './resolve-lift.js';

type FileObject = NonNullable<NonNullable<FileContent['room']>['objects']>[number];

/** Head height of passages [m]: 80 in. */
const HEAD_HEIGHT = 2.032;

/**
 * The room: floor, ceiling, boxes round what stands in it and runs through it, the way out, and the lift.
 *
 * @param reading - where issues and assumptions go [-]
 * @param file - content of `room` [-]
 * @param spaces - content of `service-spaces` [-]
 * @returns the room, SI [-]
 */
export function resolveRoom(
  reading: InputContext,
  file: FileContent['room'],
  spaces: FileContent['service-spaces'] = [],
): Room {
  const { floor, ceiling, objects = [] } = file ?? {};
  if (floor !== undefined && ceiling !== undefined && !(ceiling > floor)) {
    reading.report('input.ceiling-below-floor', ['room', 'ceiling'], {
      ceiling: reading.print(ceiling, 'length'),
      floor: reading.print(floor, 'length'),
    });
  }
  return {
    ...(floor !== undefined && { floor }),
    ...(ceiling !== undefined && { ceiling }),
    objects: objects.map((object, index) => ({
      kind: object.kind,
      name: object.name,
      ...extent(reading, object, ['room', 'objects', index]),
      ...resolvePanel(reading, object, ['room', 'objects', index]),
      path: `room.objects[${index}]`,
    })),
    ...resolveWayOut(file?.['way-out']),
    ...resolveLift(reading, file?.lift),
    ...(floor !== undefined && { headHeight: headHeight(reading, spaces) }),
  };
}

/** Height of the level working space: the owner's, or that of passages. */
function headHeight(reading: InputContext, spaces: NonNullable<FileContent['service-spaces']>): Sourced {
  const index = spaces.findIndex(
    ({ purpose, height }) => purpose === 'working space' && height !== undefined,
  );
  const own = spaces[index]?.height;
  if (own !== undefined) return given(own, ['service-spaces', index, 'height']);
  reading.assume(['room', 'floor'], {
    what: 'height of the working space and of the way out',
    value: reading.print(HEAD_HEIGHT, 'length'),
    citation: { source: 'imc', clause: '306.2, passage of 80 in (2009)', confidence: 'read' },
    effect: 'What hangs lower than this over the floor stands in the way',
  });
  return assumed(HEAD_HEIGHT, ['room', 'floor']);
}

/** Smallest box round a thing, and its run where it is one. */
function extent(
  reading: InputContext,
  object: FileObject,
  path: Path,
): Pick<Room['objects'][number], 'low' | 'high' | 'run'> {
  const { from, to, points, diameter } = object;
  const box = from !== undefined && to !== undefined && points === undefined && diameter === undefined;
  if (box) return { low: corner(from, to, Math.min), high: corner(from, to, Math.max) };
  if (points !== undefined && diameter !== undefined && from === undefined && to === undefined) {
    const run = points.map(({ east, north, elevation }): Vec3 => [east, north, elevation]);
    const reach = (axis: 0 | 1 | 2, choose: (...values: number[]) => number, by: number): number =>
      choose(...run.map((point) => point[axis])) + by;
    const radius = diameter / 2;
    const ends = (choose: (...values: number[]) => number, by: number): Vec3 => [
      reach(0, choose, by),
      reach(1, choose, by),
      reach(2, choose, by),
    ];
    return { low: ends(Math.min, -radius), high: ends(Math.max, radius), run: { points: run, diameter } };
  }
  reading.report('input.object-shape', path, { name: object.name }, 'holder');
  const nowhere: Vec3 = [placeholder.value, placeholder.value, placeholder.value];
  return { low: nowhere, high: nowhere };
}

interface Corner {
  readonly east: number;
  readonly north: number;
  readonly elevation: number;
}

function corner(from: Corner, to: Corner, choose: (a: number, b: number) => number): Vec3 {
  return [choose(from.east, to.east), choose(from.north, to.north), choose(from.elevation, to.elevation)];
}
