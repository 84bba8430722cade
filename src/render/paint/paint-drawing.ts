/** Paints a drawing as vectors, its words as text. */
import type { Drawing, Shape, Xy } from '../../drawing/drawing.js';
import type { Measure } from '../font/typeface.js';
import { fillColour, HATCH, inkColour, type PathStep, STROKES } from '../shapes.js';
import type { Canvas } from './canvas.js';

/** Where a drawing stands and how much smaller it is. */
interface Place {
  readonly x: number;
  readonly y: number;
  readonly scale: number;
}

/**
 * Paints a drawing.
 *
 * @param canvas - page
 * @param drawing - the picture
 * @param place - left edge and top [points], scale
 * @param measure - width of a text
 */
export function paintDrawing(canvas: Canvas, drawing: Drawing, place: Place, measure: Measure): void {
  for (const shape of drawing.shapes) paintShape(canvas, shape, place, measure);
}

function paintShape(canvas: Canvas, shape: Shape, place: Place, measure: Measure): void {
  const { scale } = place;
  if (shape.kind === 'text') {
    paintWords(canvas, shape, place, measure);
    return;
  }
  const steps =
    shape.kind === 'path'
      ? pathSteps(shape.points, shape.closed, place)
      : circleSteps(shape.centre, shape.radius, place);
  if (steps.length === 0) return;
  const fill = fillColour(shape.fill, shape.ink);
  if (shape.fill === 'hatch') hatch(canvas, steps, boundsOf(shape, place), shape);
  const stroke = shape.stroke === 'none' ? undefined : STROKES[shape.stroke];
  const width = (shape.kind === 'path' ? shape.width : undefined) ?? stroke?.width ?? 0;
  if (!fill && !stroke) return;
  canvas.path(steps, {
    ...(fill ? { fill } : {}),
    ...(stroke
      ? {
          stroke: inkColour(shape.ink),
          width: width * scale,
          dash: stroke.dash.map((length) => length * scale),
          round: shape.stroke === 'dotted',
        }
      : {}),
  });
}

function paintWords(
  canvas: Canvas,
  shape: Extract<Shape, { kind: 'text' }>,
  place: Place,
  measure: Measure,
): void {
  const text = shape.text.normalize('NFC');
  const size = shape.size * place.scale;
  const width = measure(text, shape.weight, size);
  const x =
    place.x +
    shape.at[0] * place.scale -
    (shape.anchor === 'end' ? width : shape.anchor === 'middle' ? width / 2 : 0);
  const y = place.y + shape.at[1] * place.scale;
  if (shape.plate) canvas.fill(x - 0.15 * size, y - 0.82 * size, width + 0.3 * size, 1.08 * size, [1, 1, 1]);
  canvas.text(text, x, y, shape.weight, size, inkColour(shape.ink));
}

function pathSteps(points: readonly Xy[], closed: boolean, place: Place): readonly PathStep[] {
  const steps = points.map(
    ([x, y], i): PathStep => [i === 0 ? 'M' : 'L', place.x + x * place.scale, place.y + y * place.scale],
  );
  return closed && steps.length > 0 ? [...steps, ['Z']] : steps;
}

function circleSteps(centre: Xy, radius: number, place: Place): readonly PathStep[] {
  const x = place.x + centre[0] * place.scale;
  const y = place.y + centre[1] * place.scale;
  const r = radius * place.scale;
  // A circle of four curves is off by less than 0.03 % of its radius.
  const k = 0.5523 * r;
  return [
    ['M', x + r, y],
    ['C', x + r, y + k, x + k, y + r, x, y + r],
    ['C', x - k, y + r, x - r, y + k, x - r, y],
    ['C', x - r, y - k, x - k, y - r, x, y - r],
    ['C', x + k, y - r, x + r, y - k, x + r, y],
    ['Z'],
  ];
}

interface Bounds {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

function boundsOf(shape: Exclude<Shape, { kind: 'text' }>, place: Place): Bounds {
  const points: readonly Xy[] =
    shape.kind === 'path'
      ? shape.points
      : [
          [shape.centre[0] - shape.radius, shape.centre[1] - shape.radius],
          [shape.centre[0] + shape.radius, shape.centre[1] + shape.radius],
        ];
  const xs = points.map(([x]) => place.x + x * place.scale);
  const ys = points.map(([, y]) => place.y + y * place.scale);
  return { left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), bottom: Math.max(...ys) };
}

/** Slanted lines on a raster of the page, so that neighbours of one material match. */
function hatch(
  canvas: Canvas,
  steps: readonly PathStep[],
  bounds: Bounds,
  shape: Exclude<Shape, { kind: 'text' }>,
): void {
  const { left, top, right, bottom } = bounds;
  const first = Math.floor((left + top) / HATCH.step) * HATCH.step;
  const lines: PathStep[] = [];
  for (let sum = first; sum < right + bottom && lines.length < 4000; sum += HATCH.step)
    lines.push(['M', sum - top, top], ['L', sum - bottom, bottom]);
  canvas.clipped(steps, () => canvas.path(lines, { stroke: inkColour(shape.ink), width: HATCH.width }));
}
