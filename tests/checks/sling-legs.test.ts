import { expect, test } from 'vitest';
import { slingLegs } from '../../src/checks/lift/sling-legs.js';
import { findingsOf, lift, without } from './access-subject.js';

const judged = (sling: Readonly<Record<string, unknown>> | undefined, entry = lift) =>
  findingsOf(slingLegs, { room: { lift: { ...entry, sling } } });
const sling = { legs: 2, angle: '60 deg', spread: '300 mm', rating: '400 kg' };
const G = 9.80665;

test('steep legs of enough rating meet', () => {
  const [angle, pull] = judged(sling);
  expect([angle?.verdict, pull?.verdict]).toEqual(['meets', 'meets']);
  expect(pull?.demand).toBeCloseTo((2 * 130 * G) / (2 * Math.sin(Math.PI / 3)), 6);
});

test('legs at 30 degrees are the flattest, a degree less exceeds', () => {
  expect(judged({ ...sling, angle: '30 deg' })[0]?.verdict).toBe('meets');
  expect(judged({ ...sling, angle: '29 deg' })[0]?.verdict).toBe('exceeds');
});

test('a pull above the rating exceeds', () => {
  expect(judged({ ...sling, rating: '140 kg' })[1]?.verdict).toBe('exceeds');
});

test('of four legs only two are relied on', () => {
  expect(judged({ ...sling, legs: 4 })[1]?.demand).toBeCloseTo(judged(sling)[1]?.demand ?? 0, 9);
});

test('without rating or factor it cannot be told, and without a sling there is nothing to judge', () => {
  expect(judged(without(sling, 'rating'))[1]?.verdict).toBe('cannot-tell');
  expect(judged(sling, without(lift, 'factor'))[1]?.verdict).toBe('cannot-tell');
  expect(judged(undefined)[0]?.verdict).toBe('does-not-apply');
});
