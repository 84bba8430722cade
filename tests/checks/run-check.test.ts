import { expect, test } from 'vitest';
import { allChecks, runChecks } from '../../src/checks/all-checks.js';
import { type Demand, defineCheck } from '../../src/checks/define-check.js';
import type { RuleFacts } from '../../src/checks/rule-facts.js';
import { runCheck } from '../../src/checks/run-check.js';
import { checksSentences } from '../../src/issues/sentences/checks/checks.js';
import { sentences } from '../../src/issues/sentences/index.js';
import type { Finding } from '../../src/judging/finding.js';
import { overallVerdict } from '../../src/judging/verdict.js';
import { worstFirst } from '../../src/judging/worst-first.js';
import { subject, UNUSABLE } from './fixture.js';

const FACTS = {
  trade: 'Pipe fitter',
  section: 'support-loads',
  dependsOn: ['supports'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'start',
  consequence: 'hurt or break',
} as const satisfies RuleFacts;

const of = (...demands: readonly Demand[]) =>
  defineCheck({
    id: 'trial',
    title: 'Trial',
    ...FACTS,
    unit: 'N',
    basis: [{ source: 'statics', clause: '', confidence: 'computed' }],
    exceeds: 'checks.rod-load.exceeds',
    noPlace: 'checks.rod-load.no-place',
    places: () => ['H1'],
    at: (place) => place,
    demands: () => demands,
  });
const compared = (demand: number | undefined, limit: number | undefined, more: object = {}): Demand => ({
  kind: 'compared',
  demand,
  limit,
  ...more,
});
const found = (...demands: readonly Demand[]): Finding => {
  const [finding] = runCheck(of(...demands), subject());
  if (finding === undefined) throw new Error('no finding');
  return finding;
};

test('a demand below its limit meets it, with the ratio of the two', () => {
  expect(found(compared(50, 200))).toMatchObject({
    verdict: 'meets',
    ratio: 0.25,
    demand: 50,
    limit: 200,
    at: 'H1',
  });
});

test('a demand above its limit exceeds it and carries advice', () => {
  expect(found(compared(201, 200))).toMatchObject({
    verdict: 'exceeds',
    reason: { code: 'checks.rod-load.exceeds' },
  });
});

test('a demand equal to its limit meets it, even when arithmetic leaves it a last digit above', () => {
  expect(found(compared(200, 200)).verdict).toBe('meets');
  expect(found(compared(0.1 + 0.2, 0.3)).verdict).toBe('meets');
  expect(found(compared(0.3 * (1 + 1e-8), 0.3)).verdict).toBe('exceeds');
});

test('no demand at all meets any limit', () => {
  expect(found(compared(0, 200))).toMatchObject({ verdict: 'meets', ratio: 0 });
});

test.each(UNUSABLE)('a limit that is %s cannot be compared with', (_word, limit) => {
  expect(found(compared(50, limit))).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.limit-unusable' },
  });
  expect(found(compared(50, limit)).ratio).toBeUndefined();
});

test.each([
  ['not a number', Number.NaN],
  ['infinite', Number.POSITIVE_INFINITY],
  ['negative', -1],
] as const)('a demand that is %s cannot be compared', (_word, demand) => {
  expect(found(compared(demand, 200))).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.demand-unusable' },
  });
});

test('a missing limit cannot be told, for the reason the check names', () => {
  expect(found(compared(50, undefined)).reason?.code).toBe('checks.limit-missing');
  expect(found(compared(50, undefined, { missing: 'checks.rod-load.no-rating' })).reason?.code).toBe(
    'checks.rod-load.no-rating',
  );
  expect(found(compared(50, undefined)).verdict).toBe('cannot-tell');
});

test('a missing demand cannot be told', () => {
  expect(found(compared(undefined, 200))).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.demand-missing' },
  });
});

test('a demand known between bounds meets by its largest, exceeds by its least, and cannot be told between', () => {
  const between = (largest: number, least: number | undefined) =>
    found(compared(largest, 100, { least: { demand: least, code: 'checks.rod-load.no-rating' } }));
  expect(between(90, 50).verdict).toBe('meets');
  expect(between(150, 110).verdict).toBe('exceeds');
  for (const untold of [between(150, 50), between(150, undefined), between(150, Number.NaN)]) {
    expect(untold).toMatchObject({ verdict: 'cannot-tell', reason: { code: 'checks.rod-load.no-rating' } });
  }
});

test('what must not happen exceeds when it does, without a ratio', () => {
  const finding = found({ kind: 'forbidden', happens: true, demand: 3 });
  expect(finding).toMatchObject({ verdict: 'exceeds', demand: 3 });
  expect(finding.ratio).toBeUndefined();
  expect(found({ kind: 'forbidden', happens: false }).verdict).toBe('meets');
});

test('what must not happen cannot be told when it is not known or is no number', () => {
  expect(found({ kind: 'forbidden', happens: undefined }).verdict).toBe('cannot-tell');
  expect(found({ kind: 'forbidden', happens: true, demand: Number.NaN }).verdict).toBe('cannot-tell');
});

test('the gravest demand stands for the place: exceeds before cannot-tell before meets', () => {
  const [meets, untold, exceeds] = [compared(1, 2), compared(1, undefined), compared(3, 2)];
  expect(found(meets, untold).verdict).toBe('cannot-tell');
  expect(found(untold, exceeds, meets).verdict).toBe('exceeds');
});

