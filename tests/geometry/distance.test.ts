import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bodyOf, reachOf } from '../../src/geometry/convex-body.js';
import {
  type Box,
  type Capsule,
  type ConvexSolid,
  type Cylinder,
  distanceBetween,
  intersects,
  moved,
  nearestObstacle,
  polytopeOf,
  type Run,
  type Solid,
  turned,
  type Vec3,
} from '../../src/geometry/index.js';
import { distanceToAndFro } from './nearest-on-solid.js';
import { angles, anySolid, boxes, capsules, cylinders, points } from './solids-arbitrary.js';

const EXACT = 1e-9;

const box = (low: Vec3, high: Vec3): Box => ({ kind: 'box', low, high });
const cylinder = (from: Vec3, to: Vec3, radius: number): Cylinder => ({ kind: 'cylinder', from, to, radius });
const capsule = (from: Vec3, to: Vec3, radius: number): Capsule => ({ kind: 'capsule', from, to, radius });
const unit = box([0, 0, 0], [1, 1, 1]);
const motor = cylinder([0, 0, 1], [0, 0, 2], 0.3);

/** Distances that follow from the figure alone. */
const apart: readonly (readonly [string, Solid, Solid, number])[] = [
  ['boxes face to face', unit, box([3, 0.2, 0.3], [4, 0.8, 0.5]), 2],
  ['boxes edge to edge', unit, box([4, 5, 0], [5, 6, 1]), 5],
  ['boxes corner to corner', unit, box([3, 4, 2], [5, 6, 7]), Math.sqrt(4 + 9 + 1)],
  [
    // The near corner of a unit square turned by 45 degrees is half a diagonal from its centre.
    'a box and the corner of a turned box',
    box([-1, -5, 0], [0, 5, 1]),
    { kind: 'turned-box', centre: [2, 0, 0.5], size: [1, 1, 1], bearing: Math.PI / 4 },
    2 - Math.SQRT1_2,
  ],
  ['a box and a pipe above it', unit, capsule([-1, 0.5, 3], [2, 0.5, 3], 0.25), 1.75],
  ['a box corner and a ball', unit, capsule([2, 3, 3], [2, 3, 3], 0.5), 2.5],
  ['crossing pipes', capsule([-1, 0, 0], [1, 0, 0], 0.1), capsule([0, -1, 1], [0, 1, 1], 0.2), 0.7],
  ['parallel pipes', capsule([0, 0, 0], [9, 0, 0], 0.1), capsule([3, 3, 4], [20, 3, 4], 0.2), 4.7],
  ['pipes end to end', capsule([0, 0, 0], [1, 0, 0], 0.1), capsule([4, 4, 0], [9, 9, 0], 0.2), 4.7],
  ['a beam above a motor', motor, box([-1, -1, 2.75], [1, 1, 3]), 0.75],
  ['a wall beside a motor', motor, box([1, -4, 0], [1.2, 4, 3]), 0.7],
  ['a wall edge and a motor', motor, box([3, 4, 0], [5, 6, 3]), 4.7],
  // In the plane through axis and edge, rim and edge are 0.4 apart sideways and 0.3 in height.
  ['the edge of a beam and the rim of a motor', motor, box([0.7, -1, 2.3], [1, 1, 3]), 0.5],
  ['motors one above the other', motor, cylinder([0.1, 0, 2.6], [0.1, 0, 3], 0.2), 0.6],
  ['motors side by side', motor, cylinder([1.2, 1.6, 0], [1.2, 1.6, 3], 0.4), 1.3],
  ['rims of upright motors', motor, cylinder([1.1, 0, 2.3], [1.1, 0, 3], 0.4), 0.5],
  // Rims that face each other in one plane: axes cross at right angles, ends in corner to corner.
  ['rims of motors at right angles', motor, cylinder([0.7, 0, 2.9], [2, 0, 2.9], 0.6), 0.5],
  ['a shaft above the end of a motor', motor, cylinder([-2, 0, 3], [2, 0, 3], 0.4), 0.6],
  ['a pipe beside a motor', motor, capsule([1, -3, 1.5], [1, 3, 1.5], 0.2), 0.5],
  ['a pipe over the rim of a motor', motor, capsule([0.7, -1, 2.3], [0.7, 1, 2.3], 0.1), 0.4],
  [
    'a pipe run with its nearest leg',
    run(
      [
        [9, 0, 0],
        [3, 0, 0],
        [3, 0, 9],
      ],
      0.5,
    ),
    unit,
    1.5,
  ],
];

function run(path: readonly Vec3[], radius: number): Run {
  return { kind: 'run', path, radius };
}

