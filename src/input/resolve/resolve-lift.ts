/** The lift over the motor and the way out. */

import type { Lift, Room } from '../installation.js';
import type { Path } from '../pending-issue.js';
import type { FileContent } from '../schema/file-schema.js';
import {
  assumed,
  computed,
  given,
  givenBy,
  type InputContext,
  placeholder,
  practice,
} from './input-context.js';

type FileRoom = NonNullable<FileContent['room']>;
type FileLift = NonNullable<FileRoom['lift']>;
type FileSling = NonNullable<FileLift['sling']>;

const AT: Path = ['room', 'lift'];
/** What a plumb line from a beam is set to [m]: 1 in. */
const PLUMB = 0.0254;

/**
 * The lift over the motor.
 *
 * @param reading - where issues and assumptions go [-]
 * @param file - content of `room.lift` [-]
 * @returns the lift, SI; nothing where the file has none [-]
 */
export function resolveLift(reading: InputContext, file: FileRoom['lift']): Pick<Room, 'lift'> {
  if (file === undefined) return {};
  const { anchor, rating, sling, source } = file;
  const hoist = file['hoist-height'];
  const own = (value: number, key: string) =>
    source === undefined ? given(value, [...AT, key]) : givenBy(value, [...AT, key], source);
  return {
    lift: {
      anchor: [anchor.east, anchor.north, anchor.elevation],
      ...(rating !== undefined && { rating: given(rating, [...AT, 'rating']) }),
      ...(hoist !== undefined && { hoistHeight: given(hoist, [...AT, 'hoist-height']) }),
      hookToSling: hookToSling(reading, file),
      ...(sling && { sling: resolveSling(reading, sling) }),
      ...(file.factor !== undefined && { factor: own(file.factor, 'factor') }),
      offCentre: offCentre(reading, file, own),
    },
  };
}

function hookToSling(reading: InputContext, file: FileLift): Lift['hookToSling'] {
  const path: Path = [...AT, 'hook-to-sling'];
  const value = file['hook-to-sling'];
  if (value !== undefined) return given(value, path);
  reading.assume(path, {
    what: 'height of shackle and ring between hook and sling',
    value: reading.print(0, 'length'),
    citation: practice('the sling hangs in the hook itself'),
    effect: 'Height needed to draw the motor; a shackle or ring adds its own',
  });
  return assumed(0, path);
}

function offCentre(
  reading: InputContext,
  file: FileLift,
  own: (value: number, key: string) => Lift['offCentre'],
): Lift['offCentre'] {
  const value = file['off-centre'];
  if (value !== undefined) return own(value, 'off-centre');
  reading.assume([...AT, 'off-centre'], {
    what: 'how far the anchor may stand off the centre line of the motor',
    value: reading.print(PLUMB, 'length'),
    citation: practice('what a plumb line from a beam is set to'),
    effect: 'A pull off the centre line drags the motor against its register as it comes free',
  });
  return assumed(PLUMB, [...AT, 'off-centre']);
}

function resolveSling(reading: InputContext, file: FileSling): NonNullable<Lift['sling']> {
  const path: Path = [...AT, 'sling'];
  const { legs, angle, length, rating } = file;
  const spread = legs === 1 ? 0 : (file.spread ?? 0);
  if (legs > 1 && file.spread === undefined)
    reading.report('input.missing', [...path, 'spread'], { key: 'spread' }, 'holder');
  const by = {
    legs,
    spread,
    ...(rating !== undefined && { rating: given(rating, [...path, 'rating']) }),
  };
  if (
    legs === 1
      ? length === undefined || angle !== undefined
      : (angle === undefined) === (length === undefined)
  ) {
    reading.report('input.sling-shape', path, { legs: String(legs) }, 'holder');
    return { ...by, angle: placeholder, height: placeholder };
  }
  const statics = { source: 'statics', clause: 'height of a sling', confidence: 'computed' } as const;
  if (length !== undefined) {
    if (!(length > spread / 2))
      reading.report('input.sling-too-short', [...path, 'length'], {
        length: reading.print(length, 'length'),
        spread: reading.print(spread, 'length'),
      });
    const height = Math.sqrt(Math.max(0, length ** 2 - (spread / 2) ** 2));
    return {
      ...by,
      angle: computed(Math.atan2(height, spread / 2), 'from length and spread of the sling', statics),
      height: computed(height, 'from length and spread of the sling', statics),
    };
  }
  const wide = angle ?? 0;
  if (!(wide < Math.PI / 2))
    reading.report('input.sling-angle', [...path, 'angle'], {
      found: reading.print(wide, 'angle'),
    });
  return {
    ...by,
    angle: given(wide, [...path, 'angle']),
    height: computed(
      (spread / 2) * Math.tan(wide),
      'half the spread times the tangent of the angle',
      statics,
    ),
  };
}

/**
 * The opening the motor is taken out by.
 *
 * @param file - content of `room.way-out` [-]
 * @returns middle and width of the opening, SI; nothing where the file has none [-]
 */
export function resolveWayOut(file: FileRoom['way-out']): Pick<Room, 'wayOut'> {
  if (file === undefined) return {};
  return { wayOut: { at: [file.east, file.north], width: given(file.width, ['room', 'way-out', 'width']) } };
}
