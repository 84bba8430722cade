import type { Vec3 } from '../model/conventions.js';
import { cross, dot, unit } from '../model/vector.js';
import type { Contact, ContactState } from './contact.js';
import type { Hold } from './hold.js';

/**
 * What the contacts do in their states, as rigid holds, springs and friction forces.
 *
 *     sticking:  held rigidly across          slipping:  −μ N e, and −(μ N / distance) on what is square to e
 *
 * The second term of slipping vanishes once e has turned to the way the point moves. A rod under load F leans without
 * lengthening and holds sideways with F over its length; a spring at the end of its travel is rigid there.
 *
 * @param contacts - restraints that are there
 * @param states - one a contact
 * @param swings - load with which the rod of each contact holds sideways [N]
 * @returns holds, in the order of the contacts [N/m], [m], [N]
 * @source statics
 */
export function holdsOf(
  contacts: readonly Contact[],
  states: readonly ContactState[],
  swings: Float64Array,
): readonly Hold[] {
  const holds: Hold[] = [];
  contacts.forEach((contact, index) => {
    const { where, side, slip, end } = states[index]!;
    if (where === 'free') return;
    const { support, restraint, point, direction, acts, stiffness, preload, low, high, travel } = contact;
    const base = { support, restraint, point, acts, contact: index };
    const rigid = { stiffness: Number.POSITIVE_INFINITY, preload: 0 };
    if (where === 'centred') {
      holds.push({ ...base, ...rigid, direction, at: (low + high) / 2, role: 'normal' });
      return;
    }
    if (end !== undefined && travel !== undefined) {
      holds.push({ ...base, ...rigid, direction, at: travel[end], role: 'normal' });
    } else {
      const at = side === 1 ? high : low;
      holds.push({ ...base, direction, stiffness, at, preload, role: 'normal' });
    }
    const { ways, length } = contact.swing ?? { ways: [], length: 1 };
    for (const way of ways) {
      const sideways = swings[index]! / length;
      const at = dot(contact.carried, way);
      holds.push({ ...base, direction: way, stiffness: sideways, at, preload: 0, role: 'swing' });
    }
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
