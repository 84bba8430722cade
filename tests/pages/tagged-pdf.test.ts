// The PDF of every sample for every reader, read back: its tagged structure, what it says of itself, what it carries,
// and its words as another program takes them out.
//
// Source: ISO 32000-1:2008, 14.6 to 14.8 (marked content, structure, attributes), 12.3.3 (outline), 7.11.4 and
// ISO 19005-3 (attached files and their relation). Words by pdftotext, soundness by qpdf, both Debian packages.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { decodePDFRawStream, PDFArray, PDFDict, PDFName, PDFNumber, type PDFRawStream } from 'pdf-lib';
import { afterAll, describe, expect, test } from 'vitest';
import { fieldSheetPdf } from '../../src/app/render-field-sheet.js';
import { renderReviewPdf, reviewResults } from '../../src/app/review.js';
import { englishFor, ownTexts } from '../../src/issues/spelling.js';
import { spelledMarkup } from '../../src/render/spelled-document.js';
import { ownWords } from '../../src/report/words/own-words.js';
import { look, sheet } from '../forms/sheet-fixture.js';
import { rowsAskedFor } from '../render/layout-faults.js';
import { fonts } from '../render/specimen.js';
import { filledReview, READERS, reviewedSamples, templates } from './sample-reviews.js';
import { contentFaults, elementFaults, ofRole, openTagged, type TaggedPdf } from './tagged-pdf.js';

/** Largest review that still goes through any mail [bytes]. */
const LARGEST = 500_000;

