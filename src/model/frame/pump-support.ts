import type { Pump } from '../../input/installation.js';
import { UP } from '../vector.js';
import type { FrameSupport, Restraint } from './frame.js';
import { AXES, inSeries, rigidRestraint } from './part-supports.js';
import { springGroup } from './spring-group.js';

/**
 * What holds the pump itself.
 *
 * @param pump - the pump as read
 * @returns nothing for a hung pump; one-way upward for a resting one; its springs for a sprung one; all six
 *   freedoms for a bolted one; stiffness [N/m], preload [N]
 * @source statics
 */
export function pumpSupport(pump: Pump): FrameSupport | undefined {
  if (pump.mount === 'hung' || pump.base === undefined) return undefined;
  const support = (restraints: readonly Restraint[]): FrameSupport => ({
    name: 'pump base',
    word: 'pump base',
    point: 'pump base',
    restraints,
  });
  const up = rigidRestraint(UP);
  if (pump.mount === 'resting') {
    const stiffness = inSeries(pump.base.structure?.value);
    return support([{ ...up, stiffness, sense: 'push', friction: pump.base.friction ?? 0 }]);
  }
  if (pump.mount === 'sprung' && pump.base.springs !== undefined) {
    return support(springGroup(pump.base.springs));
  }
  const { anchors } = pump.base;
  return support(
    AXES.flatMap((axis) => [
      { ...rigidRestraint(axis), stiffness: inSeries(anchors?.translation.value) },
      { ...rigidRestraint(axis, 'rotation'), stiffness: inSeries(anchors?.rotation.value) },
    ]),
  );
}
