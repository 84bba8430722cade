import type { Colour } from '../shapes.js';

/** The sixteen names of HTML 4, and a few more that drawing programs write. */
const NAMES: Readonly<Record<string, string>> = {
  black: '#000000',
  silver: '#c0c0c0',
  gray: '#808080',
  grey: '#808080',
  white: '#ffffff',
  maroon: '#800000',
  red: '#ff0000',
  purple: '#800080',
  fuchsia: '#ff00ff',
  green: '#008000',
  lime: '#00ff00',
  olive: '#808000',
  yellow: '#ffff00',
  navy: '#000080',
  blue: '#0000ff',
  teal: '#008080',
  aqua: '#00ffff',
  orange: '#ffa500',
  currentcolor: '#000000',
};

/**
 * Reads a colour of SVG: `#rgb`, `#rrggbb`, `rgb(…)`, a name, or `none`.
 *
 * @param text - as written
 * @returns red, green and blue from 0 to 1, `none`, or undefined where it cannot be read
 */
export function readColour(text: string): Colour | 'none' | undefined {
  const word = text.trim().toLowerCase();
  if (word === 'none' || word === 'transparent') return 'none';
  const hex = Object.hasOwn(NAMES, word) ? (NAMES[word] ?? '') : word;
  const short = /^#([0-9a-f])([0-9a-f])([0-9a-f])$/.exec(hex)?.slice(1);
  const long = short?.map((digit) => digit + digit) ?? /^#(..)(..)(..)$/.exec(hex)?.slice(1);
  if (long?.every((pair) => /^[0-9a-f]{2}$/.test(pair)))
    return parts(long.map((pair) => parseInt(pair, 16) / 255));
  const inside = /^rgb\(([^()]*)\)$/.exec(word)?.[1];
  const values = inside?.split(/[\s,]+/).filter(Boolean);
  if (values?.length !== 3 || !values.every((value) => /^\d+(\.\d+)?%?$/.test(value))) return undefined;
  return parts(values.map((value) => Math.min(1, parseFloat(value) / (value.endsWith('%') ? 100 : 255))));
}

const parts = ([red = 0, green = 0, blue = 0]: readonly number[]): Colour => [red, green, blue];
