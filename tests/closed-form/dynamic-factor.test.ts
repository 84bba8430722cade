import { expect, test } from 'vitest';
import { riseFactor, stepFactor } from '../../src/mechanics/start/dynamic-factor.js';
import { oscillatorResponse, type Stepping } from '../../src/mechanics/start/step-response.js';

const both: readonly Stepping[] = ['exact', 'average acceleration'];

/** A load put on at once and held for some periods of 1 s. */
const step = { time: [0, 5], load: [1, 1] };

test('a load put on at once doubles the movement', () => {
  // d = 1 − cos ω t, at most 2.
  expect(stepFactor(0)).toBe(2);
});

test.each([
  [0.02, 1.939],
  [0.05, 1.854],
  [0.1, 1.729],
])('damping of %f brings the factor of a step to %f', (dampingRatio, factor) => {
  // 1 + exp(−π ζ/√(1 − ζ²)), from d' = 0 at half a damped period.
  expect(stepFactor(dampingRatio)).toBeCloseTo(factor, 3);
});

test.each([
  [0.25, 1.9],
  [0.5, 1.637],
  [1, 1],
  [1.5, 1.212],
  [2.5, 1.127],
])('a rise over %f periods has the factor %f', (periods, factor) => {
  // d after the rise = 1 − [sin ω t − sin ω (t − t_r)]/(ω t_r); the bracket has the amplitude 2 |sin(ω t_r/2)|.
  expect(riseFactor({ riseTime: periods * 0.2, frequency: 5 })).toBeCloseTo(factor, 3);
});

test('a rise in no time is a step, and a soft start of seconds is hardly dynamic', () => {
  expect(riseFactor({ riseTime: 0, frequency: 5 })).toBe(2);
  expect(riseFactor({ riseTime: 1e-9, frequency: 5 })).toBeCloseTo(2, 12);
  expect(riseFactor({ riseTime: 4.03, frequency: 8 })).toBeLessThan(1.01);
});

test.each(both)('stepped %s, an oscillator under a step follows 1 − cos ω t', (stepping) => {
  const { time, response } = oscillatorResponse({ frequency: 1, dampingRatio: 0 }, step, stepping);
  // The averaging rule lags by (ω h)²/12 of the angle: 0.0775 after six periods of forty steps.
  const tolerance = stepping === 'exact' ? 1e-12 : 0.0775;
  for (const [sample, at] of time.entries())
    expect(Math.abs((response[sample] ?? Number.NaN) - (1 - Math.cos(2 * Math.PI * at)))).toBeLessThan(
      tolerance,
    );
});

test.each(both)('stepped %s, the factor of a step comes out for any damping', (stepping) => {
  for (const dampingRatio of [0, 0.02, 0.05, 0.1, 0.3]) {
    const { factor } = oscillatorResponse({ frequency: 3, dampingRatio }, step, stepping);
    expect(Math.abs(factor / stepFactor(dampingRatio) - 1)).toBeLessThan(0.004);
  }
});

test.each(both)('stepped %s, the factor of a rise comes out for any rise time', (stepping) => {
  for (const periods of [0.1, 0.25, 0.5, 0.75, 1.5, 2.5]) {
    const history = { time: [0, periods / 4, periods / 4 + 1], load: [0, 7, 7] };
    const { factor } = oscillatorResponse({ frequency: 4, dampingRatio: 0 }, history, stepping);
    expect(Math.abs(factor / riseFactor({ riseTime: periods / 4, frequency: 4 }) - 1)).toBeLessThan(0.004);
  }
});

test.each(both)('stepped %s, a short push acts by its impulse alone', (stepping) => {
  // d' = ω² I after the push, so that d swings to ω I, with I = F t.
  const push = { time: [0, 0.002, 0.002], load: [100, 100, 0] };
  const { factor } = oscillatorResponse({ frequency: 2, dampingRatio: 0 }, push, stepping);
  expect(Math.abs(factor / (2 * Math.PI * 2 * 0.002) - 1)).toBeLessThan(0.004);
});

test('the exact way loses no energy in a thousand swings', () => {
  const long = { time: [0, 1000], load: [1, 1] };
  const { response } = oscillatorResponse({ frequency: 1, dampingRatio: 0 }, long);
  expect(Math.max(...response.slice(-100))).toBeCloseTo(2, 3);
});
