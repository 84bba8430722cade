/** Every measure of the page in one place [points]: page sizes, margins, type sizes, gaps and inks. */
import type { Face } from '../font/typeface.js';

export type PageName = 'letter' | 'a4';

/** Inks: near-black for words and things, grey for what is beside the matter, one accent for what exceeds or warns. */
export type InkName = 'black' | 'grey' | 'accent' | 'white' | 'hairline' | 'tint' | 'accent-tint';

/** Red, green and blue from 0 to 1. */
export const INKS: Readonly<Record<InkName, readonly [number, number, number]>> = {
  black: [0.1, 0.11, 0.13],
  grey: [0.36, 0.38, 0.41],
  accent: [0.58, 0.17, 0.08],
  white: [1, 1, 1],
  hairline: [0.76, 0.77, 0.79],
  tint: [0.95, 0.95, 0.945],
  'accent-tint': [0.985, 0.945, 0.93],
};

export interface TextStyle {
  readonly face: Face;
  readonly size: number;
  readonly leading: number;
  readonly ink: InkName;
}

const style = (face: Face, size: number, leading: number, ink: InkName = 'black'): TextStyle => ({
  face,
  size,
  leading,
  ink,
});

export const STYLES = {
  title: style('bold', 16, 19),
  heading1: style('bold', 12.5, 15),
  heading2: style('bold', 10, 12.5),
  body: style('regular', 9, 11),
  lead: style('regular', 10, 12.5),
  small: style('regular', 7.8, 9.6, 'grey'),
  verdict: style('bold', 12, 15),
  caution: style('regular', 9, 11),
  noteTitle: style('bold', 9, 11),
  caption: style('regular', 8.5, 10.5, 'grey'),
  tableHead: style('bold', 8.2, 9.6),
  cell: style('regular', 8.5, 9.9),
  factLabel: style('regular', 8.5, 10.8, 'grey'),
  fact: style('regular', 8.8, 10.8),
  calculationTitle: style('bold', 8.8, 11),
  formula: style('italic', 9, 11.4),
  numbers: style('regular', 9, 11.4),
  result: style('bold', 9, 11.4),
  where: style('regular', 7.8, 9.5),
  source: style('regular', 7.4, 9, 'grey'),
  signature: style('regular', 7.6, 9.6, 'grey'),
  columnHead: style('bold', 8, 10.5),
  reading: style('bold', 9, 11.5),
  expected: style('regular', 8, 10),
  limit: style('regular', 8, 10),
  boxSource: style('regular', 7, 8.6, 'grey'),
  boxLabel: style('regular', 7.5, 9),
  boxUnit: style('regular', 8, 10, 'grey'),
  choice: style('regular', 9, 11),
  back: style('regular', 7.6, 9.6, 'grey'),
  letterheadName: style('bold', 13, 15.5),
  letterheadLine: style('regular', 8, 10),
  running: style('regular', 7.2, 9.5, 'grey'),
} as const satisfies Record<string, TextStyle>;

/** Smaller steps tried for a table whose words do not fit its columns. */
export const TABLE_SIZES: readonly number[] = [8.5, 8, 7.5, 7];

export const GAP = {
  paragraph: 3.5,
  block: 6,
  section1: 11.5,
  section2: 9,
  afterHeading: 3,
  item: 1.4,
  cellSide: 3,
  cellTop: 1,
  halfFigures: 16,
  columns: 18,
  noteSide: 8,
  noteTop: 4,
} as const;

/** The letterhead: largest logo, gap beside it, share of the name where there is an address, distance of the rule. */
export const LETTERHEAD = { logoHeight: 42, logoWidth: 170, gap: 12, nameShare: 0.56, below: 6 } as const;

export interface Frame {
  /** Page size. */
  readonly pageWidth: number;
  readonly pageHeight: number;
  /** The part of the page that blocks may use. */
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

const SIZES: Readonly<Record<PageName, readonly [number, number]>> = {
  letter: [612, 792],
  a4: [595.28, 841.89],
};
const MARGINS = { left: 50, right: 46, top: 47, bottom: 41 } as const;

/** Widest line of running text: longer ones tire the eye. Tables and figures use the whole frame. */
export const WIDEST_TEXT = 480;

/** Distance of the running head and foot from the edge of the page. */
export const RUNNING = { head: 29, foot: 22 } as const;

/** The frame of a page size. */
export function frameOf(page: PageName): Frame {
  const [pageWidth, pageHeight] = SIZES[page];
  return {
    pageWidth,
    pageHeight,
    left: MARGINS.left,
    top: MARGINS.top,
    width: pageWidth - MARGINS.left - MARGINS.right,
    height: pageHeight - MARGINS.top - MARGINS.bottom,
  };
}

/** Baseline of a line [points below its top]: capitals stand centred in the line. */
export const baselineOf = (leading: number, size: number): number => leading / 2 + 0.33 * size;
