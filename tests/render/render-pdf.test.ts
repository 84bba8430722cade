import {
  decodePDFRawStream,
  PDFArray,
  PDFDict,
  PDFDocument,
  PDFHexString,
  PDFName,
  PDFNumber,
  type PDFObject,
  PDFRawStream,
  type PDFRef,
  PDFString,
} from 'pdf-lib';
import { beforeAll, expect, test } from 'vitest';
import { EngineError } from '../../src/issues/issue.js';
import { readTrueType } from '../../src/render/font/true-type.js';
import { renderPdf } from '../../src/render/render-pdf.js';
import { fonts, options, specimen } from './specimen.js';

let bytes: Uint8Array;
let pdf: PDFDocument;

beforeAll(async () => {
  bytes = await renderPdf(specimen, options);
  pdf = await PDFDocument.load(bytes, { updateMetadata: false });
});

const dict = (object: PDFObject | undefined): PDFDict => pdf.context.lookup(object, PDFDict);
const array = (object: PDFObject | undefined): PDFArray => pdf.context.lookup(object, PDFArray);
const get = (from: PDFDict, ...path: readonly string[]): PDFObject | undefined => {
  let at: PDFObject | undefined = from;
  for (const key of path) at = dict(at).get(PDFName.of(key));
  return at;
};
const words = (object: PDFObject | undefined): string => {
  const found = pdf.context.lookup(object);
  return found instanceof PDFHexString || found instanceof PDFString ? found.decodeText() : String(found);
};
const contentOf = (page: number): string => {
  const found = pdf.context.lookup(pdf.getPage(page).node.get(PDFName.of('Contents')));
  const streams = found instanceof PDFArray ? found.asArray() : [found];
  return streams.map((stream) => new TextDecoder('latin1').decode(streamOf(stream))).join('\n');
};
const kidsOf = (element: PDFDict): readonly PDFObject[] => {
  const kids = pdf.context.lookup(element.get(PDFName.of('K')));
  return kids instanceof PDFArray ? kids.asArray() : kids ? [kids] : [];
};
/** Every element of the structure, in reading order. */
function elements(from: PDFDict = dict(get(pdf.catalog, 'StructTreeRoot'))): readonly PDFDict[] {
  return kidsOf(from).flatMap((kid) => {
    const found = pdf.context.lookup(kid);
    if (!(found instanceof PDFDict) || !found.has(PDFName.of('S'))) return [];
    return [found, ...elements(found)];
  });
}
const role = (element: PDFDict): string => String(element.get(PDFName.of('S')));

test('the same input gives the same bytes', async () => {
  expect(Buffer.compare(Buffer.from(await renderPdf(specimen, options)), Buffer.from(bytes))).toBe(0);
});

test('another date, fingerprint or word gives other bytes', async () => {
  for (const other of [{ date: '2026-03-15' }, { fingerprint: 'ab' }, { head: { left: 'x', right: '' } }])
    expect(
      Buffer.compare(Buffer.from(await renderPdf(specimen, { ...options, ...other })), Buffer.from(bytes)),
    ).not.toBe(0);
});

test('dates are those of the input, and the identity is its fingerprint', () => {
  expect(pdf.getCreationDate()?.toISOString()).toBe('2026-03-14T00:00:00.000Z');
  expect(pdf.getModificationDate()?.toISOString()).toBe('2026-03-14T00:00:00.000Z');
  const [first, second] = (pdf.context.trailerInfo.ID as PDFArray).asArray().map(String);
  expect(first).toBe('<3F9A1C22D4E5F60718293A4B5C6D7E8F>');
  expect(second).toBe(first);
});

test('title, author, language and producer are set, and the title is displayed', () => {
  expect([pdf.getTitle(), pdf.getAuthor(), pdf.getProducer()]).toEqual([
    'Review of pump P-3',
    'A. Engineer',
    'pipeborne 0.1.0',
  ]);
  expect(words(get(pdf.catalog, 'Lang'))).toBe('en-US');
  expect(String(get(pdf.catalog, 'ViewerPreferences', 'DisplayDocTitle'))).toBe('true');
  expect(String(get(pdf.catalog, 'MarkInfo', 'Marked'))).toBe('true');
  const xmp = pdf.context.lookup(get(pdf.catalog, 'Metadata')) as PDFRawStream;
  expect(new TextDecoder().decode(xmp.contents)).toContain(
    '<xmp:CreateDate>2026-03-14T00:00:00Z</xmp:CreateDate>',
  );
});

test('no conformance is claimed that nobody has confirmed', () => {
  const xmp = pdf.context.lookup(get(pdf.catalog, 'Metadata')) as PDFRawStream;
  expect(new TextDecoder().decode(xmp.contents)).not.toMatch(/pdfaid|pdfuaid/);
});

