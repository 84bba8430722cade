import { axesAtBearing } from './convex-body.js';
import type { ConvexSolid, Polytope } from './solid.js';
import { cross, directionOf, dot, lengthOf, minus, plus, UP, type Vec3, ZERO } from './vector.js';

/** Directions of a convex solid that decide how it can be left. */
export interface ExitDirections {
  /** Unit vectors square to its flat faces; of two opposite ones, one may stand for both [-]. */
  readonly squares: readonly Vec3[];
  /** Unit vectors along its straight edges and along what it is drawn out on [-]. */
  readonly edges: readonly Vec3[];
}

/**
 * Directions of the faces and edges of a convex solid.
 *
 * @param solid - any convex solid [m]
 * @returns unit vectors [-]
 */
export function exitDirectionsOf(solid: ConvexSolid): ExitDirections {
  switch (solid.kind) {
    case 'box': {
      const axes: readonly Vec3[] = [[1, 0, 0], [0, 1, 0], UP];
      return { squares: axes, edges: axes };
    }
    case 'turned-box': {
      const axes = [...axesAtBearing(solid.bearing), UP];
      return { squares: axes, edges: axes };
    }
    case 'cylinder': {
      const axis = directionOf(minus(solid.to, solid.from));
      return { squares: [axis], edges: [axis] };
    }
    case 'capsule': {
      const along = minus(solid.to, solid.from);
      return { squares: [], edges: lengthOf(along) > 0 ? [directionOf(along)] : [] };
    }
    case 'polytope':
      return { squares: faceSquares(solid), edges: polytopeEdges(solid) };
    case 'swept': {
      const base = exitDirectionsOf(solid.solid);
      const moves = solid.along.filter((vector) => lengthOf(vector) > 0).map(directionOf);
      const edges = distinctLines([...base.edges, ...moves]);
      return { squares: distinctLines([...base.squares, ...squaresTo(edges, edges)]), edges };
    }
  }
}

/**
 * Directions square to two lines at a time.
 *
 * @param lines - unit vectors [-]
 * @param others - unit vectors [-]
 * @returns a unit vector for every pair that is not parallel [-]
 */
export function squaresTo(lines: readonly Vec3[], others: readonly Vec3[]): readonly Vec3[] {
  return lines.flatMap((line) =>
    others.flatMap((other) => {
      const square = cross(line, other);
      return lengthOf(square) > PARALLEL ? [directionOf(square)] : [];
    }),
  );
}

/**
 * Lines without repeats; opposite directions are one line.
 *
 * @param lines - unit vectors [-]
 * @returns those that are not parallel to one before them [-]
 */
export function distinctLines(lines: readonly Vec3[]): readonly Vec3[] {
  const kept: Vec3[] = [];
  for (const line of lines)
    if (!kept.some((other) => lengthOf(cross(line, other)) <= PARALLEL)) kept.push(line);
  return kept;
}

/**
 * Unit vectors out of the faces of a polytope, by the sum of the products of its corners one after another.
 *
 * @param polytope - the polytope [m]
 * @returns one unit vector for each face [-]
 */
export function faceSquares(polytope: Polytope): readonly Vec3[] {
  return facesOf(polytope).map((face) => directionOf(doubleArea(face)));
}

/**
 * Corners of every face of a polytope.
 *
 * @param polytope - the polytope [m]
 * @returns corners face by face [m]
 */
export function facesOf({ corners, faces }: Polytope): readonly (readonly Vec3[])[] {
  return faces.map((face) => face.map((index) => corners[index] ?? ZERO));
}

/**
 * Twice the area of a flat face, as a vector out of it.
 *
 * @param face - corners in order [m]
 * @returns vector square to the face [m²]
 */
export function doubleArea(face: readonly Vec3[]): Vec3 {
  const [origin] = face;
  if (origin === undefined) return ZERO;
  return face.reduce((sum: Vec3, corner, index) => {
    const next = face[(index + 1) % face.length] ?? origin;
    return plus(sum, cross(minus(corner, origin), minus(next, origin)));
  }, ZERO);
}

function polytopeEdges(polytope: Polytope): readonly Vec3[] {
  const edges = facesOf(polytope).flatMap((face) =>
    face.map((corner, index) => minus(face[(index + 1) % face.length] ?? corner, corner)),
  );
  return distinctLines(edges.filter((edge) => dot(edge, edge) > 0).map(directionOf));
}

/** Sine below which two directions count as parallel [-]. */
const PARALLEL = 1e-10;
