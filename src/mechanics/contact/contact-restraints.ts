import type { Vec3 } from '../../model/conventions.js';
import { cross, dot, unit } from '../../model/vector.js';
import type { ActiveRestraint } from './active-restraint.js';
import type { Contact, ContactState } from './contact.js';

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
export function activeRestraintsOf(
  contacts: readonly Contact[],
  states: readonly ContactState[],
  swings: Float64Array,
): readonly ActiveRestraint[] {
  const activeRestraints: ActiveRestraint[] = [];
  for (let index = 0; index < contacts.length; index++) {
    const contact = contacts[index]!;
    const { where, side, slip, end } = states[index]!;
    if (where === 'free') continue;
    const { direction, stiffness, preload, low, high, travel, swing } = contact;
    if (where === 'centred') {
      activeRestraints.push(
        activeRestraintOf(contact, index, 'normal', direction, Number.POSITIVE_INFINITY, (low + high) / 2, 0),
      );
      continue;
    }
    if (end !== undefined && travel !== undefined) {
      activeRestraints.push(
        activeRestraintOf(contact, index, 'normal', direction, Number.POSITIVE_INFINITY, travel[end], 0),
      );
    } else {
      const at = side === 1 ? high : low;
      activeRestraints.push(activeRestraintOf(contact, index, 'normal', direction, stiffness, at, preload));
    }
    if (swing !== undefined) {
      const sideways = swings[index]! / swing.length;
      for (const way of swing.ways) {
        activeRestraints.push(
          activeRestraintOf(contact, index, 'swing', way, sideways, dot(contact.carried, way), 0),
        );
      }
    }
    const across = (way: Vec3, k: number, force: number): ActiveRestraint =>
      activeRestraintOf(contact, index, 'friction', way, k, dot(contact.carried, way), force);
    if (slip === undefined) {
      for (const way of contact.tangents) activeRestraints.push(across(way, Number.POSITIVE_INFINITY, 0));
      continue;
    }
    const force = contact.friction * slip.normal;
    activeRestraints.push(across(slip.direction, 0, -force));
    if (contact.tangents.length < 2) continue;
    const square = slip.distance > 0 ? force / slip.distance : Number.POSITIVE_INFINITY;
    activeRestraints.push(across(unit(cross(direction, slip.direction)), square, 0));
  }
  return activeRestraints;
}

/** Written out field by field: this runs for every contact in every round, and copying objects takes ten times as long. */
function activeRestraintOf(
  { support, restraint, point, acts }: Contact,
  contact: number,
  role: ActiveRestraint['role'],
  direction: Vec3,
  stiffness: number,
  at: number,
  preload: number,
): ActiveRestraint {
  return { support, restraint, point, direction, acts, stiffness, at, preload, contact, role };
}
