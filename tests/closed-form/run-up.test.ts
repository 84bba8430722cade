import { expect, test } from 'vitest';
import { runUp } from '../../src/mechanics/start/run-up.js';

// J dω/dt = T_m − T_n (ω/ω_n)² with a constant T_m parts into dω/(1 − a² x²): from standstill to ω_n
//     t = J ω_n / √(T_m T_n) × artanh √(T_n/T_m).
// J = 0.30 kg·m², ω_n = 185.4 rad/s, T_m = 180 N·m, T_n = 120.7 N·m: 0.43523 s; J ω_n²/2 = 5156 J.
const inertia = 0.3;
const load = { runningSpeed: 185.4, dutyTorque: 120.7, friction: 0 };
const constant = { purpose: 'full' as const, torqueAt: () => 180, to: load.runningSpeed };
const start = runUp({ inertia, load, stages: [constant] });

test('a constant torque against water takes the time of the closed form', () => {
  const closed = ((inertia * 185.4) / Math.sqrt(180 * 120.7)) * Math.atanh(Math.sqrt(120.7 / 180));
  expect(closed).toBeCloseTo(0.43523, 5);
  expect(Math.abs(start.duration / closed - 1)).toBeLessThan(1e-9);
});

test('the net torque falls from the whole to what the duty leaves', () => {
  expect(start.netTorque[0]).toBe(180);
  expect(start.netTorque.at(-1)).toBeCloseTo(180 - 120.7, 9);
  expect(start.largestNetTorque).toBe(180);
  expect(start.atSpeed).toBe(0);
});

test('the work of the net torque is what the rotor holds', () => {
  expect(start.kineticEnergy).toBeCloseTo(5156, 0);
  expect(Math.abs(start.work / start.kineticEnergy - 1)).toBeLessThan(1e-6);
});

test('every sample lies on the closed form', () => {
  const scale = Math.sqrt(180 / 120.7) * 185.4;
  const rate = Math.sqrt(180 * 120.7) / (inertia * 185.4);
  for (const [sample, time] of start.time.entries())
    expect(Math.abs((start.speed[sample] ?? Number.NaN) - scale * Math.tanh(rate * time))).toBeLessThan(1e-8);
});

test('friction alone takes the time of an even acceleration', () => {
  const dry = { runningSpeed: 100, dutyTorque: 0, friction: 20 };
  const run = runUp({ inertia: 2, load: dry, stages: [{ purpose: 'full', torqueAt: () => 70, to: 100 }] });
  expect(run.duration).toBeCloseTo((2 * 100) / (70 - 20), 12);
});

test('momentum put in is torque over time', () => {
  let momentum = 0;
  for (let sample = 1; sample < start.time.length; sample += 1) {
    const width = (start.time[sample] ?? 0) - (start.time[sample - 1] ?? 0);
    momentum += (((start.netTorque[sample] ?? 0) + (start.netTorque[sample - 1] ?? 0)) / 2) * width;
  }
  expect(momentum).toBeCloseTo(inertia * 185.4, 4);
});
