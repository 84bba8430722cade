import type { Vec3 } from '../../model/conventions.js';
import { dot, norm, scale, subtract } from '../../model/vector.js';
import { movementAlong } from '../frame/elements/element-forces.js';
import type { Solution } from '../frame/solve-condition.js';
import type { ActiveRestraint } from './active-restraint.js';
import { type Contact, type ContactState, slideOf } from './contact.js';

/** What a contact should do instead. */
export interface Change {
  readonly contact: number;
  readonly to: ContactState;
}

/** Verdict on all contacts after one solution. */
export interface Verdict {
  /** Contacts whose state does not fit the solution. */
  readonly changes: readonly Change[];
  /** Slipping contacts with their newest direction, normal force and distance. */
  readonly slips: readonly Change[];
  /** True when direction and normal force of every slip agree with the solution. */
  readonly slipsFit: boolean;
}

/** Share of the largest force under which a force counts as none [-]. */
const FORCE_TOLERANCE = 1e-9;

/**
 * Compares what each contact was taken to do with the solution that came of it.
 *
 *     held      lets go when it would have to pull
 *     free      takes hold when its point has gone past a limit
 *     centred   goes to the side that its point presses
 *     sticking  slips when the friction it needs is more than μ N, or lifts its point
 *     a spring  becomes rigid past the loads at the ends of its travel, and a spring again within them
 *     slipping  sticks again when the point moves against the way it was taken to slip
 *
 * @param contacts - restraints that are there
 * @param states - one a contact
 * @param activeRestraints - what they did
 * @param forces - force of each hold [N]
 * @param normals - normal force of each slipping contact that agrees with its own friction [N]
 * @param solution - movements [m]
 * @param load - size of what acts [N]
 * @returns changes wanted, and how slipping goes on
 * @source statics
 */
export function judgeContacts(
  contacts: readonly Contact[],
  states: readonly ContactState[],
  activeRestraints: readonly ActiveRestraint[],
  forces: Float64Array,
  normals: ReadonlyMap<number, number>,
  solution: Solution,
  load: number,
): Verdict {
  const { movements } = solution;
  const least = FORCE_TOLERANCE * forces.reduce((most, force) => Math.max(most, Math.abs(force)), load);
  const step = 1e-9 * movements.reduce((most, value) => Math.max(most, Math.abs(value)), 0) + 1e-13;
  const pressed = new Float64Array(contacts.length);
  const rubs = contacts.map(() => [0, 0, 0] as [number, number, number]);
  activeRestraints.forEach((activeRestraint, index) => {
    if (activeRestraint.role === 'normal') pressed[activeRestraint.contact] = forces[index]!;
    else if (activeRestraint.role === 'friction')
      for (let i = 0; i < 3; i++)
        rubs[activeRestraint.contact]![i]! += forces[index]! * activeRestraint.direction[i]!;
  });
  const changes: Change[] = [];
  const slips: Change[] = [];
  let slipsFit = true;
  contacts.forEach((contact, index) => {
    const state = states[index]!;
    const change = (to: ContactState) => changes.push({ contact: index, to });
    const force = pressed[index]!;
    if (state.where === 'centred') {
      if (Math.abs(force) > least) change({ where: 'held', side: force > 0 ? -1 : 1 });
      return;
    }
    if (state.where === 'free') {
      const side = pressedSide(contact, movementAlong(contact, movements), step, least);
      if (side === 0) return;
      // A point that has slid while it was clear of its support goes on sliding where it lands.
      const slide = slideOf(contact, movements);
      const distance = norm(slide);
      // A spring that takes hold again does so where it had used up its travel.
      const held = { where: 'held' as const, side, ...(contact.travel && { end: 'top' as const }) };
      if (distance <= step) change(held);
      else change({ ...held, slip: { direction: scale(slide, 1 / distance), normal: 0, distance } });
      return;
    }
    const end = endOfTravel(contact, state, force, least);
    if (end !== state.end) {
      const { end: _, ...without } = state;
      change(end === undefined ? without : { ...state, end });
      return;
    }
    const sticks = contact.tangents.length > 0 && state.slip === undefined;
    const rub = norm(rubs[index]!);
    const isSliding = state.slip !== undefined && state.slip.normal > 0;
    // While it slides under a force that is still being found, a pull only says that this force was taken too large.
    if (!contact.always && !isSliding && force * -state.side < -least) {
      // Friction that sticks may itself be what lifts the point: it slips without friction before it lets go.
      if (sticks && rub > least) change({ ...state, slip: slipAgainst(rubs[index]!, 0) });
      else change({ where: 'free', side: 0 });
      return;
    }
    if (contact.tangents.length === 0) return;
    const normal = Math.abs(force);
    if (state.slip === undefined) {
      if (rub > contact.friction * normal + least)
        change({ ...state, slip: slipAgainst(rubs[index]!, normal) });
      return;
    }
    const slide = slideOf(contact, movements);
    const distance = norm(slide);
    if (dot(slide, state.slip.direction) < -step) {
      change({ where: 'held', side: state.side });
      return;
    }
    const turned = distance > step ? scale(slide, 1 / distance) : state.slip.direction;
    // The first time it slips straight on; only then is it known which way it would rather go.
    const isFirst = state.slip.distance === 0 && contact.tangents.length === 2;
    const isTurning = distance > step && (isFirst || norm(subtract(turned, state.slip.direction)) > 1e-8);
    const next = normals.get(index) ?? normal;
    const fits = Math.abs(next - state.slip.normal) * contact.friction <= least && !isTurning;
    if (!fits) slipsFit = false;
    slips.push({ contact: index, to: { ...state, slip: { direction: turned, normal: next, distance } } });
  });
  return { changes, slips, slipsFit };
}

/** Slip that begins against the friction that held it. */
function slipAgainst(rub: Vec3, normal: number): NonNullable<ContactState['slip']> {
  return { direction: scale(rub, -1 / norm(rub)), normal, distance: 0 };
}

/** End of its travel at which a spring should be, by the load it has: rigid past the end, a spring within it. */
function endOfTravel(
  { travel }: Contact,
  { end }: ContactState,
  force: number,
  least: number,
): ContactState['end'] {
  if (travel === undefined) return undefined;
  if (end === 'top') return force > travel.least + least ? undefined : end;
  if (end === 'bottom') return force < travel.most - least ? undefined : end;
  if (force > travel.most + least) return 'bottom';
  return force < travel.least - least ? 'top' : undefined;
}

/** Which limit a free point has passed, 0 for none; springs by the force they would have. */
function pressedSide(contact: Contact, movement: number, step: number, least: number): -1 | 0 | 1 {
  if (contact.travel !== undefined) return movement < contact.travel.top - step ? -1 : 0;
  if (!Number.isFinite(contact.stiffness)) {
    if (movement < contact.low - step) return -1;
    return movement > contact.high + step ? 1 : 0;
  }
  if (contact.preload - contact.stiffness * (movement - contact.low) > least) return -1;
  return Number.isFinite(contact.high) && contact.stiffness * (movement - contact.high) > least ? 1 : 0;
}
