import type { Vec3 } from '../model/conventions.js';
import type { FrameCondition, FrameSupport, Restraint } from '../model/frame.js';
import { add, cross, dot, norm, scale, subtract, unit } from '../model/vector.js';
import type { Clusters } from './cluster.js';
import type { Hold } from './hold.js';
import type { PreparedFrame } from './prepare-frame.js';
import type { RestraintState } from './response.js';

/** One restraint that is there, with the limits between which it lets its point move. */
export interface Contact {
  readonly support: number;
  readonly restraint: number;
  readonly point: number;
  readonly direction: Vec3;
  readonly acts: 'translation' | 'rotation';
  /** Infinity is rigid [N/m] or [N·m/rad]. */
  readonly stiffness: number;
  /** [N] */
  readonly preload: number;
  /** Movement at which it pushes along +direction [m]; minus infinity where it never does. */
  readonly low: number;
  /** Movement at which it pushes along −direction [m]; infinity where it never does. */
  readonly high: number;
  /** Free movement, either side or below [m]. */
  readonly gap: number;
  /** True when it holds both ways without free movement: it never lets go. */
  readonly always: boolean;
  readonly stopped: boolean;
  readonly friction: number;
  /** Directions in which friction can act: across the direction, less what the same support holds rigidly. */
  readonly tangents: readonly Vec3[];
  /** Movement of the support itself [m]. */
  readonly carried: Vec3;
}

/** What a contact does at the moment. */
export interface ContactState {
  /** `centred`: in its gap with nothing pushing it either way, held there only so that it has a place. */
  readonly where: 'held' | 'free' | 'centred';
  /** Which limit it is at: −1 low, +1 high, 0 where both are one. */
  readonly side: -1 | 0 | 1;
  /** Present while it slips: which way, under what normal force [N], how far [m]; 0 at the start. */
  readonly slip?: { readonly direction: Vec3; readonly normal: number; readonly distance: number };
}

/**
 * Whether a restraint is held by a travel stop: in a stopped support the springs that carry a preload; where none
 * does, every spring.
 *
 * @param support - the support
 * @param restraint - one of its restraints
 * @param condition - names the stopped supports
 * @returns true when it acts rigidly because of its stop [-]
 * @source mss-sp-58
 */
export function isStopped(support: FrameSupport, restraint: Restraint, condition: FrameCondition): boolean {
  if (!condition.stopped.includes(support.name) || !Number.isFinite(restraint.stiffness)) return false;
  const loaded = support.restraints.some((other) => other.preload !== 0);
  return loaded ? restraint.preload !== 0 : true;
}

/**
 * All restraints that are there in a condition.
 *
 * A stopped spring acts rigidly at its set position. Friction acts where a coefficient is given on a translation.
 *
 * @param prepared - the frame
 * @param clusters - which points are there
 * @param condition - absent and stopped supports, imposed movements [m]
 * @returns contacts in the order of the frame [m], [N]
 * @source statics
 */
export function contactsOf(
  prepared: PreparedFrame,
  clusters: Clusters,
  condition: FrameCondition,
): readonly Contact[] {
  const contacts: Contact[] = [];
  const absent = new Set(condition.absent);
  prepared.frame.supports.forEach((support, supportIndex) => {
    const point = prepared.pointNumber.get(support.point)!;
    if (absent.has(support.name) || clusters.nodeOf[point] === -1) return;
    const carried = condition.imposed?.[support.name] ?? [0, 0, 0];
    support.restraints.forEach((restraint, restraintIndex) => {
      const { direction, acts, sense, gap, preload } = restraint;
      const stopped = isStopped(support, restraint, condition);
      const stiffness = stopped ? Number.POSITIVE_INFINITY : restraint.stiffness;
      if (stiffness === 0 && preload === 0) return;
      const imposed = restraint.imposed + (acts === 'rotation' ? 0 : dot(carried, direction));
      contacts.push({
        support: supportIndex,
        restraint: restraintIndex,
        point,
        direction,
        acts,
        stiffness,
        preload: stopped ? 0 : preload,
        low: imposed - gap,
        high: sense === 'push' ? Number.POSITIVE_INFINITY : imposed + gap,
        gap,
        always: sense === 'both' && gap === 0,
        stopped,
        friction: acts === 'rotation' ? 0 : restraint.friction,
        tangents: restraint.friction > 0 && acts === 'translation' ? tangentsOf(support, restraint) : [],
        carried,
      });
    });
  });
  return contacts;
}

