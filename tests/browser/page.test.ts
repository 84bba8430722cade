// The page of a review in a real browser: Debian's chromium, driven by puppeteer-core.
//
// Where no browser is on the path these tests are skipped and say so; with BROWSER=required, as in `.ci/run`, they fail.
// Contrast: WCAG 2.1, success criterion 1.4.3, 4.5 to 1 for words of ordinary size; reflow: 1.4.10, 320 CSS pixels.
import type { Browser } from 'puppeteer-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { renderHtml } from '../../src/render/html/render-html.js';
import { READERS, reviewedSamples } from '../pages/sample-reviews.js';
import { findBrowser } from './find-browser.js';
import { found, type OpenedPage, openPage, pageOf, startBrowser } from './opened-page.js';
import {
  colours,
  FOCUSED,
  HEADING_LEVELS,
  IDS_TWICE,
  LEAST_CONTRAST,
  REACHABLE_LINKS,
  STICKING_OUT,
  WIDTHS,
} from './page-scripts.js';

const isThere = findBrowser() !== undefined;
const mustRun = process.env.BROWSER === 'required';

const pages = reviewedSamples().flatMap((sample) =>
  READERS.map((reader) => ({ title: `${sample.name} for the ${reader}`, sample, reader })),
);
/** More stops of the keyboard than any page has. */
const MOST_STOPS = 1000;

interface Focus {
  readonly words: string;
  readonly index: number;
  readonly name: string;
  readonly seen: boolean;
  readonly outlined: boolean;
}

let browser: Browser | undefined;
let current: { readonly title: string; readonly one: OpenedPage } | undefined;

beforeEach((context) => {
  if (!isThere && !mustRun)
    context.skip('no browser on the PATH: install the Debian package chromium to look at the page');
});

beforeAll(async () => {
  if (isThere || mustRun) browser = await startBrowser();
});

afterAll(async () => {
  await current?.one.close();
  await browser?.close();
});

/** The page of a title. One is open at a time: a page behind another is not painted and takes no keys. */
async function at(title: string): Promise<OpenedPage> {
  if (current?.title === title) return current.one;
  await current?.one.close();
  const wanted = pages.find((one) => one.title === title);
  if (!browser || !wanted) throw new Error(`${title} cannot be opened`);
  current = { title, one: await openPage(browser, pageOf(wanted.sample, wanted.reader)) };
  return current.one;
}
test('the browser is there', () => {
  expect(findBrowser()).toBeDefined();
});

