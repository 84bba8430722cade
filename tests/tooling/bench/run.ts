/**
 * Start-up and whole runs as a user meets them, each a process of its own on the built command line, in medians, and
 * as ratios to a bare start of Node, which travel better between machines than times. `npm run bench`.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { builtCommand, ensureBuilt, root } from '../ensure-built.mjs';

const ROUNDS = 15;

interface Run {
  readonly what: string;
  readonly args: readonly string[];
  /** What it should stay under on two cores: milliseconds, or times bare Node. */
  readonly budget?: { readonly milliseconds?: number; readonly timesBare?: number };
}

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[values.length >> 1] ?? Number.NaN;

function oneRun(args: readonly string[]): number {
  const start = performance.now();
  const { status, stderr } = spawnSync(process.execPath, args, { cwd: root, encoding: 'utf8' });
  const took = performance.now() - start;
  if (status !== 0 && status !== 1 && status !== 4)
    throw new Error(`${args.join(' ')} ended with ${status}\n${stderr}`);
  return took;
}

function runsOf(out: string): readonly Run[] {
  const samples = readdirSync(join(root, 'samples'))
    .filter((name) => name.endsWith('.yaml'))
    .sort();
  return [
    { what: 'bare node -e 0', args: ['-e', '0'] },
    { what: '--help', args: [builtCommand, '--help'], budget: { timesBare: 2 } },
    { what: '--version', args: [builtCommand, '--version'] },
    { what: 'schema', args: [builtCommand, 'schema'] },
    ...samples.flatMap((sample) => {
      const [name, file] = [basename(sample, '.yaml'), join('samples', sample)];
      return [
        { what: `check ${name}`, args: [builtCommand, 'check', file], budget: { milliseconds: 300 } },
        {
          what: `review ${name}`,
          args: [builtCommand, 'review', file, '-o', join(out, `${name}.pdf`)],
          budget: { milliseconds: 1000 },
        },
      ];
    }),
  ];
}

function printTable(runs: readonly Run[], times: readonly number[]): void {
  const bare = times[0] ?? Number.NaN;
  console.log(`${'whole process'.padEnd(40)} ${'median'.padStart(9)} ${'× bare'.padStart(8)}  budget`);
  for (const [index, { what, budget }] of runs.entries()) {
    const time = times[index] ?? Number.NaN;
    const limit = budget?.milliseconds ?? (budget?.timesBare ?? Number.NaN) * bare;
    const words = budget === undefined ? '' : `${limit.toFixed(0)} ms ${time <= limit ? 'kept' : 'MISSED'}`;
    console.log(
      `${what.padEnd(40)} ${`${time.toFixed(0)} ms`.padStart(9)} ${(time / bare).toFixed(2).padStart(8)}  ${words}`,
    );
  }
}

ensureBuilt();
const out = mkdtempSync(join(tmpdir(), 'pipeborne-bench-'));
try {
  const runs = runsOf(out);
  // Rounds go through all runs in turn, so that a slow spell of the machine falls on all of them alike.
  const rounds = Array.from({ length: ROUNDS }, () => runs.map(({ args }) => oneRun(args)));
  console.log(`Node ${process.version}, ${cpus().length} cores, ${ROUNDS} rounds\n`);
  printTable(
    runs,
    runs.map((_, index) => median(rounds.map((times) => times[index] ?? Number.NaN))),
  );
} finally {
  rmSync(out, { recursive: true, force: true });
}