test('bookmarks lead to the sections, nested as they are', () => {
  const list = (first: PDFObject | undefined): readonly unknown[] => {
    const out: unknown[] = [];
    for (let at = first; at; at = dict(at).get(PDFName.of('Next'))) {
      const page = array(get(dict(at), 'Dest')).get(0);
      const index = pdf.getPages().findIndex((one) => one.ref === page);
      out.push([words(get(dict(at), 'Title')), index + 1, list(dict(at).get(PDFName.of('First')))]);
    }
    return out;
  };
  expect(list(get(pdf.catalog, 'Outlines', 'First'))).toEqual([
    ['1 Loads', 2, [['1.1 Deeper', 2, []]]],
    ['2 Proof', 3, []],
  ]);
  // Two show at first; what is below the first is folded.
  expect(String(get(pdf.catalog, 'Outlines', 'Count'))).toBe('2');
  expect(String(get(pdf.catalog, 'Outlines', 'First', 'Count'))).toBe('-1');
});

test('links lead to pages of the document and are part of the structure', () => {
  const refs = new Set(pdf.getPages().map((page) => page.ref));
  const links = pdf.getPages().flatMap((page) => page.node.Annots()?.asArray() ?? []);
  // One in the words, one in a cell, three in the contents.
  expect(links).toHaveLength(5);
  expect(links.map((link) => words(get(dict(link), 'Contents')))).toEqual([
    'page 3',
    '1 Loads, page 2',
    '1.1 Deeper, page 2',
    '2 Proof, page 3',
    'page 3',
  ]);
  for (const link of links) expect(refs.has(array(get(dict(link), 'Dest')).get(0) as PDFRef)).toBe(true);
  const objects = elements()
    .filter((one) => role(one) === '/Link')
    .flatMap(kidsOf)
    .filter((kid) => pdf.context.lookup(kid) instanceof PDFDict);
  expect(objects.map((kid) => get(dict(kid), 'Obj'))).toEqual(expect.arrayContaining(links));
});

test('the structure has headings, lists, tables with heads, figures with words for those who cannot see them', () => {
  const roles = elements().map(role);
  for (const wanted of [
    'Document',
    'Sect',
    'H1',
    'H2',
    'P',
    'L',
    'LI',
    'Lbl',
    'LBody',
    'Table',
    'TR',
    'TH',
    'TD',
    'Caption',
    'Figure',
    'Link',
    'TOC',
  ])
    expect(roles).toContain(`/${wanted}`);
  for (const figure of elements().filter((one) => role(one) === '/Figure')) {
    expect(words(get(figure, 'Alt'))).toContain('pump between two elbows');
    expect(array(get(figure, 'A', 'BBox')).size()).toBe(4);
  }
  const scopes = elements()
    .filter((one) => role(one) === '/TH')
    .map((head) => String(get(head, 'A', 'Scope')));
  expect(new Set(scopes)).toEqual(new Set(['/Row', '/Column']));
});

test('every marked content has its element in the parent tree, and everything else is decoration', () => {
  const numbers = array(get(pdf.catalog, 'StructTreeRoot', 'ParentTree', 'Nums')).asArray();
  pdf.getPages().forEach((page, i) => {
    const content = contentOf(i);
    const marked = [...content.matchAll(/\/MCID (\d+)/g)].map((match) => Number(match[1]));
    expect(marked).toEqual(marked.map((_, k) => k));
    const key = (page.node.get(PDFName.of('StructParents')) as PDFNumber).asNumber();
    const at = numbers.findIndex(
      (one, k) => k % 2 === 0 && one instanceof PDFNumber && one.asNumber() === key,
    );
    expect(array(numbers[at + 1]).size()).toBe(marked.length);
    let depth = 0;
    for (const line of content.trim().split('\n')) {
      if (/ (BDC|BMC)$/.test(line)) depth += 1;
      else if (line === 'EMC') depth -= 1;
      else if (/(Tj ET| re f|^[fBS])$/.test(line)) expect(depth, line).toBeGreaterThan(0);
    }
    expect(depth).toBe(0);
  });
});

test('pages have labels, and page x of y is printed on each', () => {
  expect(String(get(pdf.catalog, 'PageLabels'))).toContain('/S /D');
  expect(textOf(0)).toContain('page 1 of 3');
  expect(textOf(2)).toContain('page 3 of 3');
});

test('contents give the pages on which sections start', () => {
  expect(textOf(0)).toMatch(/1 Loads.*2.*1\.1 Deeper.*2.*2 Proof.*3/s);
});

