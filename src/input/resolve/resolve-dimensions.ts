/** Dimensions of the pump that service asks about. */

import type { Pump, PumpDimensions, Sourced } from '../installation.js';
import type { Path } from '../pending-issue.js';
import type { FileContent } from '../schema/file-schema.js';
import { assumed, given, type InputContext, practice } from './input-context.js';

type FileDimensions = NonNullable<FileContent['pump']['dimensions']>;

const AT: Path = ['pump', 'dimensions'];

/** Proportions where a dimension is not given [-]: half the casing over its diameter, and its most over the motor's top. */
const CASING_HALF = 0.3;
const MOST_OF_TOP = 0.35;
/** Motor foot between the top of the casing and the top of the motor [-]. */
const FOOT_SHARE = 0.4;

/**
 * Dimensions of the pump; heights that a room makes necessary and the file does not give are taken in proportion.
 *
 * @param reading - where issues and assumptions go [-]
 * @param file - content of the file [-]
 * @param outline - motor top and diameters [m]
 * @returns dimensions, SI; nothing where neither dimensions nor a room are described [-]
 */
export function resolveDimensions(
  reading: InputContext,
  file: FileContent,
  outline: Pump['outline'],
): Pick<Pump, 'dimensions'> {
  const own = file.pump.dimensions;
  if (own === undefined && file.room === undefined) return {};
  const dimensions: PumpDimensions = {
    ...(own && ownDimensions(own)),
    ...(file.room && heights(reading, own, outline)),
  };
  checkOrder(reading, dimensions, outline);
  return { dimensions };
}

function ownDimensions(own: FileDimensions): PumpDimensions {
  const { spacer } = own;
  const box = own['terminal-box'];
  const entry = <Name extends string>(
    name: Name,
    key:
      | 'casing-above'
      | 'casing-below'
      | 'motor-foot'
      | 'eyes'
      | 'guard-diameter'
      | 'guard-weight'
      | 'seal-weight'
      | 'rotor-weight',
  ): { readonly [key in Name]?: Sourced } => {
    const value = own[key];
    return value === undefined ? {} : ({ [name]: given(value, [...AT, key]) } as { [key in Name]: Sourced });
  };
  const sealLength = spacer?.['seal-length'];
  const couplingWeight = spacer?.['coupling-weight'];
  const at = (key: string): Path => [...AT, 'spacer', key];
  return {
    ...entry('casingAbove', 'casing-above'),
    ...entry('casingBelow', 'casing-below'),
    ...entry('motorFoot', 'motor-foot'),
    ...entry('eyes', 'eyes'),
    ...entry('guardDiameter', 'guard-diameter'),
    ...entry('guardMass', 'guard-weight'),
    ...entry('sealMass', 'seal-weight'),
    ...entry('rotorMass', 'rotor-weight'),
    ...(spacer && {
      spacer: {
        from: spacer.from,
        length: given(spacer.length, at('length')),
        ...(sealLength !== undefined && { sealLength: given(sealLength, at('seal-length')) }),
        ...(couplingWeight !== undefined && { couplingMass: given(couplingWeight, at('coupling-weight')) }),
      },
    }),
    ...(box && { terminalBox: box }),
  };
}

function heights(
  reading: InputContext,
  own: FileDimensions | undefined,
  outline: Pump['outline'],
): PumpDimensions {
  const top = outline.motorTop.value;
  const half = Math.min(CASING_HALF * outline.casingDiameter.value, MOST_OF_TOP * top);
  const entry = (
    key: 'casing-above' | 'casing-below' | 'motor-foot' | 'eyes',
    what: string,
    taken: number,
    clause: string,
  ): Sourced => {
    const path: Path = [...AT, key];
    const value = own?.[key];
    if (value !== undefined) return given(value, path);
    reading.assume(path, {
      what,
      value: reading.print(taken, 'length'),
      citation: practice(clause),
      effect: 'Room to draw the motor, to lift it and to lift the casing out',
    });
    return assumed(taken, path);
  };
  const share = `${CASING_HALF} times the diameter of the casing`;
  const above = entry('casing-above', 'top of the casing over the ports', half, share);
  const below = entry('casing-below', 'underside of the casing below the ports', half, share);
  const foot = entry(
    'motor-foot',
    'underside of the motor over the ports',
    above.value + FOOT_SHARE * (top - above.value),
    `${FOOT_SHARE} of the way from the casing to the top of the motor`,
  );
  const eyes = entry('eyes', 'lifting eyes of the motor over the ports', top, 'at the top of the motor');
  return { casingAbove: above, casingBelow: below, motorFoot: foot, eyes };
}

/** What stands on the shaft follows in one order: casing, window, motor, its top. */
function checkOrder(reading: InputContext, dimensions: PumpDimensions, { motorTop }: Pump['outline']): void {
  const { casingAbove, motorFoot, spacer } = dimensions;
  const length = (value: number): string => reading.print(value, 'length');
  if (motorFoot?.origin.kind === 'given' && !(motorFoot.value < motorTop.value))
    reading.report('input.motor-foot-over-top', [...AT, 'motor-foot'], {
      foot: length(motorFoot.value),
      top: length(motorTop.value),
    });
  if (spacer === undefined) return;
  const end = spacer.from + spacer.length.value;
  if (casingAbove?.origin.kind === 'given' && spacer.from < casingAbove.value)
    reading.report('input.spacer-in-casing', [...AT, 'spacer', 'from'], {
      from: length(spacer.from),
      casing: length(casingAbove.value),
    });
  if (motorFoot?.origin.kind === 'given' && end > motorFoot.value)
    reading.report('input.spacer-in-motor', [...AT, 'spacer', 'length'], {
      end: length(end),
      foot: length(motorFoot.value),
    });
}