describe.each(pages)('$title', ({ title }) => {
  test('says nothing and asks for nothing', async () => {
    const { said, asked } = await at(title);
    expect(said).toEqual([]);
    expect(asked).toEqual([]);
  });

  test('keeps within a window of 390, of 320 and of 1440', async () => {
    const { page } = await at(title);
    for (const width of [390, 320, 1440]) {
      await page.setViewport({ width, height: 800 });
      const widths = await found<{ page: number; window: number }>(page, WIDTHS);
      expect(widths.page).toBeLessThanOrEqual(widths.window);
      expect(await found<string[]>(page, STICKING_OUT)).toEqual([]);
    }
  });

  test('has one title, and headings that go down one level at a time', async () => {
    const levels = await found<number[]>((await at(title)).page, HEADING_LEVELS);
    expect(levels[0]).toBe(1);
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    levels.forEach((level, i) => {
      expect(level - (levels[i - 1] ?? 0)).toBeLessThanOrEqual(1);
    });
  });

  test('has landmarks, heads that say what they head, drawings with a title and words that are words', async () => {
    const { page } = await at(title);
    for (const role of ['banner', 'navigation', 'main', 'contentinfo'])
      expect(await page.$$(`::-p-aria([role="${role}"])`), role).toHaveLength(1);
    expect(await found(page, `document.querySelectorAll('th:not([scope])').length`)).toBe(0);
    expect(await found(page, `document.querySelectorAll('thead td:not(:empty)').length`)).toBe(0);
    const drawings = `[...document.querySelectorAll('figure svg')]`;
    expect(await found(page, `${drawings}.length`)).toBeGreaterThan(0);
    expect(
      await found(page, `${drawings}.filter((one) => !one.querySelector('title').textContent).length`),
    ).toBe(0);
    expect(await found(page, `${drawings}.filter((one) => !one.querySelector('text')).length`)).toBe(0);
    expect(await found(page, IDS_TWICE)).toEqual([]);
  });

  test('can be read on white and on black', async () => {
    const { page } = await at(title);
    for (const value of ['dark', 'light']) {
      await page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value }]);
      const { ratio, words } = await found<{ ratio: number; words: string }>(page, LEAST_CONTRAST);
      expect(ratio, `${value}: ${words}`).toBeGreaterThanOrEqual(4.5);
    }
  });

  test('is reached by keyboard: every link once, in order, each seen and outlined', async () => {
    const { page } = await at(title);
    await page.setViewport({ width: 1440, height: 900 });
    await found(page, 'document.activeElement.blur(); scrollTo(0, 0)');
    const links = await found<number[]>(page, REACHABLE_LINKS);
    const reached: number[] = [];
    for (let i = 0; i < MOST_STOPS; i++) {
      await page.keyboard.press('Tab');
      const focus = await found<Focus>(page, FOCUSED);
      if (focus.name === 'BODY' || reached.includes(focus.index)) break;
      if (i === 0) expect(focus.words).toBe('Skip to the review');
      expect([focus.words, focus.seen, focus.outlined]).toEqual([focus.words, true, true]);
      reached.push(focus.index);
    }
    expect(reached.filter((index) => links.includes(index))).toEqual(links);
  });

  test('leads past the title, to a finding and back', async () => {
    const { page } = await at(title);
    await found(page, 'document.activeElement.blur(); scrollTo(0, 0)');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    expect(await found(page, 'location.hash + document.activeElement.tagName')).toBe('#reviewMAIN');
    const section = await found<string>(page, `document.querySelector('a.back').closest('section').id`);
    const top = (id: string): string => `document.getElementById('${id}').getBoundingClientRect().top`;
    await page.click(`#summary a[href="#${section}"]`);
    expect(Math.abs(await found<number>(page, top(section)))).toBeLessThan(100);
    await page.click(`#${section} a.back`);
    expect(await found(page, 'location.hash')).toBe('#summary');
    expect(Math.abs(await found<number>(page, top('summary')))).toBeLessThan(200);
  });

  test('shows something: a picture of it is not blank', async () => {
    const { page } = await at(title);
    await page.setViewport({ width: 1000, height: 1400 });
    await found(page, 'scrollTo(0, 0)');
    const png = await page.screenshot({ encoding: 'base64' });
    const other = await browser?.newPage();
    if (!other) throw new Error('no browser');
    const seen = await found<{ colours: number; ground: number }>(other, colours(png));
    await other.close();
    expect(seen.colours).toBeGreaterThan(30);
    expect(seen.ground).toBeGreaterThan(0.5);
    expect(seen.ground).toBeLessThan(0.98);
  });
});

test('what is folded in the contents opens by keyboard, and its links are reached then', async () => {
  if (!browser) throw new Error('no browser');
  const section = (id: string, inside = ''): string =>
    `<section id="${id}" title="${id}"><p>x</p>${inside}</section>`;
  const markup = `<review title="t" language="en">${section('one')}${section('two', section('deep'))}${section('three')}</review>`;
  const { page, close } = await openPage(
    browser,
    renderHtml(markup, { drawings: {}, title: 't', language: 'en' }),
  );
  await page.focus('nav summary');
  await page.keyboard.press('Enter');
  expect(await found(page, `document.querySelector('nav details').open`)).toBe(true);
  await page.keyboard.press('Tab');
  expect((await found<Focus>(page, FOCUSED)).words).toBe('deep');
  await close();
});

test('the checks can fail: a picture from elsewhere is stopped and heard, a wide thing sticks out, a pale word is seen', async () => {
  const [sample] = reviewedSamples();
  if (!browser || !sample) throw new Error('no browser');
  const html = pageOf(sample, 'contractor').replace(
    '</main>',
    '<img src="other.png" alt=""><p style="width:2000px;max-width:none;color:#ccc">pale</p></main>',
  );
  const { page, said, close } = await openPage(browser, html);
  await page.setViewport({ width: 390, height: 800 });
  expect(said.join()).toContain('Content Security Policy');
  expect((await found<string[]>(page, STICKING_OUT)).join()).toContain('pale');
  expect((await found<{ words: string }>(page, LEAST_CONTRAST)).words).toBe('pale');
  await close();
});