/** Text of a page through the fonts' tables back to Unicode, as a reader takes it out. */
function textOf(page: number): string {
  const tables = Object.fromEntries(fontDicts().map(([name, font]) => [name, unicodeOf(font)]));
  let face = '';
  return contentOf(page)
    .split('\n')
    .map((line) => {
      const words = /<([0-9a-f]*)> Tj/.exec(line);
      if (!words) return '';
      face = /\/(F\d) /.exec(line)?.[1] ?? face;
      return (words[1]?.match(/.{4}/g) ?? []).map((code) => tables[face]?.get(code) ?? '?').join('');
    })
    .join('\n');
}
function fontDicts(): readonly (readonly [string, PDFDict])[] {
  const all = dict(get(pdf.getPage(0).node, 'Resources', 'Font'));
  return all.keys().map((key) => [key.decodeText(), dict(all.get(key))] as const);
}
function streamOf(object: PDFObject | undefined): Uint8Array {
  const stream = pdf.context.lookup(object);
  return stream instanceof PDFRawStream ? decodePDFRawStream(stream).decode() : new Uint8Array();
}
function unicodeOf(font: PDFDict): ReadonlyMap<string, string> {
  const map = new TextDecoder().decode(streamOf(font.get(PDFName.of('ToUnicode'))));
  return new Map(
    [...map.matchAll(/<([0-9a-f]{4})> <([0-9a-f]+)>/g)].map((match) => [
      match[1] ?? '',
      String.fromCharCode(...(match[2]?.match(/.{4}/g) ?? []).map((unit) => Number.parseInt(unit, 16))),
    ]),
  );
}

test('every sign on the pages has its outline in the embedded font: text that extracts is also seen', () => {
  const whole = Object.values(fonts).map((file) => readTrueType(file, 'whole'));
  let checked = 0;
  fontDicts().forEach(([, font], face) => {
    const descendant = dict(array(font.get(PDFName.of('DescendantFonts'))).get(0));
    const file = streamOf(get(descendant, 'FontDescriptor', 'FontFile2'));
    const outlines = outlineLengths(file);
    for (const [code, sign] of unicodeOf(font)) {
      const glyph = Number.parseInt(code, 16);
      const wanted = whole[face]?.outlineOf(glyph).length ?? 0;
      if (/\s/u.test(sign)) continue;
      expect(wanted, sign).toBeGreaterThan(0);
      expect(outlines(glyph), sign).toBeGreaterThanOrEqual(wanted);
      checked += 1;
    }
  });
  expect(checked).toBeGreaterThan(80);
});

/** Length of the outline of each glyph, read from the tables of the embedded file itself. */
function outlineLengths(file: Uint8Array): (glyph: number) => number {
  const view = new DataView(file.buffer, file.byteOffset, file.byteLength);
  for (let i = 0; i < view.getUint16(4); i++) {
    const entry = 12 + 16 * i;
    if (String.fromCharCode(...file.subarray(entry, entry + 4)) !== 'loca') continue;
    const at = view.getUint32(entry + 8);
    return (glyph) => view.getUint32(at + 4 * glyph + 4) - view.getUint32(at + 4 * glyph);
  }
  return () => 0;
}

test('each face has its own six letters', () => {
  const names = fontDicts().map(([, font]) => String(font.get(PDFName.of('BaseFont'))));
  for (const name of names) expect(name).toMatch(/^\/[A-Z]{6}\+/);
  expect(new Set(names.map((name) => name.slice(1, 7))).size).toBe(names.length);
});

test('every verdict is a shape and a word', () => {
  const text = textOf(1);
  for (const word of ['meets', 'exceeds', 'cannot tell', 'does not apply']) expect(text).toContain(word);
});

test('an exponent is taken out as an exponent', () => {
  expect(contentOf(0)).toContain('/Span <</ActualText <FEFF207B2076>>> BDC');
});

test('the input is attached and is said to be the source', () => {
  const file = dict(array(get(pdf.catalog, 'AF')).get(0));
  expect(words(get(file, 'UF'))).toBe('p-3.yaml');
  expect(String(get(file, 'AFRelationship'))).toBe('/Source');
  expect(new TextDecoder().decode(streamOf(get(file, 'EF', 'F')))).toBe('format: pipeborne/1\n');
});

test('A4 pages have the size of A4', async () => {
  const other = await PDFDocument.load(await renderPdf(specimen, { ...options, page: 'a4' }));
  expect(Math.round(other.getPage(0).getWidth())).toBe(595);
});

test('a date that is none is refused', async () => {
  await expect(renderPdf(specimen, { ...options, date: 'yesterday' })).rejects.toThrow(EngineError);
});
