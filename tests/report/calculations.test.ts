import { describe, expect, test } from 'vitest';
import { composeReview } from '../../src/report/compose-review.js';
import { parseExpression } from '../../src/units/mathjs.js';
import { reviewed } from './fixture.js';

const whole = reviewed();
const calculated = whole.findings.filter((finding) => finding.calculation !== undefined);

interface Printed {
  readonly id: string;
  readonly numbers: string;
  readonly result: string;
  readonly where: readonly { readonly symbol: string; readonly value: string }[];
  readonly limit: string;
  readonly hasLimit: boolean;
}

function printed(units: 'us' | 'si', id: 'calculations' | 'duty'): readonly Printed[] {
  const { view } = composeReview(whole, { reader: 'engineer', units, version: '0.0.0' });
  const slots = view.sections as readonly Readonly<Record<string, unknown>>[];
  const section = slots.find((one) => one[id] !== false)?.[id] as {
    readonly calculations: readonly Printed[];
  };
  return section.calculations;
}

const SUPERSCRIPTS = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const numberIn = (text: string) =>
  Number(
    /−?[\d.,\u202f]+/
      .exec(text)?.[0]
      .replace(/[,\u202f]/g, '')
      .replace('−', '-'),
  );
const evaluated = (line: string) =>
  parseExpression(
    line
      .replace(/^\S+ = /, '')
      .replace(
        /[⁰¹²³⁴⁵⁶⁷⁸⁹]+/g,
        (digits) => `^${[...digits].map((one) => SUPERSCRIPTS.indexOf(one)).join('')}`,
      ),
  ).evaluate({});

test('the fixture has calculations to look at', () => {
  expect(new Set(calculated.map((finding) => finding.check)).size).toBeGreaterThan(3);
});

test.each(calculated)(
  'the formula of $check at $at gives what the check found',
  ({ calculation, demand }) => {
    const scope = Object.fromEntries((calculation?.values ?? []).map((value) => [value.symbol, value.value]));
    const value = parseExpression(calculation?.formula ?? '').evaluate(scope);
    expect(Math.abs(value - (demand ?? Number.NaN))).toBeLessThanOrEqual(1e-9 * Math.abs(demand ?? 0));
  },
);

describe.each(['us', 'si'] as const)('worked calculations in %s units', (units) => {
  const all = [...printed(units, 'calculations'), ...printed(units, 'duty')];

  test.each(all)('a calculator gives the printed result of $id', ({ numbers, result }) => {
    const again = evaluated(numbers);
    expect(Math.abs(again - numberIn(result.replace(/^\S+ = /, '')))).toBeLessThanOrEqual(
      5e-5 * Math.abs(again),
    );
  });

  test('the weight and the sum of support loads print alike', () => {
    const result = (id: string) => all.find((one) => one.id === id)?.result.replace(/^\S+ = /, '');
    expect(result('total-weight')).toBe(result('sum-of-support-loads'));
  });

  test('the principal stress starts from the normal and shear stress printed before it', () => {
    const principal = all.find((one) => one.id === 'calculation-nozzle-principal-stress');
    const given = (symbol: string) =>
      numberIn(principal?.where.find((value) => value.symbol === symbol)?.value ?? '');
    const stepResult = (id: string) =>
      numberIn(all.find((one) => one.id === id)?.result.replace(/^\S+ = /, '') ?? '');
    expect(Math.abs(stepResult('nozzle-normal-stress') / given('S') - 1)).toBeLessThan(1e-4);
    expect(Math.abs(stepResult('nozzle-shear-stress') / given('T') - 1)).toBeLessThan(1e-4);
  });

  test('a limit stands in the unit of the result it is compared with', () => {
    const unitOf = (text: string) => text.split(' ').at(-1);
    const compared = all.filter((one) => one.hasLimit);
    expect(compared.length).toBeGreaterThan(0);
    for (const one of compared) expect(unitOf(one.limit)).toBe(unitOf(one.result));
  });
});
