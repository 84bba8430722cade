import { expect, test } from 'vitest';
import { greatestTorqueAssumed, lockedRotorCurrentAssumed } from '../../src/catalog/index.js';
import type { Motor } from '../../src/input/installation.js';
import { startCase } from '../../src/model/conditions/start-case.js';
import { cylinderInertia, pumpBodies } from '../../src/model/frame/pump-body.js';
import { installation, sourced } from './fixture.js';

const RPM = Math.PI / 30;
const plain = installation([], []);
const caseOf = (change: Partial<Motor>, pump: Partial<typeof plain.pump> = {}) =>
  startCase({
    ...plain,
    pump: {
      ...plain.pump,
      ...pump,
      motor: { ...plain.pump.motor, power: 15_000, speed: 1765 * RPM, ...change },
    },
  });
const FULL = 15_000 / (1765 * RPM);

test('with nothing given, both torques are as great as they may be, and said to be assumed', () => {
  const { lockedRotor, breakdown, method } = caseOf({});
  const greatest = greatestTorqueAssumed({ power: 15_000 });
  expect(breakdown).toMatchObject({ assumed: true, citation: greatest.citation });
  expect(breakdown.value).toBeCloseTo(greatest.value * FULL, 9);
  expect(lockedRotor).toMatchObject({ assumed: true, value: breakdown.value });
  expect(method).toEqual({ kind: 'across the line' });
});

test('given torques stand; locked rotor is taken no greater than a given breakdown torque', () => {
  const both = caseOf({ lockedRotorTorque: sourced(120), breakdownTorque: sourced(190) });
  expect(both.lockedRotor).toMatchObject({ value: 120, assumed: false });
  expect(both.breakdown).toMatchObject({ value: 190, assumed: false });
  expect(caseOf({ breakdownTorque: sourced(190) }).lockedRotor).toMatchObject({ value: 190, assumed: true });
});

test('an assumed breakdown torque is at least the locked-rotor torque that is given', () => {
  expect(caseOf({ lockedRotorTorque: sourced(900) }).breakdown).toMatchObject({ value: 900, assumed: true });
});

test('a soft starter gets the locked-rotor current to reckon with where none is given', () => {
  const start = { kind: 'soft starter', currentLimit: 3 } as const;
  expect(caseOf({ start }).method).toMatchObject({
    kind: 'soft starter',
    currentLimit: 3,
    lockedRotorCurrent: lockedRotorCurrentAssumed().value,
  });
  expect(caseOf({ start, lockedRotorCurrent: sourced(7.1) }).method).toMatchObject({
    lockedRotorCurrent: 7.1,
  });
});

test('inertia: both given is their sum, one given a range, none the published bounds', () => {
  expect(caseOf({ inertia: sourced(0.3) }, { rotorInertia: sourced(0.1) }).inertia).toMatchObject({
    least: 0.4,
    most: 0.4,
    how: 'both given',
  });
  expect(caseOf({ inertia: sourced(0.3) }).inertia).toMatchObject({ least: 0.3, most: 0.6 });
  const open = caseOf({}).inertia;
  // 15 kW two-pole rotor by the list; the load such a motor must start is more than a hundred times that.
  expect(open?.least).toBeCloseTo(0.0501, 9);
  expect(open?.most ?? 0).toBeGreaterThan(20 * (open?.least ?? 0));
  const more = caseOf({}, { rotorInertia: sourced(0.1) }).inertia;
  expect(more?.least).toBeCloseTo(0.1501, 9);
});

test('above the published list the largest listed rotor still bounds from below; under it nothing does', () => {
  expect(caseOf({ power: 90_000 }).inertia?.least).toBeCloseTo(0.112, 9);
  expect(caseOf({ power: 400 }).inertia).toBeUndefined();
});

test('a speed of no induction motor has no field', () => {
  expect(caseOf({ speed: 2400 * RPM }).field).toBeUndefined();
  expect(caseOf({}).field).toMatchObject({ poles: 4, frequency: 60 });
});

test('the top of the motor stands over the shaft, its rim at half the diameter', () => {
  expect(caseOf({}).top).toEqual([0, 0, 1.5 + 1.2]);
  expect(caseOf({}).radius).toBeCloseTo(0.175, 12);
});

test('an upright cylinder has the rotary inertia of the handbooks, a disc as one without height', () => {
  // 12 kg, 0.4 m across, 0.3 m high: 12 (3·0.04 + 0.09)/12 = 0.21; 12·0.04/2 = 0.24.
  const [east, north, up] = cylinderInertia(12, 0.4, 0.3);
  expect(east).toBeCloseTo(0.21, 12);
  expect(north).toBe(east);
  expect(up).toBeCloseTo(0.24, 12);
  const disc = cylinderInertia(12, 0.4, 0);
  [0.12, 0.12, 0.24].forEach((value, i) => {
    expect(disc[i]).toBeCloseTo(value, 12);
  });
});

test('casing and motor turn with rotary inertia of their own', () => {
  for (const body of pumpBodies(plain.pump)) {
    expect(body.masses[0]?.inertia?.[2]).toBeGreaterThan(0);
  }
});
