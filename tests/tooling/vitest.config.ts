import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** A test still running after this long hangs [ms]. */
const HANGS = 20 * 60_000;

export default defineConfig({
  root,
  // As `paths` of tsconfig.json say it.
  resolve: { alias: { yaml: join(root, 'tests/tooling/yaml.js') } },
  test: {
    include: ['tests/**/*.test.ts'],
    // Tests print nothing: a message on the console is a finding, not a log.
    onConsoleLog: () => {
      throw new Error('a test wrote to the console');
    },
    // Tests share nothing that one of them could spoil; one module graph for all of them takes half the time.
    isolate: false,
    // Every core has a worker: what waits on another process leaves its core to the rest.
    maxWorkers: '100%',
    // Ends what hangs, and nothing that is only slow: no test is to depend on a quiet machine.
    testTimeout: HANGS,
    hookTimeout: HANGS,
  },
});
