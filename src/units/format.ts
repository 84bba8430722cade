/** SI numbers to printed text. The only place where digits are cut. */
import type { Dimension } from './dimension.js';
import { type PrintUnit, printUnits, type UnitSystem } from './print-units.js';
import { temperatureZero, unitFactor } from './unit-table.js';

export interface FormatOptions {
  /** Significant digits; 3 where not said. */
  readonly significant?: number;
  /** Fixed decimals instead of significant digits, for columns of numbers. */
  readonly decimals?: number;
  /** Unit to print in, as a file may hold it, instead of the usual one. */
  readonly unit?: string;
  /** Lengths as feet, inches and sixteenths: `12'-6 1/2"`. Heeded in US units only. */
  readonly feetInches?: boolean;
}

const MINUS = '\u2212';
const THIN_BLANK = '\u202f';
const DEFAULT_SIGNIFICANT = 3;
/** Below this many printed units a number is rounding noise and prints as 0, except where small numbers mean something. */
const NOISE = 5e-7;
const smallNumbersMeanSomething: readonly Dimension[] = ['expansion', 'ratio', 'area', 'volume'];

/**
 * A quantity as printed, with its unit: `1,240 lb`, `84.3 psi`, `5.52 kN`.
 *
 * @param value - in the SI unit of the dimension [-]
 * @param dimension - what it measures [-]
 * @param system - units to print in [-]
 * @param options - digits, unit, feet and inches [-]
 * @returns printed text [-]
 */
export function formatQuantity(
  value: number,
  dimension: Dimension,
  system: UnitSystem,
  options: FormatOptions = {},
): string {
  if (options.feetInches && system === 'us' && (dimension === 'length' || dimension === 'head'))
    return feetAndInches(value);
  const unit = chosenUnit(value, dimension, system, options);
  const number = printNumber(inUnit(value, dimension, unit.unit), dimension, system, options);
  const glued = unit.label === '%' || unit.label === '°';
  return `${number}${glued ? '' : ' '}${unit.label}`;
}

/**
 * The number alone, in the unit of `unitLabel`, for tables whose head carries the unit.
 *
 * @param value - in the SI unit of the dimension [-]
 * @param dimension - what it measures [-]
 * @param system - units to print in [-]
 * @param options - digits, unit, feet and inches [-]
 * @returns printed number [-]
 */
export function formatNumber(
  value: number,
  dimension: Dimension,
  system: UnitSystem,
  options: FormatOptions = {},
): string {
  if (options.feetInches && system === 'us' && dimension === 'length') return feetAndInches(value);
  const unit = options.unit ?? tableUnit(dimension, system).unit;
  return printNumber(inUnit(value, dimension, unit), dimension, system, options);
}

/**
 * The unit numbers of `formatNumber` are in, for a table head.
 *
 * @param dimension - what is measured [-]
 * @param system - units to print in [-]
 * @returns label such as `ft·lb` [-]
 */
export function unitLabel(dimension: Dimension, system: UnitSystem): string {
  return tableUnit(dimension, system).label;
}

/** Tables hold one unit: forces in SI are in kN so that a column is never mixed. */
function tableUnit(
  dimension: Dimension,
  system: UnitSystem,
): { readonly unit: string; readonly label: string } {
  const unit = printUnits[system][dimension];
  return dimension === 'force' && unit.larger ? unit.larger : unit;
}

function chosenUnit(
  value: number,
  dimension: Dimension,
  system: UnitSystem,
  options: FormatOptions,
): { readonly unit: string; readonly label: string } {
  const usual: PrintUnit = printUnits[system][dimension];
  if (options.unit !== undefined) {
    const known = [printUnits.us[dimension], printUnits.si[dimension]].find(
      (entry) => entry.unit === options.unit,
    );
    return { unit: options.unit, label: known?.label ?? prettyUnit(options.unit) };
  }
  const { larger } = usual;
  // Half a unit below, so that 999.9 N is not printed as 1,000 N.
  if (larger && Math.abs(inUnit(value, dimension, usual.unit)) >= larger.from * (1 - 5e-4)) return larger;
  return usual;
}

