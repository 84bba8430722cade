import { expect, test } from 'vitest';
import { supportLoad } from '../../src/checks/supports/support-load.js';
import { findingAt, findingsOf } from './findings-of.js';
import { always, frame, held, placedSupport, type SubjectChange, sourced, UNUSABLE } from './fixture.js';

const stand = (rating: number): SubjectChange => ({
  layout: { supports: [placedSupport('H1', 'suction line', 1, { kind: 'stand', rating: sourced(rating) })] },
});

const spring = (range: { minimum?: number; maximum?: number }, load: number): SubjectChange => ({
  layout: {
    supports: [
      placedSupport('H1', 'suction line', 1, {
        kind: 'spring-hanger',
        spring: { rate: 50_000, load: sourced(2000), ...range },
      }),
    ],
  },
  answers: always({ supports: { H1: held([0, 0, -load]) } }),
});

test('a stand below its rating meets it', () => {
  expect(findingAt(supportLoad, 'H1', stand(4000))).toMatchObject({ verdict: 'meets', ratio: 0.5 });
});

test('a stand above its rating exceeds it', () => {
  expect(findingAt(supportLoad, 'H1', stand(1000))).toMatchObject({
    verdict: 'exceeds',
    reason: { code: 'checks.support-load.exceeds' },
  });
});

test.each(UNUSABLE)('a rating that is %s cannot be told', (_word, rating) => {
  expect(findingAt(supportLoad, 'H1', stand(rating)).verdict).toBe('cannot-tell');
});

test('a spring inside its working range meets it', () => {
  const finding = findingAt(supportLoad, 'H1', spring({ minimum: 1000, maximum: 3000 }, 2000));
  expect(finding.verdict).toBe('meets');
});

test('a spring above its working range exceeds it, and says so', () => {
  const finding = findingAt(supportLoad, 'H1', spring({ minimum: 1000, maximum: 3000 }, 3300));
  expect(finding).toMatchObject({ verdict: 'exceeds', reason: { code: 'checks.support-load.above-range' } });
  expect(finding.ratio).toBeCloseTo(1.1, 12);
});

test('a spring below its working range exceeds it by the shortfall', () => {
  const finding = findingAt(supportLoad, 'H1', spring({ minimum: 1000, maximum: 3000 }, 800));
  expect(finding).toMatchObject({
    verdict: 'exceeds',
    demand: 200,
    reason: { code: 'checks.support-load.below-range' },
  });
});

test('a spring is judged while it works, not while its stops hold it', () => {
  const within = held([0, 0, -2000]);
  const answers = {
    ...always({ supports: { H1: within } }),
    test: { supports: { H1: held([0, 0, -9000], 'stopped') } },
  };
  const change = { ...spring({ minimum: 1000, maximum: 3000 }, 2000), answers };
  expect(findingAt(supportLoad, 'H1', change).verdict).toBe('meets');
  const stops = frame().conditions.map((one) => (one.name === 'hot' ? { ...one, stopped: ['H1'] } : one));
  const overloadedHot = { ...answers, hot: { supports: { H1: held([0, 0, -9000]) } } };
  const layout = { ...change.layout, frame: frame({ conditions: stops }) };
  expect(findingAt(supportLoad, 'H1', { layout, answers: overloadedHot }).verdict).toBe('meets');
});

test.each([
  ['not a number', Number.NaN],
  ['infinite', Number.POSITIVE_INFINITY],
])('a spring load that is %s cannot be told', (_word, load) => {
  expect(findingAt(supportLoad, 'H1', spring({ minimum: 1000 }, load)).verdict).toBe('cannot-tell');
});

test('supports without rating or range are no place of this check', () => {
  expect(findingsOf(supportLoad)).toMatchObject([{ verdict: 'does-not-apply' }]);
});
