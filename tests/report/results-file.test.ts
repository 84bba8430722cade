import Ajv2020 from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { resultsFile } from '../../src/report/results/results-file.js';
import { resultsJsonSchema, resultsShape } from '../../src/report/results/results-schema.js';
import { reviewed, reviewedWithConnectors } from './fixture.js';

const whole = reviewed();
const results = resultsFile(whole, whole.findings, { version: '1.2.3' });
const validate = new Ajv2020.default({ strict: true }).compile(resultsJsonSchema());

test('the results file is valid by its published schema', () => {
  expect(validate(results)).toBe(true);
});

test('it is the same after writing and reading as JSON', () => {
  expect(resultsShape().parse(JSON.parse(JSON.stringify(results)))).toEqual(results);
});

test.each([
  ['an unknown key', { ...results, remark: 'x' }],
  ['another format', { ...results, format: 'pipeborne-results/2' }],
  ['a short fingerprint', { ...results, input: { sha256: 'ab' } }],
  ['a verdict that is none', { ...results, verdict: 'passes' }],
])('the schema refuses %s', (_what, wrong) => {
  expect(validate(wrong)).toBe(false);
});

test('every condition has both nozzles, every support and a balance', () => {
  expect(Object.keys(results.conditions).sort()).toEqual(Object.keys(whole.response.conditions).sort());
  for (const [name, condition] of Object.entries(results.conditions)) {
    // With the pump lifted out there is nothing for the pipe to act on.
    expect(condition.nozzles === undefined).toBe(name === 'pump-out');
    expect(Object.keys(condition.supports).sort()).toEqual(
      whole.layout.supports.map((support) => support.mark).sort(),
    );
    expect(condition.balance.residual).toBeLessThan(1e-9);
  }
});

describe('signs', () => {
  test('what hangs pulls its support down', () => {
    expect(results.conditions.filled?.supports.H3?.force[2]).toBeLessThan(0);
  });

  test('what acts and what holds cancel', () => {
    const balance = results.conditions.filled?.balance;
    expect((balance?.applied.force[2] ?? 0) + (balance?.reacted.force[2] ?? 0)).toBeCloseTo(0, 4);
    expect(balance?.applied.force[2]).toBeLessThan(0);
  });
});

test('a result that is no number is refused, and its place is told', () => {
  const filled = whole.response.conditions.filled;
  if (filled === undefined) throw new Error('the fixture has no condition "filled"');
  const broken = {
    ...whole,
    response: {
      ...whole.response,
      conditions: { filled: { ...filled, balance: { ...filled.balance, residual: Number.NaN } } },
    },
  };
  expect(() => resultsFile(broken, whole.findings, { version: '1.2.3' })).toThrow(
    'results.conditions.filled.balance.residual',
  );
});

test('every support says what it does, every joint with rods what they do, and the whole how far it can be trusted', () => {
  const whole = reviewedWithConnectors('gapped');
  const results = resultsFile(whole, whole.findings, { version: '0.0.0' });
  const { filled } = results.conditions;
  expect(filled?.states.H1).toEqual(['holding']);
  expect(Object.keys(filled?.states ?? {})).toEqual(Object.keys(filled?.supports ?? {}));
  expect(filled?.joints?.['connector 2']).toMatchObject({ rods: 'engaged' });
  expect(filled?.joints?.['connector 2']?.rodTension).toBeGreaterThan(0);
  expect(filled?.joints).not.toHaveProperty('connector 1');
  expect(results.quality.energy).toBeLessThan(1e-10);
  expect(results.quality.residual).toBeLessThan(1e-8);
});
