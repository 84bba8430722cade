#!/usr/bin/env node
import { processEnvironment } from './environment.js';
/** The process: arguments in, exit status out. Everything else is in `run.ts`. */
import { worstStatus } from './exit-status.js';
import { run } from './run.js';
import { settleCompiler } from './settle-compiler.js';
import { watchStreams } from './terminal/watch-streams.js';

const streams = watchStreams(process.stdout, process.stderr);
settleCompiler(process.versions.v8);
const status = await run(process.argv.slice(2), processEnvironment());
process.exitCode = worstStatus([status, await streams.status()]);
