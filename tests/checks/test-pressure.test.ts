import { expect, test } from 'vitest';
import { testPressure } from '../../src/checks/flanges/test-pressure.js';
import type { FlangeSide } from '../../src/model/layout/layout.js';
import { findingAt, findingsOf } from './findings-of.js';
import {
  dimensions,
  flangeJoint,
  type SubjectChange,
  side,
  sourced,
  UNUSABLE,
  unknownSide,
} from './fixture.js';
import { workedOut } from './worked-out.js';

const least = (design: number, tested: number) =>
  findingAt(testPressure, 'whole installation', {
    service: { designPressure: sourced(design), testPressure: sourced(tested) },
  });
const bolted = (far: FlangeSide, tested = 12e5): SubjectChange => ({
  layout: { flangeJoints: [flangeJoint(side('pump discharge'), far)] },
  service: { testPressure: sourced(tested) },
});
const flanges = (change: SubjectChange) => {
  const found = findingsOf(testPressure, change).find(({ at }) => at !== 'whole installation');
  if (found === undefined) throw new Error('no finding');
  return found;
};

test('a test at one and a half times the design pressure meets, a little less exceeds', () => {
  expect(least(8e5, 12e5)).toMatchObject({ verdict: 'meets', condition: 'test', unit: 'Pa' });
  expect(workedOut(least(8e5, 12e5).calculation)).toBeCloseTo(12e5, 6);
  expect(least(8e5, 11.9e5)).toMatchObject({
    verdict: 'exceeds',
    reason: { code: 'checks.test-pressure.too-low' },
  });
});

test.each(UNUSABLE)('a test pressure that is %s cannot be told', (_word, tested) => {
  expect(least(8e5, tested).verdict).toBe('cannot-tell');
});

test('the weakest flange sets how high the test may go: 1.5 times its rating when cold', () => {
  const weak = side('flange 2', { dimensions: dimensions({ rating: [[400, 1e6]] }) });
  expect(flanges(bolted(weak, 15e5))).toMatchObject({ verdict: 'meets', at: 'flange 2', limit: 15e5 });
  expect(flanges(bolted(weak, 15.1e5))).toMatchObject({
    verdict: 'exceeds',
    at: 'flange 2',
    reason: { code: 'checks.test-pressure.exceeds' },
  });
});

test('a flange without a rating cannot be told, and is named', () => {
  const { rating: _rating, ...unrated } = dimensions();
  expect(flanges(bolted(side('flange 2', { dimensions: unrated })))).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.test-pressure.no-rating', data: { owner: 'flange 2' } },
  });
});

test('a flange of which nothing is said is left out here; the joint says so', () => {
  expect(flanges(bolted(unknownSide('strainer 1'))).verdict).toBe('meets');
});

test('without a described flange only the least pressure is judged', () => {
  expect(findingsOf(testPressure).map(({ at }) => at)).toEqual(['whole installation']);
});
