import { expect, test } from 'vitest';
import { gaugeTaps } from '../../src/checks/practice/gauge-taps.js';
import { type FileStep, practiceFinding, practiceFindings, valve } from './practice-subject.js';

const pipe: FileStep = { straight: '1 m' };
const end: FileStep = { end: 'anchored' };
const tap: FileStep = { 'gauge-tap': { size: '1/4 in' } };
const at = (suction: readonly FileStep[], taps?: FileStep) =>
  practiceFinding(gaugeTaps, { suction, ...(taps && { pump: { 'gauge-taps': taps } }) }, 'suction side');

test('taps at the ports meet it on both sides', () => {
  const pump = { 'gauge-taps': { suction: 'yes', discharge: 'yes' } };
  expect(practiceFindings(gaugeTaps, { pump }).map(({ verdict }) => verdict)).toEqual(['meets', 'meets']);
});

test('a tap in the pipe next to the pump meets it, on its own side alone', () => {
  const suction = [pipe, tap, pipe, valve('gate'), end];
  expect(at(suction)).toMatchObject({ verdict: 'meets', reason: { data: { by: 'gauge tap 1' } } });
  expect(practiceFinding(gaugeTaps, { suction }, 'discharge side').verdict).toBe('cannot-tell');
});

test('none exceeds where the file says so, and cannot be told where it is silent', () => {
  const suction = [pipe, valve('gate'), pipe, end];
  expect(at(suction, { suction: 'no' })).toMatchObject({ verdict: 'exceeds', comparison: true });
  expect(at(suction)).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.gauge-taps.unknown' },
  });
});

test('a tap behind a valve reads its loss too: shown, and not decided', () => {
  expect(at([pipe, valve('strainer'), pipe, tap, pipe, valve('gate'), end], { suction: 'no' })).toMatchObject(
    {
      verdict: 'exceeds',
      comparison: true,
      reason: { code: 'checks.gauge-taps.behind', data: { tap: 'gauge tap 1', behind: 'strainer 1' } },
    },
  );
});
