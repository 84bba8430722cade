/**
 * Runs lanes of tests: `node tests/tooling/run-lanes.mjs quick`. What follows the lanes goes to the test runner:
 * `npm test -- -t 'a name'`. Ends with one line of what passed and failed; TEST_COUNTS names a file that gets it too.
 */
import { existsSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseCLI, startVitest } from 'vitest/node';
import { lanes, lanesOf } from './lanes.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const [words = 'quick', ...rest] = process.argv.slice(2);
const folders = words.split(',').flatMap((word) => lanesOf(word).flatMap((name) => lanes[name].folders));
const filters = folders.map((folder) => `tests/${folder}/`).filter((name) => existsSync(`${root}${name}`));

const { filter, options } = parseCLI(['vitest', 'run', ...rest]);
const vitest = await startVitest('test', filter.length > 0 ? filter : filters, {
  ...options,
  run: true,
  watch: false,
  config: fileURLToPath(new URL('./vitest.config.ts', import.meta.url)),
});

const tests = vitest.state.getTestModules().flatMap((module) => [...module.children.allTests()]);
const count = (state) => tests.filter((test) => test.result().state === state).length;
/** A file that could not be read at all has no tests, and is a failure none the less. */
const broken = vitest.state
  .getTestModules()
  .filter((module) => module.state() === 'failed' && ![...module.children.allTests('failed')].length).length;
const [passed, failed, skipped] = [count('passed'), count('failed') + broken, count('skipped')];
const unhandled = vitest.state.getUnhandledErrors().length;
const line = `${passed} passed, ${failed + unhandled} failed, ${skipped} skipped`;
await vitest.close();
if (process.env.TEST_COUNTS) writeFileSync(process.env.TEST_COUNTS, `${line}\n`);
console.log(`\n${line}`);
if (failed + unhandled > 0 || passed === 0) process.exitCode = 1;
