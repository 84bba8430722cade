import fc from 'fast-check';
import { expect, test } from 'vitest';
import { EngineError } from '../../src/issues/issue.js';
import { openTypeface } from '../../src/render/font/typeface.js';
import { breakLines } from '../../src/render/layout/break-lines.js';
import { columnWidths } from '../../src/render/layout/column-widths.js';
import { measureDocument } from '../../src/render/layout/measure-document.js';
import { paginate } from '../../src/render/layout/paginate.js';
import type { Item, Piece } from '../../src/render/layout/piece.js';
import type { Page } from '../../src/render/layout/placed-piece.js';
import { styleDocument } from '../../src/render/layout/style-document.js';
import { plain } from '../../src/render/layout/style-inline.js';
import { frameOf, STYLES } from '../../src/render/layout/style-sheet.js';
import { parseMarkup } from '../../src/render/parse-markup.js';
import { boxesOf } from './layout-faults.js';
import { drawing, fonts, specimen } from './specimen.js';

const { measure } = openTypeface(fonts);
const frame = frameOf('letter');

const layOut = (markup: string): readonly Page[] =>
  paginate(
    measureDocument(styleDocument(parseMarkup(markup)), frame, measure, { line: drawing }),
    frame.height,
  );
const document = (blocks: string): string => `<review title="Title" language="en">${blocks}</review>`;

const textOf = (item: Item): string => (item.kind === 'text' ? item.text : '');
const wordsOn = (page: Page): string => page.flatMap(({ piece }) => piece.items.map(textOf)).join(' ');

const word = fc.oneof(
  { weight: 6, arbitrary: fc.stringMatching(/^[A-Za-z0-9.,°″-]{1,14}$/) },
  { weight: 1, arbitrary: fc.integer({ min: 30, max: 200 }).map((length) => 'W'.repeat(length)) },
);
const words = (most: number) =>
  fc.array(word, { minLength: 1, maxLength: most }).map((list) => list.join(' '));
const number = fc.integer({ min: -9_999_999, max: 9_999_999 }).map((value) => String(value / 100));

const table = fc
  .record({
    rows: fc.integer({ min: 1, max: 70 }),
    columns: fc.integer({ min: 1, max: 7 }),
    seed: fc.array(fc.tuple(words(9), number), { minLength: 9, maxLength: 9 }),
    kinds: fc.array(fc.constantFrom('left', 'right', 'centre', 'decimal', 'left:3'), {
      minLength: 7,
      maxLength: 7,
    }),
  })
  .map(({ rows, columns, seed, kinds }) => {
    const used = kinds.slice(0, columns);
    const cell = (row: number, column: number): string => {
      const [text, digits] = seed[(row * 3 + column) % seed.length] ?? ['', ''];
      return `<cell>${used[column] === 'decimal' ? digits : text}</cell>`;
    };
    const line = (row: number): string => used.map((_, column) => cell(row, column)).join('');
    const body = Array.from({ length: rows }, (_, row) => `<row>${line(row)}</row>`).join('');
    return `<table caption="c" columns="${used.join(' ')}"><head><row>${line(1)}</row></head>${body}</table>`;
  });

const plainBlock = fc.oneof(
  words(60).map((text) => `<p>${text}</p>`),
  words(30).map((text) => `<p role="caution">${text}</p>`),
  words(400).map(
    (text) =>
      `<note kind="caution" title="x"><p>${text}</p><list><item>${text.slice(0, 50)}</item></list></note>`,
  ),
  fc
    .array(words(20), { minLength: 1, maxLength: 12 })
    .map((items) => `<list ordered="yes">${items.map((item) => `<item>${item}</item>`).join('')}</list>`),
  fc
    .array(fc.tuple(words(5), words(30)), { minLength: 1, maxLength: 9 })
    .map(
      (facts) =>
        `<facts>${facts.map(([label, value]) => `<fact label="${label}">${value}</fact>`).join('')}</facts>`,
    ),
  words(30).map((text) => `<keep><p>${text}</p><p>${text} <verdict is="cannot-tell"/></p></keep>`),
  words(12).map(
    (text) =>
      `<figure drawing="line" width="half" caption="${text}"/><figure drawing="line" width="half" caption="${text}"/>`,
  ),
  words(12).map(
    (text) => `<signatures><line label="${text}"/><line label="b"/><line label="c"/></signatures>`,
  ),
  table,
);
const blocks = (most: number) =>
  fc.array(plainBlock, { minLength: 1, maxLength: most }).map((some) => some.join(''));
