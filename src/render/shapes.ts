/** Line weights, dashes, tints and verdict shapes, for the PDF and the SVG alike. */
import type { FillStyle, Ink, StrokeStyle } from '../drawing/drawing.js';
import { INKS } from './layout/style-sheet.js';
import type { VerdictWord } from './vocabulary.js';

export type Colour = readonly [number, number, number];

export interface Stroke {
  /** [points] */
  readonly width: number;
  readonly dash: readonly number[];
}

export const STROKES: Readonly<Record<StrokeStyle, Stroke>> = {
  heavy: { width: 1.5, dash: [] },
  medium: { width: 0.8, dash: [] },
  fine: { width: 0.4, dash: [] },
  dashed: { width: 0.6, dash: [4, 2.5] },
  'dash-dot': { width: 0.5, dash: [8, 2, 1.5, 2] },
  dotted: { width: 0.7, dash: [0.7, 1.8] },
};

/** Distance and weight of hatching lines [points]. */
export const HATCH = { step: 3.6, width: 0.35 } as const;

/** How much of its ink a fill takes. */
const TINTS: Readonly<Record<Exclude<FillStyle, 'none' | 'hatch'>, number>> = {
  white: 0,
  light: 0.09,
  mid: 0.24,
  dark: 0.62,
};

export const inkColour = (ink: Ink): Colour => INKS[ink];

/** Colour of a fill; undefined for none and for hatching, which is drawn as lines. */
export function fillColour(fill: FillStyle, ink: Ink): Colour | undefined {
  if (fill === 'none' || fill === 'hatch') return undefined;
  const share = TINTS[fill];
  const [r, g, b] = INKS[ink];
  const mix = (part: number): number => 1 - share * (1 - part);
  return [mix(r), mix(g), mix(b)];
}

/** A step of a path: move, line, curve, or close. */
export type PathStep =
  | readonly ['M' | 'L', number, number]
  | readonly ['C', number, number, number, number, number, number]
  | readonly ['Z'];

/** One stroke or fill of a verdict shape in a square of side 1, y down. */
export interface MarkStroke {
  readonly steps: readonly PathStep[];
  readonly ink: 'black' | 'accent' | 'white';
  /** Width of the line against the side; filled without one. */
  readonly width?: number;
}

const R = 0.44;
const K = 0.5523 * R;

const circle = (cx: number, cy: number, r: number): readonly PathStep[] => {
  const k = 0.5523 * r;
  return [
    ['M', cx + r, cy],
    ['C', cx + r, cy + k, cx + k, cy + r, cx, cy + r],
    ['C', cx - k, cy + r, cx - r, cy + k, cx - r, cy],
    ['C', cx - r, cy - k, cx - k, cy - r, cx, cy - r],
    ['C', cx + k, cy - r, cx + r, cy - k, cx + r, cy],
    ['Z'],
  ];
};

/** A tick; a filled box with a cross; an open circle with a question mark; a dash: told apart without colour. */
export const VERDICT_SHAPES: Readonly<Record<VerdictWord, readonly MarkStroke[]>> = {
  meets: [
    {
      steps: [
        ['M', 0.06, 0.56],
        ['L', 0.34, 0.86],
        ['L', 0.94, 0.12],
      ],
      ink: 'black',
      width: 0.14,
    },
  ],
  exceeds: [
    { steps: [['M', 0, 0], ['L', 1, 0], ['L', 1, 1], ['L', 0, 1], ['Z']], ink: 'accent' },
    {
      steps: [
        ['M', 0.25, 0.25],
        ['L', 0.75, 0.75],
        ['M', 0.75, 0.25],
        ['L', 0.25, 0.75],
      ],
      ink: 'white',
      width: 0.13,
    },
  ],
  'cannot-tell': [
    { steps: circle(0.5, 0.5, R), ink: 'black', width: 0.1 },
    {
      steps: [
        ['M', 0.34, 0.38],
        ['C', 0.34, 0.38 - K, 0.66, 0.38 - K, 0.66, 0.39],
        ['C', 0.66, 0.5, 0.5, 0.48, 0.5, 0.6],
      ],
      ink: 'black',
      width: 0.1,
    },
    { steps: circle(0.5, 0.74, 0.065), ink: 'black' },
  ],
  'does-not-apply': [
    {
      steps: [
        ['M', 0.12, 0.5],
        ['L', 0.88, 0.5],
      ],
      ink: 'black',
      width: 0.13,
    },
  ],
};

/** Side of a verdict shape against the size of its text: as tall as the capitals, or a little more. */
export const MARK_SIDE = 0.76;
