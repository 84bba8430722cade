/** Where, in which direction and at which speed vibration is read. */
import type { Installation } from '../input/installation.js';
import type { FieldContext } from './field-context.js';
import { directionsOf } from './pump-directions.js';

/** A place on stiff metal. */
export interface VibrationPoint {
  readonly key: string;
  readonly word: string;
}

/**
 * Places where a pump with an upright motor on top is read: stiff parts, no covers.
 *
 * @param installation - build
 * @returns motor top, motor bottom, and the pump
 */
export function vibrationPoints({ pump }: Installation): readonly VibrationPoint[] {
  return [
    { key: 'motor-top', word: 'Motor top' },
    { key: 'motor-bottom', word: 'Motor bottom' },
    { key: 'pump', word: pump.build === 'split-coupled' ? 'Pump at the seal cover' : 'Pump casing' },
  ];
}

/** A speed at which the pump is read [rad/s]. */
export interface ReadSpeed {
  readonly key: 'full' | 'lowest' | 'middle' | 'highest';
  readonly word: string;
  readonly speed: number;
}

/**
 * Speeds at which a pump is read: one for a motor on the line, three for a drive.
 *
 * @param installation - motor
 * @returns speeds, lowest first [rad/s]
 */
export function readSpeeds({ pump }: Installation): readonly ReadSpeed[] {
  const { speed, speeds, start } = pump.motor;
  if (speeds === undefined && start?.kind !== 'variable-speed drive') {
    return [{ key: 'full', word: 'at full speed', speed }];
  }
  const { lowest, highest } = speeds ?? { lowest: Number.NaN, highest: speed };
  return [
    { key: 'lowest', word: 'at the lowest speed', speed: lowest },
    { key: 'middle', word: 'at the middle speed', speed: (lowest + highest) / 2 },
    { key: 'highest', word: 'at the highest speed', speed: highest },
  ];
}

/**
 * Directions in which each place is read.
 *
 * @param context - layout and writer
 * @returns key and words: along the pipe, across it, along the shaft
 */
export function readDirections(
  context: FieldContext,
): readonly { readonly key: string; readonly word: string }[] {
  const { along, across } = directionsOf(context);
  return [
    { key: 'along', word: `${along}, along the pipe` },
    { key: 'across', word: `${across}, across the pipe` },
    { key: 'axial', word: 'up–down, along the shaft' },
  ];
}

/** Id of one reading of vibration. */
export function vibrationId(point: string, direction: string, speed: ReadSpeed['key']): string {
  return speed === 'full' ? `vibration.${point}-${direction}` : `vibration.${speed}-${point}-${direction}`;
}
