import { afterEach, describe, expect, test } from 'vitest';
import { entryBeside } from '../../../src/cli/workers/open-workers.js';
import { openPool, type PoolOptions } from '../../../src/cli/workers/pool.js';
import { EngineError, IssuesError } from '../../../src/issues/issue.js';
import { jobs } from './jobs-for-tests.js';

const opened: { close: () => Promise<void> }[] = [];
const open = (options: PoolOptions) => {
  const pool = openPool(jobs, entryBeside(import.meta.url, './test-worker'), options);
  opened.push(pool);
  return pool;
};
afterEach(async () => {
  await Promise.all(opened.splice(0).map((pool) => pool.close()));
});

const inOneThread = { workers: 1 };
const inTwoThreads = { workers: 2 };
const errorOf = async (work: Promise<unknown>): Promise<unknown> => {
  try {
    return await work;
  } catch (error) {
    return error;
  }
};

describe.each([
  ['in the thread that asks', inOneThread],
  ['in two threads', inTwoThreads],
])('%s', (_, options) => {
  const both = <Input>(input: Input) => [input, input];

  test('outcomes come in the order of the inputs, whichever ends first', async () => {
    const told: string[] = [];
    const counts: number[] = [];
    const inputs = [
      { milliseconds: 120, name: 'slow' },
      { milliseconds: 1, name: 'quick' },
      { milliseconds: 1, name: 'last' },
    ];
    const outcomes = await open(options).runEach('late', inputs, {
      onOutcome: (outcome, index) => told.push(`${index} ${outcome.ok ? outcome.value : outcome.error}`),
      onProgress: (ended) => counts.push(ended),
    });
    expect(outcomes).toEqual(['slow', 'quick', 'last'].map((value) => ({ ok: true, value })));
    expect(told).toEqual(['0 slow', '1 quick', '2 last']);
    expect(counts).toEqual([1, 2, 3]);
  });

  test('an error of the engine keeps its code and data', async () => {
    const [outcome] = await open(options).runEach('refuse', both('mechanics.some'));
    const error = outcome?.ok === false ? outcome.error : undefined;
    expect(error).toBeInstanceOf(EngineError);
    expect(error).toMatchObject({ code: 'mechanics.some', data: { found: 7, several: ['a', 'b'] } });
  });

  test('issues keep their places', async () => {
    const [outcome] = await open(options).runEach('issues', both(1));
    const error = outcome?.ok === false ? outcome.error : undefined;
    expect(error).toBeInstanceOf(IssuesError);
    expect((error as IssuesError).issues[0]).toMatchObject({
      code: 'input.tab',
      data: { found: 'x' },
      place: { line: 3, path: 'pump.mark' },
    });
  });

  test('a fault keeps its name, its words and where it happened', async () => {
    const [outcome] = await open(options).runEach('fault', both(1));
    const error = outcome?.ok === false ? outcome.error : undefined;
    expect(error).toMatchObject({ name: 'TypeError', message: 'not a function' });
    expect(error?.stack).toContain('jobs-for-tests');
  });

  test('what is thrown and is no error becomes one', async () => {
    const [outcome] = await open(options).runEach('word', both('oh'));
    expect(outcome).toMatchObject({ ok: false, error: { message: 'oh' } });
  });

  test('one that fails does not keep the others from being done', async () => {
    const pool = open(options);
    expect((await pool.runEach('unsendable', both(1))).map(({ ok }) => ok)).toEqual([false, false]);
    expect(await pool.runEach('double', [1, 2, 3])).toEqual([2, 4, 6].map((value) => ({ ok: true, value })));
  });

  test('a job gets a copy of its input', async () => {
    const input = { list: [1] };
    expect(await open(options).runEach('spoil', [input, input])).toEqual(both({ ok: true, value: 2 }));
    expect(input).toEqual({ list: [1] });
  });

  test('an input that cannot be sent is the failure of that job alone', async () => {
    const input = { milliseconds: 1, name: (() => 'x') as unknown as string };
    const outcomes = await open(options).runEach('late', [input, { milliseconds: 1, name: 'good' }]);
    expect(outcomes.map(({ ok }) => ok)).toEqual([false, true]);
  });

  test('a batch that is stopped gives what it has', async () => {
    const stop = new AbortController();
    const outcomes = await open(options).runEach(
      'late',
      Array.from({ length: 6 }, (_, index) => ({ milliseconds: index === 5 ? 100 : 10, name: `${index}` })),
      { signal: stop.signal, onProgress: (ended) => ended === 2 && stop.abort() },
    );
    expect(outcomes.filter(({ ok }) => ok).length).toBe(2);
    expect(outcomes.flatMap((outcome) => (outcome.ok ? [] : [outcome.error]))).toEqual(
      Array.from({ length: 4 }, () => new EngineError('cli.worker.cancelled')),
    );
  });

  test('two batches at a time are done one after the other', async () => {
    const pool = open(options);
    const [first, second] = await Promise.all([
      pool.runEach(
        'late',
        [20, 1].map((milliseconds) => ({ milliseconds, name: 'first' })),
      ),
      pool.runEach('double', [1, 2]),
    ]);
    expect(first.map((outcome) => outcome.ok && outcome.value)).toEqual(['first', 'first']);
    expect(second.map((outcome) => outcome.ok && outcome.value)).toEqual([2, 4]);
  });

  test('no input, no outcome', async () => {
    expect(await open(options).runEach('double', [])).toEqual([]);
  });
});

