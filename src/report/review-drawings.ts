import {
  type Drawing,
  elevationDrawing,
  isometricDrawing,
  movementDrawing,
  ratioBars,
} from '../drawing/index.js';
import type { ReportContext } from './context.js';
import { drawnMovement } from './sections/picture.js';

/** Width of a page's frame, and heights that leave room for two pictures on a page [1/72 in]. */
const WIDTH = 498;
const ISOMETRIC_HEIGHT = 330;
const MOVEMENT_HEIGHT = 260;
const ELEVATION_HEIGHT = 300;

/**
 * Every drawing a review may call, by the name its figure calls it. Each is drawn when it is first looked at: placing
 * labels takes longer than everything else in a review, and a short review calls few of them.
 *
 * @param context - results
 * @returns drawings by name
 */
export function reviewDrawings(context: ReportContext): Readonly<Record<string, Drawing>> {
  const { installation, layout, response } = context.subject;
  const { findings } = context;
  const request = { installation, layout, response, findings, units: context.write.system, width: WIDTH };
  return drawnOnDemand({
    isometric: () => isometricDrawing({ ...request, height: ISOMETRIC_HEIGHT }),
    movement: () =>
      movementDrawing({ ...request, height: MOVEMENT_HEIGHT, condition: drawnMovement(response) }),
    elevation: () => elevationDrawing({ ...request, height: ELEVATION_HEIGHT }),
    ratios: () => ratioBars(request),
  });
}

function drawnOnDemand(draw: Readonly<Record<string, () => Drawing>>): Readonly<Record<string, Drawing>> {
  const drawn = new Map<string, Drawing>();
  const drawings: Record<string, Drawing> = {};
  for (const [name, make] of Object.entries(draw)) {
    const get = (): Drawing => {
      const drawing = drawn.get(name) ?? make();
      drawn.set(name, drawing);
      return drawing;
    };
    Object.defineProperty(drawings, name, { enumerable: true, get });
  }
  return drawings;
}
