/**
 * Reviews every sample with the built command line, one of them on the paper of a firm, compares it with an earlier
 * revision, and says where everything is.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
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
/** Runs the command line and notes whether it did what it is for. */
function run(args) {
  console.log(`$ pipeborne ${args.join(' ')}`);
  const { status } = spawnSync(process.execPath, [relative(root, builtCommand), ...args], {
    cwd: root,
    stdio: 'inherit',
  });
  console.log(`exit status ${status}\n`);
  failed ||= !made.has(status);
}

for (const sample of samples) {
  const name = basename(sample, '.yaml');
  const [pdf, results] = [`reviews/${name}.pdf`, `reviews/${name}.json`];
  run(['review', join('samples', sample), '-o', pdf, '--results', results]);
}

const pool = 'samples/pool-hot-water.yaml';
run([
  'review',
  pool,
  '--templates',
  'samples/letterhead',
  '--for',
  'contractor',
  '-o',
  'reviews/letterhead.pdf',
]);

// Revision A, as the sample's own table of revisions tells it: H2 and H4 stood further from the upper elbows.
const earlier = readFileSync(join(root, pool), 'utf8')
  .replace(/^ *- \{mark: B,.*\n/m, '')
  .replace(/^( *date: ).*$/m, '$12026-08-31')
  .replaceAll(/straight: 14 ft(\n *- hanger: \{mark: H[24].*\n *- straight: )5 ft/g, 'straight: 16 ft$13 ft');
writeFileSync(join(root, 'reviews/pool-hot-water-a.yaml'), earlier);
run(['compare', 'reviews/pool-hot-water-a.yaml', pool, '-o', 'reviews/what-changed.pdf']);

for (const name of readdirSync(join(root, 'samples/readings')).sort()) {
  const base = basename(name, '.yaml');
  const [pdf, next] = [`reviews/${base}-as-installed.pdf`, `reviews/${base}-next-sheet.pdf`];
  run(['as-installed', `samples/${name}`, `samples/readings/${name}`, '-o', pdf, '--sheet', next]);
}
process.exitCode = failed ? 1 : 0;
