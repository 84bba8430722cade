import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parseExpression } from '../../src/units/mathjs.js';

test('an expression is printed with its symbols and with their numbers', () => {
  const expression = parseExpression('sqrt(F^2 + 4*T^2)/(pi*D)');
  expect(expression.symbols).toEqual(['F', 'T', 'D']);
  expect(expression.withSymbols()).toBe('√(F^2 + 4 × T^2) / (π × D)');
  expect(expression.withNumbers({ F: 100, T: -2.5, D: 3 })).toBe('√(100^2 + 4 × (-2.5)^2) / (π × 3)');
});

test('a negative number squared is squared with its sign', () => {
  const expression = parseExpression('b^2');
  expect(expression.evaluate({ b: -3 })).toBe(9);
  expect(expression.withNumbers({ b: -3 })).toBe('(-3)^2');
  expect(parseExpression(expression.withNumbers({ b: -3 })).evaluate({})).toBe(9);
});

test.each([
  'b^2',
  '-b^2',
  'a - (b - c)',
  'a/b/c',
  'a^b',
  'a*b + c',
  'max(a, b) + min(a, c)*abs(b)',
  'sqrt(abs(a))/2',
  '2 a b',
  '-a^-2',
])('the printed line of %s gives its value again', (text) => {
  const nonZero = fc
    .double({ min: -1e3, max: 1e3, noNaN: true, noDefaultInfinity: true })
    .filter((x) => Math.abs(x) > 1e-3);
  fc.assert(
    fc.property(nonZero, nonZero, nonZero, (a, b, c) => {
      const expression = parseExpression(text);
      const scope = { a: text === 'a^b' ? Math.abs(a) : a, b: text === 'a^b' ? Math.round(b / 100) : b, c };
      const value = expression.evaluate(scope);
      expect(parseExpression(expression.withNumbers(scope)).evaluate({})).toBe(value);
      expect(parseExpression(expression.withSymbols()).evaluate(scope)).toBe(value);
    }),
  );
});

test('numbers may be printed with their units, in parentheses', () => {
  const expression = parseExpression('F/A');
  expect(
    expression.withNumbers({ F: 100, A: 2 }, (value, symbol) => `${value} ${symbol === 'F' ? 'lb' : 'in²'}`),
  ).toBe('(100 lb) / (2 in²)');
});

const code = (run: () => unknown): unknown => {
  try {
    return run();
  } catch (error) {
    return error instanceof Error && 'code' in error ? error.code : error;
  }
};

test.each([
  'a = 3',
  '[1, 2]',
  'f(x) = x',
  'a.b',
  '"x"',
  'import(3)',
  'evaluate("1")',
  'x > 3',
  'a!',
  'sqrt',
  'a; b',
  'true',
  '1:3',
  'a ? 1 : 2',
  'random()',
  'toString()',
])('%s is not allowed', (text) => {
  expect(code(() => parseExpression(text))).toBe('expression.not-allowed');
});

test('what cannot be read, evaluated or filled in is refused with a code', () => {
  expect(code(() => parseExpression('('))).toBe('expression.unreadable');
  expect(code(() => parseExpression('a'.repeat(501)))).toBe('expression.unreadable');
  expect(code(() => parseExpression('sqrt(-1)').evaluate({}))).toBe('expression.not-a-number');
  expect(code(() => parseExpression('1/0').evaluate({}))).toBe('expression.not-a-number');
  expect(code(() => parseExpression('a + b').evaluate({ a: 1 }))).toBe('expression.missing-symbol');
  expect(code(() => parseExpression('a + b').withNumbers({ a: 1 }))).toBe('expression.missing-symbol');
});

test.each(['in', 'cm', 'i', 'e', 'constructor'])(
  '%s is a symbol like any other, never a unit or a constant',
  (name) => {
    expect(code(() => parseExpression(`2 * ${name}`).evaluate({}))).toBe('expression.missing-symbol');
  },
);
