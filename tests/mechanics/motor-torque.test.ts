import { expect, test } from 'vitest';
import {
  breakdownSlip,
  motorTorqueAt,
  motorTorques,
  ratedTorque,
} from '../../src/mechanics/start/motor-torque.js';
import { motor } from './starting-sets.js';

test('the curve goes through standstill, breakdown, full load and the speed of the field', () => {
  const atBreakdown = motor.synchronousSpeed * (1 - breakdownSlip(motor));
  expect(motorTorqueAt(motor, 0)).toBeCloseTo(motor.lockedRotor, 9);
  expect(motorTorqueAt(motor, atBreakdown)).toBeCloseTo(motor.breakdown, 9);
  expect(motorTorqueAt(motor, motor.fullLoadSpeed)).toBeCloseTo(motor.fullLoad, 9);
  expect(motorTorqueAt(motor, motor.synchronousSpeed)).toBe(0);
});

test('the curve rises to breakdown, falls after it and has no step', () => {
  const atBreakdown = motor.synchronousSpeed * (1 - breakdownSlip(motor));
  let before = motorTorqueAt(motor, 0);
  for (let step = 1; step <= 5000; step += 1) {
    const speed = (motor.synchronousSpeed * step) / 5000;
    const torque = motorTorqueAt(motor, speed);
    if (speed < atBreakdown) expect(torque).toBeGreaterThan(before);
    else if (speed > atBreakdown * 1.001) expect(torque).toBeLessThan(before);
    expect(Math.abs(torque - before)).toBeLessThan(motor.fullLoad * 0.02);
    before = torque;
  }
});

test('above the speed of the field the motor brakes', () => {
  expect(motorTorqueAt(motor, motor.synchronousSpeed * 1.01)).toBeLessThan(0);
});

test.each([
  ['no power', () => ratedTorque({ power: 0, speed: 180 })],
  ['a speed that is no number', () => ratedTorque({ power: 1000, speed: Number.NaN })],
  [
    'a shaft as fast as its field',
    () =>
      motorTorques({ power: 1000, speed: 188 }, { lockedRotor: 1.5, breakdown: 2, synchronousSpeed: 188 }),
  ],
  [
    'a breakdown torque below full load',
    () =>
      motorTorques({ power: 1000, speed: 180 }, { lockedRotor: 1.5, breakdown: 0.9, synchronousSpeed: 188 }),
  ],
  [
    'a shaft so slow that breakdown would lie behind standstill',
    () =>
      motorTorques({ power: 1000, speed: 120 }, { lockedRotor: 1.5, breakdown: 3, synchronousSpeed: 188 }),
  ],
])('%s is refused', (_what, wrong) => {
  expect(wrong).toThrow(expect.objectContaining({ code: 'mechanics.out-of-range' }));
});
