/** The model: frame and layout of an installation. */
export * from './bend-factors.js';
export { buildFrame } from './build-frame.js';
export { buildLayout } from './build-layout.js';
export * from './conventions.js';
export type * from './frame.js';
export * from './hand-lift.js';
export type * from './layout.js';
export * from './lift-geometry.js';
export * from './obstacles.js';
export * from './pump-solids.js';
export * from './service-spaces.js';
export * from './start-case.js';
export { isSupportPart, SUPPORT_KINDS } from './support-parts.js';
export * from './tee-factors.js';
export { startingConditions } from './upset-conditions.js';
