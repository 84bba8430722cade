import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { review } from '../../src/app/review.js';
import { readInstallation } from '../../src/input/read-installation.js';
import { openTypeface } from '../../src/render/font/typeface.js';
import { measureDocument } from '../../src/render/layout/measure-document.js';
import { paginate } from '../../src/render/layout/paginate.js';
import { styleDocument } from '../../src/render/layout/style-document.js';
import { frameOf } from '../../src/render/layout/style-sheet.js';
import { parseMarkup } from '../../src/render/parse-markup.js';
import { fillTemplate } from '../../src/render/template/fill-template.js';
import { composeReview } from '../../src/report/compose-review.js';
import type { Reader } from '../../src/report/context.js';
import { findingSentence } from '../../src/report/words/finding-row.js';
import { fonts } from '../render/specimen.js';

const folder = fileURLToPath(new URL('../../templates', import.meta.url));
const textOf = (name: string): string => readFileSync(`${folder}/${name}.hbs`, 'utf8');
const namesIn = (path: string): readonly string[] =>
  readdirSync(`${folder}/${path}`).map((name) => `${path}/${name.replace(/\.hbs$/, '')}`);
const partials = Object.fromEntries(
  [...namesIn('sections'), ...namesIn('fixed'), 'letterhead'].map((name) => [name, textOf(name)]),
);
const { measure } = openTypeface(fonts);

const samples = ['library-chilled-water', 'pool-hot-water', 'dairy-condenser-water'] as const;

/** Most pages a reader is given, for the samples as they are, without the section of bands. */
const MOST_PAGES: Readonly<Record<(typeof samples)[number], Readonly<Record<Reader, number>>>> = {
  'library-chilled-water': { engineer: 32, contractor: 7, commissioning: 9 },
  'pool-hot-water': { engineer: 30, contractor: 6, commissioning: 8 },
  'dairy-condenser-water': { engineer: 31, contractor: 7, commissioning: 9 },
};
const readers = ['engineer', 'contractor', 'commissioning'] as const;

function reviewOf(name: string) {
  const path = fileURLToPath(new URL(`../../samples/${name}.yaml`, import.meta.url));
  const read = readInstallation(readFileSync(path, 'utf8'));
  if (!read.ok) throw new Error(`${name} is refused`);
  return review(read.installation);
}

/** Words of every page, and of the drawings on it, without the blanks that lines end with. */
function laidOut(whole: ReturnType<typeof reviewOf>, reader: Reader): readonly string[] {
  const { units } = whole.installation.review;
  const composed = composeReview(whole, { reader, units, version: '0.0.0' });
  const markup = fillTemplate(textOf('review'), composed.view as never, { name: 'review', partials });
  const frame = frameOf(units === 'us' ? 'letter' : 'a4');
  const styled = styleDocument(parseMarkup(markup));
  const pages = paginate(measureDocument(styled, frame, measure, composed.drawings), frame.height);
  return pages.map((page) =>
    bare(page.flatMap(({ piece }) => piece.items.map((item) => ('text' in item ? item.text : ''))).join('')),
  );
}

const bare = (text: string): string => text.replace(/\s/gu, '');

describe.each(samples)('the review of %s', (name) => {
  const whole = reviewOf(name);
  const marks = whole.layout.supports.map(({ mark }) => mark);
  const pages = Object.fromEntries(readers.map((reader) => [reader, laidOut(whole, reader)]));

  test.each(Object.entries(MOST_PAGES[name]))('takes the %s at most %i pages', (reader, most) => {
    expect(pages[reader]?.length).toBeLessThanOrEqual(most);
    expect(pages[reader]?.length).toBeGreaterThan(3);
  });

  test.each(readers)('has page one on one page for the %s', (reader) => {
    const [first = ''] = pages[reader] ?? [];
    expect(first).toContain(bare('What this review is, and is not'));
    expect(first).toContain(bare('Written by pipeborne'));
    for (const mark of marks.filter((one) => !/^G\d/.test(one))) expect(first).toContain(bare(mark));
  });

  test.each(readers)('names every support for the %s after page one', (reader) => {
    const rest = (pages[reader] ?? []).slice(1).join('');
    for (const mark of marks) expect(rest, mark).toContain(bare(mark));
  });

  test('says to the engineer what was found of everything', () => {
    const all = (pages.engineer ?? []).join('');
    // A pump that is inside what is reviewed needs no words for it.
    const told = whole.findings.filter(
      ({ check, verdict }) => check !== 'within-scope' || verdict !== 'meets',
    );
    for (const finding of told) {
      const sentence = findingSentence(finding);
      const words = sentence?.message ?? finding.title;
      expect(all, words).toContain(bare(words.slice(1)));
    }
  });

  test.each(['contractor', 'commissioning'])('says to the %s all that is to be acted on', (reader) => {
    const all = (pages[reader] ?? []).join('');
    const open = whole.findings.filter(
      ({ comparison, verdict }) => !comparison && ['exceeds', 'cannot-tell'].includes(verdict),
    );
    for (const finding of open) {
      const sentence = findingSentence(finding);
      expect(all).toContain(bare(finding.title));
      for (const words of [sentence?.message.slice(1), sentence?.wanted])
        if (words !== undefined) expect(all, words).toContain(bare(words));
    }
  });

  test('names its assumptions to everyone', () => {
    for (const reader of readers) {
      const all = (pages[reader] ?? []).join('');
      for (const { what } of whole.installation.assumptions) expect(all, what).toContain(bare(what));
    }
  });
});

test('a sample has something to act on, so that the tests above say something', () => {
  const open = reviewOf('library-chilled-water').findings.filter(({ verdict }) => verdict === 'exceeds');
  expect(open.length).toBeGreaterThan(3);
});
