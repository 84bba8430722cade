/** How the line moves in one condition: as it was set in thin line, as it moves, enlarged, in dash-dot. */

import type { Installation, UnitSystem } from '../../input/installation.js';
import type { Response } from '../../mechanics/frame/response.js';
import { conditionTitle } from '../../model/conditions/condition-roles.js';
import type { Layout } from '../../model/layout/layout.js';
import { add, scale } from '../../model/vector.js';
import { formatNumber, formatQuantity } from '../../units/index.js';
import type { Drawing, Shape } from '../drawing.js';
import { type Label, labelShapes } from '../labels/label.js';
import { placeLabels } from '../labels/label-placement.js';
import { type Box, type Capsule, distance } from '../plane.js';
import { footNote, paperParts } from './isometric.js';
import { type LinePicture, linePicture } from './line-picture.js';
import { NOTE_SIZE } from './load-labels.js';
import { centreLine, exaggeration, heldIn, movedLine, movedPump } from './moved-line.js';
import { farApart, type Moved, movedPlaces, NOTHING } from './moved-places.js';
import { northArrow, northArrowBox } from './north-arrow.js';
import { arrowHead } from './part-symbols.js';
import { type Projection, project } from './projection.js';
import { pumpPieces } from './pump-shapes.js';
import { line } from './tube.js';

export interface MovementRequest {
  readonly installation: Installation;
  readonly layout: Layout;
  readonly response: Response;
  readonly units: UnitSystem;
  /** Size on paper [1/72 in]. */
  readonly width: number;
  readonly height: number;
  /** Condition whose movements are drawn. */
  readonly condition: string;
}

/**
 * The line as set and as moved, from the same corner and at the same scale as the picture of the loads.
 *
 * @param request - results, condition, units and size [1/72 in]
 * @returns drawing named `movement`
 */
export function movementDrawing(request: MovementRequest): Drawing {
  const { installation, layout, response, condition, width, height } = request;
  const { frame, room } = paperParts(width, height);
  const picture = linePicture(installation, layout, room);
  const solved = response.conditions[condition];
  const moved = solved === undefined ? [] : movedPlaces(layout, solved, picture);
  const largest = moved[0];
  const numbered = farApart(moved, picture);
  const factor = exaggeration(largest?.size ?? 0, picture.projection.scale);
  const north = northArrowBox(frame, picture.obstacles);
  const lines =
    solved === undefined
      ? []
      : picture.drawn.strokes.map((s) => movedLine(s, solved, factor, picture.projection, room));
  const set = picture.drawn.strokes.map((s) =>
    line(
      centreLine(s).map((p) => project(picture.projection, p)),
      'fine',
      'none',
      false,
      'grey',
    ),
  );
  const marks = supportDots(layout, picture);
  const labels = placeLabels({
    frame,
    labels: movementLabels(request, numbered, factor, picture, room),
    obstacles: [...picture.obstacles.map(thin), ...lines.flatMap(along)],
    reserved: [north],
  }).placed.map(labelShapes);
  const arrows = numbered.flatMap((m) => movementArrow(m, factor, picture.projection, room));
  const pump = pumpPieces(installation, layout, picture.projection)
    .flatMap((piece) => piece.shapes)
    .map(faint);
  const shapes: readonly Shape[] = [
    ...pump,
    ...set,
    ...marks,
    ...lines,
    ...(solved === undefined ? [] : movedPump(installation, layout, solved, factor, picture, room)),
    ...arrows,
    ...northArrow(picture.projection.view, [(north.left + north.right) / 2, (north.top + north.bottom) / 2]),
    ...labels.flatMap((l) => l.leader),
    ...labels.flatMap((l) => l.plate),
    ...footNote(noteText(request, largest, factor, picture), width, height),
  ];
  const listed = numbered.map((m) => `${m.name} ${formatQuantity(m.size, 'length', request.units)}`);
  const alt = `Movement of ${installation.pump.mark} and its piping, condition ${conditionTitle(condition)}, seen from the ${picture.projection.view.corner}. Largest movements: ${listed.join('; ') || 'none'}. ${noteText(request, largest, factor, picture)}`;
  return { name: 'movement', width, height, title: `Movement, ${conditionTitle(condition)}`, alt, shapes };
}