test.each(apart)('%s: the distance is that of the figure', (_, a, b, distance) => {
  const found = distanceBetween(a, b);
  expect(Math.abs(found.distance - distance)).toBeLessThan(EXACT);
  expect(found).toMatchObject({ overlap: false, depth: 0 });
  const between = found.onA.map((value, axis) => value - (found.onB[axis] ?? 0));
  expect(Math.abs(Math.hypot(...between) - distance)).toBeLessThan(EXACT);
});

/** Depths that follow from the figure alone. */
const deep: readonly (readonly [string, ConvexSolid, ConvexSolid, number])[] = [
  ['boxes overlapping by a slice', unit, box([0.9, 0.2, -1], [3, 0.8, 5]), 0.1],
  ['a box inside another leaves by the nearest side', box([0.4, 0.4, 0.1], [0.6, 0.6, 0.2]), unit, 0.2],
  ['pipes on one another', capsule([0, 0, 0], [1, 0, 0], 0.3), capsule([0, 0, 0.4], [1, 0, 0.4], 0.2), 0.1],
  [
    'crossing pipes through one another',
    capsule([-1, 0, 0], [1, 0, 0], 0.3),
    capsule([0, -1, 0], [0, 1, 0], 0.2),
    0.5,
  ],
  [
    'a pipe along another inside it',
    capsule([-1, 0, 0], [1, 0, 0], 0.3),
    capsule([-2, 0, 0], [2, 0, 0], 0.2),
    0.5,
  ],
  ['balls in one place', capsule([1, 1, 1], [1, 1, 1], 0.3), capsule([1, 1, 1], [1, 1, 1], 0.2), 0.5],
  ['motors on one axis', motor, cylinder([0, 0, -3], [0, 0, 5], 0.1), 0.4],
  ['a motor into a wall', motor, box([0.25, -4, 0], [1.2, 4, 3]), 0.05],
  ['a motor into a beam', motor, box([-4, -4, 1.98], [4, 4, 3]), 0.02],
  // The edge of the beam is 0.2 from the axis in plan, so 0.1 inside the rim; upwards it is 0.5 inside.
  ['a motor into the upright edge of a column', motor, box([0.12, 0.16, 0], [3, 3, 9]), rimDepth()],
  ['motors side by side into one another', motor, cylinder([0.3, 0.4, 0], [0.3, 0.4, 9], 0.25), 0.05],
  ['a pipe through a motor', motor, capsule([-3, 0.1, 1.5], [3, 0.1, 1.5], 0.1), 0.3],
  ['solids that only touch', unit, box([1, 0, 0], [2, 1, 1]), 0],
];

/** The column's corner lies 0.2 from the axis towards it; leaving radially takes 0.1, by either face 0.18 and 0.14. */
function rimDepth(): number {
  return 0.3 - Math.hypot(0.12, 0.16);
}

test.each(deep)('%s: the depth is that of the figure', (_, a, b, depth) => {
  const found = distanceBetween(a, b);
  expect(found).toMatchObject({ overlap: true, distance: 0 });
  expect(Math.abs(found.depth - depth)).toBeLessThan(EXACT);
});

test('of several obstacles the nearest is named, and of overlapping ones the deepest', () => {
  const far = { name: 'wall', solid: box([3, -1, 0], [4, 1, 3]) };
  const near = { name: 'duct', solid: box([-1, -1, 2.5], [1, 1, 3]) };
  const inside = { name: 'pipe', solid: capsule([-1, 0.3, 1.5], [1, 0.3, 1.5], 0.1) };
  expect(nearestObstacle(motor, [far, near])).toMatchObject({ name: 'duct', distance: 0.5 });
  expect(nearestObstacle(motor, [far, inside, near])).toMatchObject({ name: 'pipe', overlap: true });
  expect(nearestObstacle(motor, [])).toBeUndefined();
});

const pairs = [
  ['box and box', boxes, boxes],
  ['box and capsule', boxes, capsules],
  ['capsule and capsule', capsules, capsules],
  ['box and cylinder', boxes, cylinders],
  ['cylinder and cylinder', cylinders, cylinders],
  ['cylinder and capsule', cylinders, capsules],
] as const;

test.each(pairs)(
  '%s: going to and fro between the solids comes down to the distance, and not below',
  (...row) => {
    const [, first, second] = row;
    fc.assert(
      fc.property(first, second, points(3), (a, b, shift) => {
        const away = moved(b, shift);
        const { distance } = distanceBetween(a, away);
        const outside = distanceToAndFro(a, away, 4000);
        expect(distance).toBeLessThan(outside + EXACT);
        // Going to and fro is slow where solids nearly touch: only there may it have farther to go.
        if (distance > 0.05) expect(outside - distance).toBeLessThan(EXACT);
      }),
      { numRuns: 60, seed: 11 },
    );
  },
);

