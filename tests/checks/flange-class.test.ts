import { expect, test } from 'vitest';
import { ratedPressure } from '../../src/analysis/flanges/flange-rating.js';
import { flangeClass } from '../../src/checks/flanges/flange-class.js';
import type { FlangeSide } from '../../src/model/layout/layout.js';
import { findingsOf } from './findings-of.js';
import {
  dimensions,
  flangeJoint,
  RATING,
  type SubjectChange,
  side,
  sourced,
  UNUSABLE,
  unknownSide,
} from './fixture.js';

const bolted = (
  near: FlangeSide,
  far: FlangeSide,
  service: SubjectChange['service'] = {},
): SubjectChange => ({
  layout: { flangeJoints: [flangeJoint(near, far)] },
  service,
});
const steel = side('flange 1');
const only = (change: SubjectChange) => {
  const [finding, ...more] = findingsOf(flangeClass, change);
  if (finding === undefined || more.length > 0) throw new Error('one joint, one finding');
  return finding;
};

test('pressures inside the ratings of both flanges meet them', () => {
  // At 360 K the rating lies 49/55 of the way from 1.97 to 1.79 MPa; the test at 290 K is allowed 2.955 MPa.
  const finding = only(bolted(side('pump discharge'), steel));
  expect(finding).toMatchObject({ verdict: 'meets', at: 'pump discharge to flange 1', unit: 'Pa' });
  expect(finding.ratio).toBeCloseTo(0.8 / (1.97 - (0.18 * 49) / 55), 9);
});

test('a design pressure above the hot rating exceeds it though the cold rating would carry it', () => {
  expect(only(bolted(side('pump discharge'), steel, { designPressure: sourced(1.9e6) }))).toMatchObject({
    verdict: 'exceeds',
    condition: 'hot',
    reason: { code: 'checks.flange-class.exceeds' },
  });
});

test('a test pressure above one and a half times the cold rating exceeds it', () => {
  expect(only(bolted(side('pump discharge'), steel, { testPressure: sourced(3e6) }))).toMatchObject({
    verdict: 'exceeds',
    condition: 'test',
  });
});

test('the weaker flange governs and is named', () => {
  const weak = dimensions({
    rating: [
      [311, 0.7e6],
      [400, 0.6e6],
    ],
  });
  const finding = only(bolted(side('pump discharge', { class: '125', dimensions: weak }), steel));
  expect(finding).toMatchObject({
    verdict: 'exceeds',
    reason: { data: { owner: 'pump discharge', class: '125' } },
  });
});

test('a flange without a rating cannot be told', () => {
  const { rating: _rating, ...unrated } = dimensions();
  expect(only(bolted(side('pump discharge', { dimensions: unrated }), steel))).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.flange.no-rating', data: { owner: 'pump discharge' } },
  });
});

test('a temperature beyond the table of the rating cannot be told', () => {
  const change = bolted(side('pump discharge'), steel, { hotTemperature: sourced(400) });
  expect(only(change).verdict).toBe('cannot-tell');
});

test.each(UNUSABLE)('a rating that is %s cannot be told', (_word, rating) => {
  const broken = dimensions({
    rating: [
      [311, rating],
      [400, rating],
    ],
  });
  expect(only(bolted(side('pump discharge', { dimensions: broken }), steel)).verdict).toBe('cannot-tell');
});

test.each([Number.NaN, Number.POSITIVE_INFINITY])('a design pressure of %s cannot be told', (pressure) => {
  expect(only(bolted(side('pump discharge'), steel, { designPressure: sourced(pressure) })).verdict).toBe(
    'cannot-tell',
  );
});

test('beside a valve that is not described the other flange is judged, and the gap is said', () => {
  expect(only(bolted(steel, unknownSide('gate valve 1')))).toMatchObject({
    verdict: 'meets',
    reason: { code: 'checks.flange.one-side', data: { unknown: 'gate valve 1' } },
  });
});

test('a joint of which neither side is described is no place of this check', () => {
  const change = bolted(unknownSide('gate valve 1'), unknownSide('check valve 1'));
  expect(only(change).verdict).toBe('does-not-apply');
});

test('a rating holds below its first row, falls by straight lines, and ends with its last row', () => {
  expect(ratedPressure(RATING, 250)).toBe(1.97e6);
  expect(ratedPressure(RATING, 338.5)).toBeCloseTo(1.88e6, 3);
  expect(ratedPressure(RATING, 366)).toBe(1.79e6);
  expect(ratedPressure(RATING, 366.01)).toBeUndefined();
  expect(ratedPressure(RATING, Number.NaN)).toBeUndefined();
  expect(ratedPressure([], 300)).toBeUndefined();
});
