import { expect, test } from 'vitest';
import { flangeDrilling } from '../../src/checks/flanges/flange-drilling.js';
import type { FlangeDimensions } from '../../src/input/installation.js';
import { findingsOf } from './findings-of.js';
import { dimensions, flangeJoint, side, unknownSide } from './fixture.js';

const drilled = (far: Partial<FlangeDimensions>) => {
  const joint = flangeJoint(side('pump discharge'), side('flange 1', { dimensions: dimensions(far) }));
  const [finding] = findingsOf(flangeDrilling, { layout: { flangeJoints: [joint] } });
  if (finding === undefined) throw new Error('no finding');
  return finding;
};

test('the same drilling on both sides meets it', () => {
  expect(drilled({})).toMatchObject({ verdict: 'meets', ratio: 0 });
});

test('a bolt circle that differs within the tolerance of drilling meets it', () => {
  expect(drilled({ boltCircle: 0.2425 }).verdict).toBe('meets');
});

test('a bolt circle further off exceeds it', () => {
  expect(drilled({ boltCircle: 0.2444 })).toMatchObject({
    verdict: 'exceeds',
    unit: 'm',
    reason: { code: 'checks.flange-drilling.exceeds', data: { near: 'pump discharge', far: 'flange 1' } },
  });
});

test('another number of bolts exceeds it, whatever the circle', () => {
  expect(drilled({ bolts: 12, boltCircle: 0.2698 })).toMatchObject({
    verdict: 'exceeds',
    demand: 4,
    unit: '-',
    reason: { code: 'checks.flange-drilling.bolts' },
  });
});

test('a described flange without its drilling cannot be told', () => {
  const { bolts: _bolts, boltCircle: _circle, ...bare } = dimensions();
  const joint = flangeJoint(side('pump discharge'), side('flange 1', { dimensions: bare }));
  expect(findingsOf(flangeDrilling, { layout: { flangeJoints: [joint] } })).toMatchObject([
    { verdict: 'cannot-tell', reason: { code: 'checks.flange-drilling.no-drilling' } },
  ]);
});

test.each([Number.NaN, Number.POSITIVE_INFINITY])('a bolt circle of %s cannot be told', (boltCircle) => {
  expect(drilled({ boltCircle }).verdict).toBe('cannot-tell');
});

test('a number of bolts that is not a number cannot be told', () => {
  expect(drilled({ bolts: Number.NaN }).verdict).toBe('cannot-tell');
});

test('beside a valve of which no flange is described it does not apply, and says what to compare', () => {
  const joint = flangeJoint(side('flange 1'), unknownSide('gate valve 1'));
  expect(findingsOf(flangeDrilling, { layout: { flangeJoints: [joint] } })).toMatchObject([
    {
      verdict: 'does-not-apply',
      reason: { code: 'checks.flange.not-described', data: { unknown: 'gate valve 1' } },
    },
  ]);
});

test('without flange joints it does not apply', () => {
  expect(findingsOf(flangeDrilling)).toMatchObject([{ verdict: 'does-not-apply', at: 'whole installation' }]);
});
