import type { Vec3 } from '../../model/conventions.js';
import type { FrameCondition, FrameSupport, Restraint } from '../../model/frame/frame.js';
import { add, cross, dot, norm, scale, subtract, unit } from '../../model/vector.js';
import type { PreparedFrame } from '../frame/prepare-frame.js';
import type { RestraintState } from '../frame/response.js';
import type { Clusters } from '../frame/system/cluster.js';

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
  /** Rod that leans: its length [m], and the directions across it that the same support does not hold rigidly. */
  readonly swing?: { readonly length: number; readonly ways: readonly Vec3[] };
  /** Ends of the travel of a spring: its loads there [N], and the movements at which it has them [m]. */
  readonly travel?: {
    readonly least: number;
    readonly most: number;
    readonly top: number;
    readonly bottom: number;
  };
}

/** What a contact does at the moment. */
export interface ContactState {
  /** `centred`: in its gap with nothing pushing it either way, held there only so that it has a place. */
  readonly where: 'held' | 'free' | 'centred';
  /** Which limit it is at: −1 low, +1 high, 0 where both are one. */
  readonly side: -1 | 0 | 1;
  /** End of its travel that a spring has reached; it is rigid there. */
  readonly end?: 'top' | 'bottom';
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
        ...(restraint.swingLength !== undefined &&
          acts === 'translation' && {
            swing: { length: restraint.swingLength, ways: tangentsOf(support, restraint) },
          }),
        ...(restraint.travel !== undefined &&
          !stopped && { travel: travelOf(restraint.travel, restraint, imposed) }),
      });
    });
  });
  return contacts;
}

/** Movements at which a spring has used up its travel: F = preload − stiffness × (movement − imposed). */
function travelOf(
  { least, most }: NonNullable<Restraint['travel']>,
  { preload, stiffness }: Restraint,
  imposed: number,
): NonNullable<Contact['travel']> {
  const at = (load: number) => imposed + (preload - load) / stiffness;
  return { least, most, top: at(least), bottom: at(most) };
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
    if (state.end !== undefined) return state.end === 'top' ? 'topped out' : 'bottomed out';
    if (state.slip !== undefined) return 'slipping';
    return contact.stopped ? 'stopped' : 'holding';
  }
  if (Number.isFinite(contact.high)) return 'in gap';
  // A rest with clearance under the pipe: still within the clearance, or risen above where the pipe was set.
  return contact.gap > 0 && movement <= contact.low + contact.gap ? 'in gap' : 'lifted';
}
