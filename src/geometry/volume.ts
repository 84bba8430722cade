import { doubleArea, facesOf } from './exit-directions.js';
import type { Capsule, ConvexSolid, Cylinder, Polytope, Swept } from './solid.js';
import { cross, directionOf, dot, lengthOf, minus, times, type Vec3, ZERO } from './vector.js';

/**
 * Volume of a convex solid. Runs and groups have no volume here, since their pieces may overlap.
 *
 * @param solid - the solid [m]
 * @returns volume [m³]
 */
export function volumeOf(solid: ConvexSolid): number {
  switch (solid.kind) {
    case 'box': {
      const [x, y, z] = minus(solid.high, solid.low);
      return x * y * z;
    }
    case 'turned-box':
      return solid.size[0] * solid.size[1] * solid.size[2];
    case 'cylinder':
    case 'capsule':
      return roundVolume(solid);
    case 'polytope':
      return polytopeVolume(solid);
    case 'swept':
      return sweptVolume(solid);
  }
}

function roundVolume({ kind, from, to, radius }: Cylinder | Capsule): number {
  const pipe = Math.PI * radius ** 2 * lengthOf(minus(to, from));
  return kind === 'cylinder' ? pipe : pipe + (4 / 3) * Math.PI * radius ** 3;
}

/** Sum of the pyramids from one corner to every face. */
function polytopeVolume(polytope: Polytope): number {
  const apex = polytope.corners[0] ?? ZERO;
  return facesOf(polytope).reduce(
    (sum, face) => sum + dot(doubleArea(face), minus(face[0] ?? apex, apex)) / 6,
    0,
  );
}

/**
 * A movement by v adds |v| times the shadow along v. The shadow of the round solid is known; a movement w before adds
 * to it the length of the shadow of w times the width of all before square to that.
 */
function sweptVolume({ solid, along }: Swept): number {
  return along.reduce((volume, vector, index) => {
    if (lengthOf(vector) === 0) return volume;
    const towards = directionOf(vector);
    const before = along.slice(0, index);
    const shadow = before.reduce(
      (area, other, place) => {
        const turnedOff = cross(towards, other);
        const length = lengthOf(turnedOff);
        return length > 0
          ? area + length * widthOf(solid, before.slice(0, place), times(turnedOff, 1 / length))
          : area;
      },
      roundShadow(solid, towards),
    );
    return volume + lengthOf(vector) * shadow;
  }, roundVolume(solid));
}

/** Area of the shadow of a cylinder or capsule along a direction. */
function roundShadow({ kind, from, to, radius }: Cylinder | Capsule, towards: Vec3): number {
  const axis = minus(to, from);
  const side = 2 * radius * lengthOf(cross(axis, towards));
  if (kind === 'capsule') return Math.PI * radius ** 2 + side;
  return Math.PI * radius ** 2 * Math.abs(dot(directionOf(axis), towards)) + side;
}

/** Width in a direction of a round solid moved along vectors. */
function widthOf(
  { kind, from, to, radius }: Cylinder | Capsule,
  along: readonly Vec3[],
  across: Vec3,
): number {
  const axis = minus(to, from);
  const round = kind === 'capsule' ? radius : radius * lengthOf(cross(directionOf(axis), across));
  return [axis, ...along].reduce((width, each) => width + Math.abs(dot(each, across)), 2 * round);
}
