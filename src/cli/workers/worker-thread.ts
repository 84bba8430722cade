/** One thread, started when there is work for it and again after it had to be stopped. */
import { Worker } from 'node:worker_threads';
import { EngineError } from '../../issues/issue.js';
import type { JobLimits } from './job.js';
import { type Answer, type Order, receivedError } from './message.js';

export interface WorkerThread {
  /** Does one job. One at a time. */
  readonly work: (order: Order) => Promise<unknown>;
  /** Stops the thread, with `reason` as the end of the job in hand; the next order starts it again. */
  readonly stop: (reason: Error) => Promise<void>;
}

/** Time between two looks at the memory of the process, in ms. */
const LOOK_EVERY = 50;

const MEBIBYTE = 1024 * 1024;

/**
 * A thread for jobs.
 *
 * @param entry - where it starts
 * @param limits - what each of its jobs may take
 * @returns the thread, which is not started yet and keeps the process alive only while it works
 */
export function workerThread(entry: URL, limits: JobLimits): WorkerThread {
  let worker: Worker | undefined;
  let fail: (error: Error) => void = () => {};

  const start = (): Worker => {
    const started = new Worker(
      entry,
      limits.memory === undefined ? {} : { resourceLimits: { maxOldGenerationSizeMb: limits.memory } },
    );
    const ended = (error: Error) => {
      // A thread that was stopped has told its reason, and the job in hand is another's by now.
      if (worker !== started) return;
      worker = undefined;
      fail(error);
    };
    started.on('error', (error: NodeJS.ErrnoException) => {
      ended(error.code === 'ERR_WORKER_OUT_OF_MEMORY' ? outOfMemory(limits) : error);
    });
    started.on('exit', () => ended(new Error('a thread ended before its work')));
    return started;
  };

  const stop = async (reason: Error): Promise<void> => {
    const stopped = worker;
    worker = undefined;
    fail(reason);
    await stopped?.terminate();
  };

  const work = async (order: Order): Promise<unknown> => {
    worker ??= start();
    const current = worker;
    current.ref();
    let watch: () => void = () => {};
    try {
      return await new Promise((resolve, reject) => {
        fail = reject;
        current.on('message', (answer: Answer) => {
          if (answer.kind === 'began') watch = watchLimits(limits, stop);
          else if (answer.kind === 'done') resolve(answer.value);
          else reject(receivedError(answer.error));
        });
        current.postMessage(order);
      });
    } finally {
      watch();
      fail = () => {};
      current.removeAllListeners('message');
      current.unref();
    }
  };

  return { work, stop };
}

/** Stops the work when it takes more than it may; returns how to look no longer. */
function watchLimits(limits: JobLimits, stop: WorkerThread['stop']): () => void {
  const { seconds, memory } = limits;
  const timers: NodeJS.Timeout[] = [];
  if (seconds !== undefined) {
    timers.push(
      setTimeout(() => void stop(new EngineError('cli.worker.too-long', { seconds })), seconds * 1000),
    );
  }
  if (memory !== undefined) {
    // The engine counts what it collects itself, not the bytes of arrays, which a bomb is made of.
    const before = process.memoryUsage.rss();
    const look = () => {
      if (process.memoryUsage.rss() - before > memory * MEBIBYTE) void stop(outOfMemory(limits));
    };
    timers.push(setInterval(look, LOOK_EVERY));
  }
  return () => timers.forEach(clearTimeout);
}

function outOfMemory({ memory = 0 }: JobLimits): EngineError {
  return new EngineError('cli.worker.out-of-memory', { memory });
}
