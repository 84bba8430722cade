import { PDFArray, PDFDict, PDFDocument, PDFName, type PDFNumber, PDFRawStream, PDFString } from 'pdf-lib';
import { describe, expect, test } from 'vitest';
import { fieldSheetPdf } from '../../src/app/render-field-sheet.js';
import { parseMarkup } from '../../src/render/parse-markup.js';
import { boxesOf } from '../../src/sheet/sheet.js';
import { look, sheet } from './sheet-fixture.js';

const bytes = await fieldSheetPdf(sheet, look);
const pdf = await PDFDocument.load(bytes, { updateMetadata: false });
const fields = pdf.getForm().getFields();
const boxes = boxesOf(sheet).map(({ box }) => box);
const name = (key: string) => PDFName.of(key);

describe('a field sheet as PDF', () => {
  test('is the same to the byte when it is made again', async () => {
    expect(await fieldSheetPdf(sheet, look)).toEqual(bytes);
  });

  test('has a field for every box, under its name, and the hidden ones that say what it was made from', () => {
    const names = fields.map((field) => field.getName()).sort();
    const stated = ['fingerprint', 'kind', 'mark', 'revision'].map((word) => `about-this-sheet.${word}`);
    expect(names).toEqual([...boxes.map(({ id }) => id), ...stated].sort());
    expect(pdf.getForm().getTextField('about-this-sheet.fingerprint').getText()).toBe(sheet.fingerprint);
    expect(pdf.getKeywords()).toContain(`input-${sheet.fingerprint}`);
  });

  test('gives each field the kind of its box, its tip, and a bound on what is typed', () => {
    const kinds = {
      number: 'PDFTextField',
      text: 'PDFTextField',
      date: 'PDFTextField',
      signature: 'PDFTextField',
      tick: 'PDFCheckBox',
    };
    for (const box of boxes) {
      const field = pdf.getForm().getField(box.id);
      const list = (box.choices?.length ?? 0) > 4;
      const kind = box.kind === 'choice' ? (list ? 'PDFDropdown' : 'PDFRadioGroup') : kinds[box.kind];
      expect(field.constructor.name, box.id).toBe(kind);
      expect(String(field.acroField.dict.lookup(name('TU')))).not.toBe('undefined');
      if (kind === 'PDFTextField')
        expect(pdf.getForm().getTextField(box.id).getMaxLength()).toBeGreaterThan(19);
    }
  });

  test('writes what viewers read as bytes as plain bytes: appearance and sign', () => {
    const appearances = fields.flatMap((field) => field.acroField.dict.lookup(name('DA')) ?? []);
    expect(appearances.length).toBeGreaterThan(100);
    for (const one of appearances) expect(one).toBeInstanceOf(PDFString);
    const form = pdf.catalog.lookup(name('AcroForm'), PDFDict);
    const fonts = form.lookup(name('DR'), PDFDict).lookup(name('Font'), PDFDict);
    expect(fonts.keys().map(String)).toEqual(['/Helv', '/ZaDb']);
  });

  test('holds no script and nothing that acts by itself', () => {
    for (const [, object] of pdf.context.enumerateIndirectObjects()) {
      const dict =
        object instanceof PDFDict ? object : object instanceof PDFRawStream ? object.dict : undefined;
      for (const key of ['JS', 'AA', 'OpenAction']) expect(dict?.has(name(key)) ?? false, key).toBe(false);
    }
  });

  test('is tagged: each widget is the object of one element Form, and tabs follow the structure', () => {
    const widgets = new Map<string, number>();
    for (const page of pdf.getPages()) {
      expect(String(page.node.get(name('Tabs')))).toBe('/S');
      for (const ref of page.node.Annots()?.asArray() ?? []) {
        const widget = pdf.context.lookup(ref, PDFDict);
        const key = widget.get(name('StructParent'));
        const isHidden = Number(String(widget.get(name('F')))) === 2;
        if (!isHidden) widgets.set(String(ref), (key as PDFNumber).asNumber());
      }
    }
    const found = new Set<string>();
    for (const [, object] of pdf.context.enumerateIndirectObjects()) {
      if (!(object instanceof PDFDict) || String(object.get(name('S'))) !== '/Form') continue;
      const kids = object.lookup(name('K'));
      const kid = kids instanceof PDFArray ? kids.lookup(0, PDFDict) : (kids as PDFDict);
      if (kids instanceof PDFArray) expect(kids.size()).toBe(1);
      expect(String(kid.get(name('Type')))).toBe('/OBJR');
      found.add(String(kid.get(name('Obj'))));
    }
    expect(widgets.size).toBeGreaterThan(boxes.length - 1);
    expect([...found].sort()).toEqual([...widgets.keys()].sort());
    expect(new Set(widgets.values()).size).toBe(widgets.size);
  });

  test('leads the tab key through the boxes in the order of the sheet', () => {
    const order = pdf.getPages().flatMap((page) =>
      (page.node.Annots()?.asArray() ?? []).flatMap((ref) => {
        const given = pdf.context.lookup(ref, PDFDict).lookup(name('TM'));
        return given instanceof PDFString ? [given.asString()] : [];
      }),
    );
    const wanted = boxes.filter(({ kind, choices = [] }) => kind !== 'choice' || choices.length > 4);
    expect(order).toEqual(wanted.map(({ id }) => id));
  });

  test('gives a finger 7 mm and a pen a place to write, inside the page', () => {
    for (const page of pdf.getPages()) {
      for (const ref of page.node.Annots()?.asArray() ?? []) {
        const widget = pdf.context.lookup(ref, PDFDict);
        if (Number(String(widget.get(name('F')))) === 2) continue;
        const [left = 0, low = 0, right = 0, high = 0] = widget
          .lookup(name('Rect'), PDFArray)
          .asArray()
          .map((one) => (one as PDFNumber).asNumber());
        expect(high - low).toBeGreaterThan(19.7);
        expect(right - left).toBeGreaterThan(19.7);
        expect(left).toBeGreaterThan(36);
        expect(right).toBeLessThan(page.getWidth() - 36);
      }
    }
  });

  test('no two boxes cover each other', () => {
    for (const page of pdf.getPages()) {
      const rects = (page.node.Annots()?.asArray() ?? [])
        .map((ref) => pdf.context.lookup(ref, PDFDict))
        .filter((widget) => Number(String(widget.get(name('F')))) !== 2)
        .map((widget) =>
          widget
            .lookup(name('Rect'), PDFArray)
            .asArray()
            .map((one) => (one as PDFNumber).asNumber()),
        );
      for (const [i, a] of rects.entries())
        for (const b of rects.slice(i + 1)) {
          const [al = 0, ab = 0, ar = 0, at = 0] = a;
          const [bl = 0, bb = 0, br = 0, bt = 0] = b;
          expect(
            Math.min(ar, br) - Math.max(al, bl) > 0.01 && Math.min(at, bt) - Math.max(ab, bb) > 0.01,
          ).toBe(false);
        }
    }
  });

  test('is marked as made of another when its template is not there', async () => {
    await expect(fieldSheetPdf(sheet, { ...look, templates: {} })).rejects.toMatchObject({
      code: 'render.template.missing',
    });
  });
});

