import { EngineError } from '../issues/issue.js';
import type { Group, Polytope } from './solid.js';
import { cross, directionOf, dot, lengthOf, minus, plus, times, type Vec3 } from './vector.js';

/** What a handle sweeps: a flat sector about its stem. */
export interface Sector {
  /** Where the stem and the middle plane of the handle meet [m]. */
  readonly centre: Vec3;
  /** Along the stem; the handle turns about it by the right hand [-]. */
  readonly axis: Vec3;
  /** Where the handle points at the start [-]. */
  readonly start: Vec3;
  /** Angle swept, up to a full turn [rad]. */
  readonly angle: number;
  /** From the stem to the tip of the handle [m]. */
  readonly radius: number;
  /** Along the stem, half on either side of the centre [m]. */
  readonly thickness: number;
}

/** Flat-faced pieces that hold a sector, and how much too large they are. */
export interface SectorPrism {
  readonly solid: Group;
  /** Largest distance of a point of the pieces outside the true sector [m]. */
  readonly beyond: number;
  /** Volume over the true one, less one [-]. */
  readonly excess: number;
}

/**
 * Volume that holds the sector swept by a handle or lever, in pieces of a right angle at most, so that each is convex.
 * The arc is replaced by tangents, every one over an angle δ of 7.5 degrees at most:
 *
 *     corner of two tangents at radius / cos(δ/2); volume tan(δ/2) / (δ/2) of the true one
 *
 * so that it reaches at most 0.215 % of the radius, and is at most 0.143 % of the volume, too far.
 *
 * @param sector - centre, directions and sizes [m]
 * @returns pieces, and by how much they are too large [m]
 * @throws EngineError `geometry.no-direction` when axis or start is zero, or both are parallel
 * @throws EngineError `geometry.no-sector` when angle, radius or thickness is not above zero
 */
export function sectorPrism(sector: Sector): SectorPrism {
  const { centre, angle, radius, thickness } = sector;
  if (!(angle > 0) || !(angle <= FULL_TURN) || !(radius > 0) || !(thickness > 0))
    throw new EngineError('geometry.no-sector', { radius, angle });
  const axis = directionOf(sector.axis);
  const square = minus(sector.start, times(axis, dot(sector.start, axis)));
  const first = directionOf(lengthOf(square) > PARALLEL * lengthOf(sector.start) ? square : [0, 0, 0]);
  const second = cross(axis, first);
  const at = (turn: number, reach: number): Vec3 =>
    plus(centre, plus(times(first, reach * Math.cos(turn)), times(second, reach * Math.sin(turn))));
  const pieces = Math.ceil(angle / LARGEST_PIECE - ROUNDING);
  const tangents = Math.ceil(angle / pieces / LARGEST_TANGENT - ROUNDING);
  const step = angle / pieces / tangents;
  const outer = radius / Math.cos(step / 2);
  const ring = (from: number): readonly Vec3[] => [
    centre,
    at(from, radius),
    ...Array.from({ length: tangents }, (_, index) => at(from + (index + 0.5) * step, outer)),
    at(from + tangents * step, radius),
  ];
  return {
    solid: {
      kind: 'group',
      pieces: Array.from({ length: pieces }, (_, index) =>
        prism(ring((index * angle) / pieces), times(axis, thickness)),
      ),
    },
    beyond: outer - radius,
    excess: Math.tan(step / 2) / (step / 2) - 1,
  };
}

/** Solid between two copies of a ring, half the thickness on either side of it. */
function prism(ring: readonly Vec3[], thickness: Vec3): Polytope {
  const count = ring.length;
  const indexes = ring.map((_, index) => index);
  return {
    kind: 'polytope',
    corners: [-0.5, 0.5].flatMap((side) => ring.map((point) => plus(point, times(thickness, side)))),
    faces: [
      [...indexes].reverse(),
      indexes.map((index) => index + count),
      ...indexes.map((index) => {
        const next = (index + 1) % count;
        return [index, next, next + count, index + count];
      }),
    ],
  };
}

const FULL_TURN = 2 * Math.PI;

/** Largest angle of one piece [rad]. */
const LARGEST_PIECE = Math.PI / 2;

/** Largest angle over one tangent: 7.5 degrees [rad]. */
const LARGEST_TANGENT = Math.PI / 24;

/** Keeps a quarter turn that is a hair too large from being cut once more [-]. */
const ROUNDING = 1e-9;

/** Sine below which the start counts as along the axis [-]. */
const PARALLEL = 1e-9;
