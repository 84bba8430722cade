/** The checks of room, service spaces and lift, in the order of a seal or motor change. */
import { aisleWidth } from './aisle-width.js';
import { casingLiftOut } from './casing-lift-out.js';
import { couplingSpace } from './coupling-space.js';
import type { Check } from './define-check.js';
import { fittingReach } from './fitting-reach.js';
import { handLift } from './hand-lift.js';
import { handleSweep } from './handle-sweep.js';
import { liftAnchor } from './lift-anchor.js';
import { motorWithdrawal } from './motor-withdrawal.js';
import { sealThroughSpacer } from './seal-through-spacer.js';
import { slingLegs } from './sling-legs.js';
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
