import { expect, test } from 'vitest';
import { checkValveDistance } from '../../src/checks/practice/check-valve-distance.js';
import { practiceFinding, valve } from './practice-subject.js';

/** NPS 6: three, five and ten diameters are 457.2, 762 and 1524 mm. */
const at = (length: string) =>
  practiceFinding(checkValveDistance, {
    discharge: [{ straight: length }, valve('swing check'), valve('gate'), { end: 'anchored' }],
  });

test('ten diameters keep every rule', () => {
  expect(at('1.6 m')).toMatchObject({
    at: 'swing check 1',
    verdict: 'meets',
    comparison: true,
    reason: { data: { kept: 'three, five, ten' } },
  });
});

test.each([
  ['1 m', 'ten'],
  ['500 mm', 'five, ten'],
  ['400 mm', 'three, five, ten'],
])('%s misses rules in use and never decides', (length, missed) => {
  expect(at(length)).toMatchObject({ verdict: 'exceeds', comparison: true, reason: { data: { missed } } });
});

test('the distance itself is told', () => {
  expect(at('500 mm').demand).toBeCloseTo(0.5, 9);
});

test('it does not apply without a check valve', () => {
  expect(practiceFinding(checkValveDistance).verdict).toBe('does-not-apply');
});
