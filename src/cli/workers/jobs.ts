/**
 * Every job of the command line. A job's file imports neither this one nor `open-workers`: the thread that does the
 * work knows nothing of those that hand it out.
 */
import type { Jobs } from './job.js';

export const jobs = {
  /** The text of an input becomes the results of its review. */
  'results-of-text': async () => (await import('./results-of-text.js')).resultsOfText,
  /** Quick looks at changes of a file. */
  'advise-trials': async () => (await import('./advise-trials.js')).adviseTrials,
  /** The findings of a changed file. */
  'advise-findings': async () => (await import('./advise-findings.js')).adviseFindings,
  /** Trials of one installation a little other than it was taken. */
  'try-out': async () => (await import('./try-out.js')).runTrialRows,
  /** Everything a command does to one file among many. */
  'one-of-many': async () => (await import('../files/one-of-many.js')).oneOfMany,
  /** The supports of one file. */
  'schedule-one': async () => (await import('../schedule/schedule-one.js')).scheduleOne,
  /** Where one unit stands, from its record. */
  'board-one': async () => (await import('../as-installed/board-one.js')).boardOne,
} as const satisfies Jobs;