function prettyUnit(unit: string): string {
  return unit
    .replace(/\./gu, '·')
    .replace(/deg(?=[FC])/gu, '°')
    .replace(/2$/u, '²')
    .replace(/3(?=$|\/)/gu, '³')
    .replace(/4$/u, '⁴');
}

function inUnit(value: number, dimension: Dimension, unit: string): number {
  const factor = unitFactor(unit, dimension);
  if (factor === undefined) throw new RangeError(`${dimension} is not printed in ${unit}`);
  return (value - (dimension === 'temperature' ? (temperatureZero[unit] ?? 0) : 0)) / factor;
}

function printNumber(
  number: number,
  dimension: Dimension,
  system: UnitSystem,
  options: FormatOptions,
): string {
  if (Number.isNaN(number)) return '–';
  if (!Number.isFinite(number)) return number > 0 ? '∞' : `${MINUS}∞`;
  const noise = Math.abs(number) < NOISE && !smallNumbersMeanSomething.includes(dimension);
  const size = noise ? 0 : Math.abs(number);
  const text =
    options.decimals !== undefined
      ? size.toFixed(options.decimals)
      : significantText(size, options.significant ?? DEFAULT_SIGNIFICANT, dimension);
  const sign = number < 0 && /[1-9]/u.test(text) ? MINUS : '';
  return `${sign}${groupThousands(text, system)}`;
}

function significantText(size: number, significant: number, dimension: Dimension): string {
  if (size === 0) return '0';
  // Temperatures are told to the whole degree above a hundred and to a tenth below, whatever the scale.
  if (dimension === 'temperature')
    return trimZeros(size.toFixed(size >= 100 ? Math.max(0, significant - 3) : Math.max(0, significant - 2)));
  if (size < 1e-4) {
    const [digits = '', power = ''] = size.toExponential(significant - 1).split('e');
    return `${trimZeros(digits)} × 10${superscript(Number(power))}`;
  }
  const rounded = Number(size.toPrecision(significant));
  return trimZeros(rounded.toFixed(Math.max(0, significant - 1 - Math.floor(Math.log10(rounded)))));
}

function trimZeros(text: string): string {
  return text.includes('.') ? text.replace(/\.?0+$/u, '') : text;
}

function superscript(power: number): string {
  return String(power).replace(/./gu, (sign) => (sign === '-' ? '⁻' : '⁰¹²³⁴⁵⁶⁷⁸⁹'.charAt(Number(sign))));
}

function groupThousands(text: string, system: UnitSystem): string {
  const [whole = '', fraction] = text.split('.');
  const grouped = /^\d+$/u.test(whole)
    ? whole.replace(/\B(?=(?:\d{3})+$)/gu, system === 'us' ? ',' : THIN_BLANK)
    : whole;
  return fraction === undefined ? grouped : `${grouped}.${fraction}`;
}

const SIXTEENTHS_PER_FOOT = 192;

function feetAndInches(value: number): string {
  if (!Number.isFinite(value)) return printNumber(value, 'length', 'us', {});
  const sixteenths = Math.round(
    (Math.abs(value) / (unitFactor('ft', 'length') ?? Number.NaN)) * SIXTEENTHS_PER_FOOT,
  );
  const feet = Math.floor(sixteenths / SIXTEENTHS_PER_FOOT);
  const rest = sixteenths - feet * SIXTEENTHS_PER_FOOT;
  const whole = Math.floor(rest / 16);
  const fraction = reducedFraction(rest % 16);
  const inches =
    fraction === '' ? `${whole}"` : whole === 0 && feet === 0 ? `${fraction}"` : `${whole} ${fraction}"`;
  const sign = value < 0 && sixteenths > 0 ? MINUS : '';
  return feet === 0 ? `${sign}${inches}` : `${sign}${groupThousands(String(feet), 'us')}'-${inches}`;
}

function reducedFraction(sixteenths: number): string {
  if (sixteenths === 0) return '';
  let top = sixteenths;
  let bottom = 16;
  while (top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  return `${top}/${bottom}`;
}
