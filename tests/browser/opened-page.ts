/** Opens reviews as pages in a browser, from a file as a reader would, and notes whatever the page asks for or says. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type Browser, launch, type Page } from 'puppeteer-core';
import { renderHtml } from '../../src/render/html/render-html.js';
import type { Reader } from '../../src/report/context.js';
import { filledReview, type ReviewedSample } from '../pages/sample-reviews.js';
import { findBrowser } from './find-browser.js';

/** The page of a sample for a reader, as the product writes it. */
export function pageOf({ review }: ReviewedSample, reader: Reader): string {
  const { composed, root } = filledReview(review, reader, review.installation.review.units);
  return renderHtml(root, {
    drawings: composed.drawings,
    title: composed.title,
    language: 'en',
    author: composed.author,
    subject: composed.about,
    foot: composed.foot,
  });
}

export interface OpenedPage {
  readonly page: Page;
  /** Messages on the console, and errors. */
  readonly said: readonly string[];
  /** Everything asked for but the page itself. */
  readonly asked: readonly string[];
  readonly close: () => Promise<void>;
}

/** Starts the browser. @throws when there is none */
export async function startBrowser(): Promise<Browser> {
  const executablePath = findBrowser();
  if (executablePath === undefined)
    throw new Error('no browser on the PATH: install the Debian package chromium');
  // The sandbox of the browser does not start for root, as whom tests run in a container; the page is our own.
  return launch({ executablePath, args: ['--no-sandbox', '--disable-dev-shm-usage', '--disable-gpu'] });
}

/** Opens a page from a file of its own. */
export async function openPage(browser: Browser, html: string): Promise<OpenedPage> {
  const folder = mkdtempSync(join(tmpdir(), 'pipeborne-page-'));
  const file = join(folder, 'review.html');
  writeFileSync(file, html);
  const address = pathToFileURL(file).href;
  const page = await browser.newPage();
  const said: string[] = [];
  const asked: string[] = [];
  page.on('console', (message) => said.push(`${message.type()}: ${message.text()}`));
  page.on('pageerror', (error) => said.push(String(error)));
  page.on('request', (request) => {
    if (request.url() !== address) asked.push(request.url());
  });
  await page.goto(address, { waitUntil: 'networkidle0' });
  const close = async (): Promise<void> => {
    await page.close();
    rmSync(folder, { recursive: true, force: true });
  };
  return { page, said, asked, close };
}

/**
 * What a script finds on a page. Scripts are text: the checks of types know nothing of browsers.
 *
 * @param page - the page
 * @param script - an expression
 */
export async function found<T>(page: Page, script: string): Promise<T> {
  return (await page.evaluate(script)) as T;
}
