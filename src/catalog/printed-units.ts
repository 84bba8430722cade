/**
 * Exact factors from the units in which tables are printed to SI. Tables keep printed values; lookups convert.
 */

/** Metres in an inch. */
export const INCH = 0.0254;
/** Metres in a foot. */
export const FOOT = 0.3048;
/** Kilograms in a pound. */
export const POUND = 0.45359237;
/** Newtons in a pound-force: pound times standard gravity 9.80665 m/s². */
export const POUND_FORCE = 4.4482216152605;
/** Pascals in a pound-force per square inch. */
export const PSI = POUND_FORCE / INCH ** 2;
/** Pascals in a bar. */
export const BAR = 1e5;
/** Kilograms per cubic metre in a pound per cubic inch. */
export const POUND_PER_CUBIC_INCH = POUND / INCH ** 3;
/** Newton metres in a foot-pound. */
export const FOOT_POUND = POUND_FORCE * FOOT;
/** Watts in a horsepower of 550 foot-pounds a second. */
export const HORSEPOWER = 550 * FOOT_POUND;

/**
 * Temperature printed in degrees Fahrenheit.
 *
 * @param degrees - reading [-]
 * @returns absolute temperature [K]
 * @source common-practice
 */
export function fahrenheit(degrees: number): number {
  return (degrees + 459.67) / 1.8;
}

/**
 * Temperature printed in degrees Celsius.
 *
 * @param degrees - reading [-]
 * @returns absolute temperature [K]
 * @source common-practice
 */
export function celsius(degrees: number): number {
  return degrees + 273.15;
}
