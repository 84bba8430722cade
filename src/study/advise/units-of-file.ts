/** Numbers in the units of the file: steps that a fitter can measure, and quantities as a file writes them. */
import type { UnitSystem } from '../../input/installation.js';
import { type Dimension, formatQuantity, parseQuantity } from '../../units/index.js';

const INCH = 0.0254;
const POUND = 4.4482216152605;

/** What a fitter measures by. */
export interface FileUnits {
  readonly system: UnitSystem;
  /** Steps of a place along a pipe [m]. */
  readonly step: number;
  /** Distances a support may be moved by, from the shortest [m]. */
  readonly moves: readonly number[];
  /** Heights that nuts and shims are set by, from the smallest [m]. */
  readonly heights: readonly number[];
  /** Lengths a leg may be made longer by, from the shortest [m]. */
  readonly legs: readonly number[];
  /** A length as the file may hold it. */
  readonly length: (metres: number) => string;
  /** A small length as the file may hold it. */
  readonly height: (metres: number) => string;
  /** A force as the file may hold it. */
  readonly force: (newtons: number) => string;
  /** A spring rate as the file may hold it. */
  readonly rate: (newtonsPerMetre: number) => string;
  /** A quantity as printed. */
  readonly print: (value: number, dimension: Dimension) => string;
}

/** Distances in steps: close together near where the support stands. */
const MOVES = [1, 2, 4, 6, 8, 12, 16, 24, 32, 40, 48, 64];

/**
 * The units of a file.
 *
 * @param system - units of its review
 * @returns steps in [m], and writers of quantities
 */
export function unitsOfFile(system: UnitSystem): FileUnits {
  const us = system === 'us';
  const step = us ? 3 * INCH : 0.05;
  return {
    system,
    step,
    moves: MOVES.map((count) => count * step),
    heights: us ? [1, 2, 3, 4, 6].map((count) => (count * INCH) / 16) : [0.001, 0.002, 0.003, 0.005, 0.008],
    legs: us ? [1, 2, 3, 4, 6].map((feet) => feet * 12 * INCH) : [0.3, 0.6, 1, 1.5, 2],
    length: (metres) =>
      us ? feetAndInches(Math.round((metres / INCH) * 2) / 2) : `${Math.round(metres * 1000)} mm`,
    height: (metres) =>
      us ? `${sign(metres)}${sixteenths(Math.abs(metres))} in` : `${rounded(metres * 1000, 10)} mm`,
    force: (newtons) => (us ? `${rounded(newtons / POUND, 0.1)} lb` : `${rounded(newtons / 1000, 100)} kN`),
    rate: (stiffness) =>
      us ? `${twoDigits(stiffness / (POUND / INCH))} lb/in` : `${twoDigits(stiffness / 1000)} N/mm`,
    print: (value, dimension) => formatQuantity(value, dimension, system, { feetInches: true }),
  };
}

function sign(value: number): string {
  return value < 0 ? '-' : '';
}

/** To so many parts of a unit: 10 for tenths, 0.1 for tens. */
function rounded(value: number, parts: number): number {
  return Math.round(value * parts) / parts;
}

/** Two digits that count: rates are given no finer. */
function twoDigits(value: number): number {
  const scale = 10 ** (Math.floor(Math.log10(value)) - 1);
  return scale >= 1 ? Math.round(value / scale) * scale : rounded(value, Math.round(1 / scale));
}

function sixteenths(metres: number): string {
  const count = Math.round((metres / INCH) * 16);
  const whole = Math.floor(count / 16);
  let [top, bottom] = [count - 16 * whole, 16];
  while (top > 0 && top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  if (top === 0) return String(whole);
  return whole === 0 ? `${top}/${bottom}` : `${whole} ${top}/${bottom}`;
}

function feetAndInches(inches: number): string {
  const feet = Math.floor(inches / 12);
  const rest = sixteenths((inches - 12 * feet) * INCH);
  if (feet === 0) return `${rest} in`;
  return rest === '0' ? `${feet} ft` : `${feet} ft ${rest} in`;
}

/**
 * The SI value of a quantity that was just written.
 *
 * @param text - as `FileUnits` writes it
 * @param dimension - what it measures
 * @returns value in the SI unit of the dimension; not a number where the text cannot be read
 */
export function siValue(text: string, dimension: Dimension): number {
  const read = parseQuantity(text, dimension);
  return read.ok ? read.value : Number.NaN;
}
