/** Bands of a review, with trials divided among threads where there are many. */
import { isMainThread } from 'node:worker_threads';
import { type Review, type RunTrials, runTrial, studyBands } from '../../index.js';

/** Fewer trials than this take less time than starting threads for them. */
const WORTH_THREADS = 80;

/**
 * A review with its bands.
 *
 * @param review - the review
 * @returns the review, with bands
 */
export async function addBands(review: Review): Promise<Review> {
  return { ...review, bands: await studyBands(review, { runTrials }) };
}

const runTrials: RunTrials = async (base, rows) => {
  if (rows.length < WORTH_THREADS || !isMainThread) return rows.map((row) => runTrial(base, row));
  const { openWorkers } = await import('../workers/open-workers.js');
  const workers = openWorkers();
  try {
    const parts = workers.size * PARTS_A_THREAD;
    const length = Math.ceil(rows.length / parts);
    const works = Array.from({ length: Math.ceil(rows.length / length) }, (_, part) => ({
      base,
      rows: rows.slice(part * length, (part + 1) * length),
    }));
    const outcomes = await workers.runEach('try-out', works);
    return outcomes.flatMap((outcome) => {
      if (!outcome.ok) throw outcome.error;
      return outcome.value;
    });
  } finally {
    await workers.close();
  }
};

/** Several, so that a thread that is slow for a while does not keep the other waiting. */
const PARTS_A_THREAD = 3;
