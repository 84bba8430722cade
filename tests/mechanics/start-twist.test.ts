import { expect, test } from 'vitest';
import { driveStages } from '../../src/mechanics/start/drive-stages.js';
import { motorTorques } from '../../src/mechanics/start/motor-torque.js';
import { runUp } from '../../src/mechanics/start/run-up.js';
import type { StartMethod } from '../../src/mechanics/start/start-method.js';
import {
  coastDownTwist,
  startTwist,
  steadyTwist,
  twistBound,
} from '../../src/mechanics/start/start-twist.js';
import { inertiasBetween, startTwistRange } from '../../src/mechanics/start/start-twist-range.js';
import { drive, load, motor, softStarter, started, wyeDelta } from './starting-sets.js';

const across = { kind: 'across the line' } as const;
const run = (method: StartMethod, inertia: number) =>
  runUp({ inertia, load, stages: driveStages(started(method), inertia) });

test('the set twists against the acceleration of the rotor and is left alone at the end', () => {
  const { history, largest } = startTwist(run(across, 0.5));
  expect(Math.max(...history.load)).toBeLessThanOrEqual(0);
  expect(history.load.at(-1)).toBe(0);
  expect(largest).toBe(Math.min(...history.load));
});

test('motor reaction less the water: nothing is left of it near running speed', () => {
  const start = run(across, 0.5);
  const before = Math.abs(startTwist(start).history.load.at(-2) ?? Number.NaN);
  expect(before).toBeLessThan(0.08 * motor.fullLoad);
});

test.each<StartMethod>([across, wyeDelta, softStarter])(
  'started by %o the bound is the largest twist of every inertia',
  (method) => {
    const { largest } = twistBound(started(method));
    for (const inertia of [0.01, 0.3, 20])
      expect(-startTwist(run(method, inertia)).largest / largest).toBeCloseTo(1, 3);
  },
);

test('breakdown less load governs where it exceeds the torque at standstill', () => {
  const bound = twistBound(started(across));
  expect(bound.governs).toBe('breakdown less load');
  expect(bound.atStandstill).toBeCloseTo(motor.lockedRotor - load.friction, 9);
  expect(bound.underway).toBeLessThan(motor.breakdown);
  expect(bound.largest).toBe(bound.underway);
});

test('standstill governs where the motor pulls hardest there', () => {
  const strong = motorTorques(
    { power: 22_371, speed: motor.fullLoadSpeed },
    { lockedRotor: 2.3, breakdown: 2.4, synchronousSpeed: motor.synchronousSpeed },
  );
  const bound = twistBound({ motor: strong, load, method: across });
  expect(bound.governs).toBe('standstill');
  expect(bound.largest / (strong.lockedRotor - load.friction)).toBeCloseTo(1, 3);
});

test('a changeover can twist more than the start itself', () => {
  const bound = twistBound(started(wyeDelta));
  expect(bound.atStandstill).toBeCloseTo(motor.lockedRotor / 3 - load.friction, 9);
  expect(bound.underway).toBeGreaterThan(2 * bound.atStandstill);
  expect(twistBound(started({ kind: 'autotransformer', tap: 0.8, changeover: 0.95 })).governs).toBe(
    'changeover',
  );
});

test('a soft starter twists most where the current falls below its limit', () => {
  const bound = twistBound(started(softStarter));
  expect(bound.governs).toBe('current limit');
  expect(bound.largest).toBeGreaterThan(bound.atStandstill);
  expect(bound.largest).toBeLessThan(twistBound(started(across)).largest);
});

test('a drive is bounded by its torque limit, whatever the ramp', () => {
  const bound = twistBound(started(drive));
  expect(bound).toMatchObject({ governs: 'torque limit' });
  expect(bound.largest).toBeCloseTo(1.2 * motor.fullLoad - load.friction, 9);
  for (const inertia of [0.01, 0.3, 20])
    expect(-startTwist(run(drive, inertia)).largest).toBeLessThanOrEqual(bound.largest * (1 + 1e-12));
});

test('at steady speed only swirl through the nozzles would twist the set', () => {
  expect(steadyTwist()).toBe(0);
  expect(steadyTwist({ massFlow: 30, entering: 0.2, leaving: 0.2 })).toBe(0);
  expect(steadyTwist({ massFlow: 30, entering: 0, leaving: 0.1 })).toBeCloseTo(-3, 12);
});

test('switched off, the set twists the other way by what the water held', () => {
  expect(coastDownTwist(load)).toBeCloseTo(load.dutyTorque + load.friction, 9);
  expect(Math.sign(coastDownTwist(load))).toBe(-Math.sign(startTwist(run(across, 0.5)).largest));
});

test('over a range of inertia time runs with it, the peak stays and the response is bounded', () => {
  const inertias = inertiasBetween({ least: 0.05, most: 5, count: 9 });
  const oscillators = [
    { frequency: 4, dampingRatio: 0.02 },
    { frequency: 15, dampingRatio: 0.02 },
  ];
  const range = startTwistRange(started(across), { inertias, oscillators });
  expect(range.duration.most / range.duration.least).toBeCloseTo(100, 3);
  expect(range.largestTwist / range.bound.largest).toBeCloseTo(1, 3);
  for (const response of range.largestResponse) {
    expect(response).toBeGreaterThan(range.bound.largest);
    expect(response).toBeLessThan(2 * range.bound.largest);
  }
  expect(range.starts.map(({ inertia }) => inertia)).toEqual(inertias);
});

test('a range has its ends and even ratios, and a wrong one is refused', () => {
  const inertias = inertiasBetween({ least: 0.1, most: 10, count: 3 });
  expect(inertias[1]).toBeCloseTo(1, 12);
  expect(inertias).toHaveLength(3);
  expect(inertiasBetween({ least: 1, most: 1, count: 5 })).toEqual([1]);
  expect(() => inertiasBetween({ least: 2, most: 1, count: 5 })).toThrow();
  expect(() => startTwistRange(started(across), { inertias: [], oscillators: [] })).toThrow();
});
