import fc from 'fast-check';
import { expect, test } from 'vitest';
import { driveStages } from '../../src/mechanics/start/drive-stages.js';
import { riseFactor, stepFactor } from '../../src/mechanics/start/dynamic-factor.js';
import { finerHistory } from '../../src/mechanics/start/load-history.js';
import { runUp } from '../../src/mechanics/start/run-up.js';
import { startTwist } from '../../src/mechanics/start/start-twist.js';
import { oscillatorResponse } from '../../src/mechanics/start/step-response.js';
import { drive, load, softStarter, started, wyeDelta } from './starting-sets.js';

test.each([{ kind: 'across the line' } as const, wyeDelta, softStarter, drive])(
  'both ways of stepping agree to 1 % on the twist of a start by %o',
  (method) => {
    for (const inertia of [0.02, 0.5]) {
      const start = runUp({ inertia, load, stages: driveStages(started(method), inertia) });
      const { history } = startTwist(start);
      for (const frequency of [2, 7, 30]) {
        const oscillator = { frequency, dampingRatio: 0.02 };
        const exact = oscillatorResponse(oscillator, history).factor;
        const newmark = oscillatorResponse(oscillator, history, 'average acceleration').factor;
        expect(Math.abs(newmark / exact - 1)).toBeLessThan(0.01);
      }
    }
  },
);

test('both ways agree to 1 % on any rising and falling load', () => {
  const sample = fc.record({
    wait: fc.double({ min: 0.01, max: 0.5, noNaN: true }),
    load: fc.double({ min: -100, max: 100, noNaN: true }),
  });
  fc.assert(
    fc.property(
      fc.array(sample, { minLength: 2, maxLength: 8 }),
      fc.constantFrom(0, 0.02, 0.1),
      (samples, dampingRatio) => {
        let now = 0;
        const time = samples.map(({ wait }) => (now += wait));
        // The rule's error is in its period; finer steps keep its phase over all swings.
        const history = finerHistory(
          { time, load: samples.map((each) => each.load) },
          { step: 0.0005, activeRestraint: 0 },
        );
        const oscillator = { frequency: 5, dampingRatio };
        const exact = oscillatorResponse(oscillator, history);
        const newmark = oscillatorResponse(oscillator, history, 'average acceleration');
        expect(Math.abs(newmark.largest - exact.largest)).toBeLessThanOrEqual(
          0.01 * Math.abs(exact.largest) + 1e-9,
        );
      },
    ),
    { numRuns: 40, seed: 7 },
  );
});

test('cutting the load into more samples does not change the exact response', () => {
  const coarse = { time: [0, 0.3, 0.3, 1], load: [5, 20, -4, 0] };
  const oscillator = { frequency: 3, dampingRatio: 0.05 };
  const fine = finerHistory(coarse, { step: 0.0007, activeRestraint: 0 });
  const one = oscillatorResponse(oscillator, coarse);
  const other = oscillatorResponse(oscillator, fine);
  expect(other.response.at(-1)).toBeCloseTo(one.response.at(-1) ?? Number.NaN, 9);
});

test('a load of nothing moves nothing', () => {
  expect(oscillatorResponse({ frequency: 3, dampingRatio: 0 }, { time: [0, 1], load: [0, 0] })).toMatchObject(
    {
      largest: 0,
      factor: 0,
    },
  );
});

test('a long history is cut no finer than can be held', () => {
  const { time } = finerHistory({ time: [0, 1e6], load: [0, 1] }, { step: 1e-3, activeRestraint: 0 });
  expect(time.length).toBeLessThan(200_100);
});

test.each([
  ['a damping ratio of 1', () => stepFactor(1)],
  ['a negative damping ratio', () => stepFactor(-0.01)],
  ['a damping ratio that is no number', () => stepFactor(Number.NaN)],
  ['a frequency of nothing', () => riseFactor({ riseTime: 1, frequency: 0 })],
  ['a negative time of rise', () => riseFactor({ riseTime: -1, frequency: 1 })],
  ['no samples', () => oscillatorResponse({ frequency: 1, dampingRatio: 0 }, { time: [], load: [] })],
  [
    'time that runs back',
    () => oscillatorResponse({ frequency: 1, dampingRatio: 0 }, { time: [1, 0], load: [1, 1] }),
  ],
])('%s is refused', (_what, wrong) => {
  expect(wrong).toThrow(expect.objectContaining({ code: 'mechanics.out-of-range' }));
});

test('a sample that is no number is refused', () => {
  const history = { time: [0, 1], load: [0, Number.NaN] };
  expect(() => oscillatorResponse({ frequency: 1, dampingRatio: 0 }, history)).toThrow(
    expect.objectContaining({ code: 'mechanics.not-a-number' }),
  );
});
