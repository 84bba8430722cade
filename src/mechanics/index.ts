/** The mechanics: what solves a frame, and what is read from the solution. */
export type * from './response.js';
export { solveFrame } from './solve-frame.js';
