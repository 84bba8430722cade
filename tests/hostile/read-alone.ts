/** Reads the files named on the command line, and says the most memory the process ever held [bytes]. */
import { readFileSync } from 'node:fs';
import { readForm } from '../../src/forms/read-form.js';
import { EngineError } from '../../src/issues/issue.js';
import { sheet } from '../forms/sheet-fixture.js';

async function readAll(names: readonly string[]): Promise<number> {
  let read = 0;
  for (const name of names) {
    try {
      await readForm(new Uint8Array(readFileSync(name)), sheet);
    } catch (error) {
      if (!(error instanceof EngineError)) throw error;
    }
    read += 1;
    // What one file left behind is no memory that the next one needs.
    globalThis.gc?.();
  }
  return read;
}

/**
 * High-water mark of this very program. What the usage of resources calls by this name also counts what the process held
 * before it became this program: the memory of the test runner that started it.
 */
function mostMemory(): number {
  if (process.platform !== 'linux') return process.resourceUsage().maxRSS * 1024;
  const [, kilobytes = ''] = /^VmHWM:\s*(\d+) kB$/m.exec(readFileSync('/proc/self/status', 'utf8')) ?? [];
  return Number(kilobytes) * 1024;
}

const read = await readAll(process.argv.slice(2));
process.stdout.write(JSON.stringify({ read, largest: mostMemory() }));
