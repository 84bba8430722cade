import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  distanceBetween,
  type Group,
  moved,
  penetrationMove,
  type Run,
  type Solid,
  smallestMoveAlong,
  type Vec3,
} from '../../src/geometry/index.js';
import { anySolid, boxes, directions, points } from './solids-arbitrary.js';

const EXACT = 1e-9;
const motor: Solid = { kind: 'cylinder', from: [0, 0, 1], to: [0, 0, 2], radius: 0.3 };
const wall: Solid = { kind: 'box', low: [0.25, -4, 0], high: [0.5, 4, 3] };

test('a motor that stands in a wall moves out of it by the nearest side', () => {
  const { vector, length, atLeast } = penetrationMove(motor, wall, 0.1);
  expect(length).toBeCloseTo(0.05 + 0.1, 12);
  expect(atLeast).toBe(length);
  [-0.15, 0, 0].forEach((part, axis) => {
    expect(vector[axis]).toBeCloseTo(part, 12);
  });
});

test('what lacks clearance without touching moves by what lacks, and what has it stays', () => {
  const aside = moved(motor, [-0.35, 0, 0]);
  expect(distanceBetween(aside, wall).distance).toBeCloseTo(0.3, 12);
  expect(penetrationMove(aside, wall, 0.5).length).toBeCloseTo(0.2, 12);
  expect(penetrationMove(aside, wall, 0.3)).toMatchObject({ length: 0, vector: [0, 0, 0] });
});

test('in a given direction the way out is longer, as the figure says', () => {
  // Northwards only past the end of the wall: 4 + radius; up until the foot of the motor stands on top of the wall.
  expect(smallestMoveAlong(motor, wall, [0, 7, 0], 0).length).toBeCloseTo(4.3 - 0.3 + rimInWall(), 9);
  expect(smallestMoveAlong(motor, wall, [0, 0, 2], 0.1).length).toBeCloseTo(2.1, 9);
  expect(smallestMoveAlong(motor, wall, [-1, 0, 0], 0.1).length).toBeCloseTo(0.15, 9);
  expect(smallestMoveAlong(motor, wall, [1, 0, 0], 0.1).length).toBeCloseTo(0.5 + 0.3 + 0.1, 9);
});

/** The corner of the wall, 0.25 from the middle plane of the motor, leaves its round side this far from the axis. */
function rimInWall(): number {
  return Math.sqrt(0.3 ** 2 - 0.25 ** 2);
}

test('a movement passes every piece on its way', () => {
  const pieces: Group['pieces'] = [0, 1, 2].map((place) => ({
    kind: 'box',
    low: [place, -1, 0],
    high: [place + 0.5, 1, 3],
  }));
  // Between the pieces there is half a metre, and the motor is 0.6 across.
  expect(smallestMoveAlong(motor, { kind: 'group', pieces }, [1, 0, 0], 0).length).toBeCloseTo(2.8, 9);
});

test('out of a corner of two walls the way is the diagonal', () => {
  const corner: Group = {
    kind: 'group',
    pieces: [
      { kind: 'box', low: [0.9, -50, -50], high: [9, 50, 50] },
      { kind: 'box', low: [-50, 0.9, -50], high: [50, 9, 50] },
    ],
  };
  const cube: Solid = { kind: 'box', low: [0, 0, 0], high: [1, 1, 1] };
  const { length, atLeast, vector } = penetrationMove(cube, corner, 0.2);
  expect(atLeast).toBeCloseTo(0.3, 9);
  expect(length).toBeCloseTo(0.3 * Math.SQRT2, 6);
  expect(distanceBetween(moved(cube, vector), corner).distance).toBeGreaterThan(0.2 - EXACT);
});

test('the smallest movement clears, a little less does not, and no direction of a sample is shorter', () => {
  fc.assert(
    fc.property(anySolid, anySolid, points(1), fc.integer({ min: 0, max: 300 }), (a, b, shift, gap) => {
      const [obstacle, clearance] = [moved(b, shift), gap / 1000];
      const { vector, length } = penetrationMove(a, obstacle, clearance);
      expect(distanceBetween(moved(a, vector), obstacle).distance).toBeGreaterThan(clearance - EXACT);
      if (length < 1e-6) return;
      const less = vector.map((part) => part * (1 - 1e-6 / length)) as unknown as Vec3;
      const short = distanceBetween(moved(a, less), obstacle);
      expect(short.distance - short.depth).toBeLessThan(clearance);
      for (const direction of [
        [1, 0, 0],
        [0, -1, 0],
        [0, 0, 1],
        [-1, 1, -1],
      ] as const)
        expect(smallestMoveAlong(a, obstacle, direction, clearance).length).toBeGreaterThan(length - EXACT);
    }),
    { numRuns: 50, seed: 21 },
  );
});

test('a movement in a direction ends just where the clearance is met', () => {
  fc.assert(
    fc.property(anySolid, boxes, directions, fc.integer({ min: 0, max: 300 }), (a, b, direction, gap) => {
      const { vector, length } = smallestMoveAlong(a, b, direction, gap / 1000);
      const { distance } = distanceBetween(moved(a, vector), b);
      expect(distance).toBeGreaterThan(gap / 1000 - EXACT);
      if (length > 0) expect(distance).toBeLessThan(gap / 1000 + EXACT);
    }),
    { numRuns: 60, seed: 22 },
  );
});

test('a solid of several pieces clears a pipe run by the movement found', () => {
  const run: Run = {
    kind: 'run',
    path: [
      [-2, 0.1, 1.5],
      [0.1, 0.1, 1.5],
      [0.1, 0.1, 4],
    ],
    radius: 0.1,
  };
  const set: Group = {
    kind: 'group',
    pieces: [
      { kind: 'cylinder', from: [0, 0, 1], to: [0, 0, 2], radius: 0.3 },
      { kind: 'box', low: [0.2, -0.1, 1.4], high: [0.5, 0.1, 1.6] },
    ],
  };
  const { vector, length, atLeast } = penetrationMove(set, run, 0.05);
  expect(distanceBetween(moved(set, vector), run).distance).toBeGreaterThan(0.05 - EXACT);
  expect(length).toBeGreaterThanOrEqual(atLeast);
});

test('a negative clearance and a direction that leads nowhere are refused', () => {
  expect(() => penetrationMove(motor, wall, -0.1)).toThrow('geometry.no-clearance');
  expect(() => smallestMoveAlong(motor, wall, [0, 0, 0], 0)).toThrow('geometry.no-direction');
});