const folder = mkdtempSync(join(tmpdir(), 'pipeborne-tagged-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const cases = reviewedSamples().flatMap((sample) =>
  READERS.map((reader) => ({ title: `${sample.name} for the ${reader}`, sample, reader })),
);

describe.each(cases)('$title', ({ title, sample, reader }) => {
  const options = { templates, fonts, reader, input: { name: `${sample.name}.yaml`, text: sample.text } };
  let made:
    | Promise<{ readonly bytes: Uint8Array; readonly tagged: TaggedPdf; readonly file: string }>
    | undefined;
  const open = () => {
    made ??= renderReviewPdf(sample.review, options).then(async (bytes) => {
      const file = join(folder, `${title.replaceAll(' ', '-')}.pdf`);
      writeFileSync(file, bytes);
      return { bytes, tagged: await openTagged(bytes), file };
    });
    return made;
  };

  test('every content belongs to the structure once, and the way back is right', async () => {
    const { tagged } = await open();
    expect(contentFaults(tagged).slice(0, 10)).toEqual([]);
  });

  test('every element has what its kind must have', async () => {
    const { tagged } = await open();
    expect(elementFaults(tagged).slice(0, 10)).toEqual([]);
    for (const role of ['TH', 'Figure', 'Table', 'L', 'Link', 'Note', 'H1'])
      expect(ofRole(tagged, role).length, role).toBeGreaterThan(0);
  });

  test('bookmarks: sections show, what is below them is folded, and there is one for each heading', async () => {
    const { tagged } = await open();
    const { pdf, get, words } = tagged;
    const titles: string[] = [];
    const visit = (first: PDFDict | undefined, depth: number): void => {
      for (let at = first; at; at = get(at, 'Next') as PDFDict | undefined) {
        titles.push(words(get(at, 'Title')));
        const count = get(at, 'Count');
        if (count instanceof PDFNumber) expect(count.asNumber()).toBeLessThan(0);
        expect(depth).toBeLessThan(2);
        visit(get(at, 'First') as PDFDict | undefined, depth + 1);
      }
    };
    visit(get(pdf.catalog, 'Outlines', 'First') as PDFDict, 0);
    const headings = [...ofRole(tagged, 'H1'), ...ofRole(tagged, 'H2')];
    expect(titles).toHaveLength(headings.length);
    expect(get(pdf.catalog, 'Outlines', 'Count')?.toString()).toBe(String(ofRole(tagged, 'H1').length));
  });

  test('page one leads to sections, and these lead back', async () => {
    const { tagged } = await open();
    const { pdf, get, words } = tagged;
    const pages = pdf.getPages();
    const links = pages.map((page) =>
      (page.node.Annots()?.asArray() ?? [])
        .map((ref) => pdf.context.lookup(ref, PDFDict))
        .filter((dict) => get(dict, 'Subtype') === PDFName.of('Link'))
        .map((dict) => pages.findIndex((one) => one.ref === (get(dict, 'Dest') as PDFArray).get(0))),
    );
    expect(links.flat()).not.toContain(-1);
    const led = links[0]?.filter((page) => page > 0) ?? [];
    expect(led.length).toBeGreaterThan(0);
    expect(links.some((targets, page) => page > 0 && targets.includes(0) && led.includes(page))).toBe(true);
    for (const link of ofRole(tagged, 'Link'))
      for (const ref of link.objects)
        expect(words(get(pdf.context.lookup(ref, PDFDict), 'Contents'))).toMatch(/page \d+$/);
  });

  test('carries its input as source and its results as data, to the byte', async () => {
    const { tagged } = await open();
    const { pdf, get, words } = tagged;
    const files = (get(pdf.catalog, 'AF') as PDFArray)
      .asArray()
      .map((ref) => pdf.context.lookup(ref, PDFDict));
    const read = (dict: PDFDict | undefined): string =>
      dict ? new TextDecoder().decode(decodePDFRawStream(get(dict, 'EF', 'F') as PDFRawStream).decode()) : '';
    const by = (relation: string): PDFDict | undefined =>
      files.find((dict) => get(dict, 'AFRelationship') === PDFName.of(relation));
    expect(files).toHaveLength(2);
    expect(read(by('Source'))).toBe(sample.text);
    expect(read(by('Data'))).toBe(`${JSON.stringify(reviewResults(sample.review), null, 2)}\n`);
    expect(files.map((dict) => words(get(dict, 'UF')))).toContain(`${sample.name}.yaml`);
  });

  test('says its language and title, which colours it means, and claims no conformance', async () => {
    const { bytes, tagged } = await open();
    const { pdf, get, words } = tagged;
    expect(words(get(pdf.catalog, 'Lang'))).toBe('en');
    expect(String(get(pdf.catalog, 'ViewerPreferences', 'DisplayDocTitle'))).toBe('true');
    expect(get(pdf.catalog, 'OutputIntents')).toBeInstanceOf(PDFArray);
    const xmp = new TextDecoder().decode((get(pdf.catalog, 'Metadata') as PDFRawStream).contents);
    expect(xmp).toContain('<dc:title>');
    expect(xmp).not.toMatch(/pdfaid|pdfuaid/);
    expect(bytes.length).toBeLessThan(LARGEST);
  });

  test('is sound, is the same twice, and another program takes out every row, findings among them', async () => {
    const { bytes, file } = await open();
    expect(
      Buffer.compare(Buffer.from(await renderReviewPdf(sample.review, options)), Buffer.from(bytes)),
    ).toBe(0);
    execFileSync('qpdf', ['--check', file], { stdio: 'pipe' });
    const text = plain(
      execFileSync('pdftotext', ['-raw', file, '-'], { encoding: 'utf8', maxBuffer: 1 << 26 }),
    );
    const { installation } = sample.review;
    const { units, english } = installation.review;
    const { root } = filledReview(sample.review, reader, units);
    const written = spelledMarkup(root, englishFor(units, english), ownTexts(ownWords(installation)));
    const rows = rowsAskedFor(written).map((row) => plain(row.replaceAll('|', '')));
    expect(rows.filter((row) => !text.includes(row))).toEqual([]);
    const places = new Set(sample.review.findings.map(({ at }) => plain(at)));
    if (reader === 'engineer') expect([...places].filter((place) => !text.includes(place))).toEqual([]);
  });
});

test('a field sheet is tagged as well: each field under its element, with a way back and a name', async () => {
  const tagged = await openTagged(await fieldSheetPdf(sheet, { ...look, page: 'letter' }));
  expect(contentFaults(tagged)).toEqual([]);
  expect(elementFaults(tagged)).toEqual([]);
  const forms = ofRole(tagged, 'Form');
  expect(forms.length).toBeGreaterThan(10);
  expect(forms.filter(({ objects }) => objects.length === 0)).toEqual([]);
});

/** Words without blanks, raised signs and signs of one letter as others write them. */
const plain = (text: string): string => text.normalize('NFKC').replace(/\s/g, '');

test('the checks can fail: content under two elements, a head without scope, a figure without words', async () => {
  const [sample] = reviewedSamples();
  if (!sample) throw new Error('no sample');
  const bytes = await renderReviewPdf(sample.review, { templates, fonts, reader: 'contractor' });
  const tagged = await openTagged(bytes);
  ofRole(tagged, 'TH')[0]?.dict.delete(PDFName.of('A'));
  ofRole(tagged, 'Figure')[0]?.dict.delete(PDFName.of('Alt'));
  const [first, second] = ofRole(tagged, 'P');
  second?.contents.push(...(first?.contents ?? []));
  expect(elementFaults(tagged).join()).toMatch(/TH .* has no scope.*Figure .* has no words/);
  expect(contentFaults(tagged).join()).toMatch(/stands under two elements/);
});
