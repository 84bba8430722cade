/** Dimensions of the plan: from the shaft to the nearest wall on each side, and the width of the way out. */
import type { Installation, UnitSystem } from '../../input/installation.js';
import { formatQuantity } from '../../units/index.js';
import { isInside } from '../clip.js';
import { project } from '../isometric/projection.js';
import type { Dimension } from './dimension-line.js';
import type { PlanFrame } from './plan-frame.js';

type Wall = Installation['room']['objects'][number];

/** How far beside the shaft a dimension is drawn, and how a wall must reach past it to be measured to [m]. */
const BESIDE = 0.25;

const SIDES = [
  { word: 'east', axis: 0, sign: 1 },
  { word: 'west', axis: 0, sign: -1 },
  { word: 'north', axis: 1, sign: 1 },
  { word: 'south', axis: 1, sign: -1 },
] as const;

/**
 * Dimensions of the plan.
 *
 * @param installation - pump and room [m]
 * @param plan - frame of the plan
 * @param units - units to print in
 * @returns those whose ends both lie in the window
 */
export function planDimensions(
  installation: Installation,
  plan: PlanFrame,
  units: UnitSystem,
): readonly Dimension[] {
  const { pump, room } = installation;
  const print = (metres: number): string => formatQuantity(metres, 'length', units, { feetInches: true });
  const walls = SIDES.flatMap(({ word, axis, sign }): readonly Dimension[] => {
    const other = axis === 0 ? 1 : 0;
    const line = pump.position[other] - BESIDE;
    const faces = room.objects
      .filter(({ kind }) => kind === 'wall')
      .filter(({ low, high }) => low[other] <= line && high[other] >= line)
      .map((wall: Wall) => sign * ((sign > 0 ? wall.low : wall.high)[axis] - pump.position[axis]))
      .filter((distance) => distance > 0);
    const nearest = Math.min(...faces);
    if (!Number.isFinite(nearest)) return [];
    const end = pump.position[axis] + sign * nearest;
    const at = (along: number): readonly [number, number, number] =>
      axis === 0 ? [along, line, 0] : [line, along, 0];
    const [from, to] = [project(plan.projection, at(pump.position[axis])), project(plan.projection, at(end))];
    if (!isInside(from, plan.window) || !isInside(to, plan.window)) return [];
    const shaft = project(plan.projection, pump.position);
    return [
      {
        name: `shaft to wall, ${word}`,
        from,
        to,
        witness: [shaft, to],
        words: `${print(nearest)} to wall`,
        ink: 'black',
      },
    ];
  });
  return walls;
}