const block = fc.oneof(
  { weight: 3, arbitrary: plainBlock },
  {
    weight: 1,
    arbitrary: fc
      .tuple(fc.constantFrom('2', '3'), blocks(7))
      .map(([count, inside]) => `<columns count="${count}">${inside}</columns>`),
  },
  {
    weight: 1,
    arbitrary: fc
      .tuple(blocks(2), blocks(2))
      .map(([a, b]) => `<beside shares="3 2"><side>${a}</side><side>${b}</side></beside>`),
  },
);

test('nothing leaves the frame and nothing covers anything, whatever the words', () => {
  fc.assert(
    fc.property(fc.array(block, { minLength: 1, maxLength: 8 }), (blocks) => {
      for (const page of layOut(document(blocks.join('')))) {
        const boxes = boxesOf(page);
        for (const box of boxes) {
          expect(box.left, box.what).toBeGreaterThanOrEqual(-0.01);
          expect(box.right, box.what).toBeLessThanOrEqual(frame.width + 0.01);
          expect(box.top, box.what).toBeGreaterThanOrEqual(-0.01);
          expect(box.bottom, box.what).toBeLessThanOrEqual(frame.height + 0.01);
        }
        const sorted = [...boxes].sort((a, b) => a.top - b.top);
        sorted.forEach((box, i) => {
          for (const other of sorted.slice(i + 1)) {
            if (other.top >= box.bottom - 0.01) break;
            const apart = other.left >= box.right - 0.01 || other.right <= box.left + 0.01;
            expect(apart, `"${box.what}" and "${other.what}"`).toBe(true);
          }
        });
      }
    }),
    { numRuns: 40 },
  );
});

test('the check can fail: two words at one place are seen as covering each other', () => {
  const [first] = boxesOf(layOut(document('<p>one</p>'))[0] ?? []);
  expect(first && first.right > first.left && first.bottom > first.top).toBe(true);
});

const longTable = (rows: number): string =>
  `<table caption="Many" columns="left decimal"><head><row><cell>Head of names</cell><cell>Load</cell></row></head>${Array.from({ length: rows }, (_, i) => `<row><cell>row-${i}.</cell><cell>${i}</cell></row>`).join('')}</table>`;

test('a table of 500 rows repeats its head on every page and prints every row once, in order', () => {
  const pages = layOut(document(longTable(500)));
  expect(pages.length).toBeGreaterThan(8);
  for (const page of pages) expect(wordsOn(page).match(/Head of names/g)).toHaveLength(1);
  const rows = pages
    .map(wordsOn)
    .join(' ')
    .match(/row-\d+\./g);
  expect(rows).toEqual(Array.from({ length: 500 }, (_, i) => `row-${i}.`));
});

test('columns run on over pages: every row once, in order, heads again, and the last columns as long as each other', () => {
  const pages = layOut(document(`<columns>${longTable(300)}</columns>`));
  const rows = pages
    .map(wordsOn)
    .join(' ')
    .match(/row-\d+\./g);
  expect(rows).toEqual(Array.from({ length: 300 }, (_, i) => `row-${i}.`));
  const half = frame.width / 2;
  for (const page of pages) {
    const boxes = boxesOf(page);
    const heads = page.filter(({ piece }) => piece.items.some((item) => textOf(item) === 'Head of names'));
    expect(heads).toHaveLength(2);
    const bottom = (right: boolean): number =>
      Math.max(...boxes.filter((box) => box.left > half === right).map((box) => box.bottom));
    expect(Math.abs(bottom(false) - bottom(true))).toBeLessThan(30);
  }
});

test('a heading goes to the next page with the columns or sides it stands above', () => {
  const facts = Array.from({ length: 12 }, (_, i) => `<fact label="l${i}">v${i}</fact>`).join('');
  for (let filler = 40; filler < 70; filler++)
    for (const below of [
      `<columns><keep>${longTable(6)}</keep><keep><p>second</p></keep></columns>`,
      `<beside><side>${longTable(6)}</side><side><p>second</p></side></beside>`,
      `<facts columns="2">${facts}</facts>`,
    ]) {
      const paragraphs = Array.from({ length: filler }, () => '<p>filler</p>').join('');
      const pages = layOut(document(`${paragraphs}<section id="s" title="Heading">${below}</section>`));
      const words = pages.map(wordsOn);
      const pageOf = (text: string): number => words.findIndex((page) => page.includes(text));
      const first = below.startsWith('<facts') ? 'v0' : 'row-0.';
      expect(pageOf('Heading')).toBe(pageOf(first));
      expect(pageOf(first)).toBe(pageOf(below.startsWith('<facts') ? 'v11' : 'row-5.'));
    }
});

