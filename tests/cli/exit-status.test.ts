import { expect, test } from 'vitest';
import { exitStatus, statusOfCode, statusOfVerdict, worstStatus } from '../../src/cli/exit-status.js';

test('the statuses are the promised numbers', () => {
  expect(exitStatus).toEqual({
    meets: 0,
    exceeds: 1,
    unusable: 2,
    fileTrouble: 3,
    cannotTell: 4,
    ourFault: 70,
  });
});

test('over several files a fault of ours comes before all, then trouble with files, input, exceeding, doubt', () => {
  const order = [70, 3, 2, 1, 4, 0] as const;
  for (const [place, status] of order.entries()) {
    expect(worstStatus([...order.slice(place)].reverse())).toBe(status);
  }
});

test('no files end with 0', () => {
  expect(worstStatus([])).toBe(0);
});

test('only a review that meets ends with 0', () => {
  expect(statusOfVerdict('meets')).toBe(0);
  expect(statusOfVerdict('exceeds')).toBe(1);
  expect(statusOfVerdict('cannot-tell')).toBe(4);
  expect(statusOfVerdict('does-not-apply')).toBe(4);
});

test('reading and writing is 3, every other code 2', () => {
  expect(statusOfCode('cli.read.failed')).toBe(3);
  expect(statusOfCode('cli.write.failed')).toBe(3);
  expect(statusOfCode('cli.input.too-large')).toBe(2);
  expect(statusOfCode('input.unknown-key')).toBe(2);
});
