import { EngineError } from '../../issues/issue.js';

/**
 * Area of the bore.
 *
 * @param tube - outside diameter and wall [m]
 * @returns area [m²]
 * @source statics
 */
export function boreArea(tube: { readonly outsideDiameter: number; readonly wall: number }): number {
  if (!(tube.wall > 0 && tube.outsideDiameter > 2 * tube.wall)) {
    throw new EngineError('model.no-bore', { outsideDiameter: tube.outsideDiameter, wall: tube.wall });
  }
  return (Math.PI / 4) * (tube.outsideDiameter - 2 * tube.wall) ** 2;
}
