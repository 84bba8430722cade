import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nearness } from '../../src/as-installed/judges/knock-margin.js';
import { nozzleAxes } from '../../src/model/nozzle-axes.js';
import { unbalance } from '../../src/readings/unbalance.js';
import { parallelismOf } from '../../src/report/limits/alignment.js';
import { vibrationZones, zoneOf } from '../../src/report/limits/vibration.js';
import { faceGaps } from '../../src/sheet/face-gaps.js';
import { headOf } from '../../src/sheet/hydraulics.js';

const INCH = 0.0254;
const south = nozzleAxes([0, -1, 0]);

describe('four gaps', () => {
  // By hand: top 0.142, bottom 0.124, sides 0.133 and 0.131 in; slopes 0.009 and 0.001; 2 √(81 + 1) = 18.11 thousandths.
  const gaps = faceGaps(
    { up: 0.142 * INCH, across: 0.133 * INCH, down: 0.124 * INCH, back: 0.131 * INCH },
    11 * INCH,
    south,
  );

  test('mean and largest difference across the face, worked by hand', () => {
    expect(gaps.mean / INCH).toBeCloseTo(0.1325, 9);
    expect(gaps.difference / INCH).toBeCloseTo(0.0181108, 6);
    expect(gaps.offPlane / INCH).toBeCloseTo(0.0005, 9);
  });

  test('a nozzle that faces south is across to the west; widest towards the top and a little to the west', () => {
    expect(south.across).toEqual([-1, 0, 0].map((part) => expect.closeTo(part, 12)));
    expect(gaps.widest[2]).toBeCloseTo(9 / Math.sqrt(82), 9);
    expect(gaps.widest[0]).toBeCloseTo(-1 / Math.sqrt(82), 9);
  });

  test('turns in the sense of the axes: wider on top is a negative turn about the cross axis', () => {
    expect(gaps.sideways).toBeCloseTo(-0.018 / 11, 9);
    expect(gaps.upright).toBeCloseTo(0.002 / 11, 9);
  });

  test('even gaps open to no side', () => {
    const even = faceGaps({ up: 1, across: 1, down: 1, back: 1 }, 1, south);
    expect(even).toMatchObject({ difference: 0, widest: [0, 0, 0], offPlane: 0 });
  });

  test('the gaps of any turned face come back: the turns move its rim by what was read', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e-2, max: 1e-2, noNaN: true }),
        fc.double({ min: -1e-2, max: 1e-2, noNaN: true }),
        fc.constantFrom<[number, number, number]>([0, -1, 0], [1, 0, 0], [0, 0, 1], [0.6, 0.8, 0]),
        (sideways, upright, axis) => {
          const axes = nozzleAxes(axis);
          const radius = 0.14;
          // Movement along the nozzle of a rim point r under the turn θ: (θ × r) · along.
          const moved = (point: readonly number[]): number => {
            const turn = [0, 1, 2].map(
              (i) => sideways * (axes.across[i] ?? 0) + upright * (axes.upright[i] ?? 0),
            );
            const [a = 0, b = 0, c = 0] = turn;
            const [x = 0, y = 0, z = 0] = point.map((part) => part * radius);
            const spun = [b * z - c * y, c * x - a * z, a * y - b * x];
            return spun.reduce((sum, part, i) => sum + part * (axes.along[i] ?? 0), 0);
          };
          const read = {
            up: 3e-3 + moved(axes.upright),
            across: 3e-3 + moved(axes.across),
            down: 3e-3 - moved(axes.upright),
            back: 3e-3 - moved(axes.across),
          };
          const found = faceGaps(read, 2 * radius, axes);
          expect(found.sideways).toBeCloseTo(sideways, 9);
          expect(found.upright).toBeCloseTo(upright, 9);
          expect(found.mean).toBeCloseTo(3e-3, 9);
        },
      ),
    );
  });
});

test('parallelism as the practice prints it: NPS 4, 6 and 12 of class 150, and the cap', () => {
  expect(parallelismOf(9 * INCH, 'us') / INCH).toBeCloseTo(0.01, 9);
  expect(parallelismOf(11 * INCH, 'us') / INCH).toBeCloseTo(0.011, 9);
  expect(parallelismOf(19 * INCH, 'us') / INCH).toBeCloseTo(0.019, 9);
  expect(parallelismOf(40 * INCH, 'us') / INCH).toBeCloseTo(0.03, 9);
  expect(parallelismOf(0.24, 'si')).toBe(0.25e-3);
  expect(parallelismOf(1, 'si')).toBe(0.75e-3);
});

test('zones of general use up to 200 kW and above, from memory of the standard', () => {
  expect(vibrationZones(15e3)).toMatchObject({
    boundaries: [3.2e-3, 5.1e-3, 8.5e-3],
    citation: { confidence: 'memory' },
  });
  expect(vibrationZones(250e3)?.boundaries).toEqual([4.2e-3, 6.1e-3, 9.5e-3]);
  expect(vibrationZones(500)).toBeUndefined();
  const zones = vibrationZones(15e3);
  if (zones === undefined) throw new Error('no zones');
  expect([3.2e-3, 3.3e-3, 8.5e-3, 9e-3].map((velocity) => zoneOf(velocity, zones))).toEqual([
    'as new',
    'for long running',
    'for a limited time',
    'may damage',
  ]);
});

test('unbalance of 460, 467 and 450 V by hand: mean 459, farthest 9, 1.96 per cent', () => {
  expect(unbalance([460, 467, 450])).toBeCloseTo(9 / 459, 12);
  expect(unbalance([400, 400, 400])).toBe(0);
  expect(unbalance([0, 0, 0])).toBeUndefined();
});

test('head by hand: 31 psi at 62.4 lb/ft³ is 71.5 ft; what gauges differ by at rest falls out', () => {
  const psi = 6894.757;
  const density = 62.4 * 16.018463;
  const bores = { suction: 0.0186, discharge: 0.0186 };
  const gauges = {
    rest: { suction: 54 * psi, discharge: 54.5 * psi },
    running: { suction: 50.5 * psi, discharge: 82 * psi },
  };
  expect(headOf(gauges, density, bores) / 0.3048).toBeCloseTo((31 * 144) / 62.4, 2);
  const shifted = {
    ...gauges,
    rest: { suction: 54 * psi, discharge: 64.5 * psi },
    running: { suction: 50.5 * psi, discharge: 92 * psi },
  };
  expect(headOf(shifted, density, bores)).toBeCloseTo(headOf(gauges, density, bores), 9);
});

test('a narrower discharge adds its velocity head', () => {
  const gauges = { rest: { suction: 0, discharge: 0 }, running: { suction: 0, discharge: 0 }, flow: 0.04 };
  const head = headOf(gauges, 1000, { suction: 0.02, discharge: 0.01 });
  expect(head).toBeCloseTo((4 ** 2 - 2 ** 2) / (2 * 9.80665), 9);
});

test('nearness to running speed: 1 at it, three quarters a quarter away; a locked band clears what lies in it', () => {
  expect(nearness(30, { from: 30, to: 30 })).toBe(1);
  expect(nearness(22.5, { from: 30, to: 30 })).toBeCloseTo(0.75, 12);
  expect(nearness(20, { from: 12, to: 30 })).toBe(1);
  expect(nearness(20, { from: 12, to: 30 }, [{ from: 16, to: 25 }])).toBeCloseTo(0.8, 12);
  // A band that leaves nothing to run at is a slip, and clears nothing.
  expect(nearness(20, { from: 12, to: 30 }, [{ from: 0, to: 1666 }])).toBe(1);
});