test('sides stand beside each other, shares of the width apart', () => {
  const [page] = layOut(
    document('<beside shares="3 1"><side>left</side><side>right</side></beside><p>below</p>'),
  );
  const at = (text: string) => boxesOf(page ?? []).find((box) => box.what === text);
  expect(at('left')?.top).toBe(at('right')?.top);
  expect((at('right')?.left ?? 0) / frame.width).toBeGreaterThan(0.7);
  expect(at('below')?.top).toBeGreaterThan(at('right')?.bottom ?? Number.POSITIVE_INFINITY);
});

test('where a table goes on, its caption, head and group are said again with `continued`', () => {
  const rows = Array.from({ length: 90 }, (_, i) => `<row><cell>row-${i}.</cell><cell>${i}</cell></row>`);
  const group = '<row role="group"><cell>Group <small>and what it rests on</small></cell></row>';
  const pages = layOut(
    document(
      `<table caption="Many" columns="left decimal"><head><row><cell>Head</cell><cell>n</cell></row></head>${group}${rows.join('')}</table>`,
    ),
  );
  expect(pages.length).toBeGreaterThan(1);
  expect(wordsOn(pages[0] ?? [])).not.toContain('continued');
  for (const page of pages.slice(1)) {
    expect(wordsOn(page)).toContain('Many , continued');
    expect(wordsOn(page)).toContain('Group , continued');
    expect(wordsOn(page)).not.toContain('rests on');
  }
});

test('a remark stays with its row, and a last row does not stand alone', () => {
  for (let filler = 45; filler < 70; filler++) {
    const rows = Array.from({ length: filler }, (_, i) => `<row><cell>row-${i}.</cell><cell>1</cell></row>`);
    const pages = layOut(
      document(
        `<table columns="left decimal">${rows.join('')}<row id="r"><cell>judged</cell><cell>2</cell></row><row role="remark"><cell>because</cell></row><row><cell>last</cell><cell>3</cell></row></table>`,
      ),
    ).map(wordsOn);
    const pageOf = (text: string): number => pages.findIndex((page) => page.includes(text));
    expect(pageOf('judged')).toBe(pageOf('because'));
    expect(pageOf('last')).toBe(pageOf('because'));
  }
});

test('a repeated head is decoration: only the first is in the structure', () => {
  const pages = layOut(document(longTable(120)));
  const heads = pages.flatMap((page) =>
    page.filter(({ piece }) => piece.items.some((item) => textOf(item).includes('Head of names'))),
  );
  const tagged = heads.filter(({ piece }) => piece.items.some((item) => item.kind === 'text' && item.tag));
  expect(heads.length).toBe(pages.length);
  expect(tagged).toHaveLength(1);
});

test('a table of few rows is not parted, a heading never ends a page, a figure keeps its caption', () => {
  for (let filler = 30; filler < 60; filler++) {
    const paragraphs = Array.from({ length: filler }, () => '<p>filler</p>').join('');
    const blocks = `${paragraphs}<section id="s" title="Heading">${longTable(5)}</section><figure drawing="line" caption="Caption"/>`;
    const pages = layOut(document(blocks)).map(wordsOn);
    const pageOf = (text: string): number => pages.findIndex((page) => page.includes(text));
    expect(pageOf('row-0.')).toBe(pageOf('row-4.'));
    expect(pageOf('Heading')).toBe(pageOf('row-0.'));
  }
});

test('numbers of a decimal column have their decimal sign at one place', () => {
  const values = ['1.5', '−12.25', '1,240', '0.125', '300 lb', '–'];
  const rows = values.map((value) => `<row><cell>${value}</cell><cell>x</cell></row>`).join('');
  const items = layOut(
    document(
      `<table columns="decimal left"><head><row><cell>n</cell><cell>x</cell></row></head>${rows}</table>`,
    ),
  )
    .flatMap((page) => page.flatMap(({ piece }) => piece.items))
    .filter((item) => item.kind === 'text' && values.includes(item.text));
  const places = items.map((item) => {
    const [whole = ''] = /^[−\d,]+|^–/u.exec(textOf(item)) ?? [];
    return item.x + measure(whole, 'regular', STYLES.cell.size);
  });
  expect(places).toHaveLength(values.length);
  expect(Math.max(...places) - Math.min(...places)).toBeLessThan(0.001);
});

