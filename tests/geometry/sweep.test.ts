import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  boundingBox,
  type Capsule,
  type ConvexSolid,
  distanceBetween,
  intersects,
  moved,
  polytopeOf,
  type Solid,
  sectorPrism,
  sweepAlong,
  sweepConvex,
  sweepUp,
  turned,
  type Vec3,
  volumeOf,
} from '../../src/geometry/index.js';
import { angles, anySolid, directions, points } from './solids-arbitrary.js';

const at = (point: Vec3): Capsule => ({ kind: 'capsule', from: point, to: point, radius: 0 });
const cylinder: ConvexSolid = { kind: 'cylinder', from: [0, 0, 0], to: [0, 0, 2], radius: 0.5 };
const leaning: ConvexSolid = { kind: 'cylinder', from: [0, 0, 0], to: [3, 0, 4], radius: 0.5 };
const box: ConvexSolid = { kind: 'box', low: [0, 0, 0], high: [1, 2, 3] };
const standing: ConvexSolid = { kind: 'turned-box', centre: [0, 0, 1], size: [1, 2, 3], bearing: 0.4 };
const pipe: ConvexSolid = { kind: 'capsule', from: [0, 0, 0], to: [2, 0, 0], radius: 0.5 };

test('raised straight up, a box stays a box and an upright cylinder a cylinder', () => {
  expect(sweepUp(box, 1)).toEqual({ kind: 'box', low: [0, 0, 0], high: [1, 2, 4] });
  expect(sweepUp(box, -1)).toEqual({ kind: 'box', low: [0, 0, -1], high: [1, 2, 3] });
  expect(sweepUp(standing, 1)).toMatchObject({ kind: 'turned-box', centre: [0, 0, 1.5], size: [1, 2, 4] });
  expect(sweepUp(cylinder, 1)).toMatchObject({ from: [0, 0, 0], to: [0, 0, 3] });
  expect(sweepUp(cylinder, -1)).toMatchObject({ from: [0, 0, -1], to: [0, 0, 2] });
  expect(sweepUp(box, 0)).toBe(box);
});

/** Volumes that follow from the figure: a movement by v adds |v| times the shadow along v. */
const volumes: readonly (readonly [string, ConvexSolid, number])[] = [
  ['a box', box, 6],
  ['a turned box', standing, 6],
  ['a cylinder', cylinder, Math.PI / 2],
  ['a pipe with its hemispheres', pipe, Math.PI / 2 + Math.PI / 6],
  ['a box moved askew', sweepConvex(box, [1, 1, 1]), 6 + 6 + 3 + 2],
  ['a turned box moved askew', sweepConvex(turnedBox(), [1, 1, 1]), 6 + 6 + 3 + 2],
  // Shadow from above of a cylinder of length 5 that leans 4 in 5: the ellipse of its end and its middle section.
  ['a leaning cylinder raised', sweepConvex(leaning, [0, 0, 2]), Math.PI * 1.25 + 2 * (Math.PI * 0.2 + 3)],
  ['a pipe raised', sweepConvex(pipe, [0, 0, 3]), (Math.PI * 2) / 3 + 3 * (Math.PI / 4 + 2)],
  ['a ball moved', sweepConvex(at3(), [0, 3, 4]), Math.PI / 6 + (5 * Math.PI) / 4],
  // Upright cylinder moved east by 3, then north by 4: a prism over a rounded rectangle.
  [
    'a cylinder moved twice',
    sweepConvex(sweepConvex(cylinder, [3, 0, 0]), [0, 4, 0]),
    2 * (Math.PI / 4 + 12 + 3 + 4),
  ],
  [
    'a tetrahedron',
    polytopeOf([
      [0, 0, 0],
      [1, 0, 0],
      [0, 2, 0],
      [0, 0, 3],
      [0.1, 0.1, 0.1],
    ]),
    1,
  ],
];

function turnedBox(): ConvexSolid {
  return { kind: 'turned-box', centre: [0, 0, 0], size: [1, 2, 3], bearing: 0 };
}

function at3(): ConvexSolid {
  return { kind: 'capsule', from: [1, 1, 1], to: [1, 1, 1], radius: 0.5 };
}

test.each(volumes)('%s has the volume of the figure', (_, solid, volume) => {
  expect(Math.abs(volumeOf(solid) / volume - 1)).toBeLessThan(1e-12);
});

test('a polytope keeps only true corners, and faces without cuts', () => {
  const grid = [0, 1, 2].flatMap((x) => [0, 1, 2].flatMap((y) => [0, 1, 2].map((z): Vec3 => [x, y, z])));
  const { corners, faces } = polytopeOf(grid);
  expect(corners).toHaveLength(8);
  expect(faces.map((face) => face.length)).toEqual([4, 4, 4, 4, 4, 4]);
  expect(volumeOf({ kind: 'polytope', corners, faces })).toBeCloseTo(8, 12);
});

test('what is swept is met just where the moving solid comes by', () => {
  fc.assert(
    fc.property(anySolid, anySolid, directions, points(2), (solid, other, vector, shift) => {
      const obstacle = moved(other, shift);
      const swept = distanceBetween(sweepAlong(solid, vector), obstacle).distance;
      const stops = Array.from({ length: 41 }, (_, step) => {
        const part = vector.map((each) => (each * step) / 40) as unknown as Vec3;
        return distanceBetween(moved(solid, part), obstacle).distance;
      });
      const least = Math.min(...stops);
      expect(swept).toBeLessThan(least + 1e-9);
      // Between two stops it comes nearer by half a step at most.
      expect(swept).toBeGreaterThan(least - Math.hypot(...vector) / 80 - 1e-9);
    }),
    { numRuns: 30, seed: 31 },
  );
});

