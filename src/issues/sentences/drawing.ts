import type { Sentences } from './sentence.js';

/** Issues of the drawing. */
export const drawingSentences = {} satisfies Sentences;
