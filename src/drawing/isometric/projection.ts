/**
 * The isometric view: parallel rays, the three plan directions equally foreshortened, up stays up. Four corners of
 * the building to look from.
 */
import type { Vec3 } from '../../model/conventions.js';
import { cross, dot, unit } from '../../model/vector.js';
import type { Xy } from '../drawing.js';

/** A direction to look from. */
export interface View {
  /** Corner the reader stands at: `south-west`. */
  readonly corner: string;
  /** Unit vector from the things to the reader [-]. */
  readonly towards: Vec3;
  /** Unit vectors of the paper: to the right, and up [-]. */
  readonly right: Vec3;
  readonly up: Vec3;
}

/** The view and where its origin and scale are on the paper. */
export interface Projection {
  readonly view: View;
  /** Points of paper per metre across the rays. */
  readonly scale: number;
  /** Paper place of the origin of space. */
  readonly origin: Xy;
}

/** Length on paper of a metre east, north or up, per point of scale: √(2/3). */
export const ISOMETRIC_SHARE = Math.sqrt(2 / 3);

function viewFrom(corner: string, towards: Vec3): View {
  const ray = unit(towards);
  const right = unit(cross([0, 0, 1], ray));
  return { corner, towards: ray, right, up: cross(ray, right) };
}

/** The four corners, all from above. */
export const cornerViews: readonly View[] = [
  viewFrom('south-west', [-1, -1, 1]),
  viewFrom('south-east', [1, -1, 1]),
  viewFrom('north-east', [1, 1, 1]),
  viewFrom('north-west', [-1, 1, 1]),
];

/** Level view at right angles to a plan direction, for elevations. @param across - level direction to the reader [-] @returns view */
export function levelView(across: Vec3): View {
  return viewFrom('side', [across[0], across[1], 0]);
}

/**
 * Place on paper of a place in space.
 *
 * @param projection - view, scale and origin
 * @param at - place [m]
 * @returns place on paper, y down [-]
 */
export function project(projection: Projection, at: Vec3): Xy {
  const { view, scale, origin } = projection;
  return [origin[0] + dot(at, view.right) * scale, origin[1] - dot(at, view.up) * scale];
}

/**
 * Direction on paper of a direction in space, unit length.
 *
 * @param view - the view
 * @param direction - any direction [-]
 * @returns direction on paper, y down; to the right where it points at the reader [-]
 */
export function paperDirection(view: View, direction: Vec3): Xy {
  const x = dot(direction, view.right);
  const y = -dot(direction, view.up);
  const length = Math.hypot(x, y);
  return length < 1e-6 ? [1, 0] : [x / length, y / length];
}

/** How near to the reader a place is. @param view - the view @param at - place [m] @returns larger is nearer [m] */
export function nearness(view: View, at: Vec3): number {
  return dot(at, view.towards);
}
