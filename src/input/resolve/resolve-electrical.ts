/** The electrical side: panels of the room, the disconnect, the nameplate, the limit of vibration. */

import type { Limits, Motor, Pump, Room } from '../installation.js';
import type { Path } from '../pending-issue.js';
import type { FileContent } from '../schema/file-schema.js';
import { given, givenBy, type InputContext, nearest } from './input-context.js';

type FileObject = NonNullable<NonNullable<FileContent['room']>['objects']>[number];
type Panel = Pick<Room['objects'][number], 'electrical'>;

/** A direction this near to an axis of the building lies along it [-]. */
const ALONG = 1 - 1e-9;

/**
 * What a panel needs in front of it.
 *
 * @param reading - where issues go [-]
 * @param object - the object of the room [-]
 * @param path - where it stands in the file [-]
 * @returns its electrical entries, SI; nothing where the file has none [-]
 */
export function resolvePanel(reading: InputContext, object: FileObject, path: Path): Panel {
  const { electrical, kind, points } = object;
  if (electrical === undefined) return {};
  const at: Path = [...path, 'electrical'];
  if (kind !== 'panel') reading.report('input.electrical-not-panel', at, { kind }, 'key');
  else if (points !== undefined) reading.report('input.electrical-of-run', at, { name: object.name }, 'key');
  const { front, opposite } = electrical;
  if (!front.some((component) => Math.abs(component) > ALONG))
    reading.report('input.panel-askew', [...at, 'front']);
  const voltage = electrical['voltage-to-ground'];
  return {
    electrical: {
      front,
      ...(voltage !== undefined && { toGround: given(voltage, [...at, 'voltage-to-ground']) }),
      ...(opposite !== undefined && { opposite }),
    },
  };
}

/**
 * What the motor is disconnected with.
 *
 * @param reading - where issues go [-]
 * @param file - content of the file [-]
 * @returns the disconnect, SI; nothing where the file has none [-]
 */
export function resolveDisconnect(reading: InputContext, file: FileContent): Pick<Pump, 'disconnect'> {
  const { disconnect } = file.pump;
  if (disconnect === undefined) return {};
  const path: Path = ['pump', 'disconnect'];
  const { name, panel, distance, lockable } = disconnect;
  const sight = disconnect['in-sight'];
  const panels = (file.room?.objects ?? []).flatMap((object) =>
    object.kind === 'panel' ? [object.name] : [],
  );
  if (panel !== undefined && !panels.includes(panel))
    reading.report('input.unknown-panel', [...path, 'panel'], nearest(panel, panels));
  if (panel !== undefined && distance !== undefined)
    reading.report('input.disconnect-distance-twice', [...path, 'distance'], { panel }, 'key');
  return {
    disconnect: {
      ...(name !== undefined && { name }),
      ...(panel !== undefined && { panel }),
      ...(distance !== undefined && { distance: given(distance, [...path, 'distance']) }),
      ...(sight !== undefined && { inSight: sight === 'yes' }),
      ...(lockable !== undefined && { lockable: lockable === 'yes' }),
    },
  };
}

/**
 * What the nameplate of the motor says of voltage and current.
 *
 * @param file - content of `pump.motor` [-]
 * @returns entries of the motor, SI [-]
 */
export function motorElectrical(
  file: FileContent['pump']['motor'],
): Pick<Motor, 'voltage' | 'fullLoadCurrent'> {
  const { voltage } = file;
  const current = file['full-load-current'];
  return {
    ...(voltage !== undefined && { voltage: given(voltage, ['pump', 'motor', 'voltage']) }),
    ...(current !== undefined && { fullLoadCurrent: given(current, ['pump', 'motor', 'full-load-current']) }),
  };
}

/**
 * The limit of vibration, with the document it is taken from.
 *
 * @param file - content of `limits` [-]
 * @returns the limit, SI; nothing where the file has none [-]
 */
export function vibrationLimit(file: FileContent['limits']): Pick<Limits, 'vibration'> {
  const vibration = file?.vibration;
  if (vibration === undefined) return {};
  return { vibration: givenBy(vibration.velocity, ['limits', 'vibration', 'velocity'], vibration.source) };
}
