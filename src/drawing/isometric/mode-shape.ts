/** A natural vibration: the line as it stands, and both ends of its swing. */
import type { Installation, UnitSystem } from '../../input/installation.js';
import { pieceEnd, piecesOf } from '../../mechanics/frame/refine-frame.js';
import type { Mode } from '../../mechanics/modes/frequencies.js';
import type { Layout } from '../../model/layout/layout.js';
import { add, between, norm, scale } from '../../model/vector.js';
import { formatQuantity } from '../../units/index.js';
import type { Drawing, Shape } from '../drawing.js';
import { type Label, labelShapes } from '../labels/label.js';
import { placeLabels } from '../labels/label-placement.js';
import type { Box } from '../plane.js';
import { footNote, paperParts } from './isometric.js';
import { type LinePicture, linePicture } from './line-picture.js';
import { NOTE_SIZE } from './load-labels.js';
import { centreLine, movedLine, movedPump } from './moved-line.js';
import { northArrow, northArrowBox } from './north-arrow.js';
import { project } from './projection.js';
import { pumpPieces } from './pump-shapes.js';
import type { DrawnStroke } from './shortened-line.js';
import { line } from './tube.js';

export interface ModeShapeRequest {
  readonly installation: Installation;
  readonly layout: Layout;
  readonly mode: Mode;
  /** Place in the list, counted from 1. */
  readonly number: number;
  /** What moves, in words. */
  readonly words: string;
  /** Name the figure calls it by. */
  readonly name: string;
  readonly units: UnitSystem;
  /** [1/72 in] */
  readonly width: number;
  readonly height: number;
}

/** Length on paper of the largest swing to one side [1/72 in]. */
const SWING_ON_PAPER = 22;

/**
 * A vibration from the same corner as the picture of the loads: one end of the swing in dash-dot, the other dotted.
 *
 * @param request - mode, words and size [1/72 in]
 * @returns drawing named as asked
 */
export function modeShapeDrawing(request: ModeShapeRequest): Drawing {
  const { installation, layout, mode, width, height } = request;
  const { frame, room } = paperParts(width, height);
  const picture = linePicture(installation, layout, room);
  const still = picture.drawn.strokes.map((s) =>
    line(
      centreLine(s).map((p) => project(picture.projection, p)),
      'fine',
      'none',
      false,
      'grey',
    ),
  );
  const factor = SWING_ON_PAPER / (picture.projection.scale * largestDrawn(request));
  const swing = (sign: 1 | -1): readonly Shape[] => [
    ...picture.drawn.strokes.flatMap((s) => swungStroke(s, mode, sign * factor, picture, room)),
    ...movedPump(installation, layout, { movements: mode.shape }, sign * factor, picture, room),
  ];
  const north = northArrowBox(frame, picture.obstacles);
  const labels = placeLabels({
    frame,
    labels: supportMarks(layout, picture),
    obstacles: picture.obstacles,
    reserved: [north],
  }).placed.map(labelShapes);
  const frequency = formatQuantity(mode.frequency, 'frequency', request.units);
  const note = `Vibration ${request.number}, ${frequency}: ${request.words}. Dash-dot and dotted: the two ends of the swing, its size is not to scale.`;
  const shapes: readonly Shape[] = [
    ...pumpPieces(installation, layout, picture.projection)
      .flatMap((piece) => piece.shapes)
      .map(background),
    ...still,
    ...swing(-1).map(dotted),
    ...swing(1),
    ...northArrow(picture.projection.view, [(north.left + north.right) / 2, (north.top + north.bottom) / 2]),
    ...labels.flatMap((label) => label.leader),
    ...labels.flatMap((label) => label.plate),
    ...footNote(note, width, height),
  ];
  const alt = `Vibration ${request.number} of ${installation.pump.mark} and its piping at ${frequency}, seen from the ${picture.projection.view.corner}: ${request.words}.`;
  return { name: request.name, width, height, title: `Vibration at ${frequency}`, alt, shapes };
}

/** Largest movement of what is drawn, the top of the motor included [m]. */
function largestDrawn({ mode, layout, installation }: ModeShapeRequest): number {
  const moved = Object.values(mode.shape).map(({ translation }) => norm(translation));
  const turn = norm(mode.shape[layout.nozzles.suction.point]?.rotation ?? [0, 0, 0]);
  const seat = norm(mode.shape[layout.nozzles.suction.point]?.translation ?? [0, 0, 0]);
  return Math.max(1e-9, ...moved, seat + turn * installation.pump.outline.motorTop.value);
}

/** A stroke after moving; a pipe that was cut for the vibration swings piece by piece. */
function swungStroke(
  drawn: DrawnStroke,
  mode: Mode,
  factor: number,
  picture: LinePicture,
  room: Box,
): readonly Shape[] {
  const { stroke } = drawn;
  const count = stroke.kind === 'straight' ? piecesOf(stroke.name, mode.shape) : 1;
  return Array.from({ length: count }, (_, piece) => {
    const name = (end: number): string =>
      end === 0 ? stroke.points[0] : end === count ? stroke.points[1] : pieceEnd(stroke.name, end, count);
    const part: DrawnStroke =
      count === 1
        ? drawn
        : {
            ...drawn,
            from: between(drawn.from, drawn.to, piece / count),
            to: between(drawn.from, drawn.to, (piece + 1) / count),
            stroke: {
              ...stroke,
              from: between(stroke.from, stroke.to, piece / count),
              to: between(stroke.from, stroke.to, (piece + 1) / count),
              points: [name(piece), name(piece + 1)],
            },
          };
    return movedLine(part, { movements: mode.shape }, factor, picture.projection, room);
  });
}

function dotted(shape: Shape): Shape {
  return shape.kind === 'path' ? { ...shape, stroke: 'dotted', ink: 'black' } : shape;
}

function background(shape: Shape): Shape {
  if (shape.kind === 'text') return shape;
  const stroke = shape.stroke === 'none' ? 'none' : 'fine';
  return { ...shape, ink: 'grey', stroke, fill: shape.fill === 'none' ? 'none' : 'white' };
}

function supportMarks(layout: Layout, picture: LinePicture): readonly Label[] {
  return layout.supports
    .filter(({ kind }) => kind !== 'pump base')
    .map((support) => ({
      name: support.mark,
      rows: [{ text: support.mark, size: NOTE_SIZE, weight: 'bold', ink: 'black' }],
      anchor: project(picture.projection, add(picture.drawn.place(support.at), scale([0, 0, 1], 0))),
      reach: 3,
      priority: 8,
      framed: false,
    }));
}
