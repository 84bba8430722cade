import { expect, test } from 'vitest';
import { handLift } from '../../src/checks/hand-lift.js';
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
