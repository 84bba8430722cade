/**
 * Every job of the command line. A job's file imports neither this one nor `open-workers`: the thread that does the
 * work knows nothing of those that hand it out.
 */
import type { Jobs } from './job.js';

export const jobs = {
  /** The text of an input becomes the results of its review. */
  'results-of-text': async () => (await import('./results-of-text.js')).resultsOfText,
} as const satisfies Jobs;
