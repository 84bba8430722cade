import { expect, test } from 'vitest';
import { handLift } from '../../src/checks/lift/hand-lift.js';
import { findingsOf } from './access-subject.js';

test('pieces are compared with 23 kg, and never decide', () => {
  const findings = findingsOf(handLift, { dimensions: { 'rotor-weight': '40 kg' } });
  expect(findings.map(({ at, verdict }) => `${at}: ${verdict}`)).toEqual([
    'motor: exceeds',
    'rotor, shaft and cover: exceeds',
    'coupling: meets',
  ]);
  expect(findings.every(({ comparison }) => comparison)).toBe(true);
  expect(findings[0]?.ratio).toBeCloseTo(130 / 23, 9);
});

test('what comes out at the coupling is compared at its height over the floor', () => {
  const coupling = findingsOf(handLift)[1];
  expect(coupling?.limit).toBeCloseTo(23 * (1 - 0.3 * (1.35 - 0.75)) * 9.80665, 6);
});

test('a coupling out of reach from the floor is not lifted by hand', () => {
  const pump = { at: { east: '0 m', north: '0 m', elevation: '1.6 m' } };
  expect(findingsOf(handLift, { pump })[1]).toMatchObject({
    verdict: 'exceeds',
    reason: { code: 'checks.hand-lift.too-high' },
  });
});

test('without a floor the ideal posture is all there is', () => {
  expect(findingsOf(handLift, { room: { floor: undefined } })[1]?.limit).toBeCloseTo(23 * 9.80665, 6);
});
