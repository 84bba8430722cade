/** Pictures as data, for whoever writes them out. */
export type { Drawing, FillStyle, Ink, Shape, StrokeStyle, Xy } from './drawing.js';
export { type ElevationRequest, elevationDrawing } from './elevation.js';
export { type IsometricRequest, isometricDrawing } from './isometric.js';
export { type LiftRequest, liftDrawing } from './lift-picture.js';
export { type ModeShapeRequest, modeShapeDrawing } from './mode-shape.js';
export { type MovementRequest, movementDrawing } from './movement.js';
export { type PlanRequest, planDrawing } from './plan.js';
export { type RatioBarsRequest, ratioBars } from './ratio-bars.js';
export { type SpeedMapRequest, speedMap } from './speed-map.js';
