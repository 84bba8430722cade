/** The checks: one file each, one registry, one runner. */

import type { Subject } from '../analysis/subject.js';
import type { Finding } from '../judging/finding.js';
import type { Check } from './define-check.js';
import { electricalChecks } from './electrical/electrical-checks.js';
import { flangeClass } from './flanges/flange-class.js';
import { flangeDrilling } from './flanges/flange-drilling.js';
import { flangeEquivalentPressure } from './flanges/flange-equivalent-pressure.js';
import { raisedFaceOnFlatIron } from './flanges/raised-face-on-flat-iron.js';
import { testPressure } from './flanges/test-pressure.js';
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
import { practiceChecks } from './practice/practice-checks.js';
import { accessChecks } from './room/access-checks.js';
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
