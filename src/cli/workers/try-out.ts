/** Job: trials of one installation. */
import { runTrial, type Trial, type TrialBase } from '../../index.js';

/**
 * Works trials out one after the other.
 *
 * @param work - what they start from, and the amounts of each
 * @returns their outcomes in order
 */
export function runTrialRows(work: {
  readonly base: TrialBase;
  readonly rows: readonly (readonly number[])[];
}): readonly Trial[] {
  return work.rows.map((row) => runTrial(work.base, row));
}
