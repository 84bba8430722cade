/** The checks of good installation practice, in the order a fitter walks the line. */

import type { Check } from '../define-check.js';
import { checkValve } from './check-valve.js';
import { checkValveDistance } from './check-valve-distance.js';
import { connectorNeeded } from './connector-needed.js';
import { dischargeVelocity } from './discharge-velocity.js';
import { drainAndVent } from './drain-and-vent.js';
import { gaugeTaps } from './gauge-taps.js';
import { isolationBridged } from './isolation-bridged.js';
import { isolationValves } from './isolation-valves.js';
import { motorOrientation } from './motor-orientation.js';
import { motorPower } from './motor-power.js';
import { reducerFlatSide } from './reducer-flat-side.js';
import { straightRun } from './straight-run.js';
import { strainer } from './strainer.js';
import { suctionVelocity } from './suction-velocity.js';
import { valveOrder } from './valve-order.js';
import { withinScope } from './within-scope.js';

export const practiceChecks: readonly Check[] = [
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
];

const ids: ReadonlySet<string> = new Set(practiceChecks.map(({ id }) => id));

/** Whether a finding is one of installation practice. */
export function isPractice({ check }: { readonly check: string }): boolean {
  return ids.has(check);
}
