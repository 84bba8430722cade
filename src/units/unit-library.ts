/**
 * Units of mathjs on plain numbers. The library's own instance would prepare every function for every kind of number,
 * which takes longer than reading a file; its unit class alone, with the arithmetic of numbers, does not.
 */
import { createUnitClass } from 'mathjs';

/** The library exports this factory, and its declarations leave it out. */
declare module 'mathjs' {
  interface NumberUnit {
    toNumber(unit: string): number;
  }
  interface NumberUnitClass {
    new (value: number, unit: string): NumberUnit;
    createUnit(
      units: Readonly<Record<string, { readonly definition: NumberUnit }>>,
      options: { readonly override: boolean },
    ): unknown;
  }
  export function createUnitClass(parts: Readonly<Record<string, unknown>>): NumberUnitClass;
}

type UnitClass = ReturnType<typeof createUnitClass>;

/** Units of the trade that the library lacks, or holds with too few digits, as a number of known units. */
const madeUnits: Readonly<Record<string, readonly [number, string]>> = {
  psi: [1, 'lbf/in^2'],
  ksi: [1000, 'lbf/in^2'],
  Mpsi: [1e6, 'lbf/in^2'],
  psf: [1, 'lbf/ft^2'],
  kip: [1000, 'lbf'],
  // The ton of hoists in US units; the metric one is written t or tonne.
  shortTon: [2000, 'lbm'],
  // Conventional feet and inches of water: 1000 kg/m³ under standard gravity.
  ftH2O: [0.3048 * 9806.65, 'Pa'],
  inH2O: [0.0254 * 9806.65, 'Pa'],
  mH2O: [9806.65, 'Pa'],
  gpm: [231, 'in^3/minute'],
  cfm: [1, 'ft^3/minute'],
  hp: [550, 'ft lbf/s'],
  rpm: [1, 'cycle/minute'],
  cpm: [1, 'minute^-1'],
  hertz1: [1, 's^-1'],
  stepF: [5 / 9, 'K'],
  // What a weight says about a mass: the mass that weighs so much under standard gravity.
  kgOfNewton: [1 / 9.80665, 'kg'],
};

let unitClass: UnitClass | undefined;

/**
 * How many SI units one of a unit is.
 *
 * @param expression - unit in the library's notation, for example `lbf/in^2` [-]
 * @param si - SI unit in the same notation [-]
 * @returns the factor [-]
 */
export function conversionFactor(expression: string, si: string): number {
  unitClass ??= makeUnits();
  return new unitClass(1, expression).toNumber(si);
}

function makeUnits(): UnitClass {
  const Unit = createUnitClass({
    config: { number: 'number', predictable: false },
    addScalar: (a: number, b: number) => a + b,
    subtractScalar: (a: number, b: number) => a - b,
    multiplyScalar: (a: number, b: number) => a * b,
    divideScalar: (a: number, b: number) => a / b,
    pow: (a: number, b: number) => a ** b,
    abs: Math.abs,
    fix: Math.trunc,
    round: Math.round,
    equal: (a: number, b: number) => a === b,
    isNumeric: (value: unknown) => typeof value === 'number',
    format: String,
    number: Number,
    // Other kinds of number are told apart by these; there are none here.
    Complex: Object,
    BigNumber: Object,
    Fraction: Object,
  });
  for (const [name, [value, unit]] of Object.entries(madeUnits)) {
    Unit.createUnit({ [name]: { definition: new Unit(value, unit) } }, { override: true });
  }
  return Unit;
}