test('of demands of one gravity the largest ratio governs and names its condition', () => {
  const finding = found(
    compared(1, 4, { condition: 'cold' }),
    compared(3, 4, { condition: 'hot' }),
    compared(2, 4, { condition: 'test' }),
  );
  expect(finding).toMatchObject({ condition: 'hot', ratio: 0.75 });
});

test('where nothing can be told the largest demand is reported', () => {
  const [small, large] = [
    compared(1, undefined, { condition: 'cold' }),
    compared(3, undefined, { condition: 'hot' }),
  ];
  expect(found(small, large)).toMatchObject({ verdict: 'cannot-tell', condition: 'hot', demand: 3 });
});

test('equal ratios are parted by name, whatever their order and their last digits', () => {
  const cold = compared(0.3, 1, { condition: 'cold' });
  const hot = compared(0.1 + 0.2, 1, { condition: 'hot' });
  expect(found(cold, hot).condition).toBe('cold');
  expect(found(hot, cold).condition).toBe('cold');
});

test('what must not happen governs over any ratio', () => {
  const finding = found(compared(500, 1, { condition: 'cold' }), {
    kind: 'forbidden',
    happens: true,
    condition: 'hot',
  });
  expect(finding.condition).toBe('hot');
});

test('a check without a place is said not to apply, never to be met', () => {
  const check = defineCheck({
    id: 'trial',
    title: 'Trial',
    ...FACTS,
    unit: 'N',
    basis: [{ source: 'statics', clause: '', confidence: 'computed' }],
    exceeds: 'checks.rod-load.exceeds',
    noPlace: 'checks.rod-load.no-place',
    places: () => [],
    at: () => '',
    demands: () => [],
  });
  expect(runCheck(check, subject())).toMatchObject([
    { verdict: 'does-not-apply', at: 'whole installation', reason: { code: 'checks.rod-load.no-place' } },
  ]);
});

test('a place where nothing was read cannot be told', () => {
  expect(found()).toMatchObject({ verdict: 'cannot-tell', reason: { code: 'checks.nothing-read' } });
});

test('a calculation with a missing number is not handed on', () => {
  const calculation = (value: number) => ({
    symbol: 'F',
    formula: 'a',
    unit: 'N' as const,
    values: [{ symbol: 'a', value, unit: 'N' as const, meaning: 'trial' }],
  });
  expect(found(compared(1, 2, { calculation: calculation(1) })).calculation).toBeDefined();
  expect(found(compared(1, 2, { calculation: calculation(Number.NaN) })).calculation).toBeUndefined();
});

const finding = (verdict: Finding['verdict'], more: Partial<Finding> = {}): Finding => ({
  check: 'trial',
  title: 'Trial',
  at: 'H1',
  unit: 'N',
  verdict,
  comparison: false,
  basis: { source: 'statics', clause: '', confidence: 'computed' },
  ...more,
});

test('the verdict of a review is its gravest finding', () => {
  const [meets, untold, exceeds] = [finding('meets'), finding('cannot-tell'), finding('exceeds')];
  expect(overallVerdict([meets, meets])).toBe('meets');
  expect(overallVerdict([meets, untold])).toBe('cannot-tell');
  expect(overallVerdict([meets, untold, exceeds])).toBe('exceeds');
});

test('a comparison never decides the verdict', () => {
  expect(overallVerdict([finding('meets'), finding('exceeds', { comparison: true })])).toBe('meets');
});

test('what does not apply is no pass: nothing judged cannot be told', () => {
  expect(overallVerdict([finding('does-not-apply')])).toBe('cannot-tell');
  expect(overallVerdict([])).toBe('cannot-tell');
  expect(overallVerdict([finding('meets', { comparison: true })])).toBe('cannot-tell');
});

test('findings are listed from the gravest, comparisons after all that count', () => {
  const order = worstFirst([
    finding('meets', { at: 'a', ratio: 0.5 }),
    finding('exceeds', { at: 'b', ratio: 9, comparison: true }),
    finding('exceeds', { at: 'c', ratio: 1.2 }),
    finding('exceeds', { at: 'd' }),
    finding('cannot-tell', { at: 'e' }),
    finding('exceeds', { at: 'f', ratio: 1.4 }),
    finding('exceeds', { at: 'aa', ratio: 1.2 }),
  ]);
  expect(order.map(({ at }) => at)).toEqual(['d', 'f', 'aa', 'c', 'e', 'a', 'b']);
});

test('every check runs on a small installation, and its reasons have sentences', () => {
  const findings = runChecks(subject());
  expect(new Set(findings.map(({ check }) => check)).size).toBe(allChecks.length);
  const said = { ...sentences, ...checksSentences };
  for (const { reason } of findings)
    if (reason !== undefined) expect(Object.keys(said)).toContain(reason.code);
  for (const { exceeds, noPlace } of allChecks)
    expect(Object.keys(said)).toEqual(expect.arrayContaining([exceeds, noPlace]));
});

test('findings are plain data, the same on every run', () => {
  expect(JSON.stringify(runChecks(subject()))).toBe(JSON.stringify(runChecks(subject())));
});
