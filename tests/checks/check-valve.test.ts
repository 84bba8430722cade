import { expect, test } from 'vitest';
import { checkValve } from '../../src/checks/practice/check-valve.js';
import { practiceFinding, valve } from './practice-subject.js';

const discharge = [{ straight: '1 m' }, valve('swing check'), valve('gate'), { end: 'anchored' }];

test('a check valve on the discharge meets it, whatever runs beside', () => {
  expect(practiceFinding(checkValve, { discharge })).toMatchObject({
    verdict: 'meets',
    reason: { data: { by: 'swing check 1' } },
  });
  expect(practiceFinding(checkValve, { discharge, pump: { backflow: 'possible' } }).verdict).toBe('meets');
});

test('none where liquid can run back exceeds', () => {
  expect(practiceFinding(checkValve, { pump: { backflow: 'possible' } })).toMatchObject({
    verdict: 'exceeds',
    comparison: false,
    reason: { code: 'checks.check-valve.exceeds' },
  });
});

test('none, and nobody says whether liquid could run back, cannot be told', () => {
  expect(practiceFinding(checkValve)).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.check-valve.unknown' },
  });
});

test('it does not apply where nothing can run back', () => {
  expect(practiceFinding(checkValve, { pump: { backflow: 'none' } }).verdict).toBe('does-not-apply');
});

test('a check valve on the suction holds nothing back for the discharge', () => {
  expect(practiceFinding(checkValve, { suction: discharge }).verdict).toBe('cannot-tell');
});

test('a valve that checks, balances and shuts in one body counts', () => {
  const walk = [{ straight: '1 m' }, valve('multi-purpose'), { end: 'anchored' }];
  expect(practiceFinding(checkValve, { discharge: walk }).verdict).toBe('meets');
});
