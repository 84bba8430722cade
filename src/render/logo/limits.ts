/** Bounds of a logo, so that a file from a stranger costs little. */

/** Largest file [bytes]; a logo is no photograph, and a review stays small enough to send. */
export const LOGO_LIMIT_BYTES = 512 * 1024;
/** Most pixels, and the longest side: 2000 by 2000 prints sharp at any size a letterhead has. */
export const MOST_PIXELS = 4_000_000;
export const LARGEST_SIDE = 8000;
/** Longest side against the shorter. */
export const THINNEST = 40;
/** Most elements of an SVG, deepest nesting, most steps of all its outlines. */
export const MOST_ELEMENTS = 2000;
export const DEEPEST_ELEMENTS = 32;
export const MOST_STEPS = 50_000;