test('a number is never broken, and a table too wide for its numbers is an error', () => {
  const wide = (columns: number): string =>
    document(
      `<table columns="${'decimal '.repeat(columns).trim()}"><row>${'<cell>1234.567</cell>'.repeat(columns)}</row></table>`,
    );
  for (const columns of [8, 16, 20]) {
    const numbers = layOut(wide(columns)).flatMap((page) =>
      page.flatMap(({ piece }) => piece.items.map(textOf)),
    );
    expect(numbers.filter((text) => text === '1234.567')).toHaveLength(columns);
  }
  expect(() => layOut(wide(40))).toThrow(EngineError);
});

test('a row taller than a page is parted between lines and loses no word', () => {
  const words = Array.from({ length: 3000 }, (_, i) => `w${i}`).join(' ');
  const pages = layOut(
    document(
      `<table columns="left left"><head><row><cell>Head</cell><cell>x</cell></row></head><row><cell>${words}</cell><cell>y</cell></row></table>`,
    ),
  );
  expect(pages.map(wordsOn).join(' ').match(/w\d+/g)).toEqual(words.split(' '));
  for (const page of pages.slice(1)) expect(wordsOn(page)).toContain('Head');
});

test('a drawing larger than its place is made smaller as a whole', () => {
  const tall = { ...drawing, height: 5000, width: 3000 };
  const pieces = measureDocument(
    styleDocument(parseMarkup(document('<figure drawing="line" caption="c"/>'))),
    frame,
    measure,
    { line: tall },
  );
  const picture = pieces.flatMap((piece) => piece.items).find((item) => item.kind === 'drawing');
  expect(picture?.kind === 'drawing' && picture.height).toBeLessThan(frame.height);
  expect(picture?.kind === 'drawing' && picture.width / picture.height).toBeCloseTo(3000 / 5000, 9);
});

test('a drawing that is not there is an error with the names of those that are', () => {
  expect(() => layOut(document('<figure drawing="nowhere"/>'))).toThrow(
    /render.unknown-drawing.*"available":\["line"\]/,
  );
});

test('one piece taller than the page is refused, not cut', () => {
  const piece: Piece = { before: 0, height: 900, hold: 'free', items: [] };
  expect(() => paginate([piece], 700)).toThrow(/render.block-too-tall/);
});

test('pieces that hold together go to the next page as one; too many of them are parted where they hold weakly', () => {
  const piece = (height: number, hold: Piece['hold'] = 'free'): Piece => ({
    before: 0,
    height,
    hold,
    items: [],
  });
  expect(paginate([piece(60), piece(30, 'strong'), piece(30)], 100).map((page) => page.length)).toEqual([
    1, 2,
  ]);
  const weak = Array.from({ length: 5 }, (_, i) => [
    piece(20, 'strong'),
    piece(30, i < 4 ? 'weak' : 'free'),
  ]).flat();
  expect(paginate(weak, 100).map((page) => page.length)).toEqual([4, 4, 2]);
});

test('lines are no wider than their column and keep every sign', () => {
  fc.assert(
    fc.property(words(30), fc.double({ min: 20, max: 400, noNaN: true }), (text, width) => {
      const lines = breakLines(plain(text, STYLES.body), width, measure);
      for (const line of lines) expect(line.width).toBeLessThanOrEqual(width + 0.01);
      const kept = lines
        .map((line) => line.runs.map((run) => (run.kind === 'text' ? run.text : '')).join(''))
        .join('');
      expect(kept.replace(/\s/g, '')).toBe(text.replace(/\s/g, ''));
    }),
    { numRuns: 200 },
  );
});

test('column widths add up to the width and are never below what numbers need', () => {
  const need = fc.record({
    firm: fc.double({ min: 5, max: 30, noNaN: true }),
    more: fc.double({ min: 0, max: 200, noNaN: true }),
    share: fc.double({ min: 0.1, max: 5, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.array(need, { minLength: 1, maxLength: 15 }), (list) => {
      const needs = list.map(({ firm, more, share }) => ({
        firm,
        narrowest: firm + more / 4,
        natural: firm + more,
        share,
      }));
      const widths = columnWidths(needs, 500);
      expect(Math.abs(widths.reduce((sum, width) => sum + width, 0) - 500)).toBeLessThan(1e-6);
      widths.forEach((width, i) => {
        expect(width).toBeGreaterThanOrEqual((needs[i]?.firm ?? 0) - 1e-6);
      });
    }),
  );
});

test('the specimen fills the pages it should', () => {
  expect(layOut(specimen)).toHaveLength(3);
});
