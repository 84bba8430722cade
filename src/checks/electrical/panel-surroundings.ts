import type { Subject } from '../../analysis/subject.js';
import { boundingBox, type Group } from '../../geometry/index.js';
import type { Room } from '../../input/installation.js';
import type { Obstacle } from '../../model/room/obstacles.js';
import { accessOf } from '../room/access-subject.js';

type RoomObject = Room['objects'][number];

/**
 * Panels of the room, whether or not more is said of them.
 *
 * @param subject - room
 * @returns objects of the kind panel
 */
export function panelsOf({ installation }: Subject): readonly RoomObject[] {
  return installation.room.objects.filter(({ kind }) => kind === 'panel');
}

/**
 * What stands round a panel: the room without the panel itself, the lines, what holds them, and the pump.
 *
 * @param panel - the panel
 * @param subject - room, lines and pump
 * @returns solids by name [m]
 */
export function surroundings(panel: RoomObject, subject: Subject): readonly Obstacle[] {
  const { obstacles, pump } = accessOf(subject);
  const own = ({ kind, box }: Obstacle): boolean =>
    kind === 'object' &&
    ([0, 1, 2] as const).every(
      (axis) => box.low[axis] === panel.low[axis] && box.high[axis] === panel.high[axis],
    );
  const solid: Group = {
    kind: 'group',
    pieces: [...pump.stages, ...pump.casingWithPorts.pieces, ...pump.motorWithBox.pieces],
  };
  return [
    ...obstacles.filter((obstacle) => !own(obstacle)),
    { kind: 'object', name: 'pump', solid, parts: [], box: boundingBox(solid) },
  ];
}
