import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Calculation } from '../../src/judging/finding.js';
import { questionOfFinding, workedCalculation } from '../../src/report/calculations/worked-calculation.js';
import { createWriter } from '../../src/report/writer.js';
import { parseExpression } from '../../src/units/mathjs.js';

const INCH = 0.0254;
const POUND = 4.4482216152605;
const PSI = POUND / INCH ** 2;
const about = { id: 'joint', title: 'Joint', source: 'as given' };

/** Pressure that opens a joint as much as a moment and a pull do: 18 000 in·lb and 500 lb at 7.80 in give 203.64 psi. */
const joint = (moment: number, force: number, diameter: number): Calculation => ({
  symbol: 'Pe',
  formula: '16 * M / (pi * G^3) + 4 * F / (pi * G^2)',
  unit: 'Pa',
  values: [
    { symbol: 'M', value: moment * POUND * INCH, unit: 'N·m', meaning: 'bending moment' },
    { symbol: 'F', value: force * POUND, unit: 'N', meaning: 'pull' },
    { symbol: 'G', value: diameter * INCH, unit: 'm', meaning: 'diameter' },
  ],
});

describe('a joint worked out in US units', () => {
  const write = createWriter('us');
  const worked = workedCalculation(questionOfFinding(joint(18_000, 500, 7.8), about, write), write);

  test('the result is that of the hand calculation', () => {
    expect(worked.result).toBe('Pe = 203.64 psi');
  });

  test('formula and numbers stand in trade units', () => {
    expect(worked.formula).toBe('Pe = 16 × M / (π × G³) + 4 × F / (π × G²)');
    expect(worked.numbers).toBe('Pe = 16 × 18000 / (π × 7.8³) + 4 × 500 / (π × 7.8²)');
    expect(worked.where.map((value) => value.value)).toEqual(['18,000 in·lb', '500 lb', '7.8 in']);
  });
});

test('in SI units the same joint has the same pressure', () => {
  const write = createWriter('si');
  const worked = workedCalculation(questionOfFinding(joint(18_000, 500, 7.8), about, write), write);
  expect(worked.result).toBe('Pe = 1.4041 MPa');
  expect(203.64 * PSI).toBeCloseTo(1.40405e6, -2);
});

test('the printed numbers, read again, give the printed result', () => {
  const load = fc.double({ min: 50, max: 90_000, noNaN: true });
  fc.assert(
    fc.property(
      load,
      load,
      fc.double({ min: 1, max: 40, noNaN: true }),
      fc.constantFrom('us', 'si'),
      (moment, force, diameter, system) => {
        const write = createWriter(system);
        const worked = workedCalculation(
          questionOfFinding(joint(moment, force, diameter), about, write),
          write,
        );
        const again = parseExpression(
          worked.numbers.replace('Pe = ', '').replace('³', '^3').replace('²', '^2'),
        ).evaluate({});
        const printed = Number(
          worked.result
            .replace(/^Pe = /, '')
            .replace(/ \S+$/, '')
            .replace(/[,\u202f]/g, ''),
        );
        expect(Math.abs(again - printed) / again).toBeLessThan(5e-5);
      },
    ),
  );
});

test('where near numbers are taken from each other, more digits are put in until the result holds', () => {
  const write = createWriter('us');
  const difference: Calculation = {
    symbol: 'd',
    formula: 'a - b',
    unit: 'N',
    values: [
      { symbol: 'a', value: 10_000.4 * POUND, unit: 'N', meaning: 'one' },
      { symbol: 'b', value: 10_000.1 * POUND, unit: 'N', meaning: 'other' },
    ],
  };
  expect(workedCalculation(questionOfFinding(difference, about, write), write).result).toBe('d = 0.3 lb');
});

test('a formula with a factor of its own stays in SI units, where the factor holds', () => {
  const write = createWriter('us');
  const weight: Calculation = {
    symbol: 'W',
    formula: '9.80665 * m',
    unit: 'N',
    values: [{ symbol: 'm', value: 101, unit: 'kg', meaning: 'mass' }],
  };
  expect(workedCalculation(questionOfFinding(weight, about, write), write).result).toBe('W = 990.47 N');
});

test('a negative number stands in parentheses, so that its square is read as a square', () => {
  const write = createWriter('us');
  const square: Calculation = {
    symbol: 's',
    formula: 'b^2',
    unit: '-',
    values: [{ symbol: 'b', value: -3, unit: '-', meaning: 'number' }],
  };
  const worked = workedCalculation(questionOfFinding(square, about, write), write);
  expect(worked.numbers).toBe('s = (−3)²');
  expect(worked.result).toBe('s = 9');
});
