import { betweenRows, type Catalogued, type Pairs } from './catalogued.js';
import { FOOT, HORSEPOWER, POUND } from './printed-units.js';

/** Shaft power [W] and inertia of the rotor [kg·m²] of two-pole motors of high efficiency. */
const twoPoleRotors: Pairs = [
  [750, 0.001],
  [1500, 0.0014],
  [2200, 0.0021],
  [3000, 0.0052],
  [4000, 0.0071],
  [5500, 0.0165],
  [7500, 0.0187],
  [11000, 0.0451],
  [15000, 0.0501],
  [18500, 0.0605],
  [22000, 0.112],
];

/**
 * Inertia of the rotor of a two-pole motor by one published list. Rotors of four and more poles are heavier (0.0033
 * against 0.0010 kg·m² at 0.75 kW), so it is the lower end of a range, not an estimate of them.
 *
 * @param rating - shaft power
 * @returns inertia [kg·m²], or undefined outside 0.75 to 22 kW
 * @source motor-inertia-list
 */
export function twoPoleRotorInertia(rating: { readonly power: number }): Catalogued | undefined {
  const value = betweenRows(twoPoleRotors, rating.power);
  if (value === undefined) return undefined;
  return {
    value,
    table: 'inertia of rotors of two-pole motors',
    row: `${Math.round(rating.power / 10) / 100} kW`,
    citation: { source: 'motor-inertia-list', clause: 'two-pole frames', confidence: 'read' },
    how: 'by straight line between the listed powers where the power is not listed',
  };
}

/** Kilogram square metres in a pound square foot. */
const POUND_SQUARE_FOOT = POUND * FOOT ** 2;

/** Radians per second in a thousand revolutions per minute. */
const THOUSAND_REVOLUTIONS = (1000 * 2 * Math.PI) / 60;

/**
 * Inertia of a load that a design B motor must be able to bring up to speed. It is the limit of the load, not the
 * inertia of the rotor; a pump's is far below, so it is the upper end of a range.
 *
 *     W k² [lb·ft²] = A hp^0.95 / (n/1000)^2.4 − 0.0685 hp^1.5 / (n/1000)^1.8, A = 27 at 3600 r/min, 24 below
 *
 * @param motor - shaft power, speed of the field at 60 Hz [rad/s]
 * @returns inertia at the speed of the motor [kg·m²]
 * @source nema-mg-1 paragraph 12.54
 */
export function startableLoadInertia(motor: {
  /** [W] */
  readonly power: number;
  /** [rad/s] */
  readonly synchronousSpeed: number;
}): Catalogued {
  const horsepower = motor.power / HORSEPOWER;
  const thousands = motor.synchronousSpeed / THOUSAND_REVOLUTIONS;
  const leading = thousands > 1.8 * 1.001 ? 27 : 24;
  const printed =
    (leading * horsepower ** 0.95) / thousands ** 2.4 - (0.0685 * horsepower ** 1.5) / thousands ** 1.8;
  return {
    value: printed * POUND_SQUARE_FOOT,
    table: 'inertia of a load that a motor must be able to start',
    row: `${Math.round(horsepower * 10) / 10} hp at ${Math.round(thousands * 1000)} r/min`,
    citation: { source: 'nema-mg-1', clause: 'paragraph 12.54, formula', confidence: 'memory' },
    how: 'by the formula, which reproduces five rows of the table read on a page',
  };
}
