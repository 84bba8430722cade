import { expect, test } from 'vitest';
import { allChecks } from '../../src/checks/all-checks.js';
import { namedChecks, TRADES, tradeOf } from '../../src/report/words/trades.js';

test('every check that a trade acts on is a check there is, and is named once', () => {
  const ids = allChecks.map(({ id }) => id);
  expect(namedChecks.filter((id) => !ids.includes(id))).toEqual([]);
  expect(new Set(namedChecks).size).toBe(namedChecks.length);
});

test('every trade has something to act on, and what nobody hangs, lifts or wires is for the design engineer', () => {
  expect(new Set(allChecks.map(({ id }) => tradeOf(id)))).toEqual(new Set(TRADES));
  expect(tradeOf('rod-load')).toBe('Pipe fitter');
  expect(tradeOf('nozzle-loads')).toBe('Design engineer');
});