test('several jobs are done in several threads, one job or one thread where it is asked', async () => {
  const several = await open(inTwoThreads).runEach('where', [1, 2, 3, 4]);
  expect(several.every((outcome) => outcome.ok && !outcome.value.here)).toBe(true);
  expect((await open(inTwoThreads).runOne('where', 1)).here).toBe(true);
  expect((await open(inOneThread).runEach('where', [1, 2]))[0]).toMatchObject({ value: { here: true } });
  expect((await open({ workers: 0 }).runEach('where', [1, 2]))[0]).toMatchObject({ value: { here: true } });
});

test('a job with a limit always has a thread of its own', async () => {
  expect((await open({ workers: 1, limits: { seconds: 30 } }).runOne('where', 1)).here).toBe(false);
});

test('a job that takes too long is stopped, and the thread after it works', async () => {
  const pool = open({ workers: 2, limits: { seconds: 0.3 } });
  const [first, second] = await Promise.all([
    errorOf(pool.runOne('spin', 1)),
    pool.runEach('double', [1, 2, 3]),
  ]);
  expect(first).toEqual(new EngineError('cli.worker.too-long', { seconds: 0.3 }));
  expect(second.map(({ ok }) => ok)).toEqual([true, true, true]);
});

test('time counts from the moment the work begins, not from the start of the thread', async () => {
  // A thread that starts from source takes longer than this to load the compiler alone.
  const pool = open({ workers: 1, limits: { seconds: 0.02 } });
  expect(await pool.runOne('double', 4)).toBe(8);
});

test.each(['hoard', 'swell'] as const)('a job that takes too much memory is stopped: %s', async (name) => {
  const pool = open({ workers: 2, limits: { memory: 96, seconds: 50 } });
  expect(await errorOf(pool.runOne(name, 1))).toEqual(
    new EngineError('cli.worker.out-of-memory', { memory: 96 }),
  );
  expect(await pool.runOne('double', 5)).toBe(10);
});

test('a job that ends its thread is a fault of that job', async () => {
  const pool = open(inTwoThreads);
  const outcomes = await pool.runEach('leave', [1, 2]);
  expect(outcomes.map((outcome) => outcome.ok || outcome.error.message)).toEqual(
    Array.from({ length: 2 }, () => 'a thread ended before its work'),
  );
  expect(await pool.runEach('double', [1, 2])).toEqual([2, 4].map((value) => ({ ok: true, value })));
});

test('a batch that was stopped before it began does nothing', async () => {
  const outcomes = await open(inTwoThreads).runEach('spin', [1, 2], { signal: AbortSignal.abort() });
  expect(outcomes.map(({ ok }) => ok)).toEqual([false, false]);
});

test('a spinning batch can be stopped', async () => {
  const outcomes = await open(inTwoThreads).runEach('spin', [1, 2, 3], { signal: AbortSignal.timeout(300) });
  expect(outcomes.map((outcome) => outcome.ok || outcome.error)).toEqual(
    Array.from({ length: 3 }, () => new EngineError('cli.worker.cancelled')),
  );
});
