/** A logo as data. */
import type { Colour, PathStep } from '../shapes.js';

/** One shape of a logo: where it runs, how it is filled, how it is stroked. */
export interface LogoShape {
  readonly steps: readonly PathStep[];
  readonly fill?: Colour;
  /** Filled by the even-odd rule instead of by winding. */
  readonly evenOdd: boolean;
  readonly stroke?: LogoStroke;
}

export interface LogoStroke {
  readonly colour: Colour;
  readonly width: number;
  readonly cap: 'butt' | 'round' | 'square';
  readonly join: 'miter' | 'round' | 'bevel';
  readonly miter: number;
  readonly dash: readonly number[];
}

interface Sized {
  /** Size in units of its own; only the proportion counts. */
  readonly width: number;
  readonly height: number;
}

/** A picture drawn in vectors, or the bytes of a checked file of pixels. */
export type LogoPicture =
  | (Sized & { readonly kind: 'vector'; readonly shapes: readonly LogoShape[] })
  | (Sized & { readonly kind: 'png' | 'jpeg'; readonly bytes: Uint8Array });

export type Logo = LogoPicture & {
  /** What it shows, for those who cannot see it. */
  readonly alt: string;
};