describe('boxes in markup', () => {
  const markup = (inside: string) =>
    `<review title="T" language="en"><readings what="a" filled="b" left-out="c"><reading label="x">${inside}</reading></readings></review>`;
  const codes = (inside: string): readonly string[] => {
    try {
      parseMarkup(markup(inside));
      return [];
    } catch (error) {
      return (error as { issues: readonly { code: string }[] }).issues.map(({ code }) => code);
    }
  };

  test.each([
    ['<box id="a.b" kind="number" tip="t"/>', []],
    ['<box id="a.b" kind="number" tip="t"/><box id="a.b" kind="text" tip="t"/>', ['render.markup.id-twice']],
    [
      '<box id="a.b" kind="number" tip="t"/><box id="a.b.c" kind="text" tip="t"/>',
      ['render.markup.box-in-box'],
    ],
    ['<box id="a" kind="choice" tip="t"><choice>one</choice></box>', ['render.markup.choices-do-not-fit']],
    ['<box id="a" kind="tick" tip="t"><choice>one</choice></box>', ['render.markup.choices-do-not-fit']],
    ['<box id="a b" kind="number" tip="t"/>', ['render.markup.wrong-value']],
    ['<box id="a" kind="script" tip="t"/>', ['render.markup.wrong-value']],
    ['<box id="a" kind="text"/>', ['render.markup.missing-attribute']],
  ])('%s', (inside, expected) => {
    expect(codes(inside)).toEqual(expected);
  });
});
