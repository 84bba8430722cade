import { describe, expect, test } from 'vitest';
import { changedSample } from '../sheet/reviewed-sample.js';
import { judgedBy, visitOf } from './visit.js';

/** What is said of a weight read on the plate of a motor that was reviewed with another. */
const verdictOf = (reviewed: string, read: string): string | undefined => {
  const review = changedSample('pool-hot-water', (file) => {
    file.pump.motor.weight = reviewed;
  });
  const [row] = judgedBy(visitOf(review, { 'identity.motor-weight': read }), 'plate-weight', 'motor weight');
  return row?.verdict;
};

describe('weights on plates are rounded', () => {
  test.each([
    ['304 lb', '300 lb', 'meets'],
    ['304 lb', '300', 'meets'],
    ['304 lb', '310 lb', 'exceeds'],
    ['304 lb', '290 lb', 'exceeds'],
    ['306 lb', '300 lb', 'exceeds'],
    ['304 lb', '308 lb', 'exceeds'],
    ['304 lb', '300.0 lb', 'exceeds'],
    ['94 lb', '90 lb', 'exceeds'],
    ['1204 lb', '1200 lb', 'meets'],
    ['138 kg', '140 kg', 'meets'],
  ])('%s reviewed, %s read: %s', (reviewed, read, verdict) => {
    expect(verdictOf(reviewed, read)).toBe(verdict);
  });
});
