/**
 * The one place of the report that turns SI numbers into text. Everything printed goes through `units`, so that a
 * review is wholly in US or wholly in SI units.
 */
import type { UnitSystem } from '../input/installation.js';
import type { Vec3 } from '../model/conventions.js';
import {
  type Dimension,
  type FormatOptions,
  formatLoad,
  formatLoadNumber,
  formatNumber,
  formatQuantity,
  printUnits,
  temperatureZero,
  unitFactor,
  unitLabel,
} from '../units/index.js';

/** Stands where there is no number. */
export const NO_NUMBER = '–';

export interface Writer {
  readonly system: UnitSystem;
  /** Number with its unit: `1,240 lb`. */
  quantity(value: number | undefined, dimension: Dimension, options?: FormatOptions): string;
  /** Number alone, in the unit of `unit`. */
  number(value: number | undefined, dimension: Dimension, options?: FormatOptions): string;
  /** Unit of a table's numbers. */
  unit(dimension: Dimension): string;
  /**
   * Writer of one table's numbers: so many significant digits, but nothing finer than is worth saying beside the
   * largest number of the table.
   */
  scaled(
    dimension: Dimension,
    values: readonly (number | undefined)[],
    options?: { readonly significant?: number },
  ): (value: number | undefined) => string;
  /** Load on a support or a nozzle with its unit, rounded as everywhere: `1,240 lb`. */
  load(value: number | undefined): string;
  /** The same without its unit, for a table of forces. */
  loadNumber(value: number | undefined): string;
  /** Demand over limit, two decimals; four near 1, so that 1.004 is not printed as 1.00. */
  ratio(value: number | undefined): string;
  /** Plain number without unit. */
  plain(value: number | undefined, significant?: number): string;
  /** Very small number as digits times a power of ten: `3.2 × 10⁻¹⁵`. */
  power(value: number): string;
  /** Three numbers of one unit, separated by commas: east, north, up. */
  vector(value: Vec3, dimension: Dimension, options?: FormatOptions): string;
  /** A length from a thousandth of an inch to a long span, in the unit it is measured in on site. */
  distance(value: number | undefined): string;
  /** Direction in words of the building plan: `north`, `up`, `bearing 30°, rising 45°`. */
  bearing(direction: Vec3): string;
}

/**
 * Writer for one system of units.
 *
 * @param system - units to print in
 * @returns functions from SI numbers to text
 */
export function createWriter(system: UnitSystem): Writer {
  const plain = (value: number | undefined, significant = 3): string =>
    // Ratios print in per cent: a plain number is a hundredth of it in per cent.
    isNumber(value) ? formatNumber(value / 100, 'ratio', system, { significant }) : NO_NUMBER;
  const number: Writer['number'] = (value, dimension, options) =>
    isNumber(value) ? formatNumber(value, dimension, system, options) : NO_NUMBER;
  return {
    system,
    quantity: (value, dimension, options) =>
      isNumber(value) ? formatQuantity(value, dimension, system, options) : NO_NUMBER,
    number,
    unit: (dimension) => unitLabel(dimension, system),
    scaled: (dimension, values, options) => scaled(system, dimension, values, options?.significant ?? 3),
    load: (value) => (isNumber(value) ? formatLoad(value, system) : NO_NUMBER),
    loadNumber: (value) => (isNumber(value) ? formatLoadNumber(value, system) : NO_NUMBER),
    ratio: (value) => {
      if (!isNumber(value)) return NO_NUMBER;
      const isNearOne = Math.abs(value - 1) < 0.01 && Math.abs(value - 1) > 5e-5;
      const decimals = isNearOne ? 4 : value >= 10 ? 1 : 2;
      return formatNumber(value / 100, 'ratio', system, { decimals });
    },
    plain,
    power: (value) => plain(value, 2),
    vector: (value, dimension, options) => value.map((part) => number(part, dimension, options)).join(', '),
    distance: (value) => (isNumber(value) ? distance(value, system) : NO_NUMBER),
    bearing: (direction) => bearing(direction, system),
  };
}

/** Whether there is a number worth printing. */
function isNumber(value: number | undefined): value is number {
  return value !== undefined && Number.isFinite(value);
}

function scaled(
  system: UnitSystem,
  dimension: Dimension,
  values: readonly (number | undefined)[],
  significant: number,
): (value: number | undefined) => string {
  const printed = values.filter(isNumber).map((value) => Math.abs(inTableUnit(value, dimension, system)));
  const largest = Math.max(0, ...printed);
  if (largest === 0) return (value) => (isNumber(value) ? formatNumber(value, dimension, system) : NO_NUMBER);
  const floor = exponent(largest) - significant;
  return (value) => {
    if (!isNumber(value)) return NO_NUMBER;
    const size = Math.abs(inTableUnit(value, dimension, system));
    const step = size === 0 ? floor : Math.max(floor, exponent(size) - significant + 1);
    // Rounding before printing cuts digits left of the point as well: 1 244 is 1 240 to three digits.
    const rounded = Math.sign(value) * Math.round(size / 10 ** step) * 10 ** step;
    const decimals = rounded === 0 ? 0 : Math.max(0, -step);
    return formatNumber(fromTableUnit(rounded, dimension, system), dimension, system, { decimals });
  };
}

/** From this length on a rule with feet is used: 3 ft [m]. */
const LONG = 0.9144;

function distance(value: number, system: UnitSystem): string {
  return system === 'us' && Math.abs(value) >= LONG
    ? formatQuantity(value, 'length', system, { feetInches: true })
    : formatQuantity(value, 'length', system);
}

/** Words of the plan, clockwise from north. */
const PLAN = [
  'north',
  'north-east',
  'east',
  'south-east',
  'south',
  'south-west',
  'west',
  'north-west',
] as const;
/** Half of the last printed digit of an angle [rad]. */
const SAME_ANGLE = 5e-4;

function bearing([east, north, up]: Vec3, system: UnitSystem): string {
  const level = Math.hypot(east, north);
  const rise = Math.atan2(up, level);
  if (level < SAME_ANGLE) return up > 0 ? 'up' : 'down';
  const turn = (Math.atan2(east, north) + 2 * Math.PI) % (2 * Math.PI);
  const eighth = Math.round(turn / (Math.PI / 4));
  const plan =
    Math.abs(turn - (eighth * Math.PI) / 4) < SAME_ANGLE
      ? (PLAN[eighth % PLAN.length] ?? 'north')
      : `bearing ${formatQuantity(turn, 'angle', system)}`;
  if (Math.abs(rise) < SAME_ANGLE) return plan;
  return `${plan}, ${rise > 0 ? 'rising' : 'falling'} ${formatQuantity(Math.abs(rise), 'angle', system)}`;
}

function exponent(value: number): number {
  return Math.floor(Math.log10(value) + 1e-12);
}

function inTableUnit(value: number, dimension: Dimension, system: UnitSystem): number {
  const { factor, zero } = tableUnit(dimension, system);
  return (value - zero) / factor;
}

function fromTableUnit(value: number, dimension: Dimension, system: UnitSystem): number {
  const { factor, zero } = tableUnit(dimension, system);
  return value * factor + zero;
}

function tableUnit(
  dimension: Dimension,
  system: UnitSystem,
): { readonly factor: number; readonly zero: number } {
  const usual = printUnits[system][dimension];
  const unit = dimension === 'force' && usual.larger !== undefined ? usual.larger.unit : usual.unit;
  return {
    factor: unitFactor(unit, dimension) ?? 1,
    zero: dimension === 'temperature' ? (temperatureZero[unit] ?? 0) : 0,
  };
}
