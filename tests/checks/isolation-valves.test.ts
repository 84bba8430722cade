import { expect, test } from 'vitest';
import { isolationValves } from '../../src/checks/practice/isolation-valves.js';
import { type FileStep, practiceFinding, practiceFindings, valve } from './practice-subject.js';

const pipe: FileStep = { straight: '1 m' };
const end: FileStep = { end: 'anchored' };
const side = (walk: readonly FileStep[], more: FileStep = {}): FileStep => ({
  tee: { side: { direction: 'east', size: '4 in', walk, ...more } },
});
const at = (suction: readonly FileStep[]) => practiceFinding(isolationValves, { suction }, 'suction side');

test('a valve that shuts on either side meets it, and is named', () => {
  expect(practiceFindings(isolationValves).map(({ at: place, verdict }) => [place, verdict])).toEqual([
    ['suction side', 'meets'],
    ['discharge side', 'meets'],
  ]);
  expect(at([pipe, valve('gate'), pipe, end]).reason).toMatchObject({
    code: 'checks.isolation-valves.by',
    data: { by: 'gate valve 1' },
  });
});

test('a side without one exceeds', () => {
  expect(at([pipe, end])).toMatchObject({ verdict: 'exceeds', reason: { data: { by: 'suction line' } } });
});

test('check valves and strainers do not shut', () => {
  expect(at([pipe, valve('silent check'), pipe, end]).verdict).toBe('exceeds');
  expect(at([pipe, valve('strainer'), pipe, end]).verdict).toBe('exceeds');
});

test('a leg that leaves the line before the valve has to be shut as well', () => {
  const open = [pipe, side([pipe, end]), pipe, valve('gate'), pipe, end];
  expect(at(open)).toMatchObject({
    verdict: 'exceeds',
    reason: { data: { by: 'suction line, leg at tee 1' } },
  });
  const shut = [pipe, side([pipe, valve('ball'), end]), pipe, valve('gate'), pipe, end];
  expect(at(shut).verdict).toBe('meets');
});

test('a leg behind the valve, or one that ends in a cap, leaves nothing open', () => {
  expect(at([pipe, valve('gate'), pipe, side([pipe, end]), pipe, end]).verdict).toBe('meets');
  expect(at([pipe, side([pipe, { end: 'free' }]), pipe, valve('gate'), pipe, end]).verdict).toBe('meets');
});

test('where nobody says whether a valve shuts it cannot be told, until the file says so', () => {
  const walk = (change: FileStep) => [pipe, valve('control', change), pipe, end];
  expect(at(walk({}))).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.isolation-valves.unknown', data: { by: 'control valve 1' } },
  });
  expect(at(walk({ shuts: 'yes' })).verdict).toBe('meets');
  expect(at(walk({ shuts: 'no' })).verdict).toBe('exceeds');
});

test('a line closed by a cap on every leg has no place to shut', () => {
  expect(at([pipe, { end: 'free' }])).toMatchObject({
    verdict: 'does-not-apply',
    reason: { code: 'checks.isolation-valves.capped' },
  });
});
