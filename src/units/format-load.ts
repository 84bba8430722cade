/** How finely a load is worth telling, wherever it is printed: on a terminal, a page, a picture, or in a spreadsheet. */
import { formatNumber, formatQuantity } from './format.js';
import type { UnitSystem } from './print-units.js';
import { unitFactor } from './unit-table.js';

const SIGNIFICANT = 3;
/** Table unit of forces by system, and its smallest step as a power of ten: a pound, a newton. */
const TABLE = { us: { unit: 'lb', finest: 0 }, si: { unit: 'kN', finest: -3 } } as const;

interface Rounded {
  /** In the table unit. */
  readonly value: number;
  readonly decimals: number;
}

function rounded(load: number, system: UnitSystem): Rounded {
  const { finest } = TABLE[system];
  const size = Math.abs(load) / factorOf(system);
  // A hair above keeps 1,000 in its own decade.
  const decade = size === 0 ? finest : Math.floor(Math.log10(size) + 1e-12);
  const power = Math.max(finest, decade - SIGNIFICANT + 1);
  const steps = Math.round(size / 10 ** power);
  // Divided rather than multiplied by a fraction: 7 × 0.01 is not 0.07.
  const value = power < 0 ? steps / 10 ** -power : steps * 10 ** power;
  return { value: steps === 0 ? 0 : Math.sign(load) * value, decimals: Math.max(0, -power) };
}

function factorOf(system: UnitSystem): number {
  const factor = unitFactor(TABLE[system].unit, 'force');
  if (factor === undefined) throw new RangeError(`${TABLE[system].unit} is no unit of force`);
  return factor;
}

/**
 * A load as a number for a spreadsheet, in the unit of tables of forces: three significant digits, and nothing finer than a
 * pound or a newton.
 *
 * @param load - load [N]
 * @param system - units to print in [-]
 * @returns rounded number [lb] or [kN]
 */
export function loadNumber(load: number, system: UnitSystem): number {
  return rounded(load, system).value;
}

/**
 * A load as a number for a table whose head carries the unit, rounded as `loadNumber`.
 *
 * @param load - load [N]
 * @param system - units to print in [-]
 * @returns printed number [lb] or [kN]
 */
export function formatLoadNumber(load: number, system: UnitSystem): string {
  if (!Number.isFinite(load)) return formatNumber(load, 'force', system);
  const { value, decimals } = rounded(load, system);
  return formatNumber(value * factorOf(system), 'force', system, { decimals });
}

/**
 * A load with its unit, rounded as `loadNumber`.
 *
 * @param load - load [N]
 * @param system - units to print in [-]
 * @returns printed text, for example `1,240 lb`, `423 N`, `5.52 kN`
 */
export function formatLoad(load: number, system: UnitSystem): string {
  if (!Number.isFinite(load)) return formatQuantity(load, 'force', system);
  return formatQuantity(rounded(load, system).value * factorOf(system), 'force', system);
}
