import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { beforeAll, expect, test } from 'vitest';
import { jobs } from '../../../src/cli/workers/jobs.js';
import { openWorkers } from '../../../src/cli/workers/open-workers.js';
import { openPool } from '../../../src/cli/workers/pool.js';
import { IssuesError } from '../../../src/issues/issue.js';
import { ensureBuilt, root } from '../../tooling/ensure-built.mjs';

beforeAll(ensureBuilt);

const inputs = readdirSync(join(root, 'samples'))
  .filter((name) => name.endsWith('.yaml'))
  .slice(0, 2)
  .map((name) => ({ name, text: readFileSync(join(root, 'samples', name), 'utf8') }));

const built = pathToFileURL(join(root, 'dist/cli/worker.js'));

test('in the thread that asks and in threads of the build the results are the same', async () => {
  const unusable = { name: 'bad.yaml', text: 'format: pipeborne/1\npump: {}\n' };
  const all = [openWorkers({ workers: 1 }), openPool(jobs, built, { workers: 2 })].map(async (workers) => {
    const outcomes = await workers.runEach('results-of-text', [...inputs, unusable]);
    await workers.close();
    return outcomes;
  });
  const [here, bundle] = await Promise.all(all);
  expect(here?.map(({ ok }) => ok)).toEqual([true, true, false]);
  expect(bundle).toEqual(here);
  const refused = bundle?.[2];
  expect(refused?.ok === false && refused.error).toBeInstanceOf(IssuesError);
});

test('the entry of the threads is of no use by itself, and says so', () => {
  const { status, stderr } = spawnSync(process.execPath, [join(root, 'dist/cli/worker.js')], {
    encoding: 'utf8',
  });
  expect(status).not.toBe(0);
  expect(stderr).toContain('started as a thread by the command line');
});

test('threads that are forgotten do not keep the process', () => {
  const script = `
    import { entryBeside } from './src/cli/workers/open-workers.ts';
    import { openPool } from './src/cli/workers/pool.ts';
    import { jobs } from './tests/cli/workers/jobs-for-tests.ts';
    const entry = entryBeside(new URL('tests/cli/workers/jobs-for-tests.ts', 'file://' + process.cwd() + '/').href, './test-worker');
    const pool = openPool(jobs, entry, { workers: 2 });
    console.log((await pool.runEach('where', [1, 2])).map((outcome) => outcome.value.here).join());`;
  const { stdout } = spawnSync(process.execPath, ['--import', 'tsx', '--input-type=module', '-e', script], {
    cwd: root,
    encoding: 'utf8',
    timeout: 50_000,
  });
  expect(stdout).toBe('false,false\n');
});
