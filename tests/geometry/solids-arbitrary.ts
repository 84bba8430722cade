import fc from 'fast-check';
import type { Capsule, ConvexSolid, Cylinder, TurnedBox, Vec3 } from '../../src/geometry/index.js';
import { polytopeOf, sweepConvex } from '../../src/geometry/index.js';

/** Whole millimetres, so that a case that fails can be read. */
const millimetres = (low: number, high: number) =>
  fc.integer({ min: low * 1000, max: high * 1000 }).map((value) => value / 1000);

export const points = (reach: number): fc.Arbitrary<Vec3> =>
  fc.tuple(millimetres(-reach, reach), millimetres(-reach, reach), millimetres(-reach, reach));

export const angles = millimetres(-3, 3);

export const directions = points(1).filter(([x, y, z]) => Math.hypot(x, y, z) > 0.1);

const lengthways = fc.tuple(points(1), directions).map(([from, along]) => ({
  from,
  to: [from[0] + along[0], from[1] + along[1], from[2] + along[2]] as Vec3,
}));

export const boxes: fc.Arbitrary<TurnedBox> = fc.record({
  kind: fc.constant('turned-box'),
  centre: points(1),
  size: fc.tuple(millimetres(0.05, 1), millimetres(0.05, 1), millimetres(0.05, 1)),
  bearing: angles,
});

export const cylinders: fc.Arbitrary<Cylinder> = fc
  .tuple(lengthways, millimetres(0.02, 0.6))
  .map(([ends, radius]) => ({ kind: 'cylinder', ...ends, radius }));

export const capsules: fc.Arbitrary<Capsule> = fc
  .tuple(lengthways, millimetres(0.02, 0.4))
  .map(([ends, radius]) => ({ kind: 'capsule', ...ends, radius }));

const polytopes: fc.Arbitrary<ConvexSolid> = fc
  .tuple(boxes, directions)
  .map(([box, vector]) => sweepConvex(box, vector));

const sweptRounds: fc.Arbitrary<ConvexSolid> = fc
  .tuple(cylinders, directions)
  .map(([cylinder, vector]) => sweepConvex(cylinder, vector));

const tetrahedra: fc.Arbitrary<ConvexSolid> = points(1).map(([x, y, z]) =>
  polytopeOf([
    [x, y, z],
    [x + 0.7, y, z],
    [x, y + 0.6, z],
    [x, y, z + 0.5],
  ]),
);

export const anySolid: fc.Arbitrary<ConvexSolid> = fc.oneof(
  boxes,
  cylinders,
  capsules,
  polytopes,
  sweptRounds,
  tetrahedra,
);
