import { runTrial, type Trial, type TrialBase } from './evaluate.js';

/** Works trials out, in their order; a caller may divide them among threads. */
export type RunTrials = (base: TrialBase, rows: readonly (readonly number[])[]) => Promise<readonly Trial[]>;

/** Trials one after the other, in the thread that asks. */
export const runHere: RunTrials = async (base, rows) => rows.map((row) => runTrial(base, row));
