import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fieldSheetPdf } from '../../src/app/render-field-sheet.js';
import { readForm } from '../../src/forms/read-form.js';
import { EngineError } from '../../src/issues/issue.js';
import { sentenceOf } from '../../src/issues/print.js';
import { temporaryFolder } from '../cli/temporary-folder.js';
import { hostileFiles } from '../forms/hostile-files.js';
import { look, sheet } from '../forms/sheet-fixture.js';

/** Bounds of what a hostile file may cost: processor time [ms] and memory of the whole process [bytes]. */
const LONGEST = 2000;
const LARGEST = 300_000_000;

/** The code a file is refused with; `none` when it is read. */
async function codeOf(bytes: Uint8Array): Promise<string> {
  try {
    await readForm(bytes, sheet);
    return 'none';
  } catch (error) {
    if (!(error instanceof EngineError)) throw error;
    expect(sentenceOf(error).message).not.toContain('{');
    return error.code.replace('fieldwork.form.', '');
  }
}

describe('hostile PDFs are refused by name', () => {
  test.each(Object.entries(hostileFiles))('%s', async (_, { make, code }) => {
    const bytes = make();
    const before = process.cpuUsage();
    expect(await codeOf(bytes)).toBe(code);
    const { user, system } = process.cpuUsage(before);
    expect((user + system) / 1000).toBeLessThan(LONGEST);
  });
});

test('a process that reads them one after the other never holds more than 300 MB', () => {
  const folder = temporaryFolder();
  const names = Object.values(hostileFiles).map(({ make }, i) => {
    const name = join(folder, `${i}.pdf`);
    writeFileSync(name, make());
    return name;
  });
  const reader = fileURLToPath(new URL('./read-alone.ts', import.meta.url));
  const said = execFileSync(process.execPath, ['--expose-gc', '--import', 'tsx', reader, ...names], {
    encoding: 'utf8',
  });
  const { read, largest } = JSON.parse(said) as { read: number; largest: number };
  expect(read).toBe(names.length);
  expect(largest).toBeGreaterThan(30_000_000);
  expect(largest).toBeLessThan(LARGEST);
});

describe('bytes changed at random', async () => {
  const whole = await fieldSheetPdf(sheet, look);

  test('a sheet with bytes changed is read or refused, and never more', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(fc.nat(whole.length - 1), fc.nat(255)), { minLength: 1, maxLength: 40 }),
        async (changes) => {
          const bytes = whole.slice();
          for (const [at, byte] of changes) bytes[at] = byte;
          await codeOf(bytes);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('a sheet cut off anywhere is refused', async () => {
    await fc.assert(
      fc.asyncProperty(fc.nat(whole.length - 2000), async (length) => {
        expect(['not-pdf', 'cut-off', 'no-catalog']).toContain(await codeOf(whole.slice(0, length)));
      }),
      { numRuns: 40 },
    );
  });

  test('words of PDFs in any order are read or refused', async () => {
    const word = fc.constantFrom(
      ...'%PDF-1.7\n|1 0 obj|2 0 obj|endobj|<<|>>|[|]|(|)|<|>|/Type|/ObjStm|/XRef|/N 3|/First 4|/Length 9|/Kids|/Fields|/T(unit.place)|/FT/Tx|/V|1 0 R|2 0 R|stream\n|endstream|trailer|/Root|/AcroForm|/Filter/FlateDecode|\\|%|#|-|.|0|true|null'.split(
        '|',
      ),
    );
    await fc.assert(
      fc.asyncProperty(fc.array(word, { maxLength: 120 }), async (words) => {
        await codeOf(new TextEncoder().encode(`%PDF-1.7\n${words.join(' ')}\ntrailer<</Root 1 0 R>>`));
      }),
      { numRuns: 400 },
    );
  });
});
