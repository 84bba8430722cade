import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { beforeAll, expect, test } from 'vitest';
import { jobs } from '../../src/cli/workers/jobs.js';
import { openWorkers } from '../../src/cli/workers/open-workers.js';
import { openPool } from '../../src/cli/workers/pool.js';
import { readInstallation, review } from '../../src/index.js';
import { runTrial, trialBase } from '../../src/study/bands/evaluate.js';
import { uncertaintiesOf } from '../../src/study/bands/uncertainties.js';
import { ensureBuilt, root } from '../tooling/ensure-built.mjs';

beforeAll(ensureBuilt);

test('trials in threads of the build give the numbers of trials in the thread that asks', async () => {
  const reading = readInstallation(readFileSync(join(root, 'samples/pool-hot-water.yaml'), 'utf8'));
  if (!reading.ok) throw new Error('the sample cannot be read');
  const { base } = trialBase(review(reading.installation), uncertaintiesOf(reading.installation));
  const rows = base.uncertainties.map((_, index) =>
    base.uncertainties.map((_, each) => (each === index ? 1 : 0)),
  );
  const works = [rows.slice(0, 5), rows.slice(5)].map((part) => ({ base, rows: part }));
  const pool = openPool(jobs, pathToFileURL(join(root, 'dist/cli/worker.js')), { workers: 2 });
  const threads = await pool.runEach('try-out', works);
  await pool.close();
  const here = await openWorkers({ workers: 1 }).runEach('try-out', works);
  const all = (outcomes: typeof here): readonly unknown[] =>
    outcomes.flatMap((outcome): readonly unknown[] => (outcome.ok ? outcome.value : [outcome.error]));
  expect(all(threads)).toEqual(rows.map((row) => runTrial(base, row)));
  expect(all(here)).toEqual(all(threads));
});
