/** The model: frame and layout of an installation. */
export * from './bend-factors.js';
export { buildFrame } from './build-frame.js';
export { buildLayout } from './build-layout.js';
export * from './conventions.js';
export type * from './frame.js';
export type * from './layout.js';
export * from './start-case.js';
export * from './tee-factors.js';
export { startingConditions } from './upset-conditions.js';
