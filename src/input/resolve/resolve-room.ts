import type { Room, Vec3 } from '../installation.js';
import type { FileContent } from '../schema/file-schema.js';
import type { Reading } from './reading.js';

/**
 * The room: floor, ceiling, and boxes round what stands in it.
 *
 * @param reading - where issues go [-]
 * @param file - content of `room` [-]
 * @returns the room, SI [-]
 */
export function resolveRoom(reading: Reading, file: FileContent['room']): Room {
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
    objects: objects.map(({ kind, name, from, to }, index) => ({
      kind,
      name,
      low: corner(from, to, Math.min),
      high: corner(from, to, Math.max),
      path: `room.objects[${index}]`,
    })),
  };
}

interface Corner {
  readonly east: number;
  readonly north: number;
  readonly elevation: number;
}

function corner(from: Corner, to: Corner, choose: (a: number, b: number) => number): Vec3 {
  return [choose(from.east, to.east), choose(from.north, to.north), choose(from.elevation, to.elevation)];
}