test('every direction of a dense sample leaves at most the distance, and takes at least the depth', () => {
  const sample = Array.from({ length: 400 }, (_, index): Vec3 => {
    const up = 1 - (2 * index + 1) / 400;
    const round = Math.sqrt(1 - up * up);
    return [round * Math.cos(2.4 * index), round * Math.sin(2.4 * index), up];
  });
  fc.assert(
    fc.property(anySolid, anySolid, (a, b) => {
      const { distance, depth } = distanceBetween(a, b);
      const [one, other] = [bodyOf(a), bodyOf(b)];
      const reaches = sample.map(
        (n) => reachOf(one, n) + reachOf(other, [-n[0], -n[1], -n[2]]) + one.rounding + other.rounding,
      );
      const least = Math.min(...reaches);
      if (distance > 0) expect(-least).toBeLessThanOrEqual(distance + EXACT);
      else expect(least).toBeGreaterThanOrEqual(depth - EXACT);
    }),
    { numRuns: 80, seed: 12 },
  );
});

const signed = (a: Solid, b: Solid) => {
  const { distance, depth } = distanceBetween(a, b);
  return distance - depth;
};

test('distance and depth are the same both ways round', () => {
  fc.assert(
    fc.property(anySolid, anySolid, points(1), (a, b, shift) => {
      const away = moved(b, shift);
      expect(Math.abs(signed(a, away) - signed(away, a))).toBeLessThan(EXACT);
    }),
    { numRuns: 60, seed: 13 },
  );
});

test('moving and turning both together changes nothing', () => {
  fc.assert(
    fc.property(anySolid, anySolid, points(20), angles, points(3), (a, b, shift, bearing, about) => {
      const place = (solid: ConvexSolid): Solid => turned(moved(solid, shift), bearing, about);
      expect(Math.abs(signed(place(a), place(b)) - signed(a, b))).toBeLessThan(EXACT);
    }),
    { numRuns: 60, seed: 14 },
  );
});

test('moving an obstacle away along the direction between them adds just that way', () => {
  fc.assert(
    fc.property(anySolid, anySolid, points(3), fc.integer({ min: 0, max: 2000 }), (a, b, shift, way) => {
      const obstacle = moved(b, shift);
      const { distance, direction, overlap } = distanceBetween(a, obstacle);
      if (overlap) return;
      const off = direction.map((part) => (-part * way) / 1000) as unknown as Vec3;
      expect(distanceBetween(a, moved(obstacle, off)).distance).toBeGreaterThan(
        distance + way / 1000 - EXACT,
      );
    }),
    { numRuns: 80, seed: 15 },
  );
});

test('the distance is zero exactly when the solids intersect, and the common point lies in both', () => {
  fc.assert(
    fc.property(anySolid, anySolid, points(1), (a, b, shift) => {
      const other = moved(b, shift);
      const { distance, overlap, onA } = distanceBetween(a, other);
      expect(overlap).toBe(distance === 0);
      expect(intersects(a, other)).toBe(overlap);
      if (!overlap) return;
      const common = capsule(onA, onA, EXACT);
      expect(intersects(common, a) && intersects(common, other)).toBe(true);
    }),
    { numRuns: 80, seed: 16 },
  );
});

test('nearest points lie on their solids, as far apart as the distance', () => {
  fc.assert(
    fc.property(anySolid, anySolid, points(3), (a, b, shift) => {
      const other = moved(b, shift);
      const { distance, onA, onB } = distanceBetween(a, other);
      expect(Math.abs(Math.hypot(onA[0] - onB[0], onA[1] - onB[1], onA[2] - onB[2]) - distance)).toBeLessThan(
        EXACT,
      );
      expect(distanceBetween(capsule(onA, onA, 0), a).distance).toBeLessThan(EXACT);
      expect(distanceBetween(capsule(onB, onB, 0), other).distance).toBeLessThan(EXACT);
    }),
    { numRuns: 60, seed: 17 },
  );
});

test.each<readonly [string, Solid]>([
  ['a box turned inside out', box([0, 0, 0], [1, -1, 1])],
  ['a cylinder without length', cylinder([0, 0, 0], [0, 0, 0], 1)],
  ['a negative radius', capsule([0, 0, 0], [1, 0, 0], -1)],
  ['a coordinate that is not a number', capsule([0, 0, Number.NaN], [1, 0, 0], 1)],
  ['a run without a point', run([], 1)],
  ['a group without a piece', { kind: 'group', pieces: [] }],
])('%s is refused', (_, solid) => {
  expect(() => distanceBetween(solid, unit)).toThrow('geometry.not-a-solid');
});

test('corners in one plane enclose nothing and are refused', () => {
  expect(() =>
    polytopeOf([
      [0, 0, 0],
      [1, 0, 0],
      [0, 1, 0],
      [1, 1, 0],
    ]),
  ).toThrow('geometry.no-volume');
});
