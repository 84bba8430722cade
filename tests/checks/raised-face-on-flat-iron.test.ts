import { expect, test } from 'vitest';
import { raisedFaceOnFlatIron } from '../../src/checks/flanges/raised-face-on-flat-iron.js';
import type { FlangeSide } from '../../src/model/layout/layout.js';
import { findingsOf } from './findings-of.js';
import { flangeJoint, side, unknownSide } from './fixture.js';

const joined = (near: FlangeSide, far: FlangeSide) => {
  const [finding] = findingsOf(raisedFaceOnFlatIron, { layout: { flangeJoints: [flangeJoint(near, far)] } });
  if (finding === undefined) throw new Error('no finding');
  return finding;
};
const iron = (face: FlangeSide['face']) =>
  side('pump discharge', { standard: 'B16.1', class: '125', material: 'cast iron', face });
const steel = (face: FlangeSide['face']) => side('flange 1', { face });

test('flat on flat meets it', () => {
  expect(joined(iron('flat'), steel('flat')).verdict).toBe('meets');
});

test('a raised face on flat cast iron exceeds it, from either side', () => {
  expect(joined(iron('flat'), steel('raised'))).toMatchObject({
    verdict: 'exceeds',
    reason: { code: 'checks.raised-face-on-flat-iron.exceeds', data: { at: 'pump discharge to flange 1' } },
  });
  expect(joined(steel('raised'), iron('flat')).verdict).toBe('exceeds');
});

test('a must-not has no ratio', () => {
  expect(joined(iron('flat'), steel('raised')).ratio).toBeUndefined();
  expect(joined(iron('flat'), steel('raised')).limit).toBeUndefined();
});

test('a face that is not known cannot be told', () => {
  for (const finding of [joined(iron('flat'), steel('unknown')), joined(iron('unknown'), steel('raised'))]) {
    expect(finding).toMatchObject({
      verdict: 'cannot-tell',
      reason: { code: 'checks.raised-face-on-flat-iron.unknown' },
    });
  }
});

test('a flat flange of a metal that is not known cannot be told beside a raised face, and meets beside a flat one', () => {
  const own = side('pump discharge', { standard: 'own', material: 'unknown', face: 'flat' });
  expect(joined(own, steel('raised')).verdict).toBe('cannot-tell');
  expect(joined(own, steel('flat')).verdict).toBe('meets');
});

test('a flange of the iron standard is iron, whatever else is said', () => {
  const byStandard = side('pump discharge', {
    standard: 'B16.1',
    class: '125',
    material: 'unknown',
    face: 'flat',
  });
  expect(joined(byStandard, steel('raised')).verdict).toBe('exceeds');
});

test('an unknown face of the steel does not matter where the iron has a raised face of its own', () => {
  expect(joined(iron('raised'), steel('raised')).verdict).toBe('does-not-apply');
});

test('steel on steel and ductile iron are no places of this check', () => {
  const ductile = side('pump discharge', { material: 'ductile iron', standard: 'own', face: 'flat' });
  expect(joined(ductile, steel('raised')).verdict).toBe('does-not-apply');
  expect(joined(side('flange 2'), steel('flat'))).toMatchObject({
    verdict: 'does-not-apply',
    at: 'whole installation',
  });
});

test('beside a valve of which no flange is described it does not apply, and says what to compare', () => {
  expect(joined(steel('raised'), unknownSide('gate valve 1'))).toMatchObject({
    verdict: 'does-not-apply',
    reason: { code: 'checks.flange.not-described', data: { unknown: 'gate valve 1' } },
  });
});
