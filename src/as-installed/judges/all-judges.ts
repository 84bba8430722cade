/** Registry of the judges, in the order of the sheet. One line here, one file beside, one sentence. */
import type { Judge } from '../judge.js';
import { baseState } from './base-state.js';
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
import { plate } from './plate.js';
import { plumbShaft } from './plumb-shaft.js';
import { rodLean } from './rod-lean.js';
import { sealLeakage } from './seal-leakage.js';
import { shaftMovement } from './shaft-movement.js';
import { shaftRunout } from './shaft-runout.js';
import { springRange } from './spring-range.js';
import { startMovementSeen } from './start-movement.js';
import { statedJudges } from './stated.js';
import { supportContact } from './support-contact.js';
import { vibration } from './vibration.js';
import { vibrationStopped } from './vibration-stopped.js';
import { voltageRange } from './voltage-range.js';
import { voltageUnbalance } from './voltage-unbalance.js';

/** Every judge. */
export const judges: readonly Judge[] = [
  instrumentDue,
  plate,
  flangeParallelism,
  flangeGap,
  flangeOffset,
  boltHoles,
  shaftMovement,
  misfitLoad,
  springRange,
  rodLean,
  supportContact,
  baseState,
  plumbShaft,
  couplingGaps,
  shaftRunout,
  sealLeakage,
  head,
  flow,
  voltageRange,
  voltageUnbalance,
  current,
  currentUnbalance,
  vibrationStopped,
  vibration,
  knockMarginJudge,
  startMovementSeen,
  headroom,
  disconnectDistance,
  ...statedJudges,
];
