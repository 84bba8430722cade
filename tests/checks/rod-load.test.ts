import { expect, test } from 'vitest';
import { rodLoad } from '../../src/checks/supports/rod-load.js';
import { findingAt, findingsOf } from './findings-of.js';
import { held, placedSupport, type SubjectChange, sourced, UNUSABLE } from './fixture.js';
import { workedOut } from './worked-out.js';

const rodded = (rating: number | undefined, count = 1, change: SubjectChange = {}): SubjectChange => ({
  ...change,
  layout: {
    supports: [
      placedSupport('H1', 'suction line', 1, {
        rods: { count, size: '5/8', ...(rating !== undefined && { rating: sourced(rating) }) },
      }),
    ],
  },
});

test('a rod below its rating meets it', () => {
  expect(findingAt(rodLoad, 'H1', rodded(8000))).toMatchObject({
    verdict: 'meets',
    demand: 2000,
    ratio: 0.25,
  });
});

test('the heaviest condition governs, the pressure test among them', () => {
  const answers = { test: { supports: { H1: held([0, 0, -9000]) } } };
  const finding = findingAt(rodLoad, 'H1', rodded(8000, 1, { answers }));
  expect(finding).toMatchObject({ verdict: 'exceeds', condition: 'test', demand: 9000, unit: 'N' });
  expect(finding.reason).toMatchObject({
    code: 'checks.rod-load.exceeds',
    data: { at: 'H1', condition: 'test' },
  });
});

test('two rods share the load, and the swing counts', () => {
  const answers = { hot: { supports: { H1: held([0, 3000, -4000]) } } };
  const finding = findingAt(rodLoad, 'H1', rodded(8000, 2, { answers }));
  expect(finding).toMatchObject({ demand: 2500, condition: 'hot' });
  expect(workedOut(finding.calculation)).toBe(2500);
});

test('a rod without size or rating cannot be told', () => {
  expect(findingAt(rodLoad, 'H1', rodded(undefined))).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.rod-load.no-rating' },
  });
});

test('a hanger of which the rods are not described cannot be told', () => {
  const layout = { supports: [placedSupport('H1', 'suction line', 1)] };
  expect(findingAt(rodLoad, 'H1', { layout }).verdict).toBe('cannot-tell');
});

test.each(UNUSABLE)('a rating that is %s cannot be told', (_word, rating) => {
  expect(findingAt(rodLoad, 'H1', rodded(rating)).verdict).toBe('cannot-tell');
});

test('a load that is not a number cannot be told', () => {
  const answers = { hot: { supports: { H1: held([0, 0, Number.NaN]) } } };
  expect(findingAt(rodLoad, 'H1', rodded(8000, 1, { answers })).verdict).toBe('cannot-tell');
});

test('a stand without rods is no place of this check', () => {
  const layout = { supports: [placedSupport('S1', 'suction line', 1, { kind: 'stand' })] };
  expect(findingsOf(rodLoad, { layout })).toMatchObject([{ verdict: 'does-not-apply' }]);
});

test('the grounds are those of the rating', () => {
  const citation = { source: 'mss-sp-58', clause: 'older', confidence: 'read' } as const;
  const rating = sourced(8000, { kind: 'catalogue', table: 'rods', row: '5/8', citation });
  const layout = { supports: [placedSupport('H1', 'suction line', 1, { rods: { count: 1, rating } })] };
  expect(findingAt(rodLoad, 'H1', { layout }).basis).toEqual(citation);
  expect(findingAt(rodLoad, 'H1', rodded(8000)).basis.source).toBe('input');
});
