import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { parseMarkup } from '../../src/render/parse-markup.js';
import { fillTemplate } from '../../src/render/template/fill-template.js';
import { composeReview } from '../../src/report/compose-review.js';
import { outline, type SectionId } from '../../src/report/outline.js';
import { templateFor } from '../../src/report/template-for.js';
import {
  reviewed,
  reviewedCramped,
  reviewedLifted,
  reviewedOnDrive,
  reviewedSideways,
  reviewedSound,
  reviewedSprung,
  reviewedStalled,
  reviewedWithBands,
  reviewedWithConnectors,
} from './fixture.js';
import { missingPaths } from './template-paths.js';

const folder = fileURLToPath(new URL('../../templates', import.meta.url));
const ids = readdirSync(`${folder}/sections`).map((name) => name.replace(/\.hbs$/, '') as SectionId);
const textOf = (name: string) => readFileSync(`${folder}/${name}.hbs`, 'utf8');
const partials = Object.fromEntries(
  [...ids.map((id) => `sections/${id}`), 'letterhead', 'fixed/deferral'].map((name) => [name, textOf(name)]),
);
const readers = ['contractor', 'engineer', 'commissioning'] as const;

const reviews = [
  reviewed(),
  reviewedCramped(),
  reviewedOnDrive(),
  reviewedStalled(),
  reviewedLifted(),
  reviewedSideways(),
  reviewedSound(),
  reviewedSprung(),
  reviewedWithConnectors('gapped'),
  await reviewedWithBands(),
].flatMap((whole) =>
  readers.flatMap((reader) =>
    (['us', 'si'] as const).map((units) => ({
      reader,
      units,
      composed: composeReview(whole, { reader, units, version: '0.0.0', firm: { cautions: ['Ours.'] } }),
    })),
  ),
);

/** Views of one section in all reviews that have it. */
function viewsOf(id: SectionId): readonly unknown[] {
  return reviews.flatMap(({ composed }) =>
    (composed.view.sections as readonly Record<string, unknown>[])
      .map((slots) => slots[id])
      .filter((view) => view !== false),
  );
}

test.each(ids)('every path in the template of %s is in the view of a review', (id) => {
  expect(missingPaths(partials[`sections/${id}`] ?? '', viewsOf(id))).toEqual([]);
});

test('a path that is in no view would be found, also in a branch not taken', () => {
  const template = '{{#if no}}{{#each rows}}{{name}} {{../title}} {{wrong}}{{/each}}{{/if}}';
  expect(missingPaths(template, [{ no: false, title: 't', rows: [{ name: 'n' }] }])).toEqual(['1: wrong']);
});

test.each(ids)('the template of %s opens a section that carries its id, so that links find it', (id) => {
  expect(partials[`sections/${id}`]).toMatch(new RegExp(`^<section id="${id}" `));
});

test.each(reviews)('the review for the $reader in $units units makes sound markup', ({ composed }) => {
  const markup = fillTemplate(textOf('review'), composed.view, { name: 'review', partials });
  expect(() => parseMarkup(markup)).not.toThrow();
  expect(markup).not.toMatch(/undefined|NaN|\[object/);
});

test.each(reviews)(
  'every figure of the review for the $reader in $units units has a drawing',
  ({ composed }) => {
    const markup = fillTemplate(textOf('review'), composed.view, { name: 'review', partials });
    const called = [...markup.matchAll(/<figure drawing="([^"]+)"/g)].map((match) => match[1]);
    expect(called.length).toBeGreaterThan(0);
    expect(Object.keys(composed.drawings)).toEqual(expect.arrayContaining(called));
  },
);

describe.each(readers)('the review for the %s', (reader) => {
  test('has no section twice', () => {
    expect(new Set(outline[reader]).size).toBe(outline[reader].length);
  });

  test('begins with page one, and says what is assumed and what is dangerous', () => {
    expect(outline[reader][0]).toBe('summary');
    expect(outline[reader]).toEqual(expect.arrayContaining(['assumptions', 'cautions', 'findings']));
  });

  test('names the templates it needs', () => {
    expect(templateFor(reader).sections).toEqual(outline[reader].map((id) => `sections/${id}`));
  });
});

const standing = [
  'engineer of record, who alone decides',
  "manufacturer's manual",
  'local code',
  'not a certificate',
  'Lock out',
];

test.each(readers)('page one for the %s says what the review is and is not', (reader) => {
  const view = reviews.find((one) => one.reader === reader)?.composed.view;
  const markup = fillTemplate(textOf('review'), view ?? {}, { name: 'review', partials });
  const pageOne = markup.slice(0, markup.indexOf('</section>')).replaceAll('&#39;', "'");
  for (const words of standing) expect(pageOne).toContain(words);
});
