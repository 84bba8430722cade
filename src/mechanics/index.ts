/** The mechanics: what solves a frame, and what is read from the solution. */
export { largestMoment, memberForces, type SectionForces } from './member-forces.js';
export { type MemberPath, memberNamed, memberPath } from './member-path.js';
export { movementAlong, type Sag, sagAlong } from './movement-along.js';
export { lumpMass, massPerLength } from './present-mass.js';
export type * from './response.js';
export { addWrench, movedMovement, movedWrench, NO_WRENCH, reversedWrench } from './rigid-arm.js';
export { solveFrame } from './solve-frame.js';
export { memberStrain, thermalStrain } from './thermal-strain.js';
export { memberCompliance, tubeSection } from './tube-section.js';
export { wrenchOnBody } from './wrench-on-body.js';
