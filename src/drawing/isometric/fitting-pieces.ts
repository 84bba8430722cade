/** Small things on the pipe: a short stem with a mark at its end, no letters. */
import type { Vec3 } from '../../model/conventions.js';
import type { Layout, PlacedFitting } from '../../model/layout/layout.js';
import { dot, scale, subtract } from '../../model/vector.js';
import { isInside } from '../clip.js';
import type { Shape, Xy } from '../drawing.js';
import { grown, offset } from '../plane.js';
import type { ElevationFrame } from '../room-views/elevation-frame.js';
import { levelAcross } from '../space.js';
import type { Piece } from './paint-order.js';
import { arrowHead } from './part-symbols.js';
import { type Projection, paperDirection, project } from './projection.js';
import type { ShortenedLine } from './shortened-line.js';
import { line } from './tube.js';

/** Length of the stem outside the pipe and size of what stands at its end [1/72 in]. */
const STEM = 6;
const HEAD = 4;
/** A pipe that rises more than this is upright: its fittings stand out to the side [-]. */
const UPRIGHT = 0.8;
/** What stands farther than this in front of the pump or behind it is left out of the elevation [m]. */
const NEAR = 1.5;

/**
 * Pieces of the fittings.
 *
 * @param layout - fittings [m]
 * @param drawn - the line as drawn [m]
 * @param projection - view and scale
 * @returns pieces, in walking order
 */
export function fittingPieces(
  layout: Layout,
  drawn: ShortenedLine,
  projection: Projection,
): readonly Piece[] {
  return (layout.fittings ?? []).map((fitting): Piece => {
    const at = drawn.place(fitting.at);
    return {
      segments: [{ from: at, to: at }],
      radius: (fitting.section.outsideDiameter / 2) * projection.scale,
      rank: 4,
      shapes: fittingShapes(fitting, at, projection),
    };
  });
}

/**
 * Fittings near the pump as seen from the side.
 *
 * @param layout - fittings [m]
 * @param elevation - frame of the elevation
 * @returns shapes inside the window
 */
export function elevationFittings(layout: Layout, elevation: ElevationFrame): readonly Shape[] {
  const { projection, window } = elevation;
  const inner = grown(window, -(STEM + HEAD));
  const middle = layout.nozzles.suction.at;
  return (layout.fittings ?? [])
    .filter(({ at }) => Math.abs(dot(subtract(at, middle), projection.view.towards)) < NEAR)
    .filter(({ at }) => isInside(project(projection, at), inner))
    .flatMap((fitting) => fittingShapes(fitting, fitting.at, projection));
}

/** Drains hang down with a dark head, vents stand up with an open one, gauges end in a circle, screens are dashed. */
function fittingShapes(fitting: PlacedFitting, at: Vec3, projection: Projection): readonly Shape[] {
  const radius = (fitting.section.outsideDiameter / 2) * projection.scale;
  const middle = project(projection, at);
  const way = paperDirection(projection.view, outwards(fitting));
  const reach = (length: number): Xy => offset(middle, way, radius + length);
  const stem = line([reach(0), reach(STEM)], 'medium');
  switch (fitting.fitting) {
    case 'drain':
      return [stem, arrowHead(middle, reach(STEM + HEAD), HEAD)];
    case 'vent':
      return [stem, openHead(reach(STEM), way)];
    case 'gauge-tap':
      return [stem, circle(reach(STEM + HEAD / 2), HEAD / 2)];
    case 'start-up-screen': {
      const across = paperDirection(projection.view, levelAcross(fitting.along));
      const half = radius + 2;
      return [line([offset(middle, across, -half), offset(middle, across, half)], 'dashed')];
    }
  }
}

/** Down for a drain, up for the rest; on an upright pipe to one side and to the other. */
function outwards({ fitting, along }: PlacedFitting): Vec3 {
  const sign = fitting === 'drain' ? -1 : 1;
  return scale(Math.abs(along[2]) > UPRIGHT ? levelAcross(along) : [0, 0, 1], sign);
}

function openHead(foot: Xy, way: Xy): Shape {
  const side: Xy = [-way[1], way[0]];
  const [left, right] = [offset(foot, side, HEAD / 2), offset(foot, side, -HEAD / 2)];
  return line([left, offset(foot, way, HEAD), right, left], 'fine', 'white');
}

function circle(centre: Xy, radius: number): Shape {
  return { kind: 'circle', centre, radius, stroke: 'fine', fill: 'white', ink: 'black' };
}
