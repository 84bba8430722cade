import type { Vec3 } from './vector.js';

/** A box along the axes of the building. */
export interface Box {
  readonly kind: 'box';
  /** Least east, north and up [m]. */
  readonly low: Vec3;
  /** Largest east, north and up [m]. */
  readonly high: Vec3;
}

/** A box that stands upright and is turned about the vertical. */
export interface TurnedBox {
  readonly kind: 'turned-box';
  readonly centre: Vec3;
  /** Whole width, depth and height: along east, north and up when the bearing is zero [m]. */
  readonly size: Vec3;
  /** How far it is turned from north, clockwise seen from above, as compass bearings grow [rad]. */
  readonly bearing: number;
}

/** A round solid with flat ends, in any direction. */
export interface Cylinder {
  readonly kind: 'cylinder';
  /** Centre of one end [m]. */
  readonly from: Vec3;
  /** Centre of the other end [m]. */
  readonly to: Vec3;
  /** [m] */
  readonly radius: number;
}

/** A straight piece of pipe with a hemisphere at either end; a ball when both ends are one point. */
export interface Capsule {
  readonly kind: 'capsule';
  /** [m] */
  readonly from: Vec3;
  /** [m] */
  readonly to: Vec3;
  /** [m] */
  readonly radius: number;
}

/** A solid with flat faces and no hollow, made by `polytopeOf` or by a sweep. */
export interface Polytope {
  readonly kind: 'polytope';
  /** [m] */
  readonly corners: readonly Vec3[];
  /** Numbers of the corners of each face, anticlockwise seen from outside. */
  readonly faces: readonly (readonly number[])[];
}

/** What a round solid passes through when it moves along one vector, then all of that along the next. */
export interface Swept {
  readonly kind: 'swept';
  readonly solid: Cylinder | Capsule;
  /** [m] */
  readonly along: readonly Vec3[];
}

/** A pipe run: capsules from point to point, so that every turn is rounded by a ball. */
export interface Run {
  readonly kind: 'run';
  /** Points of the centre line, at least one [m]. */
  readonly path: readonly Vec3[];
  /** Outer radius, insulation included [m]. */
  readonly radius: number;
}

/** Several convex solids that belong together, such as casing, spacer and motor. */
export interface Group {
  readonly kind: 'group';
  readonly pieces: readonly ConvexSolid[];
}

export type ConvexSolid = Box | TurnedBox | Cylinder | Capsule | Polytope | Swept;
export type Solid = ConvexSolid | Run | Group;

/** A solid with the name it is reported by. */
export interface NamedSolid {
  readonly name: string;
  readonly solid: Solid;
}
