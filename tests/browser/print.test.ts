// The page of a review printed by a real browser: nothing is cut off, no word of a finding is lost, heads are repeated.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'puppeteer-core';
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import { filledReview, reviewedSamples } from '../pages/sample-reviews.js';
import { findBrowser } from './find-browser.js';
import { found, type OpenedPage, openPage, pageOf, startBrowser } from './opened-page.js';
import { WIDTHS } from './page-scripts.js';

const isThere = findBrowser() !== undefined;
const mustRun = process.env.BROWSER === 'required';
/** Width between the margins of a letter page, 8.5 in less twice 19 mm, at 96 to the inch. */
const PRINTED_WIDTH = Math.floor(8.5 * 96 - (2 * 19 * 96) / 25.4);

let browser: Browser | undefined;
let opened: OpenedPage | undefined;
const [sample] = reviewedSamples();

beforeEach((context) => {
  if (!isThere && !mustRun)
    context.skip('no browser on the PATH: install the Debian package chromium to look at the page');
});

beforeAll(async () => {
  if ((!isThere && !mustRun) || !sample) return;
  browser = await startBrowser();
  opened = await openPage(browser, pageOf(sample, 'engineer'));
});

afterAll(async () => {
  await opened?.close();
  await browser?.close();
});

const page = () => {
  if (!opened) throw new Error('no page');
  return opened.page;
};

/** Words of a PDF, page by page, blanks brought together. */
function printedPages(pdf: Uint8Array): readonly string[] {
  const folder = mkdtempSync(join(tmpdir(), 'pipeborne-print-'));
  try {
    const file = join(folder, 'print.pdf');
    writeFileSync(file, pdf);
    const text = execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8', maxBuffer: 1 << 26 });
    return text.split('\f').slice(0, -1).map(squeezed);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
const squeezed = (text: string): string => text.replace(/\s+/g, ' ');

test('nothing is wider than the paper', async () => {
  await page().emulateMediaType('print');
  await page().setViewport({ width: PRINTED_WIDTH, height: 900 });
  const widths = await found<{ page: number; window: number }>(page(), WIDTHS);
  expect(widths.page).toBeLessThanOrEqual(widths.window);
  await page().emulateMediaType();
});

test('every section is printed, contents and ways back are not, every page has its number and the title', async () => {
  if (!sample) throw new Error('no sample');
  const pages = printedPages(await page().pdf({ format: 'letter', displayHeaderFooter: false }));
  const all = pages.join(' ');
  const { root, composed } = filledReview(sample.review, 'engineer', 'us');
  const titles = root.children.flatMap((child) =>
    child.kind === 'element' && child.name === 'section' ? [squeezed(child.attributes.title ?? '')] : [],
  );
  expect(titles.length).toBeGreaterThan(20);
  expect(titles.filter((title) => !all.includes(title))).toEqual([]);
  for (const words of ['Skip to the review', '↑']) expect(all.includes(words), words).toBe(false);
  pages.forEach((words, i) => {
    const marks = [`page ${i + 1} of ${pages.length}`, squeezed(composed.title).slice(0, 30)];
    expect(marks.filter((mark) => !words.includes(mark))).toEqual([]);
  });
});

test('a head of a table that runs over pages is printed on each', async () => {
  const rows = Array.from({ length: 200 }, (_, i) => `<tr><th scope="row">row ${i}.</th><td>1</td></tr>`);
  const table = `<table><thead><tr><th scope="col">Headword</th><th scope="col">n</th></tr></thead><tbody>${rows.join('')}</tbody></table>`;
  await found(
    page(),
    `document.querySelector('main').insertAdjacentHTML('beforeend', ${JSON.stringify(`<div class="scroll" id="long">${table}</div>`)})`,
  );
  const pages = printedPages(await page().pdf({ format: 'a4' }));
  const withRows = pages.filter((words) => /row \d+\./.test(words));
  expect(withRows.length).toBeGreaterThan(3);
  expect(withRows.filter((words) => !words.includes('Headword'))).toEqual([]);
  expect(pages.join(' ').match(/row \d+\./g)).toHaveLength(200);
});
