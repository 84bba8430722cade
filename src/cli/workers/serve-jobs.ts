/** The side of the thread: takes orders one at a time and answers them. */
import { parentPort } from 'node:worker_threads';
import type { Job, Jobs } from './job.js';
import { type Answer, type Order, sentError } from './message.js';

/**
 * Serves the jobs of a registry to whoever started this thread.
 *
 * @param registry - jobs by name
 */
export function serveJobs(registry: Jobs): void {
  const port = parentPort;
  if (port === null) throw new Error('this file is started as a thread by the command line, not by hand');
  const answer = (message: Answer) => port.postMessage(message);
  port.on('message', async ({ job, input }: Order) => {
    try {
      const load = registry[job];
      if (load === undefined) throw new Error(`there is no job "${job}"`);
      const work = (await load()) as Job<unknown, unknown>;
      answer({ kind: 'began' });
      answer({ kind: 'done', value: await work(input) });
    } catch (error) {
      answer({ kind: 'failed', error: sentError(error) });
    }
  });
}
