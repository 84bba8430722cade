import { solveSmall } from '../../algebra/small-solve.js';
import type { ConditionLoads } from '../frame/condition-loads.js';
import { restraintForces } from '../frame/respond.js';
import { solveCondition } from '../frame/solve-condition.js';
import type { System } from '../frame/system/system.js';
import type { ActiveRestraint } from './active-restraint.js';
import type { Contact, ContactState } from './contact.js';

/**
 * Normal forces that agree with the friction they give, for all slipping contacts at once.
 *
 * The friction −μ N e of one contact changes the normal forces of all; by one solution per slipping contact,
 *
 *     N = N_found + A μ (N − N_taken)     →     (1 − A μ) N = N_found − A μ N_taken
 *
 * @param system - factored stiffness, with the contacts slipping
 * @param loads - for the sizes of the arrays
 * @param contacts - restraints that are there
 * @param states - one a contact
 * @param activeRestraints - what they did
 * @param forces - force of each hold that was found [N]
 * @returns normal force of each slipping contact, 0 where it would have to pull [N]
 * @source statics
 */
export function slipNormals(
  system: System,
  loads: ConditionLoads,
  contacts: readonly Contact[],
  states: readonly ContactState[],
  activeRestraints: readonly ActiveRestraint[],
  forces: Float64Array,
): ReadonlyMap<number, number> {
  const slipping = contacts.flatMap((_, index) => (states[index]!.slip === undefined ? [] : [index]));
  const m = slipping.length;
  if (m === 0) return new Map();
  const still = activeRestraints.map((activeRestraint) => ({ ...activeRestraint, at: 0, preload: 0 }));
  const normalRestraint = slipping.map((contact) =>
    activeRestraints.findIndex(
      (activeRestraint) => activeRestraint.contact === contact && activeRestraint.role === 'normal',
    ),
  );
  // A support that holds both ways may be pressed either way: its friction follows the size of the force.
  const sign = slipping.map((contact, i) => {
    const { side } = states[contact]!;
    return side === 0 ? Math.sign(forces[normalRestraint[i]!]!) || 1 : -side;
  });
  const matrix = new Float64Array(m * m);
  const right = new Float64Array(m);
  const found = normalRestraint.map((activeRestraint, i) => forces[activeRestraint]! * sign[i]!);
  for (let i = 0; i < m; i++) {
    matrix[i * m + i] = 1;
    right[i] = found[i]!;
  }
  for (let j = 0; j < m; j++) {
    const contact = contacts[slipping[j]!]!;
    const { slip } = states[slipping[j]!]!;
    if (slip === undefined) continue;
    const push = new Float64Array(loads.pointForces.length);
    for (let k = 0; k < 3; k++) push[6 * contact.point + k] = -slip.direction[k]!;
    const unit: ConditionLoads = {
      condition: loads.condition,
      freeMovement: new Float64Array(loads.freeMovement.length),
      weight: new Float64Array(loads.weight.length),
      pointForces: push,
      growth: new Float64Array(loads.growth.length),
    };
    const changed = restraintForces(
      system,
      still,
      solveCondition(system, unit, still, new Float64Array(push.length)),
    );
    for (let i = 0; i < m; i++) {
      const share = changed[normalRestraint[i]!]! * sign[i]! * contact.friction;
      matrix[i * m + j]! -= share;
      right[i]! -= share * slip.normal;
    }
  }
  const solved = solveSmall(matrix, right) ?? right;
  return new Map(
    slipping.map((contact, i) => {
      // Friction that presses its own contact harder than it needs would grow without end: see first what happens
      // without it, and take what is found from there.
      const isWedged = matrix[i * m + i]! <= 0;
      const wedged = states[contact]!.slip?.normal === 0 ? found[i]! : 0;
      return [contact, Math.max(0, isWedged ? wedged : solved[i]!)];
    }),
  );
}
