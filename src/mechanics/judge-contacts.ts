import { dot, norm, scale, subtract } from '../model/vector.js';
import { type Contact, type ContactState, slideOf } from './contact.js';
import { movementAlong, springForce } from './element-forces.js';
import type { Hold } from './hold.js';
import { rowForces } from './respond.js';
import type { Solution } from './solve-condition.js';
import type { System } from './system.js';

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
 * Force of every hold on its point along its direction.
 *
 * @param system - constraint rows
 * @param holds - what the supports do
 * @param solution - movements [m] and forces [N]
 * @returns force or moment of each hold [N] or [N·m]
 * @source statics
 */
export function holdForces(system: System, holds: readonly Hold[], solution: Solution): Float64Array {
  const forces = Float64Array.from(holds, (hold) =>
    Number.isFinite(hold.stiffness) ? springForce(hold, solution.movements) : 0,
  );
  const rows = rowForces(system, solution);
  system.unknowns.rows.forEach((row, index) => {
    if (row.of.kind === 'hold') forces[row.of.hold] = rows[index]!;
  });
  return forces;
}

/**
 * Compares what each contact was taken to do with the solution that came of it.
 *
 *     held      lets go when it would have to pull
 *     free      takes hold when its point has gone past a limit
 *     centred   goes to the side that its point presses
 *     sticking  slips when the friction it needs is more than μ N
 *     slipping  sticks again when the point moves against the way it was taken to slip
 *
 * @param contacts - restraints that are there
 * @param states - one a contact
 * @param holds - what they did
 * @param forces - force of each hold [N]
 * @param solution - movements [m]
 * @param load - size of what acts [N]
 * @returns changes wanted, and how slipping goes on
 * @source statics
 */
export function judgeContacts(
  contacts: readonly Contact[],
  states: readonly ContactState[],
  holds: readonly Hold[],
  forces: Float64Array,
  solution: Solution,
  load: number,
): Verdict {
  const { movements } = solution;
  const least = FORCE_TOLERANCE * forces.reduce((most, force) => Math.max(most, Math.abs(force)), load);
  const step = 1e-9 * movements.reduce((most, value) => Math.max(most, Math.abs(value)), 0) + 1e-13;
  const normals = new Float64Array(contacts.length);
  const rubs = contacts.map(() => [0, 0, 0] as [number, number, number]);
  holds.forEach((hold, index) => {
    if (hold.role === 'normal') normals[hold.contact] = forces[index]!;
    else for (let i = 0; i < 3; i++) rubs[hold.contact]![i]! += forces[index]! * hold.direction[i]!;
  });
  const changes: Change[] = [];
  const slips: Change[] = [];
  let slipsFit = true;
  contacts.forEach((contact, index) => {
    const state = states[index]!;
    const change = (to: ContactState) => changes.push({ contact: index, to });
    const force = normals[index]!;
    if (state.where === 'centred') {
      if (Math.abs(force) > least) change({ where: 'held', side: force > 0 ? -1 : 1 });
      return;
    }
    if (state.where === 'free') {
      const side = pressedSide(contact, movementAlong(contact, movements), step, least);
      if (side !== 0) change({ where: 'held', side });
      return;
    }
    if (!contact.always && force * -state.side < -least) {
      change({ where: 'free', side: 0 });
      return;
    }
    if (contact.tangents.length === 0) return;
    const normal = Math.abs(force);
    if (state.slip === undefined) {
      const rub = norm(rubs[index]!);
      if (rub > contact.friction * normal + least) {
        const direction = scale(rubs[index]!, -1 / rub);
        change({ where: 'held', side: state.side, slip: { direction, normal, distance: 0 } });
      }
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
    const fits = Math.abs(normal - state.slip.normal) * contact.friction <= least && !isTurning;
    if (!fits) slipsFit = false;
    slips.push({ contact: index, to: { ...state, slip: { direction: turned, normal, distance } } });
  });
  return { changes, slips, slipsFit };
}

/** Which limit a free point has passed, 0 for none; springs by the force they would have. */
function pressedSide(contact: Contact, movement: number, step: number, least: number): -1 | 0 | 1 {
  if (!Number.isFinite(contact.stiffness)) {
    if (movement < contact.low - step) return -1;
    return movement > contact.high + step ? 1 : 0;
  }
  if (contact.preload - contact.stiffness * (movement - contact.low) > least) return -1;
  return Number.isFinite(contact.high) && contact.stiffness * (movement - contact.high) > least ? 1 : 0;
}
