/** Loads on both nozzles by condition, as the pipe acts on the pump. */

import type { Response } from '../../mechanics/frame/response.js';
import { wrenchOnBody } from '../../mechanics/frame/wrench-on-body.js';
import type { Layout, PlacedNozzle } from '../../model/layout/layout.js';
import type { NozzleLoad } from './load-labels.js';

/**
 * Nozzle loads of every solved condition in which the pump is there.
 *
 * @param layout - layout with its frame
 * @param response - solved conditions
 * @param nozzle - which nozzle
 * @returns force [N] and moment about the flange face [N·m] by condition
 */
export function nozzleLoadsByCondition(
  layout: Layout,
  response: Response,
  nozzle: PlacedNozzle,
): Readonly<Record<string, NozzleLoad>> {
  const body = layout.frame.bodies.find(
    (b) => b.points.includes('pump suction') && b.points.includes('pump discharge'),
  );
  if (body === undefined) return {};
  const loads: Record<string, NozzleLoad> = {};
  for (const condition of layout.frame.conditions) {
    const solved = response.conditions[condition.name];
    if (solved === undefined || condition.removed.includes(body.name)) continue;
    loads[condition.name] = wrenchOnBody(layout.frame, condition, solved, body.name, nozzle.point);
  }
  return loads;
}
