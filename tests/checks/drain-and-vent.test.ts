import { expect, test } from 'vitest';
import { drainAndVent } from '../../src/checks/practice/drain-and-vent.js';
import {
  type FileStep,
  type PracticeFile,
  practiceFinding,
  practiceFindings,
  valve,
} from './practice-subject.js';

const pipe: FileStep = { straight: '500 mm' };
const end: FileStep = { end: 'anchored' };
const drain: FileStep = { drain: { size: '3/4 in' } };
const vent: FileStep = { vent: {} };

/** Up behind the pump on both sides, 0.5 m level, then a riser of 1 m to the valve. */
const riser = (low: readonly FileStep[], high: readonly FileStep[]): readonly FileStep[] => [
  pipe,
  ...low,
  pipe,
  { elbow: 'up' },
  { straight: '1 m' },
  ...high,
  valve('gate'),
  pipe,
  end,
];
const both = (low: readonly FileStep[], high: readonly FileStep[]): PracticeFile => ({
  suction: riser(low, high),
  discharge: riser([], []),
});
const low = (file: PracticeFile) => practiceFinding(drainAndVent, file, 'low point');
const high = (file: PracticeFile) => practiceFinding(drainAndVent, file, 'high point');

test('a drain below and a vent above between the valves meet it', () => {
  const file = both([drain], [vent]);
  expect(low(file)).toMatchObject({ verdict: 'meets', reason: { data: { by: 'drain 1' } } });
  expect(high(file)).toMatchObject({ verdict: 'meets', reason: { data: { by: 'vent 1' } } });
});

test('what the casing itself has counts at the height of its ports', () => {
  const file = { ...both([], []), pump: { drain: 'yes', vent: 'yes' } };
  expect(low(file)).toMatchObject({ verdict: 'meets', reason: { data: { by: "the casing's own drain" } } });
  expect(high(file)).toMatchObject({ verdict: 'exceeds', reason: { code: 'checks.drain-and-vent.off' } });
});

test('a vent below the high point exceeds by what it leaves hanging', () => {
  const found = high(both([vent], []));
  expect(found).toMatchObject({ verdict: 'exceeds', reason: { data: { by: 'vent 1', word: 'vent' } } });
  // The riser, and the long-radius elbow under it: 1.5 × 6 in.
  expect(found.demand).toBeCloseTo(1 + 0.2286, 9);
});

test('a drain above the low point exceeds where the casing is said to have none', () => {
  const file = { ...both([], [drain]), pump: { drain: 'no' } };
  expect(low(file)).toMatchObject({ verdict: 'exceeds', reason: { code: 'checks.drain-and-vent.off' } });
  expect(low(both([], [drain])).verdict).toBe('cannot-tell');
});

test('none at all exceeds where the file says so, and cannot be told where it is silent', () => {
  const silent = both([], []);
  expect(low(silent)).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.drain-and-vent.unknown' },
  });
  expect(high(silent).verdict).toBe('cannot-tell');
  const none = { ...silent, pump: { drain: 'no', vent: 'no' } };
  expect(low(none)).toMatchObject({ verdict: 'exceeds', reason: { code: 'checks.drain-and-vent.none' } });
  expect(high(none).verdict).toBe('exceeds');
});

test('a drain behind the valve drains something else', () => {
  const beyond = [...riser([], []).slice(0, -1), drain, end];
  expect(low({ suction: beyond, discharge: riser([], []), pump: { drain: 'no' } }).verdict).toBe('exceeds');
});

test('a leg of a tee that hangs lower is the low point', () => {
  const leg: FileStep = {
    tee: { side: { direction: 'down', size: '4 in', walk: [{ straight: '1 m' }, { end: 'free' }] } },
  };
  const file = { suction: [pipe, drain, leg, pipe, valve('gate'), end], discharge: riser([], []) };
  expect(low({ ...file, pump: { drain: 'no' } }).verdict).toBe('exceeds');
});

test('it does not apply where no valves bound the stretch', () => {
  const file = { suction: [pipe, end] };
  expect(low(file)).toMatchObject({
    verdict: 'does-not-apply',
    reason: { code: 'checks.drain-and-vent.not-shut-off' },
  });
});

test('what stands behind a check valve is shown for comparison, drained or not', () => {
  const discharge = (more: readonly FileStep[]) => [
    pipe,
    valve('swing check'),
    pipe,
    ...more,
    valve('gate'),
    end,
  ];
  const behind = (more: readonly FileStep[]) =>
    practiceFinding(drainAndVent, { discharge: discharge(more) }, 'behind the check valve');
  expect(behind([])).toMatchObject({ verdict: 'exceeds', comparison: true });
  expect(behind([drain])).toMatchObject({ verdict: 'meets', comparison: true });
  expect(practiceFindings(drainAndVent).map(({ at }) => at)).toEqual(['low point', 'high point']);
});
