/**
 * The one module that imports mathjs: unit conversion, and expressions of worked calculations. Named imports and a
 * trimmed instance keep the rest of the library out of the bundle.
 */
import {
  absDependencies,
  addDependencies,
  cosDependencies,
  create,
  createUnitDependencies,
  divideDependencies,
  type FactoryFunctionMap,
  type MathJsInstance,
  maxDependencies,
  minDependencies,
  multiplyDependencies,
  parseDependencies,
  piDependencies,
  powDependencies,
  sinDependencies,
  sqrtDependencies,
  subtractDependencies,
  tanDependencies,
  unaryMinusDependencies,
  unaryPlusDependencies,
  unitDependencies,
} from 'mathjs';

import { type ParsedExpression, readExpression } from './expression.js';

export { ExpressionError, type ParsedExpression, type Scope } from './expression.js';

let unitInstance: MathJsInstance | undefined;

/** Units of the trade that the library lacks, or holds with too few digits, as a number of known units. */
const madeUnits: Readonly<Record<string, readonly [number, string]>> = {
  psi: [1, 'lbf/in^2'],
  ksi: [1000, 'lbf/in^2'],
  Mpsi: [1e6, 'lbf/in^2'],
  psf: [1, 'lbf/ft^2'],
  kip: [1000, 'lbf'],
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

/**
 * How many SI units one of a unit is.
 *
 * @param expression - unit in the library's notation, for example `lbf/in^2` [-]
 * @param si - SI unit in the same notation [-]
 * @returns the factor [-]
 */
export function conversionFactor(expression: string, si: string): number {
  unitInstance ??= makeUnits();
  return unitInstance.unit(1, expression).toNumber(si);
}

function makeUnits(): MathJsInstance {
  const math = create(parts({ unitDependencies, createUnitDependencies }));
  for (const [name, [value, unit]] of Object.entries(madeUnits)) {
    math.createUnit(name, { definition: math.unit(value, unit) }, { override: true });
  }
  return math;
}

/** Parts of the library as it wants them; a part that a later version no longer has is an error at once. */
function parts(named: Readonly<Record<string, FactoryFunctionMap | undefined>>): FactoryFunctionMap {
  const found: FactoryFunctionMap = {};
  for (const [name, part] of Object.entries(named)) {
    if (part === undefined) throw new TypeError(`the mathematics library has no ${name}`);
    found[name] = part;
  }
  return found;
}

let expressionInstance: MathJsInstance | undefined;

/**
 * Reads an expression of a worked calculation: numbers, symbols, `+ - * / ^`, parentheses, `pi` and the functions
 * `sqrt abs min max sin cos tan`. Reads its own printed form again (`×`, `−`, `√`, `π`).
 *
 * @param text - for example `sqrt(F^2 + 4*T^2)` [-]
 * @returns the expression, ready to evaluate and print [-]
 * @throws ExpressionError `expression.unreadable`, `expression.not-allowed`
 */
export function parseExpression(text: string): ParsedExpression {
  return readExpression(text, (plain) => expressionMathematics().parse(plain));
}

/** Arithmetic on plain numbers and a handful of functions, made on first use. */
function expressionMathematics(): MathJsInstance {
  expressionInstance ??= create(
    parts({
      parseDependencies,
      addDependencies,
      subtractDependencies,
      multiplyDependencies,
      divideDependencies,
      powDependencies,
      unaryMinusDependencies,
      unaryPlusDependencies,
      sqrtDependencies,
      absDependencies,
      minDependencies,
      maxDependencies,
      sinDependencies,
      cosDependencies,
      tanDependencies,
      piDependencies,
    }),
  );
  return expressionInstance;
}
