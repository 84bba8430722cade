import { expect, test } from 'vitest';
import { supportSpan } from '../../src/checks/supports/support-span.js';
import type { PlacedSpan } from '../../src/model/layout/layout.js';
import { findingAt, findingsOf } from './findings-of.js';
import { NPS6, type SubjectChange, sourced, UNUSABLE } from './fixture.js';

const FOOT = 0.3048;

const span = (length: number, change: Partial<PlacedSpan> = {}): SubjectChange => ({
  layout: {
    spans: [
      {
        line: 'suction line',
        from: 'H1',
        to: 'H2',
        length,
        level: length,
        section: NPS6,
        lumps: false,
        bent: false,
        pump: false,
        ...change,
      },
    ],
  },
});
const at = 'H1 to H2';

test('a straight level span of NPS 6 inside the table, 17 ft, meets it', () => {
  const finding = findingAt(supportSpan, at, span(12 * FOOT));
  expect(finding).toMatchObject({ verdict: 'meets', comparison: false, basis: { source: 'mss-sp-69' } });
  expect(finding.ratio).toBeCloseTo(12 / 17, 9);
});

test('a longer one exceeds it', () => {
  expect(findingAt(supportSpan, at, span(18 * FOOT))).toMatchObject({
    verdict: 'exceeds',
    reason: { code: 'checks.support-span.exceeds' },
  });
});

test('a size or material that the table does not hold cannot be told', () => {
  const own = { ...NPS6, material: 'special iron' };
  expect(findingAt(supportSpan, at, span(2, { section: own }))).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.support-span.no-table' },
  });
  const { nps: _nps, ...unnamed } = NPS6;
  expect(findingAt(supportSpan, at, span(2, { section: unnamed })).verdict).toBe('cannot-tell');
});

test.each(UNUSABLE)('a longest span of the user that is %s cannot be told', (_word, longest) => {
  const limits = { span: { longest: sourced(longest) } };
  expect(findingAt(supportSpan, at, { ...span(2), limits }).verdict).toBe('cannot-tell');
});

test('a length that is not a number cannot be told', () => {
  expect(findingAt(supportSpan, at, span(Number.NaN)).verdict).toBe('cannot-tell');
});

test('a valve in the span makes it a comparison, and the stress decides', () => {
  expect(findingAt(supportSpan, at, span(18 * FOOT, { lumps: true }))).toMatchObject({
    verdict: 'exceeds',
    comparison: true,
    reason: { code: 'checks.support-span.lumps' },
  });
});

test('a span that changes direction is compared with three quarters of the table', () => {
  const finding = findingAt(supportSpan, at, span(12 * FOOT, { bent: true }));
  expect(finding).toMatchObject({ comparison: true, reason: { code: 'checks.support-span.bent' } });
  expect(finding.limit).toBeCloseTo(0.75 * 17 * FOOT, 9);
});

test('of a span that partly rises the level share is compared', () => {
  const finding = findingAt(supportSpan, at, span(12 * FOOT, { level: 8 * FOOT, bent: true }));
  expect(finding).toMatchObject({ comparison: true, reason: { code: 'checks.support-span.rises' } });
  expect(finding.demand).toBeCloseTo(8 * FOOT, 9);
});

test('the rule of the user decides on every span, lumps or not', () => {
  const limits = { span: { longest: sourced(3) } };
  const finding = findingAt(supportSpan, at, { ...span(3.2, { lumps: true, bent: true }), limits });
  expect(finding).toMatchObject({
    verdict: 'exceeds',
    comparison: false,
    limit: 3,
    basis: { source: 'input' },
  });
});

test('risers and the stretch that holds the pump are no spans', () => {
  expect(findingsOf(supportSpan, span(5, { level: 0 }))).toMatchObject([{ verdict: 'does-not-apply' }]);
  expect(findingsOf(supportSpan, span(5, { pump: true }))).toMatchObject([{ verdict: 'does-not-apply' }]);
});
