/** What stands in a space that has to be free, and a movement of it that was tried and clears. */

import {
  distanceBetween,
  lengthOf,
  moved,
  type Solid,
  smallestMoveAlong,
  sweepUp,
  times,
  type Vec3,
} from '../../geometry/index.js';
import type { Obstacle } from '../../model/room/obstacles.js';
import type { ReasonData } from '../define-check.js';
import { type Access, clashOf, TOUCH } from './access-subject.js';

/**
 * Words and numbers about what stands in a space: its name, how much is missing, and a movement of it that clears.
 *
 * The movement is one of the ways of the plan, so that it is what the words say. It has been made and judged again:
 * moved so, the object is clear of the space, of the way of the motor and of its sling, and of all it did not touch before,
 * and nothing else is left in the space. Where no way does, and for what cannot be moved alone, such as pipe, none is told.
 *
 * @param name - name of the obstacle
 * @param short - how much is missing [m]
 * @param space - the space that must be free [m]
 * @param access - pump, lift and surroundings
 * @param obstacles - what may stand in the way [m]
 * @returns data of a reason; the movement, rounded up to a whole millimetre, where there is one [m]
 */
export function inTheWay(
  name: string,
  short: number,
  space: Solid | undefined,
  access: Access,
  obstacles: readonly Obstacle[] = access.obstacles,
): ReasonData {
  const obstacle = obstacles.find((each) => each.name === name);
  if (space === undefined || obstacle?.kind !== 'object') return { obstacle: name, short };
  const others = access.obstacles.filter((each) => each !== obstacle);
  if (
    clashOf(
      space,
      obstacles.filter((each) => each !== obstacle),
    ) !== undefined
  )
    return { obstacle: name, short };
  const kept = [space, ...keptFree(access)];
  const before = new Set(others.filter(({ solid }) => overlaps(obstacle.solid, solid)));
  const around = [...others.filter((each) => !before.has(each)).map(({ solid }) => solid), access.pump.motor];
  const tried = WAYS.flatMap(([way, direction]) => {
    const clear = Math.max(
      ...kept.map((solid) => smallestMoveAlong(obstacle.solid, solid, direction, 0).length),
    );
    return clear > TOUCH ? [{ way, direction, move: Math.ceil((clear - TOUCH) * 1000) / 1000 }] : [];
  }).sort((one, other) => one.move - other.move);
  const good = tried.find(({ direction, move }) => {
    const solid = moved(obstacle.solid, times(direction, move));
    return ![...kept, ...around].some((each) => overlaps(solid, each));
  });
  return { obstacle: name, short, ...(good && { move: good.move, way: good.way }) };
}

/** What has to stay free over the motor: the ways of the motor itself and of the sling that draws it [m]. */
function keptFree({ pump, lift, withdrawal }: Access): readonly Solid[] {
  if (withdrawal === undefined) return [];
  const rigging = lift?.rigging === undefined ? [] : [sweepUp(lift.rigging, withdrawal)];
  return [sweepUp(pump.motorWithBox, withdrawal), ...rigging];
}

function overlaps(one: Solid, other: Solid): boolean {
  const { overlap, depth } = distanceBetween(one, other);
  return overlap && depth > TOUCH;
}

const WAYS: readonly (readonly [string, Vec3])[] = [
  ['up', [0, 0, 1]],
  ['down', [0, 0, -1]],
  ['north', [0, 1, 0]],
  ['south', [0, -1, 0]],
  ['east', [1, 0, 0]],
  ['west', [-1, 0, 0]],
  ['north-east', [Math.SQRT1_2, Math.SQRT1_2, 0]],
  ['south-east', [Math.SQRT1_2, -Math.SQRT1_2, 0]],
  ['south-west', [-Math.SQRT1_2, -Math.SQRT1_2, 0]],
  ['north-west', [-Math.SQRT1_2, Math.SQRT1_2, 0]],
];

/**
 * The word of the plan that a direction is nearest to.
 *
 * @param vector - direction [m]
 * @returns for example `north-east`
 */
export function wayWord(vector: Vec3): string {
  const length = lengthOf(vector) || 1;
  const along = (way: Vec3): number =>
    (vector[0] * way[0] + vector[1] * way[1] + vector[2] * way[2]) / length;
  return WAYS.reduce((best, next) => (along(next[1]) > along(best[1]) + 1e-9 ? next : best))[0];
}
