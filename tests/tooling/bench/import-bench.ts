/**
 * Loading the doors of the built library, each in a process of its own, as ratios to a bare start of Node.
 */
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { ensureBuilt, root } from '../ensure-built.mjs';

const ROUNDS = 15;
/** Times bare Node that loading the whole should stay under. */
const BUDGET = 3;

function took(text: string): number {
  const start = performance.now();
  const { status, stderr } = spawnSync(process.execPath, ['--input-type=module', '-e', text], {
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(stderr);
  return performance.now() - start;
}

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[values.length >> 1] ?? Number.NaN;

ensureBuilt();
const doors = ['frame', 'review', 'print', 'index', 'templates', 'fonts'];
const texts = [
  '0',
  ...doors.map((door) => `import ${JSON.stringify(pathToFileURL(join(root, 'dist', `${door}.js`)).href)}`),
];
// Rounds go through all doors in turn, so that a slow spell of the machine falls on all of them alike.
const rounds = Array.from({ length: ROUNDS }, () => texts.map(took));
const medians = texts.map((_, index) => median(rounds.map((times) => times[index] ?? Number.NaN)));
const bare = medians[0] ?? Number.NaN;
console.log(`\n${'loading a door'.padEnd(40)} ${'median'.padStart(9)} ${'× bare'.padStart(8)}  budget`);
for (const [index, door] of doors.entries()) {
  const time = medians[index + 1] ?? Number.NaN;
  const words = door === 'index' ? `${BUDGET} × ${time <= BUDGET * bare ? 'kept' : 'MISSED'}` : '';
  const name = door === 'index' ? 'pipeborne' : `pipeborne/${door}`;
  console.log(
    `${name.padEnd(40)} ${`${time.toFixed(0)} ms`.padStart(9)} ${(time / bare).toFixed(2).padStart(8)}  ${words}`,
  );
}
