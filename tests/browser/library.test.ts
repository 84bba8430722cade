// The built library in a real browser: it reads, reviews and prints every sample there, and Node prints the same words and
// numbers. What is left over by rounding, printed as some 10⁻¹⁵ of the load, is told apart: engines of different age round
// sin and pow differently in the last of sixteen digits, and with them the bytes of the file differ.
//
// Where no browser is on the path these tests are skipped and say so; with BROWSER=required, as in `.ci/run`, they fail.
import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import type { Browser } from 'puppeteer-core';
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import { ensureBuilt, root } from '../tooling/ensure-built.mjs';
import { findBrowser } from './find-browser.js';
import { startBrowser } from './opened-page.js';

const isThere = findBrowser() !== undefined;
const mustRun = process.env.BROWSER === 'required';
const samples = readdirSync(join(root, 'samples')).filter((name) => name.endsWith('.yaml'));
const textOf = (name: string): string => readFileSync(join(root, 'samples', name), 'utf8');

/** What a program for browsers does with a file: everything in it is the library's. */
const PROGRAM = `
  import { fonts } from './dist/fonts.js';
  import { renderReviewPdf } from './dist/print.js';
  import { readInstallation, review } from './dist/review.js';
  import { templates } from './dist/templates.js';

  globalThis.pdfOf = async (text) => {
    const reading = readInstallation(text);
    if (!reading.ok) return { codes: reading.issues.map(({ code }) => code) };
    const reviewed = review(reading.installation);
    const bytes = await renderReviewPdf(reviewed, { templates, fonts });
    return { verdict: reviewed.verdict, pdf: btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join('')) };
  };
`;

interface Printed {
  readonly verdict: string;
  readonly pdf: string;
}

let browser: Browser | undefined;
let program = '';

beforeEach((context) => {
  if (!isThere && !mustRun) context.skip('no browser on the PATH: install the Debian package chromium');
});

beforeAll(async () => {
  if (!isThere && !mustRun) return;
  ensureBuilt();
  const { outputFiles } = await build({
    stdin: { contents: PROGRAM, resolveDir: root },
    bundle: true,
    minify: true,
    format: 'iife',
    platform: 'browser',
    write: false,
  });
  program = outputFiles[0]?.text ?? '';
  browser = await startBrowser();
}, 600_000);

afterAll(async () => browser?.close());

/** Runs the program on a text in a page of its own; what the page says or faults is handed back too. */
async function inBrowser(
  text: string,
): Promise<{ readonly printed: unknown; readonly said: readonly string[] }> {
  if (browser === undefined) throw new Error('no browser');
  const page = await browser.newPage();
  const said: string[] = [];
  page.on('console', (message) => said.push(message.text()));
  page.on('pageerror', (error) => said.push(String(error)));
  await page.addScriptTag({ content: program });
  const printed: unknown = await page.evaluate(`pdfOf(${JSON.stringify(text)})`);
  await page.close();
  return { printed, said };
}

async function inNode(text: string): Promise<Printed> {
  const load = (name: string): Promise<unknown> =>
    import(pathToFileURL(join(root, 'dist', `${name}.js`)).href);
  const { readInstallation, review } = (await load('review')) as typeof import('../../src/review.js');
  const { renderReviewPdf } = (await load('print')) as typeof import('../../src/print.js');
  const { templates } = (await load('templates')) as { readonly templates: Readonly<Record<string, string>> };
  const { fonts } = (await load('fonts')) as { readonly fonts: import('../../src/print.js').FontFiles };
  const reading = readInstallation(text);
  if (!reading.ok) throw new Error('the sample is refused');
  const reviewed = review(reading.installation);
  const bytes = await renderReviewPdf(reviewed, { templates, fonts });
  return { verdict: reviewed.verdict, pdf: Buffer.from(bytes).toString('base64') };
}

/** What rounding leaves: a share below 10⁻¹¹. */
const ROUNDING = /\d+(\.\d+)? × 10⁻¹[²³⁴⁵⁶⁷⁸⁹]/gu;
/** The two ends of a short piece move alike to sixteen digits: rounding decides which part is named as the farthest. */
const ALIKE = /(?:grooved joint|straight) \d+/gu;

/** Every word and number on the pages in the order painted, by poppler-utils. */
function wordsOf(base64: string): string {
  const { stdout, status } = spawnSync('pdftotext', ['-raw', '-', '-'], {
    input: Buffer.from(base64, 'base64'),
    encoding: 'utf8',
    maxBuffer: 64 * 1024 * 1024,
  });
  if (status !== 0) throw new Error('the PDF cannot be read: is poppler-utils installed?');
  return stdout.replace(/\s+/gu, ' ').replace(ROUNDING, 'rounding').replace(ALIKE, 'part');
}

test.each(samples)(
  '%s is reviewed and printed in a browser as in Node, to the last printed digit',
  async (name) => {
    const { printed, said } = await inBrowser(textOf(name));
    expect(said).toEqual([]);
    const { verdict, pdf } = printed as Printed;
    const wanted = await inNode(textOf(name));
    expect(verdict).toBe(wanted.verdict);
    const words = wordsOf(pdf);
    expect(words.length).toBeGreaterThan(10_000);
    expect(words).toBe(wordsOf(wanted.pdf));
  },
  300_000,
);

test('what cannot be read is refused in a browser with its code', async () => {
  const { printed } = await inBrowser('format: [');
  expect(printed).toEqual({ codes: [expect.stringMatching(/^input\./u)] });
});
