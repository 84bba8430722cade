/**
 * What a reading can be, and what it is likely to be. These are no limits: a reading outside decides nothing by that; it is
 * asked about at its box, because a slip of the pen or of the unit is nearer than the thing itself. All are common practice.
 */
import type { Measured } from './field-context.js';

/** A range of SI values, both ends included. */
export interface Range {
  readonly least: number;
  readonly most: number;
}

/** What can be and what is likely. */
export interface Plausible {
  /** Outside of it no instrument shows it. */
  readonly possible?: Range;
  /** Outside of it it is asked about. */
  readonly likely?: Range;
}

const INCH = 0.0254;
const FOOT = 0.3048;
/** Air presses with so much: no gauge shows less than nothing at all [Pa]. */
const VACUUM = -101_325;
const RPM = (2 * Math.PI) / 60;

const RANGES: Partial<Record<Measured, Plausible>> = {
  gap: { possible: { least: -2 * FOOT, most: 10 * FOOT }, likely: { least: -2 * INCH, most: 2 * INCH } },
  distance: { possible: { least: 0, most: 300 * FOOT }, likely: { least: 0, most: 60 * FOOT } },
  pressure: { possible: { least: VACUUM, most: 100e6 }, likely: { least: VACUUM, most: 4e6 } },
  temperature: { possible: { least: 0, most: 1300 }, likely: { least: 250, most: 480 } },
  velocity: { possible: { least: 0, most: 10 }, likely: { least: 0, most: INCH } },
  voltage: { possible: { least: 0, most: 50_000 } },
  current: { possible: { least: 0, most: 10_000 } },
  frequency: { possible: { least: 0, most: 20_000 }, likely: { least: 0.5, most: 500 } },
  speed: { possible: { least: 0, most: 10_000 * RPM }, likely: { least: 60 * RPM, most: 4000 * RPM } },
  torque: { likely: { least: 0, most: 5000 } },
  share: { likely: { least: 0, most: 1 } },
};

/** How many times a prediction, either way, a reading may be before it is asked about [-]. */
const TIMES: Partial<Record<Measured, number>> = {
  voltage: 1.5,
  force: 4,
  power: 3,
  current: 6,
  flow: 3,
  mass: 4,
  speed: 1.5,
};
/** A length along the pipe is asked about when it is off by more than half of it and more than so much [m]. */
const LENGTH_OFF = 3 * FOOT;

/**
 * The ranges of a box.
 *
 * @param id - of the box
 * @param measured - what is read
 * @param expected - what the review predicts [SI]
 * @returns possible and likely; nothing where anything may be
 */
export function plausibleFor(id: string, measured: Measured, expected?: number): Plausible | undefined {
  const own = RANGES[measured];
  if (expected === undefined || !(expected > 0)) return own;
  const times = TIMES[measured];
  if (times !== undefined) return { ...own, likely: { least: expected / times, most: expected * times } };
  // Along the pipe and over the floor a support is near where it is drawn; what room is left may be any.
  if (measured !== 'distance' || !id.startsWith('supports.')) return own;
  const off = Math.max(LENGTH_OFF, expected / 2);
  return { ...own, likely: { least: Math.max(0, expected - off), most: expected + off } };
}

/**
 * How a value stands to the ranges of its box.
 *
 * @param value - SI
 * @param plausible - ranges
 * @returns impossible before unlikely; nothing where neither
 */
export function doubtOf(
  value: number,
  plausible: Plausible | undefined,
): 'impossible' | 'unlikely' | undefined {
  const isOutside = (range: Range | undefined) =>
    range !== undefined && (value < range.least || value > range.most);
  if (isOutside(plausible?.possible)) return 'impossible';
  return isOutside(plausible?.likely) ? 'unlikely' : undefined;
}
