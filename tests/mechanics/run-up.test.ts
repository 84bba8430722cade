import { expect, test } from 'vitest';
import { driveStages, settledSpeed } from '../../src/mechanics/start/drive-stages.js';
import { runUp } from '../../src/mechanics/start/run-up.js';
import type { StartMethod } from '../../src/mechanics/start/start-method.js';
import { drive, load, motor, softStarter, started, wyeDelta } from './starting-sets.js';

const INERTIA = 0.5;
const run = (method: StartMethod, inertia = INERTIA) =>
  runUp({ inertia, load, stages: driveStages(started(method), inertia) });

const methods: readonly StartMethod[] = [
  { kind: 'across the line' },
  wyeDelta,
  { kind: 'wye-delta' },
  { kind: 'autotransformer', tap: 0.8, changeover: 0.9 },
  softStarter,
  drive,
];

test.each(methods)('started by %o the work of the net torque is what the rotor holds', (method) => {
  const { work, kineticEnergy, speed } = run(method);
  expect(Math.abs(work / kineticEnergy - 1)).toBeLessThan(1e-5);
  expect(speed[0]).toBe(0);
  expect(speed.at(-1)).toBeGreaterThan(0.99 * load.runningSpeed);
});

test.each(methods.filter(({ kind }) => kind !== 'variable-speed drive'))(
  'started by %o twice the inertia takes twice the time with the same largest torque',
  (method) => {
    const once = run(method);
    const twice = run(method, 2 * INERTIA);
    expect(twice.duration / once.duration).toBeCloseTo(2, 6);
    expect(twice.largestNetTorque / once.largestNetTorque).toBeCloseTo(1, 9);
  },
);

test('every softer start takes longer than one across the line', () => {
  const across = run({ kind: 'across the line' }).duration;
  expect(across).toBeLessThan(1);
  for (const method of [softStarter, wyeDelta, drive])
    expect(run(method).duration).toBeGreaterThan(2 * across);
});

test('a lightly loaded set settles above full-load speed and a full one at it', () => {
  expect(settledSpeed(motor, load)).toBeGreaterThan(motor.fullLoadSpeed);
  const full = { ...load, dutyTorque: motor.fullLoad - load.friction };
  expect(settledSpeed(motor, full) / motor.fullLoadSpeed).toBeCloseTo(1, 9);
});

test('a drive follows its ramp while its limit allows', () => {
  const start = run(drive);
  expect(start.duration).toBeCloseTo(0.999 * drive.ramp, 3);
  expect(start.largestNetTorque).toBeCloseTo((INERTIA * load.runningSpeed) / drive.ramp, 9);
});

test('a drive at its limit takes longer than its ramp', () => {
  const quick = { ...drive, ramp: 0.2 };
  const start = run(quick);
  expect(start.duration).toBeGreaterThan(quick.ramp);
  expect(start.largestNetTorque).toBeCloseTo(drive.torqueLimit * motor.fullLoad - load.friction, 9);
});

test('a soft starter holds the torque at standstill by the square of the current', () => {
  const start = run(softStarter);
  expect(start.netTorque[0]).toBeCloseTo((4 / 6.5) ** 2 * motor.lockedRotor - load.friction, 9);
});

test('a soft starter with a ramp begins with nothing, takes longer and never exceeds its limit', () => {
  const start = run({ ...softStarter, ramp: 4 });
  const unramped = run(softStarter);
  expect(start.netTorque[0]).toBe(0);
  expect(start.duration).toBeGreaterThan(unramped.duration + 1);
  expect(start.largestNetTorque).toBeLessThan(unramped.largestNetTorque);
  expect(Math.abs(start.work / start.kineticEnergy - 1)).toBeLessThan(1e-4);
  expect(Math.min(...start.speed)).toBe(0);
});

test('a ramp of next to no time changes nothing', () => {
  const start = run({ ...softStarter, ramp: 1e-6 });
  // The ramp hides in the first of 2000 steps, whose first of six parts then sees no torque.
  expect(Math.abs(start.duration / run(softStarter).duration - 1)).toBeLessThan(1 / 6 / 2000);
});

test('at the changeover the torque jumps and the speed does not', () => {
  const { time, speed, netTorque } = run(wyeDelta);
  const jump = time.findIndex((at, sample) => sample > 0 && at === time[sample - 1]);
  expect(speed[jump]).toBeCloseTo(0.7 * load.runningSpeed, 9);
  expect(speed[jump - 1]).toBe(speed[jump]);
  expect(netTorque[jump]).toBeGreaterThan(3 * (netTorque[jump - 1] ?? Number.NaN));
});

test('without a changeover speed the worst one is taken', () => {
  const given = [0.1, 0.3, 0.5, 0.7].map(
    (changeover) => run({ kind: 'wye-delta', changeover }).largestNetTorque,
  );
  expect(run({ kind: 'wye-delta' }).largestNetTorque).toBeGreaterThanOrEqual(Math.max(...given) * (1 - 1e-6));
});

const failure = (code: string, reached: number) => expect.objectContaining({ code, data: { reached } });

test('a pump heavier than breakdown torque never reaches its speed', () => {
  const heavy = { ...load, dutyTorque: 3 * motor.fullLoad };
  const set = { motor, load: heavy, method: { kind: 'across the line' } as const };
  expect(() => driveStages(set)).toThrow(expect.objectContaining({ code: 'mechanics.never-reaches-speed' }));
});

test('a soft starter that is too soft stalls, and the error says where', () => {
  // At 45 % of 1765 r/min: slip 0.559, torque 1.730, voltage² 0.1166: 0.202 against 0.195 of full load; at 46 % 0.202
  // against 0.203.
  const soft = { kind: 'soft starter', currentLimit: 2.2, lockedRotorCurrent: 6.5 } as const;
  expect(() => run(soft)).toThrow(failure('mechanics.never-reaches-speed', 45));
});

test('a changeover that reduced voltage does not reach is refused', () => {
  expect(() => run({ kind: 'wye-delta', changeover: 0.98 })).toThrow(
    expect.objectContaining({ code: 'mechanics.changeover-not-reached' }),
  );
});

test('friction above the torque at standstill leaves the set where it is', () => {
  const stuck = { ...load, friction: 2 * motor.lockedRotor };
  const stages = [{ purpose: 'full' as const, torqueAt: () => motor.lockedRotor, to: 100 }];
  expect(() => runUp({ inertia: 1, load: stuck, stages })).toThrow(
    failure('mechanics.never-reaches-speed', 0),
  );
});

test('a rotor without inertia is refused', () => {
  for (const inertia of [0, -1, Number.NaN, Number.POSITIVE_INFINITY])
    expect(() => run(drive, inertia)).toThrow(expect.objectContaining({ code: 'mechanics.out-of-range' }));
});
