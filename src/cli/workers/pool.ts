/** Jobs over several threads: results in order, one that fails does not keep the others from being done. */
import { setImmediate as turn } from 'node:timers/promises';
import { EngineError } from '../../issues/issue.js';
import type { InputOf, Job, JobLimits, Jobs, NameOf, Outcome, OutputOf } from './job.js';
import { workerThread } from './worker-thread.js';

export interface PoolOptions {
  /** How many threads, at least 1. A limit of memory makes it 1: memory is counted over the whole process. */
  readonly workers: number;
  readonly limits?: JobLimits;
}

/** How a batch is followed and stopped. */
export interface BatchOptions<Output> {
  /** Called in the order of the inputs, each as soon as it and all before it have ended. */
  readonly onOutcome?: (outcome: Outcome<Output>, index: number) => void;
  /** Called whenever one has ended, with how many have. */
  readonly onProgress?: (ended: number) => void;
  /** Stops the batch: what has not ended then fails with `cli.worker.cancelled`. */
  readonly signal?: AbortSignal;
}

export interface Pool<Registry extends Jobs> {
  /** Does a job for each input, and gives one outcome an input, in their order. It never rejects for a job. */
  readonly runEach: <Name extends NameOf<Registry>>(
    name: Name,
    inputs: readonly InputOf<Registry, Name>[],
    options?: BatchOptions<OutputOf<Registry, Name>>,
  ) => Promise<readonly Outcome<OutputOf<Registry, Name>>[]>;
  /** Does one job, and rejects with its error. */
  readonly runOne: <Name extends NameOf<Registry>>(
    name: Name,
    input: InputOf<Registry, Name>,
  ) => Promise<OutputOf<Registry, Name>>;
  /** How many threads it works with [-]. */
  readonly size: number;
  /** Stops the threads. */
  readonly close: () => Promise<void>;
}

/**
 * A pool of threads. One job, or one thread, is done in the thread that asks, unless there are limits to keep.
 *
 * @param registry - jobs by name
 * @param entry - where a thread of the same registry starts
 * @param options - number of threads, limits of each job
 * @returns the pool; its threads start with the first batch that needs them and stay for the next
 */
export function openPool<Registry extends Jobs>(
  registry: Registry,
  entry: URL,
  { workers, limits = {} }: PoolOptions,
): Pool<Registry> {
  const limited = limits.seconds !== undefined || limits.memory !== undefined;
  const size = limits.memory === undefined ? Math.max(1, Math.floor(workers)) : 1;
  const threads = Array.from({ length: size }, () => workerThread(entry, limits));

  const here = async (name: string, input: unknown): Promise<unknown> => {
    const work = (await registry[name]?.()) as Job<unknown, unknown>;
    // Copied both ways as a thread would, so that a job cannot come to rely on sharing what it is given.
    const value = structuredClone(await work(structuredClone(input)));
    // Signals and timers get their turn between two jobs.
    await turn();
    return value;
  };

  const runBatch: Pool<Registry>['runEach'] = async (name, inputs, batch = {}) => {
    type Output = OutputOf<Registry, typeof name>;
    const inThisThread = !limited && (size === 1 || inputs.length < 2);
    const outcomes: Outcome<Output>[] = [];
    let next = 0;
    let ended = 0;
    let told = 0;
    const end = (index: number, outcome: Outcome<Output>) => {
      outcomes[index] = outcome;
      ended += 1;
      batch.onProgress?.(ended);
      for (let ready = outcomes[told]; ready !== undefined; ready = outcomes[told]) {
        batch.onOutcome?.(ready, told);
        told += 1;
      }
    };
    const workThrough = async (work: (input: unknown) => Promise<unknown>) => {
      for (let index = next++; index < inputs.length; index = next++) {
        if (batch.signal?.aborted) end(index, { ok: false, error: cancelled() });
        else end(index, await outcomeOf<Output>(work(inputs[index])));
      }
    };
    const stopAll = () => void Promise.all(threads.map((thread) => thread.stop(cancelled())));
    batch.signal?.addEventListener('abort', stopAll);
    try {
      if (inThisThread) await workThrough((input) => here(name, input));
      else {
        const needed = threads.slice(0, inputs.length);
        await Promise.all(needed.map((thread) => workThrough((input) => thread.work({ job: name, input }))));
      }
    } finally {
      batch.signal?.removeEventListener('abort', stopAll);
    }
    return outcomes;
  };

  // A thread takes one order at a time, so a second batch waits for the first.
  let last: Promise<unknown> = Promise.resolve();
  const runEach: Pool<Registry>['runEach'] = (name, inputs, batch) => {
    const mine = last.then(() => runBatch(name, inputs, batch));
    last = mine.catch(() => {});
    return mine;
  };

  return {
    size,
    runEach,
    runOne: async (name, input) => {
      const [outcome] = await runEach(name, [input]);
      if (outcome?.ok) return outcome.value as OutputOf<Registry, typeof name>;
      throw outcome?.error;
    },
    close: async () => {
      await Promise.all(threads.map((thread) => thread.stop(cancelled())));
    },
  };
}

async function outcomeOf<Output>(work: Promise<unknown>): Promise<Outcome<Output>> {
  try {
    return { ok: true, value: (await work) as Output };
  } catch (error) {
    return { ok: false, error: error instanceof Error ? error : new Error(String(error)) };
  }
}

function cancelled(): EngineError {
  return new EngineError('cli.worker.cancelled');
}