test('turning keeps the volume, and a quarter turn takes east to south', () => {
  fc.assert(
    fc.property(anySolid, angles, points(2), (solid, bearing, about) => {
      const after = turned(solid, bearing, about);
      expect(Math.abs(volumeOf(after as ConvexSolid) - volumeOf(solid))).toBeLessThan(1e-9);
    }),
    { numRuns: 40, seed: 32 },
  );
  const quarter = boundingBox(turned(box, Math.PI / 2, [0, 0, 0]));
  [0, -1, 0].forEach((value, axis) => {
    expect(quarter.low[axis]).toBeCloseTo(value, 12);
  });
  [2, 0, 3].forEach((value, axis) => {
    expect(quarter.high[axis]).toBeCloseTo(value, 12);
  });
});

test('the bounding box touches the solid on every side', () => {
  fc.assert(
    fc.property(anySolid, (solid) => {
      const { low, high } = boundingBox(solid);
      for (const axis of [0, 1, 2] as const)
        for (const [side, outward] of [
          [low, -1],
          [high, 1],
        ] as const) {
          const [from, to] = [
            [-9, -9, -9],
            [9, 9, 9],
          ];
          from[axis] = outward > 0 ? side[axis] : side[axis] - 1;
          to[axis] = outward > 0 ? side[axis] + 1 : side[axis];
          const slab: Solid = { kind: 'box', low: from as unknown as Vec3, high: to as unknown as Vec3 };
          const { distance, depth } = distanceBetween(solid, slab);
          expect(distance + depth).toBeLessThan(1e-9);
        }
    }),
    { numRuns: 30, seed: 33 },
  );
});

test('runs and groups are swept, moved and turned piece by piece', () => {
  const run: Solid = {
    kind: 'run',
    path: [
      [0, 0, 0],
      [1, 0, 0],
      [1, 1, 0],
    ],
    radius: 0.1,
  };
  const raised = sweepUp(run, 2);
  expect(raised.kind).toBe('group');
  expect(boundingBox(raised).high).toEqual([1.1, 1.1, 2.1]);
  expect(boundingBox(moved(run, [1, 0, 0])).high[0]).toBeCloseTo(2.1, 12);
  expect(boundingBox(turned(raised, Math.PI / 2, [0, 0, 0])).low[1]).toBeCloseTo(-1.1, 12);
  expect(boundingBox(moved(raised, [0, 0, 1])).low[2]).toBeCloseTo(0.9, 12);
});

test.each([0.3, 1.5, Math.PI / 2, Math.PI, 4, 2 * Math.PI])(
  'the prism of a sector of %d rad holds the sector, and reaches no farther than it says',
  (angle) => {
    const sector = {
      centre: [1, 2, 3],
      axis: [0, 0, 2],
      start: [1, 0, 0.5],
      angle,
      radius: 0.8,
      thickness: 0.1,
    } as const;
    const { solid, beyond, excess } = sectorPrism(sector);
    const volume = solid.pieces.reduce((sum, piece) => sum + volumeOf(piece), 0);
    expect(Math.abs(volume / (0.5 * 0.8 ** 2 * angle * 0.1) - 1 - excess)).toBeLessThan(1e-9);
    expect(excess).toBeLessThan(0.00144);
    expect(beyond / 0.8).toBeLessThan(0.00215);
    for (let step = 0; step <= 50; step++) {
      const turn = (angle * step) / 50;
      const point = (reach: number): Capsule =>
        at([1 + reach * Math.cos(turn), 2 + reach * Math.sin(turn), 3.05]);
      expect(distanceBetween(point(0.8), solid).distance).toBeLessThan(1e-9);
      expect(intersects(point(0.8 + beyond + 1e-6), solid)).toBe(false);
    }
    if (angle > Math.PI) return;
    const behind = at([1 + 0.1 * Math.cos(-0.5), 2 + 0.1 * Math.sin(-0.5), 3]);
    expect(intersects(behind, solid)).toBe(false);
  },
);

test('a handle on a level stem sweeps an upright sector', () => {
  const sector = {
    centre: [0, 0, 0],
    axis: [1, 0, 0],
    start: [0, 1, 0],
    angle: Math.PI / 2,
    radius: 0.5,
    thickness: 0.04,
  } as const;
  const { low, high } = boundingBox(sectorPrism(sector).solid);
  expect(low[0]).toBeCloseTo(-0.02, 12);
  expect(high[1]).toBeCloseTo(0.5, 2);
  expect(high[2]).toBeCloseTo(0.5, 2);
  expect(low[2]).toBeCloseTo(0, 12);
});

test.each([
  { angle: 0, radius: 1, start: [1, 0, 0], code: 'no-sector' },
  { angle: 7, radius: 1, start: [1, 0, 0], code: 'no-sector' },
  { angle: 1, radius: -1, start: [1, 0, 0], code: 'no-sector' },
  { angle: 1, radius: 1, start: [0, 0, 3], code: 'no-direction' },
] as const)(
  'a sector of $angle rad and $radius m from $start is refused',
  ({ angle, radius, start, code }) => {
    const make = () =>
      sectorPrism({ centre: [0, 0, 0], axis: [0, 0, 1], start, angle, radius, thickness: 0.1 });
    expect(make).toThrow(`geometry.${code}`);
  },
);
