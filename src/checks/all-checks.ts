/** The checks: one file each, one registry, one runner. */

import type { Subject } from '../analysis/subject.js';
import type { Finding } from '../judging/finding.js';
import type { Check } from './define-check.js';
import { disconnectInSight } from './electrical/disconnect-in-sight.js';
import { electricalSpace } from './electrical/electrical-space.js';
import { pipingAbovePanel } from './electrical/piping-above-panel.js';
import { flangeClass } from './flanges/flange-class.js';
import { flangeDrilling } from './flanges/flange-drilling.js';
import { flangeEquivalentPressure } from './flanges/flange-equivalent-pressure.js';
import { raisedFaceOnFlatIron } from './flanges/raised-face-on-flat-iron.js';
import { testPressure } from './flanges/test-pressure.js';
import { casingLiftOut } from './lift/casing-lift-out.js';
import { handLift } from './lift/hand-lift.js';
import { liftAnchor } from './lift/lift-anchor.js';
import { slingLegs } from './lift/sling-legs.js';
import { frequencyMargin } from './motion/frequency-margin.js';
import { startMovement } from './motion/start-movement.js';
import { fitUpTolerance } from './nozzles/fit-up-tolerance.js';
import { nozzleCombined } from './nozzles/nozzle-combined.js';
import { nozzleComparison } from './nozzles/nozzle-comparison.js';
import { nozzleLoads } from './nozzles/nozzle-loads.js';
import { nozzlePrincipalStress } from './nozzles/nozzle-principal-stress.js';
import { displacementStress } from './pipes/displacement-stress.js';
import { flexibleConnector } from './pipes/flexible-connector.js';
import { hoopStress } from './pipes/hoop-stress.js';
import { occasionalStress } from './pipes/occasional-stress.js';
import { sustainedStress } from './pipes/sustained-stress.js';
import { testStress } from './pipes/test-stress.js';
import { checkValve } from './practice/check-valve.js';
import { checkValveDistance } from './practice/check-valve-distance.js';
import { connectorNeeded } from './practice/connector-needed.js';
import { dischargeVelocity } from './practice/discharge-velocity.js';
import { drainAndVent } from './practice/drain-and-vent.js';
import { gaugeTaps } from './practice/gauge-taps.js';
import { isolationBridged } from './practice/isolation-bridged.js';
import { isolationValves } from './practice/isolation-valves.js';
import { motorOrientation } from './practice/motor-orientation.js';
import { motorPower } from './practice/motor-power.js';
import { reducerFlatSide } from './practice/reducer-flat-side.js';
import { straightRun } from './practice/straight-run.js';
import { strainer } from './practice/strainer.js';
import { suctionVelocity } from './practice/suction-velocity.js';
import { valveOrder } from './practice/valve-order.js';
import { withinScope } from './practice/within-scope.js';
import { aisleWidth } from './room/aisle-width.js';
import { couplingSpace } from './room/coupling-space.js';
import { fittingReach } from './room/fitting-reach.js';
import { handleSweep } from './room/handle-sweep.js';
import { motorWithdrawal } from './room/motor-withdrawal.js';
import { sealThroughSpacer } from './room/seal-through-spacer.js';
import { wayOut } from './room/way-out.js';
import { workingSpace } from './room/working-space.js';
import { wrenchRoom } from './room/wrench-room.js';
import { runCheck } from './run-check.js';
import { attachmentLoad } from './supports/attachment-load.js';
import { firstSupportBend } from './supports/first-support-bend.js';
import { firstSupportPump } from './supports/first-support-pump.js';
import { pumpOutSupports } from './supports/pump-out-supports.js';
import { rodLoad } from './supports/rod-load.js';
import { slackHanger } from './supports/slack-hanger.js';
import { supportLoad } from './supports/support-load.js';
import { supportSpan } from './supports/support-span.js';
import { supportUplift } from './supports/support-uplift.js';

/** One line a check, in the order in which findings are listed. */
const registry = [
  nozzleLoads,
  nozzleComparison,
  nozzlePrincipalStress,
  nozzleCombined,
  slackHanger,
  fitUpTolerance,
  sustainedStress,
  displacementStress,
  occasionalStress,
  hoopStress,
  testPressure,
  testStress,
  supportSpan,
  rodLoad,
  attachmentLoad,
  supportLoad,
  firstSupportPump,
  firstSupportBend,
  supportUplift,
  pumpOutSupports,
  flangeEquivalentPressure,
  flangeClass,
  raisedFaceOnFlatIron,
  flangeDrilling,
  flexibleConnector,
  frequencyMargin,
  startMovement,
  workingSpace,
  handleSweep,
  fittingReach,
  wrenchRoom,
  sealThroughSpacer,
  couplingSpace,
  motorWithdrawal,
  liftAnchor,
  slingLegs,
  handLift,
  casingLiftOut,
  wayOut,
  aisleWidth,
  electricalSpace,
  pipingAbovePanel,
  disconnectInSight,
  isolationValves,
  checkValve,
  valveOrder,
  drainAndVent,
  gaugeTaps,
  strainer,
  straightRun,
  checkValveDistance,
  reducerFlatSide,
  suctionVelocity,
  dischargeVelocity,
  motorPower,
  motorOrientation,
  connectorNeeded,
  isolationBridged,
  withinScope,
] as const;

/** Id of a check: a list that names one that is not there does not compile. */
export type CheckId = (typeof registry)[number]['id'];

/** Every check, in the order in which findings are listed. */
export const allChecks: readonly Check<CheckId>[] = registry;

const byId: ReadonlyMap<string, Check<CheckId>> = new Map(allChecks.map((check) => [check.id, check]));

/** Something that came of a check. */
export interface OfCheck {
  /** Id of the check. */
  readonly check: string;
}

/**
 * The check a finding came of, with its facts.
 *
 * @param finding - finding, or anything that carries the id of a check
 * @returns nothing for a check that is not in the registry
 */
export function ruleOf({ check }: OfCheck): Check<CheckId> | undefined {
  return byId.get(check);
}

/**
 * Whether a finding came of one of some checks.
 *
 * @param finding - finding, or anything that carries the id of a check
 * @param ids - ids that the compiler knows
 * @returns true where it did
 */
export function isOf({ check }: OfCheck, ...ids: readonly CheckId[]): boolean {
  return ids.some((id) => id === check);
}

/**
 * Runs every check.
 *
 * @param subject - installation, layout and response
 * @returns findings in the order of the checks, and of the places within each
 */
export function runChecks(subject: Subject): readonly Finding[] {
  return allChecks.flatMap((check) => runCheck(check, subject));
}
