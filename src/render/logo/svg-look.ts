/** How a shape of an SVG is filled and stroked: what it says itself, else what stands around it says. */
import type { Colour } from '../shapes.js';
import type { LogoStroke } from './logo-shape.js';
import { readColour } from './svg-colour.js';

/** Stops reading, with a code and what was found. */
export type SvgFail = (
  code: 'render.logo.damaged' | 'render.logo.not-drawn' | 'render.logo.not-allowed',
  found: string,
) => never;

export interface Look {
  readonly fill: Colour | 'none';
  readonly evenOdd: boolean;
  readonly stroke: Colour | 'none';
  readonly width: number;
  readonly cap: LogoStroke['cap'];
  readonly join: LogoStroke['join'];
  readonly miter: number;
  readonly dash: readonly number[];
  readonly isVisible: boolean;
}

/** What SVG takes where nothing is said. */
export const PLAIN: Look = {
  fill: [0, 0, 0],
  evenOdd: false,
  stroke: 'none',
  width: 1,
  cap: 'butt',
  join: 'miter',
  miter: 4,
  dash: [],
  isVisible: true,
};

/** What would change the picture in ways that are not drawn, with the words that say that it does not. */
const PLAIN_WORDS: Readonly<Record<string, readonly string[]>> = {
  opacity: ['1', '1.0', '100%'],
  'fill-opacity': ['1', '1.0', '100%'],
  'stroke-opacity': ['1', '1.0', '100%'],
  filter: ['none'],
  mask: ['none'],
  'clip-path': ['none'],
  marker: ['none'],
  'marker-start': ['none'],
  'marker-mid': ['none'],
  'marker-end': ['none'],
  'mix-blend-mode': ['normal'],
  'vector-effect': ['none'],
  'paint-order': ['normal', 'fill', 'fill stroke', 'fill stroke markers'],
  'transform-origin': ['0', '0 0', '0px 0px'],
  'stroke-dashoffset': ['0', '0px'],
};

/**
 * The look of an element.
 *
 * @param attributes - its attributes, those of `style` among them
 * @param around - look of what it stands in
 * @param fail - stops with what cannot be drawn
 * @returns its look
 */
export function readLook(attributes: ReadonlyMap<string, string>, around: Look, fail: SvgFail): Look {
  for (const [name, plain] of Object.entries(PLAIN_WORDS)) {
    const value = attributes.get(name);
    if (value !== undefined && !plain.includes(value.trim().toLowerCase()))
      fail('render.logo.not-drawn', `${name}="${value.slice(0, 40)}"`);
  }
  const said = (name: string): string | undefined => {
    const value = attributes.get(name)?.trim();
    return value === 'inherit' || value === '' ? undefined : value;
  };
  const oneOf = <Word extends string>(name: string, words: readonly Word[], otherwise: Word): Word => {
    const value = said(name);
    if (value === undefined) return otherwise;
    return (
      words.find((word) => word === value) ?? fail('render.logo.not-drawn', `${name}="${value.slice(0, 40)}"`)
    );
  };
  const colour = (name: string, otherwise: Colour | 'none'): Colour | 'none' => {
    const value = said(name);
    if (value === undefined) return otherwise;
    return readColour(value) ?? fail('render.logo.not-drawn', `the colour ${name}="${value.slice(0, 40)}"`);
  };
  const length = (name: string, otherwise: number): number => {
    const value = said(name);
    if (value === undefined) return otherwise;
    const number = /^(\d*\.?\d+)(px)?$/.exec(value)?.[1];
    return number === undefined
      ? fail('render.logo.not-drawn', `${name}="${value.slice(0, 40)}"`)
      : Number(number);
  };
  const dash = said('stroke-dasharray');
  return {
    fill: colour('fill', around.fill),
    evenOdd: oneOf('fill-rule', ['nonzero', 'evenodd'], around.evenOdd ? 'evenodd' : 'nonzero') === 'evenodd',
    stroke: colour('stroke', around.stroke),
    width: length('stroke-width', around.width),
    cap: oneOf('stroke-linecap', ['butt', 'round', 'square'], around.cap),
    join: oneOf('stroke-linejoin', ['miter', 'round', 'bevel'], around.join),
    miter: length('stroke-miterlimit', around.miter),
    dash: dash === undefined ? around.dash : readDash(dash, fail),
    isVisible:
      oneOf('visibility', ['visible', 'hidden', 'collapse'], around.isVisible ? 'visible' : 'hidden') ===
      'visible',
  };
}

function readDash(text: string, fail: SvgFail): readonly number[] {
  if (text === 'none') return [];
  const numbers = text.split(/[\s,]+/).map((part) => Number(part.replace(/px$/, '')));
  const isSound = numbers.length <= 20 && numbers.every((n) => Number.isFinite(n) && n >= 0);
  if (!isSound) fail('render.logo.damaged', `stroke-dasharray="${text.slice(0, 40)}"`);
  if (numbers.every((n) => n === 0)) return [];
  // An odd list is gone through twice.
  return numbers.length % 2 === 0 ? numbers : [...numbers, ...numbers];
}

/**
 * The stroke of a shape after its transform.
 *
 * @param look - look with a stroke that is a colour
 * @param scale - factor of the transform
 * @returns the stroke
 */
export function strokeOf(look: Look, scale: number): LogoStroke | undefined {
  const { stroke, width, cap, join, miter, dash } = look;
  if (stroke === 'none') return undefined;
  return {
    colour: stroke,
    width: width * scale,
    cap,
    join,
    miter,
    dash: dash.map((length) => length * scale),
  };
}
