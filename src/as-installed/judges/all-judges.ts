/** Registry of the judges, in the order of the sheet. One line here, one file beside, one sentence. */
import type { Judge } from '../judge.js';
import { baseState } from './base-state.js';
import { cableInsulation, motorInsulation } from './before-start/insulation.js';
import { lockedSpeeds } from './before-start/locked-speeds.js';
import { overload } from './before-start/overload.js';
import { recovery } from './before-start/recovery.js';
import { lostPhase, supplyFrequency, supplyUnbalance, supplyVoltage } from './before-start/supply.js';
import { boltHoles } from './bolt-holes.js';
import { couplingGaps } from './coupling-gaps.js';
import { current } from './current.js';
import { currentUnbalance } from './current-unbalance.js';
import { disconnectDistance } from './disconnect-distance.js';
import { flangeGap } from './flange-gap.js';
import { flangeOffset } from './flange-offset.js';
import { flangeParallelism } from './flange-parallelism.js';
import { flow } from './flow.js';
import { head } from './head.js';
import { headroom } from './headroom.js';
import { instrumentDue } from './instrument-due.js';
import { knockMarginJudge } from './knock-margin.js';
import { misfitLoad } from './misfit-load.js';
import { plate, plateWeight } from './plate.js';
import { plumbShaft } from './plumb-shaft.js';
import { rodLean } from './rod-lean.js';
import { bearingHeat, bearingTemperature } from './running/bearing-temperature.js';
import { flowMoves, headRises, liquidTemperature } from './running/head-and-flow.js';
import { knockAtSpeed } from './running/knock-at-speed.js';
import { pipeMovement } from './running/pipe-movement.js';
import { sealDrops } from './running/seal-drops.js';
import { vibrationDamage } from './running/vibration-damage.js';
import { sealLeakage } from './seal-leakage.js';
import { shaftMovement } from './shaft-movement.js';
import { shaftRunout } from './shaft-runout.js';
import { springRange } from './spring-range.js';
import { startMovementSeen } from './start-movement.js';
import { statedJudges } from './stated.js';
import { supportContact } from './support-contact.js';
import { levelDatum, supportMoved } from './supports-moved.js';
import { vibration } from './vibration.js';
import { vibrationStopped } from './vibration-stopped.js';
import { voltageRange } from './voltage-range.js';
import { voltageUnbalance } from './voltage-unbalance.js';

/** Every judge. */
export const judges: readonly Judge[] = [
  instrumentDue,
  plate,
  plateWeight,
  flangeParallelism,
  flangeGap,
  flangeOffset,
  boltHoles,
  shaftMovement,
  misfitLoad,
  recovery,
  springRange,
  rodLean,
  supportMoved,
  levelDatum,
  supportContact,
  baseState,
  plumbShaft,
  couplingGaps,
  shaftRunout,
  sealLeakage,
  sealDrops,
  motorInsulation,
  cableInsulation,
  supplyVoltage,
  supplyUnbalance,
  headRises,
  head,
  flowMoves,
  flow,
  liquidTemperature,
  voltageRange,
  voltageUnbalance,
  current,
  currentUnbalance,
  lostPhase,
  supplyFrequency,
  overload,
  vibrationStopped,
  vibration,
  vibrationDamage,
  knockMarginJudge,
  knockAtSpeed,
  lockedSpeeds,
  startMovementSeen,
  pipeMovement,
  bearingTemperature,
  bearingHeat,
  headroom,
  disconnectDistance,
  ...statedJudges,
];
