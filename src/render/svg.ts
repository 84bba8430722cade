/** Drawings and verdict shapes as SVG, for the HTML page. */
import type { Drawing, Shape, Xy } from '../drawing/drawing.js';
import { INKS, type InkName } from './layout/style-sheet.js';
import {
  type Colour,
  fillColour,
  HATCH,
  inkColour,
  MARK_SIDE,
  type PathStep,
  STROKES,
  VERDICT_SHAPES,
} from './shapes.js';
import type { VerdictWord } from './vocabulary.js';

/** Text made safe for HTML and SVG, in words and in attributes. */
export const escapeText = (text: string): string =>
  text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');

const num = (value: number): string => String(Math.round(value * 100) / 100 || 0);

/** Points of print that are one unit of text on the page: lengths grow with the text that a reader asks for. */
export const ROOT_SIZE = 9.2;

/** A length of the print [points] as CSS writes it, in units of text. */
export const rem = (points: number): string => `${Math.round((points / ROOT_SIZE) * 1000) / 1000}rem`;

/** A colour as CSS writes it. */
export function cssColour(colour: Colour): string {
  const part = (value: number): string =>
    Math.round(value * 255)
      .toString(16)
      .padStart(2, '0');
  return `#${colour.map(part).join('')}`;
}

export const cssInk = (ink: InkName): string => cssColour(INKS[ink]);

/**
 * A drawing as SVG.
 *
 * @param drawing - the picture
 * @returns one `svg` element with title and description; needs nothing from outside
 */
export function drawingToSvg(drawing: Drawing): string {
  const id = `drawing-${drawing.name.replace(/[^A-Za-z0-9]+/g, '-')}`;
  const inks = [
    ...new Set(
      drawing.shapes.flatMap((shape) => (shape.kind !== 'text' && shape.fill === 'hatch' ? [shape.ink] : [])),
    ),
  ];
  const hatches = inks.map(
    (ink) =>
      `<pattern id="${id}-hatch-${ink}" width="${HATCH.step}" height="${HATCH.step}" patternUnits="userSpaceOnUse">` +
      `<path d="M-1 1L1 -1M0 ${HATCH.step}L${HATCH.step} 0M${HATCH.step - 1} ${HATCH.step + 1}L${HATCH.step + 1} ${HATCH.step - 1}" ` +
      `stroke="${cssColour(inkColour(ink))}" stroke-width="${HATCH.width}"/></pattern>`,
  );
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${num(drawing.width)} ${num(drawing.height)}" ` +
      `role="img" aria-labelledby="${id}-title ${id}-alt" style="width:${rem(drawing.width)}">`,
    `<title id="${id}-title">${escapeText(drawing.title)}</title>`,
    `<desc id="${id}-alt">${escapeText(drawing.alt)}</desc>`,
    ...(hatches.length > 0 ? [`<defs>${hatches.join('')}</defs>`] : []),
    ...drawing.shapes.map((shape) => shapeToSvg(shape, id)),
    '</svg>',
  ].join('\n');
}

function shapeToSvg(shape: Shape, id: string): string {
  if (shape.kind === 'text') return textToSvg(shape);
  const fill = fillColour(shape.fill, shape.ink);
  const stroke = shape.stroke === 'none' ? undefined : STROKES[shape.stroke];
  const width = (shape.kind === 'path' ? shape.width : undefined) ?? stroke?.width ?? 0;
  const look = [
    `fill="${shape.fill === 'hatch' ? `url(#${id}-hatch-${shape.ink})` : fill ? cssColour(fill) : 'none'}"`,
    ...(stroke
      ? [`stroke="${cssColour(inkColour(shape.ink))}" stroke-width="${num(width)}" stroke-linejoin="round"`]
      : []),
    ...(stroke && stroke.dash.length > 0 ? [`stroke-dasharray="${stroke.dash.map(num).join(' ')}"`] : []),
    ...(shape.stroke === 'dotted' ? ['stroke-linecap="round"'] : []),
  ].join(' ');
  if (shape.kind === 'circle')
    return `<circle cx="${num(shape.centre[0])}" cy="${num(shape.centre[1])}" r="${num(shape.radius)}" ${look}/>`;
  const point = ([x, y]: Xy, i: number): string => `${i === 0 ? 'M' : 'L'}${num(x)} ${num(y)}`;
  return `<path d="${shape.points.map(point).join('')}${shape.closed ? 'Z' : ''}" ${look}/>`;
}

function textToSvg(shape: Extract<Shape, { kind: 'text' }>): string {
  const weight = shape.weight === 'bold' ? ' font-weight="600"' : '';
  // The white plate is a stroke below the letters: its size then follows whatever face the page is shown in.
  const plate = shape.plate
    ? ` stroke="#fff" stroke-width="${num(shape.size * 0.35)}" stroke-linejoin="round" paint-order="stroke"`
    : '';
  return (
    `<text x="${num(shape.at[0])}" y="${num(shape.at[1])}" font-size="${num(shape.size)}" text-anchor="${shape.anchor}"` +
    `${weight}${plate} fill="${cssColour(inkColour(shape.ink))}">${escapeText(shape.text)}</text>`
  );
}

/** The shape of a verdict; its word stands beside it, so readers of the page aloud skip the shape. */
export function verdictToSvg(verdict: VerdictWord): string {
  const step = (one: PathStep): string =>
    one[0] === 'Z'
      ? 'Z'
      : `${one[0]}${one
          .slice(1)
          .map((value) => num(Number(value)))
          .join(' ')}`;
  const strokes = VERDICT_SHAPES[verdict].map((stroke) => {
    const path = stroke.steps.map(step).join('');
    // Inks by name, so that they follow the page onto a dark screen.
    return stroke.width === undefined
      ? `<path d="${path}" class="${stroke.ink} fill"/>`
      : `<path d="${path}" class="${stroke.ink} line" stroke-width="${stroke.width}" stroke-linejoin="round"/>`;
  });
  return `<svg class="mark" viewBox="-.06 -.06 1.12 1.12" width="${MARK_SIDE}em" height="${MARK_SIDE}em" aria-hidden="true">${strokes.join('')}</svg>`;
}
