import { expect, test } from 'vitest';
import { changed, everyPart, installationOf, shortest } from './sample-text.js';

const START = /^pump\.(motor\.(locked|breakdown|inertia)|rotor-inertia|duty)/;
const noted = (text: string) =>
  installationOf(text)
    .assumptions.filter(({ path }) => START.test(path))
    .map(({ path, value }) => `${path}: ${value}`);
/** A line of the sample with more keys of the motor. */
const motor = (keys: string) => changed(shortest, ['power: 20 hp', `power: 20 hp, ${keys}`]);

test('with nothing said, torques, inertia and the torque of the water are taken', () => {
  expect(noted(shortest).map((line) => line.split(':')[0])).toEqual([
    'pump.motor.breakdown-torque',
    'pump.motor.inertia',
    'pump.duty.efficiency',
  ]);
});

test('a given breakdown torque is taken at standstill too', () => {
  expect(noted(motor('breakdown-torque: 120 ft.lbf'))).toContain(
    'pump.motor.locked-rotor-torque: 120 ft·lb, as much as at breakdown',
  );
});

test('a given locked-rotor torque leaves the breakdown torque to be taken', () => {
  const lines = noted(motor('locked-rotor-torque: 90 ft.lbf'));
  expect(lines.some((line) => line.startsWith('pump.motor.breakdown-torque: 148'))).toBe(true);
  expect(lines.some((line) => line.startsWith('pump.motor.locked-rotor-torque'))).toBe(false);
});

test('one given inertia narrows the range to the double of it', () => {
  expect(noted(motor('inertia: 4 lb.ft2'))).toContain('pump.rotor-inertia: between 4 lb·ft² and 8 lb·ft²');
});

test('under a drive the limit of the torque stands in for the torques of the motor', () => {
  const lines = noted(motor('start: {variable-speed drive: {torque-limit: 110 %, ramp: 20 s}}'));
  expect(lines.some((line) => line.includes('torque:'))).toBe(false);
});

test('a file that gives torques, both inertias and the efficiency rests on none of it', () => {
  expect(noted(everyPart)).toEqual([]);
});
