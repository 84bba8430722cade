/** Reads the files named on the command line, and says the most memory the process ever held [bytes]. */
import { readFileSync } from 'node:fs';
import { readForm } from '../../../src/fieldwork/form/read-form.js';
import { EngineError } from '../../../src/issues/issue.js';
import { sheet } from './sheet-fixture.js';

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

const read = await readAll(process.argv.slice(2));
process.stdout.write(JSON.stringify({ read, largest: process.resourceUsage().maxRSS * 1024 }));
