import { axesAtBearing, bodyOf } from './convex-body.js';
import { polytopeOf } from './convex-hull.js';
import { piecesOf } from './pieces.js';
import type { Box, Capsule, ConvexSolid, Cylinder, Solid, TurnedBox } from './solid.js';
import { cross, directionOf, dot, lengthOf, minus, plus, times, UP, type Vec3 } from './vector.js';

/**
 * What a solid passes through when it is moved straight up: a box stays a box, an upright cylinder a cylinder.
 *
 * @param solid - the solid [m]
 * @param height - how far up; down when negative [m]
 * @returns the volume swept, exact; a group for runs and groups, convex else [m]
 */
export function sweepUp(solid: Solid, height: number): Solid {
  return sweepAlong(solid, times(UP, height));
}

/**
 * What a solid passes through when it is moved straight along a vector.
 *
 * @param solid - the solid [m]
 * @param vector - movement [m]
 * @returns the volume swept, exact; a group for runs and groups, convex else [m]
 */
export function sweepAlong(solid: Solid, vector: Vec3): Solid {
  if (solid.kind !== 'run' && solid.kind !== 'group') return sweepConvex(solid, vector);
  return { kind: 'group', pieces: piecesOf(solid).map((piece) => sweepConvex(piece, vector)) };
}

/**
 * What a convex solid passes through when it is moved straight along a vector: flat-faced solids become boxes or
 * polytopes, round ones keep their rims.
 *
 * @param solid - the solid [m]
 * @param vector - movement [m]
 * @returns the volume swept, exact [m]
 */
export function sweepConvex(solid: ConvexSolid, vector: Vec3): ConvexSolid {
  const length = lengthOf(vector);
  if (length === 0) return solid;
  switch (solid.kind) {
    case 'box':
      return alongAxis(vector) ? longerBox(solid, vector) : polytopeSwept(solid, vector);
    case 'turned-box':
      return longerTurnedBox(solid, vector) ?? polytopeSwept(solid, vector);
    case 'polytope':
      return polytopeSwept(solid, vector);
    case 'cylinder':
      return longerCylinder(solid, vector) ?? { kind: 'swept', solid, along: [vector] };
    case 'capsule': {
      const axis = minus(solid.to, solid.from);
      if (lengthOf(axis) === 0) return { ...solid, to: plus(solid.to, vector) };
      return longerCylinder(solid, vector) ?? { kind: 'swept', solid, along: [vector] };
    }
    case 'swept':
      return { ...solid, along: [...solid.along, vector] };
  }
}

function alongAxis(vector: Vec3): boolean {
  return vector.filter((part) => part !== 0).length === 1;
}

function longerBox({ low, high }: Box, vector: Vec3): Box {
  return {
    kind: 'box',
    low: plus(low, [Math.min(0, vector[0]), Math.min(0, vector[1]), Math.min(0, vector[2])]),
    high: plus(high, [Math.max(0, vector[0]), Math.max(0, vector[1]), Math.max(0, vector[2])]),
  };
}

function longerTurnedBox(box: TurnedBox, vector: Vec3): TurnedBox | undefined {
  const [wide, deep] = axesAtBearing(box.bearing);
  const length = lengthOf(vector);
  const axis = [wide, deep, UP].findIndex((each) => isAlong(each, vector));
  if (axis < 0) return undefined;
  const [x, y, z] = box.size;
  const size: Vec3 = [
    x + (axis === 0 ? length : 0),
    y + (axis === 1 ? length : 0),
    z + (axis === 2 ? length : 0),
  ];
  return { ...box, centre: plus(box.centre, times(vector, 0.5)), size };
}

function longerCylinder(round: Cylinder | Capsule, vector: Vec3): Cylinder | Capsule | undefined {
  const axis = minus(round.to, round.from);
  if (!isAlong(directionOf(axis), vector)) return undefined;
  return dot(axis, vector) > 0
    ? { ...round, to: plus(round.to, vector) }
    : { ...round, from: plus(round.from, vector) };
}

function isAlong(axis: Vec3, vector: Vec3): boolean {
  return lengthOf(cross(axis, vector)) <= PARALLEL * lengthOf(vector);
}

function polytopeSwept(solid: ConvexSolid, vector: Vec3): ConvexSolid {
  const { corners } = bodyOf(solid);
  return polytopeOf([...corners, ...corners.map((corner) => plus(corner, vector))]);
}

/** Sine below which a movement counts as along an axis [-]. */
const PARALLEL = 1e-14;
