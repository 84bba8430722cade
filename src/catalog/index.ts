/** Published tables: pipe, flanges, fittings, valves, materials, liquids, insulation, rods, spans, nozzle loads. */
export * from './air-gap-transient.js';
export { type AllowableQuery, allowableStress, allowableStressMaterials } from './allowable-stress.js';
export { type BoltSet, boltSetMass } from './bolt-set-mass.js';
export { betweenRows, type Catalogued, type Pairs } from './catalogued.js';
export { type CataloguedElbow, type ElbowQuery, elbowSizes, findElbow } from './elbows.js';
export {
  DEDICATED_CITATION,
  DEDICATED_HEIGHT,
  IN_SIGHT,
  IN_SIGHT_CITATION,
  type OppositeSide,
  WORKING_HEIGHT,
  WORKING_WIDTH,
  type WorkingDepth,
  type WorkingDepthQuery,
  workingDepth,
} from './electrical-space.js';
export {
  type CataloguedFlange,
  type CataloguedJoint,
  type FlangeQuery,
  findFlange,
  flangeClasses,
  flangeSizes,
  flangeTypes,
} from './find-flange.js';
export {
  type CataloguedPipe,
  findPipe,
  type PipeQuery,
  pipeSchedules,
  pipeSizes,
  scheduleLabel,
} from './find-pipe.js';
export { findSpan, type HangerSpan, spanSizes } from './find-span.js';
export { type CataloguedValve, findValve, type ValveQuery, valveKinds, valveSizes } from './find-valve.js';
export {
  type FlangeRating,
  flangeMaterialGroups,
  flangeRating,
  type RatingQuery,
  ratingAt,
} from './flange-ratings.js';
export { type Glycol, glycolDensity, glycolShares } from './glycol.js';
export { type CataloguedRod, findRod, type RodEdition, rodRating, rodSizes } from './hanger-rods.js';
export {
  type CataloguedInsulation,
  type CoveringLayer,
  coveringMass,
  findInsulation,
  insulationKinds,
} from './insulation.js';
export {
  type CataloguedMaterial,
  findMaterial,
  materialNames,
  modulusAt,
  thermalStrain,
} from './materials.js';
export { densityOf } from './metal-densities.js';
export { startableLoadInertia, twoPoleRotorInertia } from './motor-inertia.js';
export {
  greatestTorqueAssumed,
  leastMotorTorques,
  lockedRotorCurrentAssumed,
  type MotorRatingQuery,
  type MotorTorqueShares,
} from './motor-torque.js';
export { labelInches, nominalInches, nominalSize } from './nominal-size.js';
export {
  type NozzleTableLoads,
  type ProcessPumpRow,
  processPumpSizes,
  processPumpTable,
} from './nozzle-table.js';
export {
  type CataloguedReducer,
  findReducer,
  type ReducerQuery,
  reducerSizes,
  reducerSmallEnds,
} from './reducers.js';
export { type SeismicCoefficient, type SeismicQuery, seismicCoefficient } from './seismic-coefficient.js';
export {
  type HeldCode,
  heldCodes,
  heldEdition,
  heldEditionsText,
  type StressCode,
} from './stress-codes.js';
export { type FieldSpeed, synchronousSpeed } from './synchronous-speed.js';
export { type CataloguedTee, findTee, type TeeQuery, teeBranches, teeSizes } from './tees.js';
export { type Tube, type TubeProperties, tubeMassPerLength, tubeProperties } from './tube-properties.js';
export { type InertiaRange, type TurningSet, turningInertia } from './turning-inertia.js';
export { regionOneDensity, waterDensity, waterSaturationPressure } from './water.js';
