/** The basic shapes of SVG as outlines (SVG 1.1, chapter 9). */
import type { PathStep } from '../shapes.js';
import { readPathData } from './svg-path.js';

export const SHAPES: readonly string[] = ['path', 'rect', 'circle', 'ellipse', 'line', 'polyline', 'polygon'];

/** Share of a radius at which the handles of a quarter turn stand. */
const HANDLE = 0.5522847498;

type Attributes = ReadonlyMap<string, string>;

/**
 * Outline of a shape, before its transform.
 *
 * @param name - element
 * @param attributes - its attributes
 * @param most - most steps
 * @returns steps; empty where it draws nothing; `too many`; or undefined where its measures cannot be read
 */
export function outlineOf(
  name: string,
  attributes: Attributes,
  most: number,
): readonly PathStep[] | 'too many' | undefined {
  const data = attributes.get('d') ?? '';
  const steps =
    name === 'path' ? (data.trim() === '' ? [] : readPathData(data, most)) : basic(name, attributes);
  return steps && steps.length > most ? 'too many' : steps;
}

function basic(name: string, attributes: Attributes): readonly PathStep[] | undefined {
  const n = (key: string): number => lengthOf(attributes.get(key) ?? '0');
  if (name === 'polyline' || name === 'polygon')
    return corners(attributes.get('points') ?? '', name === 'polygon');
  if (name === 'line') {
    const ends = [n('x1'), n('y1'), n('x2'), n('y2')] as const;
    return ends.every(Number.isFinite)
      ? [
          ['M', ends[0], ends[1]],
          ['L', ends[2], ends[3]],
        ]
      : undefined;
  }
  if (name === 'rect') return rectangle(n('x'), n('y'), n('width'), n('height'), corner(attributes));
  const [rx, ry] = name === 'circle' ? [n('r'), n('r')] : [n('rx'), n('ry')];
  return ellipse(n('cx'), n('cy'), rx, ry);
}

/** Plain numbers and pixels; NaN for everything else. */
const lengthOf = (text: string): number => {
  const number = Number(text.trim().replace(/px$/, ''));
  return Math.abs(number) < 1e6 ? number : Number.NaN;
};

function corners(text: string, isClosed: boolean): readonly PathStep[] | undefined {
  const numbers = text
    .split(/[\s,]+/)
    .filter(Boolean)
    .map(Number);
  if (numbers.length % 2 !== 0 || !numbers.every((n) => Math.abs(n) < 1e6)) return undefined;
  const steps: PathStep[] = [];
  for (let i = 0; i < numbers.length; i += 2) {
    const [x, y] = [numbers[i] ?? 0, numbers[i + 1] ?? 0];
    steps.push([i === 0 ? 'M' : 'L', x, y]);
  }
  return isClosed && steps.length > 0 ? [...steps, ['Z']] : steps;
}

function corner(attributes: Attributes): readonly [number, number] {
  const [rx, ry] = [attributes.get('rx'), attributes.get('ry')];
  return [lengthOf(rx ?? ry ?? '0'), lengthOf(ry ?? rx ?? '0')];
}

function rectangle(
  x: number,
  y: number,
  width: number,
  height: number,
  corners: readonly [number, number],
): readonly PathStep[] | undefined {
  if (![x, y, width, height, ...corners].every(Number.isFinite) || width < 0 || height < 0) return undefined;
  if (width === 0 || height === 0) return [];
  const rx = Math.min(Math.max(0, corners[0]), width / 2);
  const ry = Math.min(Math.max(0, corners[1]), height / 2);
  const [right, bottom] = [x + width, y + height];
  if (rx === 0 || ry === 0)
    return [['M', x, y], ['L', right, y], ['L', right, bottom], ['L', x, bottom], ['Z']];
  const [hx, hy] = [rx * (1 - HANDLE), ry * (1 - HANDLE)];
  return [
    ['M', x + rx, y],
    ['L', right - rx, y],
    ['C', right - hx, y, right, y + hy, right, y + ry],
    ['L', right, bottom - ry],
    ['C', right, bottom - hy, right - hx, bottom, right - rx, bottom],
    ['L', x + rx, bottom],
    ['C', x + hx, bottom, x, bottom - hy, x, bottom - ry],
    ['L', x, y + ry],
    ['C', x, y + hy, x + hx, y, x + rx, y],
    ['Z'],
  ];
}

function ellipse(cx: number, cy: number, rx: number, ry: number): readonly PathStep[] | undefined {
  if (![cx, cy, rx, ry].every(Number.isFinite) || rx < 0 || ry < 0) return undefined;
  if (rx === 0 || ry === 0) return [];
  const [kx, ky] = [HANDLE * rx, HANDLE * ry];
  return [
    ['M', cx + rx, cy],
    ['C', cx + rx, cy + ky, cx + kx, cy + ry, cx, cy + ry],
    ['C', cx - kx, cy + ry, cx - rx, cy + ky, cx - rx, cy],
    ['C', cx - rx, cy - ky, cx - kx, cy - ry, cx, cy - ry],
    ['C', cx + kx, cy - ry, cx + rx, cy - ky, cx + rx, cy],
    ['Z'],
  ];
}
