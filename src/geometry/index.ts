/** Solids of the room and the pump: distances, overlaps, smallest movements, sweeps and ways. */
export * from './bounding-box.js';
export * from './clearing-move.js';
export * from './convex-hull.js';
export * from './distance.js';
export * from './free-route.js';
export * from './lift.js';
export * from './narrow-place.js';
export * from './pieces.js';
export * from './placing.js';
export type { PlanPoint } from './plan-body.js';
export { ROOM_EDGE } from './plan-clearance.js';
export * from './sector-prism.js';
export * from './solid.js';
export * from './sweep.js';
export * from './vector.js';
export * from './volume.js';
