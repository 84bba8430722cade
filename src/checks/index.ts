/** The checks: one file each, one registry, one runner. */

import { accessChecks } from './access-checks.js';
import { attachmentLoad } from './attachment-load.js';
import type { Check } from './define-check.js';
import { displacementStress } from './displacement-stress.js';
import { electricalChecks } from './electrical-checks.js';
import type { Finding, Subject } from './finding.js';
import { firstSupportBend } from './first-support-bend.js';
import { firstSupportPump } from './first-support-pump.js';
import { fitUpTolerance } from './fit-up-tolerance.js';
import { flangeClass } from './flange-class.js';
import { flangeDrilling } from './flange-drilling.js';
import { flangeEquivalentPressure } from './flange-equivalent-pressure.js';
import { flexibleConnector } from './flexible-connector.js';
import { frequencyMargin } from './frequency-margin.js';
import { hoopStress } from './hoop-stress.js';
import { nozzleCombined } from './nozzle-combined.js';
import { nozzleComparison } from './nozzle-comparison.js';
import { nozzleLoads } from './nozzle-loads.js';
import { nozzlePrincipalStress } from './nozzle-principal-stress.js';
import { occasionalStress } from './occasional-stress.js';
import { practiceChecks } from './practice-checks.js';
import { pumpOutSupports } from './pump-out-supports.js';
import { raisedFaceOnFlatIron } from './raised-face-on-flat-iron.js';
import { rodLoad } from './rod-load.js';
import { runCheck } from './run-check.js';
import { slackHanger } from './slack-hanger.js';
import { startMovement } from './start-movement.js';
import { supportLoad } from './support-load.js';
import { supportSpan } from './support-span.js';
import { supportUplift } from './support-uplift.js';
import { sustainedStress } from './sustained-stress.js';
import { testPressure } from './test-pressure.js';
import { testStress } from './test-stress.js';

/** Every check, in the order in which findings are listed. */
export const allChecks: readonly Check[] = [
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
  ...accessChecks,
  ...electricalChecks,
  ...practiceChecks,
];

/**
 * Runs every check.
 *
 * @param subject - installation, layout and response
 * @returns findings in the order of the checks, and of the places within each
 */
export function runChecks(subject: Subject): readonly Finding[] {
  return allChecks.flatMap((check) => runCheck(check, subject));
}

export { accessChecks, isAccess } from './access-checks.js';
export { type Access, type AccessSubject, accessOf } from './access-subject.js';
export { accessVolumes, routeOut } from './access-volumes.js';
export { connectorsOf, type PlacedConnector } from './connectors.js';
export type { Check, CheckDefinition, Reading, Reason } from './define-check.js';
export { defineCheck } from './define-check.js';
export { type DisplacementStress, displacementStresses } from './displacement-stresses.js';
export type * from './finding.js';
export { hoopAllowable } from './hoop-stress.js';
export { type NozzleLimits, nozzleLimits } from './nozzle-limits.js';
export {
  type NozzleAxisLoads,
  type NozzleLoadRow,
  nozzleAxisLoads,
  nozzleLoadRows,
} from './nozzle-load-rows.js';
export { occasionalAllowable } from './occasional-stress.js';
export { type OccasionalStress, occasionalConditions, occasionalStresses } from './occasional-stresses.js';
export { type PipeInLine, pipesInLines } from './pipes-in-lines.js';
export { isPractice, practiceChecks } from './practice-checks.js';
export { type Excitation, excitations, type PumpMode, pumpModes } from './pump-modes.js';
export { overallVerdict, runCheck, worstFirst } from './run-check.js';
export { type StartMovement, startMovements } from './start-movement.js';
export { type SustainedStress, sustainedStresses, testStresses } from './sustained-stresses.js';
