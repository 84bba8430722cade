/**
 * The expressions of worked calculations, read and evaluated by mathjs. Named imports and a trimmed instance keep the
 * rest of the library out of the bundle; what only converts units imports `unit-library.ts` and never loads this.
 */
import {
  absDependencies,
  addDependencies,
  cosDependencies,
  create,
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
} from 'mathjs/number';

import { type ParsedExpression, readExpression } from './expression.js';

export { ExpressionError, type ParsedExpression, type Scope } from './expression.js';

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
