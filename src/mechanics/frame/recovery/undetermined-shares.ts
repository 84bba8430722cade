import type { Vec3 } from '../../../model/conventions.js';
import { add, norm, scale } from '../../../model/vector.js';
import type { ActiveRestraint } from '../../contact/active-restraint.js';
import type { UndeterminedShare } from '../response.js';
import type { System } from '../system/system.js';

/** Part of a unit of redundant force below which a direction counts as determined [-]. */
const NOTHING = 1e-6;

/**
 * Which loads of supports are not determined. Forces of the rigid rows of a group that balance nothing, Cᵀ n = 0, may be
 * added to any answer; the projector on them is P = I − U Uᵀ. A support whose own force or moment is no part of P has one
 * load only, whatever its rows are.
 *
 * @param system - constraint rows in their groups
 * @param activeRestraints - what the supports do, in the order the system was built with
 * @returns undetermined parts by number of the support; a support that is not there is determined
 * @source statics
 */
export function undeterminedShares(
  system: System,
  activeRestraints: readonly ActiveRestraint[],
): ReadonlyMap<number, readonly UndeterminedShare[]> {
  const found = new Map<number, readonly UndeterminedShare[]>();
  for (const { rows, decomposition } of system.unknowns.groups) {
    if (decomposition === undefined || decomposition.rank === rows.length) continue;
    const bySupport = new Map<
      number,
      { readonly activeRestraint: ActiveRestraint; readonly place: number }[]
    >();
    rows.forEach((row, place) => {
      const { of } = system.unknowns.rows[row]!;
      if (of.kind !== 'hold') return;
      const activeRestraint = activeRestraints[of.activeRestraint]!;
      const list = bySupport.get(activeRestraint.support);
      if (list === undefined) bySupport.set(activeRestraint.support, [{ activeRestraint, place }]);
      else list.push({ activeRestraint, place });
    });
    for (const [support, own] of bySupport) {
      const parts = new Set<UndeterminedShare>();
      for (let column = 0; column < rows.length; column++) {
        let force: Vec3 = [0, 0, 0];
        let moment: Vec3 = [0, 0, 0];
        for (const { activeRestraint, place } of own) {
          let share = place === column ? 1 : 0;
          for (const left of decomposition.left) share -= left[place]! * left[column]!;
          if (activeRestraint.acts === 'translation')
            force = add(force, scale(activeRestraint.direction, share));
          else moment = add(moment, scale(activeRestraint.direction, share));
        }
        if (Math.abs(force[2]) > NOTHING) parts.add('vertical');
        if (Math.hypot(force[0], force[1]) > NOTHING) parts.add('sideways');
        if (norm(moment) > NOTHING) parts.add('moment');
      }
      if (parts.size > 0) found.set(support, [...parts]);
    }
  }
  return found;
}
