import { expect, test } from 'vitest';
import { lockOutBands, wholeTurns } from '../../src/mechanics/modes/lock-out-bands.js';

const RPM = Math.PI / 30;
const speeds = { lowest: 600 * RPM, highest: 1800 * RPM };
const perMinute = (speed: number) => speed / RPM;

test('20 Hz with a margin of a quarter excludes 960 to 1600 rpm', () => {
  const [band, ...others] = lockOutBands({ frequencies: [20], timesPerTurn: 1, margin: 0.25, speeds });
  expect(others).toEqual([]);
  expect(perMinute(band?.from ?? 0)).toBeCloseTo(1200 / 1.25, 9);
  expect(perMinute(band?.to ?? 0)).toBeCloseTo(1200 / 0.75, 9);
  expect(band?.frequencies).toEqual([20]);
});

test('at the edge of a band the margin is just kept', () => {
  const [band] = lockOutBands({ frequencies: [20], timesPerTurn: 2, margin: 0.1, speeds });
  for (const edge of [band?.from ?? 0, band?.to ?? 0]) {
    const exciting = (2 * edge) / (2 * Math.PI);
    // 20 Hz lies a tenth of the exciting frequency above the one and below the other.
    if (perMinute(edge) > 600.001) expect(Math.abs(20 - exciting) / exciting).toBeCloseTo(0.1, 9);
  }
});

test('bands that touch become one and name both frequencies', () => {
  const bands = lockOutBands({ frequencies: [22, 20, 12], timesPerTurn: 1, margin: 0.1, speeds });
  expect(bands.map(({ frequencies }) => frequencies)).toEqual([[12], [20, 22]]);
});

test('a band is cut at the range, and one outside it is none', () => {
  const bands = lockOutBands({ frequencies: [9.9, 40], timesPerTurn: 1, margin: 0.1, speeds });
  expect(bands).toHaveLength(1);
  expect(perMinute(bands[0]?.from ?? 0)).toBeCloseTo(600, 9);
  expect(perMinute(bands[0]?.to ?? 0)).toBeCloseTo(660, 9);
});

test('ends are rounded outwards to whole turns a minute, and whole ones stay', () => {
  expect(wholeTurns({ from: 960.4 * RPM, to: 1600.2 * RPM })).toEqual({ from: 960, to: 1601 });
  expect(wholeTurns({ from: 960 * RPM, to: 1600 * RPM })).toEqual({ from: 960, to: 1600 });
});
