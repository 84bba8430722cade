// Whole documents on their pages, by measured boxes: nothing covers anything, nothing leaves the frame, every row of
// every table is there once, no heading and no table head stands alone, a table that goes on has its head again.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { PageName } from '../../src/render/layout/style-sheet.js';
import { parseMarkup } from '../../src/render/parse-markup.js';
import { faultsOf, rowFaults, rowsAskedFor, rowsLaidOut } from '../render/layout-faults.js';
import { drawing } from '../render/specimen.js';
import { filledReview, layOut, READERS, reviewedSamples } from './sample-reviews.js';
import { captionsOf, STRAINS, strained } from './strained-document.js';

const PAGES: readonly PageName[] = ['letter', 'a4'];
const cases = reviewedSamples().flatMap((sample) =>
  READERS.flatMap((reader) => PAGES.map((page) => ({ name: sample.name, sample, reader, page }))),
);

test.each(cases)('$name for the $reader on $page has no fault', ({ sample, reader, page }) => {
  const { root, composed } = filledReview(sample.review, reader, sample.review.installation.review.units);
  const { pages, frame } = layOut(root, composed.drawings, page);
  expect(faultsOf(root, pages, frame)).toEqual([]);
  expect(rowsLaidOut(pages).length).toBeGreaterThan(20);
});

const strains = READERS.flatMap((reader) => STRAINS.map((strain) => ({ reader, strain })));

test.each(strains)('for the $reader with $strain has no fault, on either page', ({ reader, strain }) => {
  const [sample] = reviewedSamples();
  if (!sample) throw new Error('no sample');
  const { composed, root } = filledReview(sample.review, reader, 'us');
  // Every sixth table grows, one a document.
  const captions = strain === 'many rows' ? captionsOf(root).filter((_, i) => i % 6 === 0) : [''];
  for (const caption of captions) {
    const document = strained(root, strain, caption);
    for (const page of PAGES) {
      const { pages, frame } = layOut(document, composed.drawings, page);
      expect(faultsOf(document, pages, frame).slice(0, 10), caption).toEqual([]);
    }
  }
});

/** Blocks that hold together, part, repeat and stand beside each other, with words of any length. */
const word = fc.oneof(
  { weight: 6, arbitrary: fc.stringMatching(/^[A-Za-z0-9.,°″-]{1,14}$/) },
  { weight: 1, arbitrary: fc.integer({ min: 30, max: 200 }).map((length) => 'W'.repeat(length)) },
);
const words = (most: number) =>
  fc.array(word, { minLength: 1, maxLength: most }).map((list) => list.join(' '));
const tableOf = (rows: number, cells: readonly string[], columns: string): string => {
  const count = columns.split(' ').length;
  const cell = (i: number): string => `<cell>${i % 7 === 3 ? '' : (cells[i % cells.length] ?? '')}</cell>`;
  const row = (i: number): string => Array.from({ length: count }, (_, k) => cell(i * count + k)).join('');
  const body = Array.from({ length: rows }, (_, i) => `<row>${row(i)}</row>`).join('');
  return `<table columns="${columns}" caption="c"><head><row>${'<cell>Head of it</cell>'.repeat(count)}</row></head>${body}</table>`;
};
const table = fc
  .tuple(
    fc.oneof(
      { weight: 4, arbitrary: fc.integer({ min: 1, max: 40 }) },
      { weight: 1, arbitrary: fc.constant(500) },
    ),
    fc.array(words(6), { minLength: 3, maxLength: 9 }),
    fc.constantFrom('left decimal', 'left:3 decimal right left', 'centre left left', 'left'),
  )
  .map(([rows, cells, columns]) => tableOf(rows, cells, columns));
const block = fc.oneof(
  words(80).map((text) => `<p>${text}</p>`),
  words(12).map((text) => `<figure drawing="line" caption="${text}"/>`),
  words(40).map((text) => `<note kind="assumption"><p>${text}</p></note>`),
  table,
);
const section = fc
  .tuple(words(8), fc.array(block, { minLength: 1, maxLength: 5 }), fc.boolean())
  .map(([title, blocks, isNew]) => ({ title, inside: blocks.join(''), isNew }));

test('sections of any blocks have no fault, on either page', () => {
  fc.assert(
    fc.property(
      fc.array(section, { minLength: 1, maxLength: 5 }),
      fc.constantFrom(...PAGES),
      (list, page) => {
        const inside = list.map(
          (one, i) =>
            `<section id="s${i}" title="${one.title}"${one.isNew ? ' page="new"' : ''}>${one.inside}<section id="t${i}" title="${one.title}"><p>x</p></section></section>`,
        );
        const root = parseMarkup(
          `<review title="t" language="en"><contents title="Contents"/>${inside.join('')}</review>`,
        );
        const { pages, frame } = layOut(root, { line: drawing }, page);
        expect(faultsOf(root, pages, frame)).toEqual([]);
      },
    ),
    { numRuns: 40, endOnFailure: true },
  );
});

test('the checks can fail: a row too few, a row too many, a heading at the foot, words over words, words outside', () => {
  const root = parseMarkup(
    `<review title="t" language="en"><section id="s" title="Heading">${tableOf(3, ['a', 'b', 'c'], 'left left')}</section></review>`,
  );
  const { pages, frame } = layOut(root, {});
  const [page = []] = pages;
  expect(faultsOf(root, pages, frame)).toEqual([]);
  expect(faultsOf(root, [page.slice(0, -1)], frame).join()).toMatch(/is missing/);
  const shifted = page.map((placed) => ({ ...placed, y: placed.y + frame.height }));
  expect(faultsOf(root, [shifted], frame).join()).toMatch(/leaves the frame/);
  expect(faultsOf(root, [page.slice(0, 2)], frame).join()).toMatch(/"Heading" stands alone/);
  expect(faultsOf(root, [[...page, ...page]], frame).join()).toMatch(/" and "/);
  expect(rowFaults(rowsAskedFor(root), [...rowsLaidOut(pages), 'x|y'])).toEqual([
    'row x|y is there too often',
  ]);
});
