/** Reviews every sample with the built command line and says where each review is. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync } from 'node:fs';
import { basename, join, relative } from 'node:path';
import { builtCommand, ensureBuilt, root } from './ensure-built.mjs';

/** Statuses of a review that was made, whatever it says: a sample that exceeds is what it is there to show. */
const made = new Set([0, 1, 4]);

ensureBuilt();
mkdirSync(join(root, 'reviews'), { recursive: true });
const samples = readdirSync(join(root, 'samples'))
  .filter((name) => name.endsWith('.yaml'))
  .sort();
if (samples.length === 0) throw new Error('samples/ holds no .yaml file');

let failed = false;
for (const sample of samples) {
  const name = basename(sample, '.yaml');
  const [pdf, results] = [`reviews/${name}.pdf`, `reviews/${name}.json`];
  const args = ['review', join('samples', sample), '-o', pdf, '--results', results];
  console.log(`$ pipeborne ${args.join(' ')}`);
  const { status } = spawnSync(process.execPath, [relative(root, builtCommand), ...args], {
    cwd: root,
    stdio: 'inherit',
  });
  console.log(`exit status ${status}\n`);
  failed ||= !made.has(status);
}
process.exitCode = failed ? 1 : 0;
