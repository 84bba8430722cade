import { expect, test } from 'vitest';
import { allChecks } from '../../src/checks/all-checks.js';
import { TRADES } from '../../src/checks/rule-facts.js';
import { tradeOf } from '../../src/report/words/trades.js';

test('every trade has something to act on, as the checks say', () => {
  expect(new Set(allChecks.map(({ id }) => tradeOf({ check: id })))).toEqual(new Set(TRADES));
  expect(tradeOf({ check: 'rod-load' })).toBe('Pipe fitter');
  expect(tradeOf({ check: 'attachment-load' })).toBe('Structural engineer');
  expect(tradeOf({ check: 'nozzle-loads' })).toBe('Design engineer');
});

test('a finding of a check that is not there goes to who designed it', () => {
  expect(tradeOf({ check: 'no-such-check' })).toBe('Design engineer');
});
