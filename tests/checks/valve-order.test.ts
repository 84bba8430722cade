import { expect, test } from 'vitest';
import { valveOrder } from '../../src/checks/practice/valve-order.js';
import { type FileStep, practiceFinding, valve } from './practice-subject.js';

const pipe: FileStep = { straight: '1 m' };
const end: FileStep = { end: 'anchored' };
const at = (...valves: readonly FileStep[]) =>
  practiceFinding(valveOrder, { discharge: [pipe, ...valves, pipe, end] });

test('a check valve with a valve that shuts behind it meets it', () => {
  expect(at(valve('swing check'), valve('gate'))).toMatchObject({
    at: 'swing check 1',
    verdict: 'meets',
    reason: { data: { by: 'gate valve 2' } },
  });
});

test('a check valve behind the valve that shuts exceeds', () => {
  expect(at(valve('gate'), valve('swing check')).verdict).toBe('exceeds');
});

test('with valves that shut on both sides of it, it meets', () => {
  expect(at(valve('gate'), valve('swing check'), valve('butterfly')).verdict).toBe('meets');
});

test('behind it a valve of which nobody says that it shuts leaves it open', () => {
  expect(at(valve('swing check'), valve('control'))).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.valve-order.unknown', data: { by: 'control valve 1' } },
  });
});

test('it does not apply without a check valve, or to one that shuts in the same body', () => {
  expect(at(valve('gate')).verdict).toBe('does-not-apply');
  expect(at(valve('multi-purpose')).verdict).toBe('does-not-apply');
});
