import type { ConditionLoads } from '../frame/condition-loads.js';
import type { ActiveRestraint } from './active-restraint.js';
import type { Contact } from './contact.js';

/** Loads of rods that lean, as they are found from round to round. */
export interface LeaningRods {
  /** Load with which the rod of each contact holds sideways; 0 where it has none [N]. */
  readonly loads: Float64Array;
  /** Takes the loads of a solution; true when one of them has changed. */
  readonly take: (
    activeRestraints: readonly ActiveRestraint[],
    forces: Float64Array,
    largest: number,
  ) => boolean;
  /** Takes the loads of restless supports smaller; false where none of them leans, or it has been tried enough. */
  readonly ease: (restless: ReadonlySet<number>) => boolean;
}

/** Share of its load by which a rod may still change [-], and share of the largest force for rods nearly slack [-]. */
const SWING_TOLERANCE = 1e-9;
const SWING_FLOOR = 1e-12;
/** By how much loads are taken smaller [-], and how often. */
const EASING = 0.2;
const MOST_EASINGS = 30;

/**
 * Finds the loads with which rods hold sideways: a load T is taken, a load F(T) comes of it, and T must be F.
 *
 *     k across = T / L
 *     T ← (F − s T) / (1 − s),   s = ΔF / ΔT from the two rounds before; T ← F where there is no falling slope
 *
 * A rod that held so strongly that its hanger could neither carry nor let go must be loaded less: that load is not
 * taken again.
 *
 * @param contacts - restraints that are there; those with `swing` lean
 * @param loads - what acts, for a first guess: an equal share each [N]
 * @returns loads and how they go on [N]
 * @source statics
 */
export function leaningRods(contacts: readonly Contact[], loads: ConditionLoads): LeaningRods {
  const count = contacts.filter(({ swing }) => swing).length;
  const taken = new Float64Array(contacts.length);
  const beforeTaken = new Float64Array(contacts.length).fill(Number.NaN);
  const beforeFound = new Float64Array(contacts.length).fill(Number.NaN);
  const ceiling = new Float64Array(contacts.length).fill(Number.POSITIVE_INFINITY);
  let easings = 0;
  if (count > 0) {
    const sum = (values: Float64Array, stride: number) =>
      values.reduce((total, value, i) => total + (i % stride < 3 ? Math.abs(value) : 0), 0);
    const preloads = contacts.reduce((total, { swing, preload }) => total + (swing ? preload : 0), 0);
    const share = (sum(loads.weight, 3) + sum(loads.pointForces, 6) + preloads) / count;
    contacts.forEach(({ swing }, index) => {
      if (swing !== undefined) taken[index] = share;
    });
  }
  const next = (index: number, found: number): number => {
    const now = taken[index]!;
    const slope = (found - beforeFound[index]!) / (now - beforeTaken[index]!);
    beforeFound[index] = found;
    beforeTaken[index] = now;
    const aimed = slope < 0 ? Math.max(0, (found - slope * now) / (1 - slope)) : found;
    return aimed < ceiling[index]! ? aimed : (now + ceiling[index]!) / 2;
  };
  return {
    loads: taken,
    take: (activeRestraints, forces, largest) => {
      let changed = false;
      activeRestraints.forEach((activeRestraint, index) => {
        const { contact } = activeRestraint;
        if (activeRestraint.role !== 'normal' || contacts[contact]!.swing === undefined) return;
        const found = Math.max(0, forces[index]!);
        if (Math.abs(found - taken[contact]!) <= SWING_TOLERANCE * found + SWING_FLOOR * largest) return;
        changed = true;
        taken[contact] = next(contact, found);
      });
      return changed;
    },
    ease: (restless) => {
      const eased = contacts.flatMap(({ support }, i) => (restless.has(support) && taken[i]! > 0 ? [i] : []));
      if (eased.length === 0 || easings === MOST_EASINGS) return false;
      easings++;
      for (const i of eased) {
        ceiling[i] = Math.min(ceiling[i]!, taken[i]!);
        const low = beforeTaken[i]!;
        // Between a load that settled and one that did not; without the former, well below the latter.
        taken[i] = low < taken[i]! ? (low + taken[i]!) / 2 : EASING * taken[i]!;
      }
      return true;
    },
  };
}
