#!/usr/bin/env node
import { processEnvironment } from './environment.js';
/** The process: arguments in, exit status out. Everything else is in `run.ts`. */
import { exitStatus } from './exit-status.js';
import { run } from './run.js';
import { settleCompiler } from './settle-compiler.js';

// A reader that stops early (`| head`) is no fault: end without a word.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  process.exit(error.code === 'EPIPE' ? 0 : exitStatus.fileTrouble);
});

settleCompiler(process.versions.v8);
process.exitCode = await run(process.argv.slice(2), processEnvironment());
