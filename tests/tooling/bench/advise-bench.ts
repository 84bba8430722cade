/**
 * How many trials of `advise` are made in a second of processor time, in one thread: every single change of two files
 * that exceed, after a first round that lets the compiler settle. Run by hand or by `npm run bench`.
 */
import { readFileSync } from 'node:fs';
import { review } from '../../../src/app/review.js';
import { openForTrials } from '../../../src/input/open-for-trials.js';
import { allChanges } from '../../../src/study/advise/all-changes.js';
import { searchPlan } from '../../../src/study/advise/plan.js';
import { screen } from '../../../src/study/advise/screen.js';
import { changedSituation } from '../../../src/study/advise/situation.js';

const ROUNDS = 5;
/** A thousand trials under 5 s on two cores. */
const BUDGET = 100;

const sample = (name: string) =>
  readFileSync(new URL(`../../../samples/${name}.yaml`, import.meta.url), 'utf8');

const files = {
  'library, as it is': sample('library-chilled-water'),
  'pool, a rod too small': sample('pool-hot-water').replace(
    '{mark: H3, rod: 3/4 in',
    '{mark: H3, rod: 1/2 in',
  ),
};

const spent = () => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
};

console.log('\ntrials of advise'.padEnd(41), 'changes', ' a second', ' budget');
for (const [name, text] of Object.entries(files)) {
  const opening = openForTrials(text);
  if (!opening.ok) throw new Error(`${name} cannot be read`);
  const { opened } = opening;
  const plan = searchPlan(review(opened.installation)).quick;
  const situation = changedSituation(opened, []);
  const base = screen(opened, plan, []);
  if (situation === undefined || base === undefined) throw new Error(`${name} cannot be worked out`);
  const changes = allChanges({ ...situation, filled: base.filled }, opened, { marks: [], kinds: [] });
  const rates = Array.from({ length: ROUNDS }, () => {
    const start = spent();
    for (const { edits } of changes) screen(opened, plan, edits);
    return changes.length / (spent() - start);
  });
  const rate = Math.max(...rates.slice(1));
  console.log(
    name.padEnd(40),
    String(changes.length).padStart(7),
    rate.toFixed(0).padStart(9),
    String(BUDGET).padStart(7),
    rate < BUDGET ? ' slower' : '',
  );
}