/** Up to two directions across a restraint that the same support does not already hold rigidly both ways. */
function tangentsOf(support: FrameSupport, restraint: Restraint): readonly Vec3[] {
  const taken: Vec3[] = [unit(restraint.direction)];
  const square = (v: Vec3) => taken.reduce((left, t) => subtract(left, scale(t, dot(left, t))), v);
  for (const other of support.restraints) {
    const rigidly =
      other.acts === 'translation' &&
      other.sense === 'both' &&
      other.gap === 0 &&
      !Number.isFinite(other.stiffness);
    const left = square(other.direction);
    if (other !== restraint && rigidly && norm(left) > 1e-6) taken.push(unit(left));
  }
  if (taken.length >= 3) return [];
  if (taken.length === 2) return [cross(taken[0]!, taken[1]!)];
  const d = taken[0]!;
  const flat: Vec3 = Math.abs(d[2]) > 0.9 ? [1, 0, 0] : [0, 0, 1];
  const first = unit(square(flat));
  return [first, cross(d, first)];
}

/**
 * Where contacts start: everything that can push does, gaps are open, and friction sticks.
 *
 * @param contacts - restraints that are there
 * @returns one state a contact
 * @source statics
 */
export function startStates(contacts: readonly Contact[]): ContactState[] {
  return contacts.map((contact) => {
    if (contact.always) return { where: 'held', side: 0 };
    return Number.isFinite(contact.high) ? { where: 'free', side: 0 } : { where: 'held', side: -1 };
  });
}

/**
 * What the contacts do in their states, as rigid holds, springs and friction forces.
 *
 *     sticking:  held rigidly across          slipping:  −μ N e, and −(μ N / distance) on what is square to e
 *
 * The second term of slipping vanishes once e has turned to the way the point moves.
 *
 * @param contacts - restraints that are there
 * @param states - one a contact
 * @returns holds, in the order of the contacts [N/m], [m], [N]
 * @source statics
 */
export function holdsOf(contacts: readonly Contact[], states: readonly ContactState[]): readonly Hold[] {
  const holds: Hold[] = [];
  contacts.forEach((contact, index) => {
    const { where, side, slip } = states[index]!;
    if (where === 'free') return;
    const { support, restraint, point, direction, acts, stiffness, preload, low, high } = contact;
    const base = { support, restraint, point, acts, contact: index };
    const at = where === 'centred' ? (low + high) / 2 : side === 1 ? high : low;
    const rigidity = where === 'centred' ? Number.POSITIVE_INFINITY : stiffness;
    holds.push({ ...base, direction, stiffness: rigidity, at, preload, role: 'normal' });
    if (where === 'centred') return;
    const across = (way: Vec3, k: number, force: number): Hold => ({
      ...base,
      direction: way,
      stiffness: k,
      at: dot(contact.carried, way),
      preload: force,
      role: 'friction',
    });
    if (slip === undefined) {
      for (const way of contact.tangents) holds.push(across(way, Number.POSITIVE_INFINITY, 0));
      return;
    }
    const force = contact.friction * slip.normal;
    holds.push(across(slip.direction, 0, -force));
    if (contact.tangents.length < 2) return;
    const square = slip.distance > 0 ? force / slip.distance : Number.POSITIVE_INFINITY;
    holds.push(across(unit(cross(direction, slip.direction)), square, 0));
  });
  return holds;
}

/**
 * How far a point has slid across a contact.
 *
 * @param contact - with its tangents
 * @param movements - six numbers a point [m], [rad]
 * @returns vector across the contact [m]
 * @source statics
 */
export function slideOf(contact: Contact, movements: Float64Array): Vec3 {
  const at = 6 * contact.point;
  const moved: Vec3 = [movements[at]!, movements[at + 1]!, movements[at + 2]!];
  const relative = subtract(moved, contact.carried);
  return contact.tangents.reduce<Vec3>((sum, way) => add(sum, scale(way, dot(relative, way))), [0, 0, 0]);
}

/**
 * The word for what a contact does.
 *
 * @param contact - the restraint
 * @param state - what it does
 * @param movement - movement of its point along its direction [m]
 * @returns the word
 * @source statics
 */
export function stateWord(contact: Contact, state: ContactState, movement: number): RestraintState {
  if (state.where === 'centred') return 'in gap';
  if (state.where === 'held') {
    if (state.slip !== undefined) return 'slipping';
    return contact.stopped ? 'stopped' : 'holding';
  }
  if (Number.isFinite(contact.high)) return 'in gap';
  // A rest with clearance under the pipe: still within the clearance, or risen above where the pipe was set.
  return contact.gap > 0 && movement <= contact.low + contact.gap ? 'in gap' : 'lifted';
}
