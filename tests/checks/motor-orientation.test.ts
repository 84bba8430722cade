import { expect, test } from 'vitest';
import { motorOrientation } from '../../src/checks/practice/motor-orientation.js';
import { practiceFinding } from './practice-subject.js';

test('a motor that may stand with its shaft down meets it', () => {
  expect(practiceFinding(motorOrientation, { motor: { 'shaft-down': 'yes' } }).verdict).toBe('meets');
});

test('one that may not exceeds', () => {
  expect(practiceFinding(motorOrientation, { motor: { 'shaft-down': 'no' } })).toMatchObject({
    verdict: 'exceeds',
    reason: { code: 'checks.motor-orientation.exceeds' },
  });
});

test('a motor below the pump exceeds whatever its manufacturer allows', () => {
  const motor = { 'shaft-down': 'yes', 'centre-of-gravity': { up: '-600 mm' } };
  expect(practiceFinding(motorOrientation, { motor })).toMatchObject({
    verdict: 'exceeds',
    reason: { code: 'checks.motor-orientation.below' },
  });
});

test('where nobody says so it cannot be told', () => {
  expect(practiceFinding(motorOrientation)).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.motor-orientation.unknown' },
  });
});
