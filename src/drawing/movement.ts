/** How the line moves in one condition: as it was set in thin line, as it moves, enlarged, in dash-dot. */
import type { Installation, UnitSystem } from '../input/installation.js';
import type { ConditionResponse, Movement, Response } from '../mechanics/response.js';
import type { Vec3 } from '../model/conventions.js';
import type { Layout } from '../model/layout.js';
import { add, cross, norm, scale, subtract } from '../model/vector.js';
import { formatNumber, formatQuantity } from '../units/index.js';
import type { Drawing, Shape, Xy } from './drawing.js';
import { footNote, paperParts } from './isometric.js';
import { type Label, labelShapes } from './label.js';
import { placeLabels } from './label-placement.js';
import { type LinePicture, linePicture } from './line-picture.js';
import { NOTE_SIZE } from './load-labels.js';
import { northArrow, northArrowBox } from './north-arrow.js';
import { arrowHead } from './part-symbols.js';
import { type Box, distance } from './plane.js';
import { type Projection, project } from './projection.js';
import { pumpPieces } from './pump-shapes.js';
import type { DrawnStroke } from './shortened-line.js';
import { apart, arcPoints } from './space.js';
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

/** Length on paper of the largest movement, about [1/72 in]. */
const LARGEST_ON_PAPER = 30;
/** How many places get a number. */
const NUMBERED = 6;
/** Movements under this are rounding [m]. */
const NOTHING = 1e-7;

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
    labels: movementLabels(request, moved, factor, picture, room),
    obstacles: picture.obstacles,
    reserved: [north],
  }).placed.map(labelShapes);
  const arrows = moved.slice(0, NUMBERED).flatMap((m) => movementArrow(m, factor, picture.projection, room));
  const pump = pumpPieces(installation, layout, picture.projection)
    .flatMap((piece) => piece.shapes)
    .map(faint);
  const shapes: readonly Shape[] = [
    ...pump,
    ...set,
    ...marks,
    ...lines,
    ...arrows,
    ...northArrow(picture.projection.view, [(north.left + north.right) / 2, (north.top + north.bottom) / 2]),
    ...labels.flatMap((l) => l.leader),
    ...labels.flatMap((l) => l.plate),
    ...footNote(noteText(request, largest, factor, picture), width, height),
  ];
  const listed = moved
    .slice(0, NUMBERED)
    .map((m) => `${m.name} ${formatQuantity(m.size, 'length', request.units)}`);
  const alt = `Movement of ${installation.pump.mark} and its piping, condition ${condition}, seen from the ${picture.projection.view.corner}. Largest movements: ${listed.join('; ') || 'none'}. ${noteText(request, largest, factor, picture)}`;
  return { name: 'movement', width, height, title: `Movement, ${condition}`, alt, shapes };
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

interface Moved {
  readonly name: string;
  /** Place as drawn [m]. */
  readonly at: Vec3;
  readonly translation: Vec3;
  /** [m] */
  readonly size: number;
}

/** Named places on the drawn line with their movements, largest first. */
function movedPlaces(layout: Layout, solved: ConditionResponse, picture: LinePicture): readonly Moved[] {
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
    return [{ name, at, translation: movement.translation, size: norm(movement.translation) }];
  });
  return found
    .filter((m) => Number.isFinite(m.size))
    .sort((a, b) => b.size - a.size || (a.name < b.name ? -1 : 1));
}

/**
 * Round factor by which movements are enlarged over the picture: 1, 2 or 5 times a power of ten.
 *
 * @param largest - largest movement [m]
 * @param paperScale - points of paper per metre
 * @returns factor, at least 1
 */
export function exaggeration(largest: number, paperScale: number): number {
  if (!(largest > NOTHING)) return 1;
  const wanted = LARGEST_ON_PAPER / (largest * paperScale);
  if (wanted <= 1) return 1;
  const decade = 10 ** Math.floor(Math.log10(wanted));
  const step = [5, 2, 1].find((s) => s * decade <= wanted) ?? 1;
  return step * decade;
}

function centreLine(drawn: DrawnStroke): readonly Vec3[] {
  return drawn.centre === undefined
    ? [drawn.from, drawn.to]
    : arcPoints({ ...drawn, centre: drawn.centre }, 10);
}

const STEPS = 10;

/** Absurd movements of a wrong input must not leave the paper. */
const heldIn = (room: Box, p: Xy): Xy => [
  Math.min(room.right + 40, Math.max(room.left - 40, p[0])),
  Math.min(room.bottom + 16, Math.max(room.top - 16, p[1])),
];

/**
 * A stroke after moving: its ends' movements and rotations carried along it by the cubic of a beam; a bend likewise
 * along its arc.
 */
function movedLine(
  drawn: DrawnStroke,
  solved: ConditionResponse,
  factor: number,
  projection: Projection,
  room: Box,
): Shape {
  const [a, b] = [solved.movements[drawn.stroke.points[0]], solved.movements[drawn.stroke.points[1]]];
  const still: Movement = { translation: [0, 0, 0], rotation: [0, 0, 0] };
  const [start, end] = [a ?? b ?? still, b ?? a ?? still];
  const length = apart(drawn.stroke.from, drawn.stroke.to);
  const run = subtract(drawn.stroke.to, drawn.stroke.from);
  const base =
    drawn.centre === undefined ? straightPoints(drawn) : arcPoints({ ...drawn, centre: drawn.centre }, STEPS);
  const points = base.map((place, i): Xy => {
    const t = i / STEPS;
    const slope = (rotation: Vec3): Vec3 =>
      drawn.centre === undefined && length > 0 ? cross(rotation, run) : [0, 0, 0];
    const shift = hermite(start.translation, end.translation, slope(start.rotation), slope(end.rotation), t);
    return heldIn(room, project(projection, add(place, scale(shift, factor))));
  });
  return line(points, 'dash-dot', 'none', false, 'accent');
}

function straightPoints(drawn: DrawnStroke): readonly Vec3[] {
  return Array.from({ length: STEPS + 1 }, (_, i) =>
    add(drawn.from, scale(subtract(drawn.to, drawn.from), i / STEPS)),
  );
}

/** Cubic with given values and slopes at both ends. */
function hermite(a: Vec3, b: Vec3, slopeA: Vec3, slopeB: Vec3, t: number): Vec3 {
  const [t2, t3] = [t * t, t * t * t];
  const sum = add(scale(a, 2 * t3 - 3 * t2 + 1), scale(b, 3 * t2 - 2 * t3));
  return add(sum, add(scale(slopeA, t3 - 2 * t2 + t), scale(slopeB, t3 - t2)));
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
  moved: readonly Moved[],
  factor: number,
  picture: LinePicture,
  room: Box,
): readonly Label[] {
  const numbers = moved
    .slice(0, NUMBERED)
    .filter((m) => m.size > NOTHING)
    .map((m, i): Label => {
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
    return `Condition ${request.condition} was not solved.`;
  if (largest === undefined || !(largest.size > NOTHING))
    return `Nothing moves in condition ${request.condition}.${short}`;
  const times = formatNumber(factor / 100, 'ratio', request.units, { significant: 1 });
  return `Thin: as set. Dash-dot: ${request.condition}, movements drawn ${times} times as large as they are. Largest ${formatQuantity(largest.size, 'length', request.units)} at ${largest.name}.${short}`;
}
