/** The mechanics: what solves a frame, and what is read from the solution. */
export { atOtherSpeed, type PumpDuty, type PumpState, type ShaftDemand, shaftDemand } from './affinity.js';
export { type DriveStage, driveStages, type StartingSet, settledSpeed } from './drive-stages.js';
export { type LoadRise, riseFactor, stepFactor } from './dynamic-factor.js';
export { type Frequencies, type Mode, naturalFrequencies } from './frequencies.js';
export type { LoadHistory } from './load-history.js';
export { largestMoment, memberForces, type SectionForces } from './member-forces.js';
export { type MemberPath, memberNamed, memberPath } from './member-path.js';
export {
  againstDynamicFactor,
  type FactorComparison,
  type LoadedMode,
  type ModalCase,
  type ModalResponse,
  modalHistory,
  type OutputHistory,
} from './modal-history.js';
export {
  breakdownSlip,
  type MotorRating,
  type MotorShares,
  type MotorTorques,
  motorTorqueAt,
  motorTorques,
  ratedTorque,
} from './motor-torque.js';
export { movementAlong, type Sag, sagAlong } from './movement-along.js';
export { lumpMass, massPerLength } from './present-mass.js';
export type * from './response.js';
export { addWrench, movedMovement, movedWrench, NO_WRENCH, reversedWrench } from './rigid-arm.js';
export { type RunUp, type RunUpCase, runUp } from './run-up.js';
export { solveFrame } from './solve-frame.js';
export { type StartMethod, type StartTorqueShare, startTorqueShare } from './start-method.js';
export {
  coastDownTwist,
  type NozzleSwirl,
  type StartTwist,
  startTwist,
  steadyTwist,
  type TwistBound,
  twistBound,
} from './start-twist.js';
export {
  inertiasBetween,
  type StartTwistRange,
  type StartWithInertia,
  startTwistRange,
} from './start-twist-range.js';
export { resistingTorque, type StartingLoad, waterTorque } from './starting-load.js';
export {
  type Oscillator,
  type OscillatorResponse,
  oscillatorResponse,
  type Stepping,
} from './step-response.js';
export { memberStrain, thermalStrain } from './thermal-strain.js';
export { memberCompliance, tubeSection } from './tube-section.js';
export { wrenchOnBody } from './wrench-on-body.js';
