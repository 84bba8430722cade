/** Paints a logo: shapes as vectors inside their frame, pixels as an image of the document. */
import type { Logo, LogoShape } from '../logo/logo-shape.js';
import type { PathStep } from '../shapes.js';
import type { Canvas } from './canvas.js';

interface Place {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Name of the image of pixels in the resources of every page. */
export const LOGO_IMAGE = 'Logo';

/**
 * Paints a logo.
 *
 * @param canvas - page
 * @param logo - the logo
 * @param place - left edge, top and size [points]
 */
export function paintLogo(canvas: Canvas, logo: Logo, place: Place): void {
  const { x, y, width, height } = place;
  if (logo.kind !== 'vector') {
    canvas.image(LOGO_IMAGE, x, y, width, height);
    return;
  }
  const scale = width / logo.width;
  const frame: readonly PathStep[] = [
    ['M', x, y],
    ['L', x + width, y],
    ['L', x + width, y + height],
    ['L', x, y + height],
    ['Z'],
  ];
  canvas.clipped(frame, () => {
    for (const shape of logo.shapes) paintShape(canvas, shape, place, scale);
  });
}

function paintShape(canvas: Canvas, shape: LogoShape, { x, y }: Place, scale: number): void {
  const at = (px: number, py: number): readonly [number, number] => [x + px * scale, y + py * scale];
  const steps = shape.steps.map((step): PathStep => {
    if (step[0] === 'Z') return step;
    if (step[0] === 'C')
      return ['C', ...at(step[1], step[2]), ...at(step[3], step[4]), ...at(step[5], step[6])];
    return [step[0], ...at(step[1], step[2])];
  });
  const { fill, stroke, evenOdd } = shape;
  canvas.path(steps, {
    ...(fill ? { fill, evenOdd } : {}),
    ...(stroke
      ? {
          stroke: stroke.colour,
          width: stroke.width * scale,
          dash: stroke.dash.map((length) => length * scale),
          cap: stroke.cap,
          join: stroke.join,
          miter: stroke.miter,
        }
      : {}),
  });
}