/** The pump stays in the background. */
function faint(shape: Shape): Shape {
  if (shape.kind === 'text') return shape;
  return {
    ...shape,
    ink: 'grey',
    stroke: shape.stroke === 'none' ? 'none' : 'fine',
    fill: shape.fill === 'none' ? 'none' : 'white',
  };
}

/** Pipe is drawn thin here; the pump keeps its size. */
const thin = (obstacle: Capsule): Capsule => ({ ...obstacle, radius: Math.min(obstacle.radius, 3) });

/** A drawn line, for labels to keep clear of. */
function along(shape: Shape): readonly Capsule[] {
  if (shape.kind !== 'path') return [];
  return shape.points.slice(1).map((to, i) => ({ from: shape.points[i] ?? to, to, radius: 0.5 }));
}

function supportDots(layout: Layout, picture: LinePicture): readonly Shape[] {
  return layout.supports.map((support) => ({
    kind: 'circle',
    centre: project(
      picture.projection,
      support.kind === 'pump base' ? support.at : picture.drawn.place(support.at),
    ),
    radius: 1.8,
    stroke: 'medium',
    fill: 'white',
    ink: 'black',
  }));
}

function movementArrow(moved: Moved, factor: number, projection: Projection, room: Box): readonly Shape[] {
  const from = project(projection, moved.at);
  const to = project(projection, add(moved.at, scale(moved.translation, factor)));
  const inside = distance(to, heldIn(room, to)) < 1e-9;
  if (Math.hypot(to[0] - from[0], to[1] - from[1]) < 5 || !inside) return [];
  return [line([from, to], 'fine', 'none', false, 'accent'), arrowHead(from, to, 3.6, 'accent')];
}

function movementLabels(
  request: MovementRequest,
  numbered: readonly Moved[],
  factor: number,
  picture: LinePicture,
  room: Box,
): readonly Label[] {
  const numbers = numbered.map((m, i): Label => {
    const anchor = heldIn(room, project(picture.projection, add(m.at, scale(m.translation, factor))));
    const rows = [
      {
        text: `${m.name}: ${formatQuantity(m.size, 'length', request.units)}`,
        size: NOTE_SIZE,
        weight: i === 0 ? ('bold' as const) : ('regular' as const),
        ink: 'accent' as const,
      },
    ];
    return { name: m.name, rows, anchor, reach: 3, priority: 20 - i, framed: false };
  });
  const named = new Set(numbers.map((label) => label.name));
  const marks = request.layout.supports
    .filter((support) => !named.has(support.mark))
    .map(
      (support): Label => ({
        name: support.mark,
        rows: [{ text: support.mark, size: NOTE_SIZE, weight: 'bold', ink: 'black' }],
        anchor: project(
          picture.projection,
          support.kind === 'pump base' ? support.at : picture.drawn.place(support.at),
        ),
        reach: 3,
        priority: 8,
        framed: false,
      }),
    );
  return [...numbers, ...marks];
}

function noteText(
  request: MovementRequest,
  largest: Moved | undefined,
  factor: number,
  picture: LinePicture,
): string {
  const short = picture.drawn.anyShortened ? ' Long runs shortened.' : '';
  if (request.response.conditions[request.condition] === undefined)
    return `Condition ${conditionTitle(request.condition)} was not solved.`;
  if (largest === undefined || !(largest.size > NOTHING))
    return `Nothing moves in condition ${conditionTitle(request.condition)}.${short}`;
  const times = formatNumber(factor / 100, 'ratio', request.units, { significant: 1 });
  return `Thin: as set. Dash-dot: ${conditionTitle(request.condition)}, movements drawn ${times} times as large as they are. Largest ${formatQuantity(largest.size, 'length', request.units)} at ${largest.name}.${short}`;
}
