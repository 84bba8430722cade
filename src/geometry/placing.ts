import { axesAtBearing } from './convex-body.js';
import type { Box, ConvexSolid, Solid } from './solid.js';
import { minus, plus, times, type Vec3 } from './vector.js';

/**
 * A solid moved without turning.
 *
 * @param solid - the solid [m]
 * @param vector - movement [m]
 * @returns the same kind of solid [m]
 */
export function moved<Kind extends Solid>(solid: Kind, vector: Vec3): Kind {
  return placed(solid, (point) => plus(point, vector));
}

/**
 * A solid turned about a vertical line. A box along the axes becomes a turned box.
 *
 * @param solid - the solid [m]
 * @param bearing - how far, clockwise seen from above, as compass bearings grow [rad]
 * @param about - a point of the line [m]
 * @returns the solid turned [m]
 */
export function turned(solid: Solid, bearing: number, about: Vec3): Solid {
  const [wide, deep] = axesAtBearing(bearing);
  const turn = ([x, y, z]: Vec3): Vec3 => plus(plus(times(wide, x), times(deep, y)), [0, 0, z]);
  const place = (point: Vec3): Vec3 => plus(about, turn(minus(point, about)));
  const turnPiece = (piece: ConvexSolid): ConvexSolid => {
    const upright = piece.kind === 'box' ? standing(piece) : piece;
    if (upright.kind === 'turned-box')
      return { ...upright, centre: place(upright.centre), bearing: upright.bearing + bearing };
    if (upright.kind === 'swept')
      return { ...upright, solid: placed(upright.solid, place), along: upright.along.map(turn) };
    return placed(upright, place);
  };
  if (solid.kind === 'run') return placed(solid, place);
  return solid.kind === 'group' ? { ...solid, pieces: solid.pieces.map(turnPiece) } : turnPiece(solid);
}

function standing({ low, high }: Box): ConvexSolid {
  return {
    kind: 'turned-box',
    centre: times(plus(low, high), 0.5),
    size: minus(high, low),
    bearing: 0,
  };
}

/** Every point of a solid put elsewhere; what it is drawn out along stays. */
function placed<Kind extends Solid>(solid: Kind, place: (point: Vec3) => Vec3): Kind;
function placed(solid: Solid, place: (point: Vec3) => Vec3): Solid {
  switch (solid.kind) {
    case 'box':
      return { ...solid, low: place(solid.low), high: place(solid.high) };
    case 'turned-box':
      return { ...solid, centre: place(solid.centre) };
    case 'cylinder':
    case 'capsule':
      return { ...solid, from: place(solid.from), to: place(solid.to) };
    case 'polytope':
      return { ...solid, corners: solid.corners.map(place) };
    case 'swept':
      return { ...solid, solid: placed(solid.solid, place) };
    case 'run':
      return { ...solid, path: solid.path.map(place) };
    case 'group':
      return { ...solid, pieces: solid.pieces.map((piece) => placed(piece, place)) };
  }
}
