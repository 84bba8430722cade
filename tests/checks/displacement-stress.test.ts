import { expect, test } from 'vitest';
import { displacementStress } from '../../src/checks/pipes/displacement-stress.js';
import { findingsOf } from './findings-of.js';
import { frame, type SubjectChange, sourced, UNUSABLE, wrench } from './fixture.js';
import { workedOut } from './worked-out.js';

const Z = (Math.PI * (0.168275 ** 4 - 0.154051 ** 4)) / (32 * 0.168275);
const ALLOWABLE = 103e6;

const moments = (hot: number, cold: number, filled = 0) => ({
  hot: { members: { 'straight 1': wrench([0, 0, 0], [hot, 0, 0]) } },
  cold: { members: { 'straight 1': wrench([0, 0, 0], [cold, 0, 0]) } },
  filled: { members: { 'straight 1': wrench([0, 0, 0], [filled, 0, 0]) } },
});

const bent = (
  answers: SubjectChange['answers'],
  allowable: number | undefined = ALLOWABLE,
  cycles = 7000,
): SubjectChange => ({
  limits: {
    stress: {
      code: 'B31.9',
      cycles: sourced(cycles),
      ...(allowable !== undefined && { hot: sourced(allowable), cold: sourced(allowable) }),
    },
  },
  ...(answers && { answers }),
});
const onSuction = (change: SubjectChange) => {
  const [first] = findingsOf(displacementStress, change);
  if (first === undefined) throw new Error('no finding');
  return first;
};

test('the range is the largest difference between any two service conditions', () => {
  const finding = onSuction(bent(moments(9000, -3000)));
  expect(finding).toMatchObject({
    verdict: 'meets',
    at: 'straight 1, suction line',
    condition: 'hot to cold',
  });
  expect(finding.demand).toBeCloseTo(12_000 / Z, 0);
  expect(finding.limit).toBeCloseTo(1.5 * ALLOWABLE, 0);
  expect(workedOut(finding.calculation)).toBeCloseTo(finding.demand ?? 0, 3);
});

test('the empty line and the pressure test are no part of the range', () => {
  const answers = { test: { members: { 'straight 1': wrench([0, 0, 0], [90_000, 0, 0]) } } };
  expect(onSuction(bent(answers)).demand).toBe(0);
});

test('weight alone, the same in all conditions, gives no range', () => {
  const same = { members: { 'straight 1': wrench([0, 0, 0], [9000, 0, 0]) } };
  const answers = { filled: same, hot: same, cold: same, running: same };
  expect(onSuction(bent(answers)).demand).toBe(0);
});

test('a range above the plain allowance uses what the sustained stress leaves over, and says so', () => {
  const finding = onSuction(bent(moments(23_000, 0)));
  expect(finding).toMatchObject({
    verdict: 'meets',
    reason: { code: 'checks.displacement-stress.left-over' },
  });
  expect(finding.limit).toBeGreaterThan(1.5 * ALLOWABLE);
  expect(finding.limit).toBeLessThan(2.5 * ALLOWABLE);
});

test('a range above both exceeds', () => {
  expect(onSuction(bent(moments(40_000, 0)))).toMatchObject({
    verdict: 'exceeds',
    reason: { code: 'checks.displacement-stress.exceeds', data: { part: 'straight 1' } },
  });
});

test('nothing is added where the sustained stress is itself above its allowable', () => {
  // 25 kN·m sustained against a hot state with 50 kN·m: range 25 kN·m, nothing left over.
  const finding = onSuction(bent(moments(50_000, 25_000, 25_000)));
  expect(finding.limit).toBeCloseTo(1.5 * ALLOWABLE, 0);
  expect(finding.verdict).toBe('exceeds');
});

test('many cycles lower the allowance', () => {
  expect(onSuction(bent(moments(9000, 0), ALLOWABLE, 20_000)).limit).toBeCloseTo(
    (1.5 * ALLOWABLE * 6) / 20_000 ** 0.2,
    0,
  );
});

test('without allowable stresses it cannot be told', () => {
  const stress = { code: 'B31.9' as const, cycles: sourced(7000) };
  expect(onSuction({ limits: { stress }, answers: moments(9000, 0) })).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.stress.no-allowable' },
  });
});

test.each(UNUSABLE)('allowables that are %s cannot be told', (_word, allowable) => {
  expect(onSuction(bent(moments(9000, 0), allowable)).verdict).toBe('cannot-tell');
});

test.each(UNUSABLE.filter(([word]) => word !== 'infinite'))(
  'cycles that are %s cannot be told',
  (_word, cycles) => {
    expect(onSuction(bent(moments(9000, 0), ALLOWABLE, cycles)).verdict).toBe('cannot-tell');
  },
);

test.each([Number.NaN, Number.POSITIVE_INFINITY])(
  'a moment of %s in any condition cannot be told',
  (moment) => {
    expect(onSuction(bent(moments(moment, 0))).verdict).toBe('cannot-tell');
    expect(onSuction(bent(moments(0, moment))).verdict).toBe('cannot-tell');
  },
);

test('an elbow carries its whole intensification factor', () => {
  const answers = { hot: { members: { 'elbow 1': wrench([0, 0, 0], [9000, 0, 0]) } } };
  const [, discharge] = findingsOf(displacementStress, bent(answers));
  expect(discharge?.at).toBe('elbow 1, discharge line');
  expect(discharge?.demand).toBeCloseTo((2.266 * 9000) / Z, 0);
});

test('with one service condition alone there is no range, and it cannot be told', () => {
  const conditions = frame().conditions.filter(({ name }) => name === 'filled');
  expect(onSuction({ layout: { frame: frame({ conditions }) } }).verdict).toBe('cannot-tell');
});
