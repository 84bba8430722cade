import { expect, test } from 'vitest';
import {
  greatestTorqueAssumed,
  leastMotorTorques,
  lockedRotorCurrentAssumed,
  startableLoadInertia,
  synchronousSpeed,
  twoPoleRotorInertia,
} from '../../src/catalog/index.js';
import { citationText } from '../../src/sources/index.js';

const HORSEPOWER = 745.6998715822702;
const RPM = Math.PI / 30;

const percents = (horsepower: number, poles: number) => {
  const found = leastMotorTorques({ power: horsepower * HORSEPOWER, poles });
  return found && [found.lockedRotor.value * 100, found.breakdown.value * 100].map(Math.round);
};

test('a rating of the table has its row, whichever number of poles', () => {
  expect(percents(5, 2)).toEqual([150, 215]);
  expect(percents(5, 4)).toEqual([185, 225]);
  expect(percents(7.5, 6)).toEqual([150, 205]);
  expect(percents(250, 8)).toEqual([100, 175]);
});

test('a metric rating finds the inch rating it is the rounding of', () => {
  expect(leastMotorTorques({ power: 5500, poles: 4 })?.lockedRotor.row).toBe('7.5 hp, 4 poles');
  expect(leastMotorTorques({ power: 55_000, poles: 4 })?.lockedRotor.row).toBe('75 hp, 4 poles');
  expect(leastMotorTorques({ power: 750, poles: 6 })?.lockedRotor.row).toBe('1 hp, 6 poles');
});

test('a rating between two rows takes the larger, whose minimums are the smaller', () => {
  expect(leastMotorTorques({ power: 4000, poles: 4 })?.lockedRotor.row).toBe('7.5 hp, 4 poles');
});

test('minimums never rise with the rating, so that the row above is never too high', () => {
  for (const poles of [2, 4, 6, 8]) {
    let before = [1000, 1000];
    for (let horsepower = 1.5; horsepower <= 250; horsepower += 0.5) {
      const now = percents(horsepower, poles) ?? [Number.NaN, Number.NaN];
      expect(now[0]).toBeLessThanOrEqual(before[0] ?? 0);
      expect(now[1]).toBeLessThanOrEqual(before[1] ?? 0);
      before = now;
    }
  }
});

test('where the table has no motor there is no value', () => {
  expect(percents(1, 2)).toBeUndefined();
  expect(percents(300, 4)).toBeUndefined();
  expect(percents(0.5, 4)).toBeUndefined();
  expect(percents(10, 10)).toBeUndefined();
  expect(percents(Number.NaN, 4)).toBeUndefined();
});

test('cells read on a page say so and the others say memory', () => {
  const confidence = (horsepower: number, poles: number) => {
    const found = leastMotorTorques({ power: horsepower * HORSEPOWER, poles });
    return [found?.lockedRotor.citation.confidence, found?.breakdown.citation.confidence];
  };
  expect(confidence(5, 4)).toEqual(['read', 'read']);
  expect(confidence(5, 6)).toEqual(['memory', 'memory']);
  expect(confidence(15, 4)).toEqual(['memory', 'read']);
  expect(confidence(20, 4)).toEqual(['read', 'memory']);
  expect(confidence(40, 4)).toEqual(['memory', 'memory']);
});

test('the torque assumed at most is higher for small motors and never below a minimum of the table', () => {
  expect(greatestTorqueAssumed({ power: 10 * HORSEPOWER }).value).toBe(3);
  expect(greatestTorqueAssumed({ power: 7500 }).value).toBe(3);
  expect(greatestTorqueAssumed({ power: 15 * HORSEPOWER }).value).toBe(2.5);
  for (let horsepower = 1; horsepower <= 250; horsepower += 0.5) {
    const most = greatestTorqueAssumed({ power: horsepower * HORSEPOWER }).value * 100;
    for (const poles of [2, 4, 6, 8])
      for (const percent of percents(horsepower, poles) ?? []) expect(percent).toBeLessThanOrEqual(most);
  }
});

test.each([
  [1750, 4, 60],
  [1450, 4, 50],
  [3500, 2, 60],
  [2900, 2, 50],
  [1160, 6, 60],
  [965, 6, 50],
  [870, 8, 60],
  [725, 8, 50],
  [1800, 4, 60],
])('a nameplate of %i r/min is that of %i poles at %i Hz', (speed, poles, frequency) => {
  expect(synchronousSpeed({ speed: speed * RPM })).toMatchObject({ poles, frequency });
});

test('slip is what the shaft falls behind the field, and a speed nobody makes has none', () => {
  expect(synchronousSpeed({ speed: 1746 * RPM })?.slip).toBeCloseTo(0.03, 12);
  expect(synchronousSpeed({ speed: 1800 * RPM })?.slip).toBeCloseTo(0, 12);
  expect(synchronousSpeed({ speed: 2200 * RPM })).toBeUndefined();
  expect(synchronousSpeed({ speed: 3700 * RPM })).toBeUndefined();
});

test('the rotors of the list stay far below the load the same motor must be able to start', () => {
  for (const power of [1500, 7500, 15_000, 22_000]) {
    const rotor = twoPoleRotorInertia({ power })?.value ?? Number.NaN;
    const load = startableLoadInertia({ power, synchronousSpeed: 3600 * RPM }).value;
    expect(rotor).toBeGreaterThan(0);
    expect(rotor).toBeLessThan(load / 5);
  }
  expect(twoPoleRotorInertia({ power: 30_000 })).toBeUndefined();
});

test('every value prints its source', () => {
  const found = leastMotorTorques({ power: 7500, poles: 4 });
  const values = [
    found?.lockedRotor,
    found?.breakdown,
    greatestTorqueAssumed({ power: 7500 }),
    lockedRotorCurrentAssumed(),
    twoPoleRotorInertia({ power: 7500 }),
    startableLoadInertia({ power: 7500, synchronousSpeed: 1800 * RPM }),
  ];
  for (const value of values) {
    if (value === undefined) throw new Error('a value is missing');
    expect(citationText(value.citation)).toMatch(/\), .+, (read|memory|two sources)$/);
  }
});
