/** The pool of the command line: its own jobs, as many threads as the machine has cores. */
import { createRequire } from 'node:module';
import { availableParallelism } from 'node:os';
import { pathToFileURL } from 'node:url';
import { jobs } from './jobs.js';
import { openPool, type Pool, type PoolOptions } from './pool.js';

/** The pool with the jobs of the command line. */
export type Workers = Pool<typeof jobs>;

/**
 * Opens the pool. Close it when done.
 *
 * @param options - number of threads, one a core where it is not given; limits of each job
 * @returns the pool
 */
export function openWorkers(options: Partial<PoolOptions> = {}): Workers {
  return openPool(jobs, entryBeside(import.meta.url, './worker'), {
    workers: availableParallelism(),
    ...options,
  });
}

/**
 * The entry of a thread: the built file beside the built caller, or the source beside the source. Source needs the
 * compiler that whoever works on the project has; a thread does not inherit it, so the entry asks for it.
 *
 * @param caller - address of the file that asks
 * @param name - name of the entry beside it, without ending
 * @returns the entry
 */
export function entryBeside(caller: string, name: string): URL {
  if (!caller.endsWith('.ts')) return new URL(`${name}.js`, caller);
  const compiler = new URL('./esm/api/index.mjs', pathToFileURL(createRequire(caller).resolve('tsx')));
  const source = new URL(`${name}.ts`, caller);
  const code = `import { register } from '${compiler}'; register(); await import('${source}');`;
  return new URL(`data:text/javascript,${encodeURIComponent(code)}`);
}
