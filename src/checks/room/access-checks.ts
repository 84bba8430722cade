/** The checks of room, service spaces and lift, in the order of a seal or motor change. */

import type { Check } from '../define-check.js';
import { casingLiftOut } from '../lift/casing-lift-out.js';
import { handLift } from '../lift/hand-lift.js';
import { liftAnchor } from '../lift/lift-anchor.js';
import { slingLegs } from '../lift/sling-legs.js';
import { aisleWidth } from './aisle-width.js';
import { couplingSpace } from './coupling-space.js';
import { fittingReach } from './fitting-reach.js';
import { handleSweep } from './handle-sweep.js';
import { motorWithdrawal } from './motor-withdrawal.js';
import { sealThroughSpacer } from './seal-through-spacer.js';
import { wayOut } from './way-out.js';
import { workingSpace } from './working-space.js';
import { wrenchRoom } from './wrench-room.js';

export const accessChecks: readonly Check[] = [
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
];

const ids: ReadonlySet<string> = new Set(accessChecks.map(({ id }) => id));

/** Whether a finding is one of access, service spaces or the lift. */
export function isAccess({ check }: { readonly check: string }): boolean {
  return ids.has(check);
}
