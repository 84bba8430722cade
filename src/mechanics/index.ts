/** The mechanics: what solves a frame, and what is read from the solution. */
export { atOtherSpeed, type PumpDuty, type PumpState, type ShaftDemand, shaftDemand } from './affinity.js';
export { bodyShare } from './body-share.js';
export { effectiveBranchModulus, type ReducedBranch } from './branch-section-modulus.js';
export { type Connector, type ConnectorEffect, connectorEffects, type ReadFace } from './connector-effect.js';
export { type DriveStage, driveStages, type StartingSet, settledSpeed } from './drive-stages.js';
export { type LoadRise, riseFactor, stepFactor } from './dynamic-factor.js';
export { type FoundVibrations, findVibrations } from './find-vibrations.js';
export {
  type ClosingLoad,
  type JointClosing,
  jointClosing,
  type MisfitWay,
  type NozzleFace,
  wayOf,
} from './fit-up.js';
export {
  type Frequencies,
  type Mode,
  naturalFrequencies,
  type SmallMovements,
  smallMovements,
} from './frequencies.js';
export { type ActingCondition, type LastingAndPassing, largestMomentSum } from './largest-moment-sum.js';
export type { LoadHistory } from './load-history.js';
export { type LockOutCase, lockOutBands, type SpeedBand, wholeTurns } from './lock-out-bands.js';
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
export {
  type FlangeSpring,
  flangeSpring,
  type OpenFlange,
  type PumpOut,
  pumpOut,
  type SpringToPin,
} from './pump-out.js';
export { pieceEnd, piecesOf, refineFrame } from './refine-frame.js';
export type * from './response.js';
export { addWrench, movedMovement, movedWrench, NO_WRENCH, reversedWrench } from './rigid-arm.js';
export { type RunUp, type RunUpCase, runUp } from './run-up.js';
export { solveFrame } from './solve-frame.js';
export { type DrySetting, drySetting, type SpringSetting } from './spring-setting.js';
export { type Disturbance, type Disturbed, type StandingFrame, standingFrame } from './standing-frame.js';
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
export {
  type FailedStart,
  type StartRun,
  type StartUp,
  startUp,
  type WorkedStart,
} from './start-up.js';
export { resistingTorque, type StartingLoad, waterTorque } from './starting-load.js';
export {
  type Oscillator,
  type OscillatorResponse,
  oscillatorResponse,
  type Stepping,
} from './step-response.js';
export { type RaisingEffect, raisingEffects } from './support-setting.js';
export { memberStrain, thermalStrain } from './thermal-strain.js';
export { memberCompliance, tubeSection } from './tube-section.js';
export {
  rimMovement,
  type TopMovement,
  type TwistedSet,
  type TwistingMode,
  twistedSet,
} from './twisted-set.js';
export { wrenchOnBody } from './wrench-on-body.js';
