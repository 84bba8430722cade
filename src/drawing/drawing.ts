/**
 * A picture as data, in points (1/72 in), origin at the top left, y down. Knows neither SVG nor PDF; both are
 * written from it. Readable in black-and-white print: line types and hatches carry the meaning, not colour.
 */
export type Xy = readonly [number, number];

/** Line weights by role. */
export type StrokeStyle = 'heavy' | 'medium' | 'fine' | 'dashed' | 'dash-dot' | 'dotted';
export type FillStyle = 'none' | 'white' | 'light' | 'mid' | 'dark' | 'hatch';
/** Ink: black for things, accent for what exceeds or moves, grey for context. */
export type Ink = 'black' | 'grey' | 'accent';

export type Shape =
  | {
      readonly kind: 'path';
      readonly points: readonly Xy[];
      readonly closed: boolean;
      readonly stroke: StrokeStyle | 'none';
      readonly fill: FillStyle;
      readonly ink: Ink;
      readonly width?: number;
    }
  | {
      readonly kind: 'circle';
      readonly centre: Xy;
      readonly radius: number;
      readonly stroke: StrokeStyle | 'none';
      readonly fill: FillStyle;
      readonly ink: Ink;
    }
  | {
      readonly kind: 'text';
      readonly at: Xy;
      readonly text: string;
      readonly size: number;
      readonly anchor: 'start' | 'middle' | 'end';
      readonly weight: 'regular' | 'bold';
      readonly ink: Ink /** White plate behind the text. */;
      readonly plate?: boolean;
    };

export interface Drawing {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly title: string;
  /** What the picture shows, for those who cannot see it. */
  readonly alt: string;
  readonly shapes: readonly Shape[];
}
