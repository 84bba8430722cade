import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  type Box,
  distanceBetween,
  freeRoute,
  type NamedSolid,
  type PlanPoint,
  ROOM_EDGE,
  type Solid,
} from '../../src/geometry/index.js';

const room: Box = { kind: 'box', low: [0, 0, 0], high: [6, 4, 2] };
const wall = (name: string, low: PlanPoint, high: PlanPoint): NamedSolid => ({
  name,
  solid: { kind: 'box', low: [low[0], low[1], 0], high: [high[0], high[1], 3] },
});

/** A wall across the room with a door of 0.9 in it. */
const withDoor = [wall('west leaf', [3, 0], [3.1, 2]), wall('east leaf', [3, 2.9], [3.1, 4])];

/** The way is free: an upright disc along every part of it keeps off every obstacle. */
function expectFree(route: readonly PlanPoint[], obstacles: readonly NamedSolid[], width: number): void {
  for (const { solid } of obstacles)
    route.forEach((from, index) => {
      const to = route[index + 1] ?? from;
      const line: Solid = { kind: 'capsule', from: [...from, 1], to: [...to, 1], radius: 0 };
      expect(distanceBetween(line, solid).distance).toBeGreaterThan(width / 2 - 1e-8);
    });
}

test('in an empty room the way is straight', () => {
  const { route, length } = freeRoute([1, 1], [5, 3], [], 0.8, room);
  expect(route).toEqual([
    [1, 1],
    [5, 3],
  ]);
  expect(length).toBeCloseTo(Math.hypot(4, 2), 12);
});

test('a cart that is narrower than the door goes through it, and the door is the narrowest place', () => {
  const { route, narrowest } = freeRoute([1, 1], [5, 1], withDoor, 0.8, room);
  expect(route).toBeDefined();
  expectFree(route ?? [], withDoor, 0.8);
  expect(narrowest.width).toBeCloseTo(0.9, 9);
  expect([...narrowest.between].sort()).toEqual(['east leaf', 'west leaf']);
  expect(narrowest.at[0]).toBeGreaterThan(2.8);
  expect(narrowest.at[0]).toBeLessThan(3.3);
});

test('a cart that is wider does not, and the door is named with its width', () => {
  const { route, narrowest } = freeRoute([1, 1], [5, 1], withDoor, 1, room);
  expect(route).toBeUndefined();
  expect(narrowest.width).toBeCloseTo(0.9, 9);
});

test('a way as wide as asked and two steps is found', () => {
  const { step } = freeRoute([1, 1], [5, 1], withDoor, 0.8, room);
  expect(step).toBeCloseTo(0.1, 12);
  expect(freeRoute([1, 1], [5, 1], withDoor, 0.9 / (1 + Math.SQRT2 / 8), room).route).toBeDefined();
});

test('where a wall has no door, the wall is the place, and nothing is free', () => {
  const { route, narrowest } = freeRoute([1, 1], [5, 1], [wall('wall', [3, 0], [3.1, 4])], 0.5, room);
  expect(route).toBeUndefined();
  expect(narrowest).toMatchObject({ width: 0, between: ['wall'] });
});

test('an aisle along the edge of the room is as wide as what is left of it', () => {
  const { narrowest, route } = freeRoute([1, 1], [5, 1], [wall('panel', [3, 0], [3.3, 3.1])], 0.7, room);
  expect(route).toBeDefined();
  expect(narrowest.width).toBeCloseTo(0.9, 9);
  expect([...narrowest.between].sort()).toEqual([ROOM_EDGE, 'panel']);
});

test('what hangs above the heights of the way, or is the floor below, is not in it', () => {
  const beam: NamedSolid = { name: 'beam', solid: { kind: 'box', low: [3, 0, 2.1], high: [3.2, 4, 2.5] } };
  const floor: NamedSolid = { name: 'floor', solid: { kind: 'box', low: [0, 0, -1], high: [6, 4, 0] } };
  const rising: NamedSolid = {
    name: 'pipe',
    solid: {
      kind: 'run',
      path: [
        [3, 1, 2.5],
        [3, 3, 2.5],
        [3, 3, 9],
      ],
      radius: 0.1,
    },
  };
  const slope: NamedSolid = {
    name: 'stair',
    solid: {
      kind: 'run',
      path: [
        [3, 2, 1],
        [3, -4, 7],
      ],
      radius: 0.1,
    },
  };
  expect(freeRoute([1, 2], [5, 2], [beam, floor, rising], 0.8, room).route).toHaveLength(2);
  const under = freeRoute([1, 2], [5, 2], [slope], 0.8, room);
  expect(under.route?.length).toBeGreaterThan(2);
});

test('a start too near to a wall has no way, and is the narrowest place', () => {
  const { route, narrowest } = freeRoute([0.3, 2], [5, 2], [], 0.8, room);
  expect(route).toBeUndefined();
  expect(narrowest).toMatchObject({ at: [0.3, 2], between: [ROOM_EDGE] });
  expect(narrowest.width).toBeCloseTo(0.6, 9);
  expect(freeRoute([-1, 2], [5, 2], [], 0.8, room).route).toBeUndefined();
});

test('every way found is free, the same when asked again, and found backwards too', () => {
  const place = fc.tuple(fc.integer({ min: 5, max: 55 }), fc.integer({ min: 5, max: 35 }));
  const column = place.map(
    ([x, y]): NamedSolid => ({
      name: `column ${x} ${y}`,
      solid: { kind: 'cylinder', from: [x / 10, y / 10, 0], to: [x / 10, y / 10, 3], radius: 0.25 },
    }),
  );
  fc.assert(
    fc.property(fc.array(column, { minLength: 3, maxLength: 7 }), (columns) => {
      const found = freeRoute([0.5, 0.5], [5.5, 3.5], columns, 0.7, room);
      expect(freeRoute([0.5, 0.5], [5.5, 3.5], columns, 0.7, room)).toEqual(found);
      if (found.route === undefined) {
        expect(found.narrowest.width).toBeLessThan(0.7 + Math.SQRT2 * found.step);
        return;
      }
      expectFree(found.route, columns, 0.7);
      expect(found.route[0]).toEqual([0.5, 0.5]);
      expect(found.route.at(-1)).toEqual([5.5, 3.5]);
      expect(freeRoute([5.5, 3.5], [0.5, 0.5], columns, 0.7, room).route).toBeDefined();
    }),
    { numRuns: 8, seed: 51 },
  );
});

test('a room too large for the finest step gets a coarser one, and says so', () => {
  const { step, route } = freeRoute([1, 1], [99, 99], [], 0.4, { ...room, high: [100, 100, 2] });
  expect(step).toBeCloseTo(Math.sqrt(10_000 / 20_000), 9);
  expect(route).toHaveLength(2);
});

test('a width of nothing and a room without extent are refused', () => {
  expect(() => freeRoute([1, 1], [2, 2], [], 0, room)).toThrow('geometry.no-plan');
  expect(() => freeRoute([1, 1], [2, 2], [], 1, { ...room, high: [6, 4, 0] })).toThrow('geometry.no-plan');
});
