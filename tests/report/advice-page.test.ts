import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { advicePage, advicePdf } from '../../src/app/advice-words.js';
import { type AdvisedFile, advise } from '../../src/app/advise.js';
import { fillDocument } from '../../src/app/print-document.js';
import { changed, fileText } from '../input/sample-text.js';
import { missingPaths } from './template-paths.js';

const pool = fileText('../../samples/pool-hot-water.yaml');
const shipped = (name: string) => fileURLToPath(new URL(`../../templates/${name}`, import.meta.url));
const font = (name: string) => new Uint8Array(readFileSync(shipped(`fonts/SourceSans3-${name}.ttf`)));
const template = readFileSync(shipped('advice.hbs'), 'utf8');

const mended = advise(changed(pool, ['{mark: H3, rod: 3/4 in', '{mark: H3, rod: 1/2 in']));
const hopeless = advise(changed(pool, ['suction: 8 ft/s', 'suction: 4 ft/s']));
const pageOf = (advised: AdvisedFile) =>
  advicePage(advised, { units: 'us', file: 'pump.yaml', patches: [['- old', '+ new']] });

/** Everything that is no string, truth value, list or map. */
function foreign(value: unknown, path: string): readonly string[] {
  if (typeof value === 'string' || typeof value === 'boolean') return [];
  if (typeof value !== 'object' || value === null) return [path];
  return Object.entries(value).flatMap(([key, inside]) => foreign(inside, `${path}.${key}`));
}

test('the template sees finished text only, and asks for nothing that is not there', async () => {
  const pages = [pageOf(await mended), pageOf(await hopeless)];
  expect(pages.flatMap((page) => foreign(page, 'page'))).toEqual([]);
  // The letterhead is given to every document alike.
  expect(
    missingPaths(
      template,
      pages.map((page) => ({ ...page, letterhead: false })),
    ),
  ).toEqual([]);
});

test('every finding stands on the page, before and after', async () => {
  const advised = await mended;
  const { alternatives } = pageOf(advised) as { alternatives: readonly { rows: readonly unknown[] }[] };
  expect(alternatives[0]?.rows).toHaveLength(advised.review.findings.length);
});

test('the same advice gives the same bytes, and another page another', async () => {
  const options = {
    templates: { advice: template },
    fonts: { regular: font('Regular'), italic: font('Italic'), bold: font('SemiBold') },
    units: 'us',
    file: 'pump.yaml',
    patches: [['- old', '+ new']],
  } as const;
  const letter = await advicePdf(await mended, { ...options, page: 'letter' });
  expect(new TextDecoder('latin1').decode(letter.slice(0, 8))).toMatch(/^%PDF-1\.\d/);
  expect(await advicePdf(await mended, { ...options, page: 'letter' })).toEqual(letter);
  expect(await advicePdf(await mended, { ...options, page: 'a4' })).not.toEqual(letter);
});

test('without its template it is refused by name', async () => {
  const options = {
    templates: {},
    fonts: {} as never,
    page: 'a4',
    units: 'si',
    file: 'pump.yaml',
    patches: [],
  } as const;
  const advised = await hopeless;
  expect(() => advicePdf(advised, options)).toThrow(/render\.template\.missing/);
});

test('the letterhead of the firm stands on the advice', async () => {
  const letterhead = readFileSync(shipped('letterhead.hbs'), 'utf8');
  const advised = await mended;
  const page = (paper: Partial<Parameters<typeof fillDocument>[2]>) =>
    JSON.stringify(
      fillDocument(
        'advice',
        pageOf(advised),
        { templates: { advice: template, letterhead }, ...paper },
        'loose',
      ),
    );
  expect(page({ letterhead: { name: 'Firm of the Test', address: [] } })).toContain('Firm of the Test');
  expect(page({})).not.toContain('Firm of the Test');
});
