/** Jobs that do what a job may do wrong, beside some that do it right. */
import { setTimeout as wait } from 'node:timers/promises';
import { isMainThread, threadId } from 'node:worker_threads';
import type { Jobs } from '../../../src/cli/workers/job.js';
import { type Coded, engineError, IssuesError } from '../../../src/issues/issue.js';

const place = { file: 'a.yaml', line: 3, column: 5, path: 'pump.mark' };

const works = {
  double: (input: number) => input * 2,
  /** Waits as long as it is told. */
  late: async ({ milliseconds, name }: { milliseconds: number; name: string }) => {
    await wait(milliseconds);
    return name;
  },
  where: (_: number) => ({ here: isMainThread, thread: threadId }),
  /** Changes what it was given. */
  spoil: (input: { list: number[] }) => {
    input.list.push(0);
    return input.list.length;
  },
  refuse: (code: string): never => {
    throw engineError({ code, data: { found: 7, several: ['a', 'b'] } } as unknown as Coded);
  },
  issues: (_: number): never => {
    throw new IssuesError([{ code: 'input.tab', severity: 'error', data: { found: 'x' }, place }]);
  },
  fault: (_: number): never => {
    throw new TypeError('not a function');
  },
  word: (word: string): never => {
    throw word;
  },
  unsendable: (_: number) => () => 1,
  leave: (_: number): number => process.exit(3),
  spin: (_: number): number => {
    for (;;);
  },
  hoard: (_: number): number => {
    const all: number[][] = [];
    for (;;) all.push(Array.from({ length: 1000 }, (_, index) => index + all.length));
  },
  /** Bytes of arrays, which the engine does not count in its own limit; slowly, so that a look can see it. */
  swell: async (_: number): Promise<number> => {
    const all: Uint8Array[] = [];
    for (;;) {
      all.push(new Uint8Array(16 * 1024 * 1024).fill(1));
      await wait(20);
    }
  },
};

export const jobs = Object.fromEntries(
  Object.entries(works).map(([name, work]) => [name, async () => work]),
) as { readonly [Name in keyof typeof works]: () => Promise<(typeof works)[Name]> } satisfies Jobs;
