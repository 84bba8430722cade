/** Which places of the line move, and which of them are worth a number. */
import type { ConditionResponse } from '../../mechanics/frame/response.js';
import type { Vec3 } from '../../model/conventions.js';
import type { Layout } from '../../model/layout/layout.js';
import { norm } from '../../model/vector.js';
import { distance } from '../plane.js';
import { apart } from '../space.js';
import type { LinePicture } from './line-picture.js';
import { project } from './projection.js';

/** How many places get a number. */
const NUMBERED = 6;
/** Places nearer than this on paper get one number between them [1/72 in]. */
const NUMBERS_APART = 42;
/** Movements under this are rounding [m]. */
export const NOTHING = 1e-7;

/** A place and how far it moves. */
export interface Moved {
  readonly name: string;
  /** Place as drawn [m]. */
  readonly at: Vec3;
  readonly translation: Vec3;
  /** [m] */
  readonly size: number;
}

/**
 * The largest movements, one for each neighbourhood of the paper.
 *
 * @param moved - movements, largest first [m]
 * @param picture - the picture they are drawn in
 * @returns those worth a number
 */
export function farApart(moved: readonly Moved[], picture: LinePicture): readonly Moved[] {
  const chosen: Moved[] = [];
  for (const next of moved) {
    if (chosen.length === NUMBERED || next.size <= NOTHING) break;
    const at = project(picture.projection, next.at);
    const taken = chosen.some(
      (other) =>
        other.name === next.name || distance(project(picture.projection, other.at), at) < NUMBERS_APART,
    );
    if (!taken) chosen.push(next);
  }
  return chosen;
}

/** `elbow 2 far end` is named as the part a reader finds in the other picture. */
const partOf = (point: string): string => point.replace(/ (near|far) end$/, '');

/**
 * Named places on the drawn line with their movements, largest first.
 *
 * @param layout - places of points [m]
 * @param solved - the condition
 * @param picture - the picture they are drawn in
 * @returns movements [m]
 */
export function movedPlaces(
  layout: Layout,
  solved: Pick<ConditionResponse, 'movements'>,
  picture: LinePicture,
): readonly Moved[] {
  const seen = new Set<string>();
  const strokes = picture.drawn.strokes.flatMap((s) => [
    { name: s.stroke.points[0], part: s.stroke.name, at: s.from, place: s.stroke.from },
    { name: s.stroke.points[1], part: s.stroke.name, at: s.to, place: s.stroke.to },
  ]);
  const found = strokes.flatMap(({ name, at, place }): readonly Moved[] => {
    const point = layout.frame.points[name];
    const movement = solved.movements[name];
    if (seen.has(name) || movement === undefined || (point !== undefined && apart(point, place) > 1e-3))
      return [];
    seen.add(name);
    return [{ name: partOf(name), at, translation: movement.translation, size: norm(movement.translation) }];
  });
  return found
    .filter((m) => Number.isFinite(m.size))
    .sort((a, b) => b.size - a.size || (a.name < b.name ? -1 : 1));
}
