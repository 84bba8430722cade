import { expect, test } from 'vitest';
import { liftAnchor } from '../../src/checks/lift/lift-anchor.js';
import { findingsOf, lift, without } from './access-subject.js';

const judged = (entry: Readonly<Record<string, unknown>> | undefined) =>
  findingsOf(liftAnchor, { room: { lift: entry } });
const G = 9.80665;

test('an anchor over the centre line, rated for the motor times the factor, meets', () => {
  const [place, rating] = judged(lift);
  expect([place?.verdict, rating?.verdict]).toEqual(['meets', 'meets']);
  expect(rating?.demand).toBeCloseTo(260 * G, 6);
  expect(rating?.limit).toBeCloseTo(500 * G, 6);
  expect(rating?.basis).toMatchObject({ source: 'input', clause: "owner's rule" });
});

test('an anchor off the centre line exceeds', () => {
  const [place] = judged({ ...lift, anchor: { east: '30 mm', north: '40 mm', elevation: '3.9 m' } });
  expect(place?.verdict).toBe('exceeds');
  expect(place?.demand).toBeCloseTo(0.05, 12);
});

test('without a limit of its own an inch is taken, and listed as assumed', () => {
  const off = { ...without(lift, 'off-centre'), anchor: { east: '25 mm', north: '0 m', elevation: '3.9 m' } };
  expect(judged(off)[0]).toMatchObject({ verdict: 'meets', basis: { confidence: 'common practice' } });
});

test('a rating below the motor times the factor exceeds', () => {
  expect(judged({ ...lift, factor: 4 })[1]).toMatchObject({
    verdict: 'exceeds',
    reason: { code: 'checks.lift-anchor.exceeds' },
  });
});

test('no factor is assumed: without one it cannot be told', () => {
  expect(judged(without(lift, 'factor'))[1]?.verdict).toBe('cannot-tell');
  expect(judged(without(lift, 'rating'))[1]?.verdict).toBe('cannot-tell');
});

test('without a lift nothing can be told', () => {
  expect(judged(undefined).map(({ verdict }) => verdict)).toEqual(['cannot-tell', 'cannot-tell']);
});
