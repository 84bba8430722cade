import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  distanceBetween,
  freeTravel,
  freeVerticalDistance,
  moved,
  type NamedSolid,
  type Solid,
} from '../../src/geometry/index.js';
import { anySolid, points } from './solids-arbitrary.js';

const motor: Solid = { kind: 'cylinder', from: [0, 0, 1], to: [0, 0, 2], radius: 0.3 };
const ceiling: NamedSolid = {
  name: 'ceiling',
  solid: { kind: 'box', low: [-5, -5, 3.6], high: [5, 5, 4] },
};
const casing: NamedSolid = { name: 'casing', solid: { kind: 'box', low: [-1, -1, 0], high: [1, 1, 1] } };
const wall: NamedSolid = { name: 'wall', solid: { kind: 'box', low: [0.3, -5, 0], high: [0.5, 5, 9] } };

test('a motor that stands on its casing and by a wall is lifted up to the ceiling', () => {
  const { distance, stoppedBy } = freeVerticalDistance(motor, [casing, wall, ceiling], 5);
  expect(distance).toBeCloseTo(1.6, 9);
  expect(stoppedBy).toBe('ceiling');
});

test('a pipe across the way stops it by its round side', () => {
  const pipe: NamedSolid = {
    name: 'sprinkler pipe',
    solid: {
      kind: 'run',
      path: [
        [0.34, -5, 3],
        [0.34, 5, 3],
      ],
      radius: 0.05,
    },
  };
  // The top rim is 0.04 beside the middle of the pipe, so that it meets it 0.03 below the middle.
  const { distance, stoppedBy } = freeVerticalDistance(motor, [ceiling, pipe], 5);
  expect(distance).toBeCloseTo(0.97, 9);
  expect(stoppedBy).toBe('sprinkler pipe');
});

test('nothing in the way leaves the whole limit, with no name', () => {
  expect(freeVerticalDistance(motor, [casing, ceiling], 1)).toEqual({ distance: 1 });
});

test('what already overlaps leaves no way at all', () => {
  const through: NamedSolid = {
    name: 'cable tray',
    solid: { kind: 'box', low: [0, -1, 1.5], high: [1, 1, 1.6] },
  };
  expect(freeVerticalDistance(motor, [ceiling, through], 5)).toEqual({
    distance: 0,
    stoppedBy: 'cable tray',
  });
});

test('sideways too, and not by what is left behind', () => {
  const beam: NamedSolid = { name: 'beam', solid: { kind: 'box', low: [-3, -5, 1.2], high: [-2, 5, 1.4] } };
  expect(freeTravel(motor, [wall, beam], [-2, 0, 0], 9).distance).toBeCloseTo(1.7, 9);
});

test('short of the way there is no overlap, at its end there is contact', () => {
  fc.assert(
    fc.property(anySolid, anySolid, points(1), (solid, other, [x, y]) => {
      const obstacle = moved(other, [x, y, 2.5]);
      const { distance, stoppedBy } = freeVerticalDistance(solid, [{ name: 'other', solid: obstacle }], 9);
      if (stoppedBy === undefined || distance === 0) return;
      expect(distanceBetween(moved(solid, [0, 0, distance]), obstacle).distance).toBeLessThan(1e-9);
      for (const part of [0.2, 0.5, 0.8, 0.999])
        expect(distanceBetween(moved(solid, [0, 0, part * distance]), obstacle).depth).toBeLessThan(1e-9);
    }),
    { numRuns: 60, seed: 41 },
  );
});
