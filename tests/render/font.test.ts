import { expect, test } from 'vitest';
import { EngineError } from '../../src/issues/issue.js';
import { componentsOf, subsetTrueType } from '../../src/render/font/subset.js';
import { readTrueType } from '../../src/render/font/true-type.js';
import { glyphOf, missingSigns, openTypeface } from '../../src/render/font/typeface.js';
import { fonts, TRADE_SIGNS } from './specimen.js';

const faces = Object.entries(fonts);
const glyphsOf = (bytes: Uint8Array, text: string): readonly number[] => {
  const face = readTrueType(bytes, 'test');
  return [...text].map((sign) => glyphOf(face, sign.codePointAt(0) ?? 0));
};

test.each(faces)('the %s face has every sign of the trade', (_name, bytes) => {
  expect(glyphsOf(bytes, TRADE_SIGNS)).not.toContain(0);
});

test.each(faces)('digits of the %s face are all one width, and so are plus and minus', (_name, bytes) => {
  const face = readTrueType(bytes, 'test');
  const widths = [...'0123456789+−'].map((sign) => face.advanceOf(face.glyphOf(sign.codePointAt(0) ?? 0)));
  // The italic nought is a thousandth of the em narrower: a hundredth of a point in a table.
  expect(Math.max(...widths) - Math.min(...widths)).toBeLessThanOrEqual(1);
});

test.each(faces)('a subset of the %s face keeps outline, advance and parts of each glyph', (_name, bytes) => {
  const whole = readTrueType(bytes, 'test');
  const used = glyphsOf(bytes, `Åéñ 0123 H2 ${TRADE_SIGNS}`);
  const part = readSubset(subsetTrueType(whole, used));
  for (const glyph of used) {
    expect([...part.outlineOf(glyph)].slice(0, whole.outlineOf(glyph).length)).toEqual([
      ...whole.outlineOf(glyph),
    ]);
    expect(part.advanceOf(glyph)).toBe(whole.advanceOf(glyph));
    for (const component of componentsOf(whole.outlineOf(glyph)))
      expect(part.outlineOf(component).length).toBeGreaterThanOrEqual(whole.outlineOf(component).length);
  }
});

test('a subset leaves out what is not used, and is small', () => {
  const whole = readTrueType(fonts.regular, 'test');
  const used = glyphsOf(fonts.regular, 'abc');
  const bytes = subsetTrueType(whole, used);
  expect(readSubset(bytes).outlineOf(glyphsOf(fonts.regular, 'a')[0] ?? 0).length).toBeGreaterThan(0);
  expect(readSubset(bytes).outlineOf(glyphsOf(fonts.regular, 'A')[0] ?? 0)).toHaveLength(0);
  expect(bytes.length).toBeLessThan(fonts.regular.length / 10);
});

test('accented letters are made of parts, so the closure over parts is exercised', () => {
  const whole = readTrueType(fonts.regular, 'test');
  const parts = [...'ÅéñüÇ'].flatMap((sign) =>
    componentsOf(whole.outlineOf(whole.glyphOf(sign.codePointAt(0) ?? 0))),
  );
  expect(parts.length).toBeGreaterThan(0);
});

test('the checksum of a subset file is the one TrueType asks for', () => {
  const bytes = subsetTrueType(readTrueType(fonts.bold, 'test'), glyphsOf(fonts.bold, 'check'));
  const view = new DataView(bytes.buffer);
  let sum = 0;
  for (let at = 0; at < bytes.length; at += 4) sum = (sum + view.getUint32(at)) >>> 0;
  expect(sum).toBe(0xb1b0afba);
});

test('a file that is not a font is refused by name', () => {
  const broken = (): unknown => openTypeface({ ...fonts, italic: new Uint8Array([1, 2, 3]) });
  expect(broken).toThrow(EngineError);
  expect(broken).toThrow(/italic/);
});

test('signs the face lacks are named once', () => {
  expect(missingSigns('pump 漢 ☃ 漢 ≤ 6″\n', fonts)).toEqual(['漢', '☃']);
});

/** A subset has no character map: the reader gets an empty one, since only outlines and advances are asked for. */
function readSubset(bytes: Uint8Array): ReturnType<typeof readTrueType> {
  const view = new DataView(bytes.buffer, bytes.byteOffset);
  const count = view.getUint16(4);
  const cmap = new Uint8Array([
    0, 0, 0, 1, 0, 3, 0, 1, 0, 0, 0, 12, 0, 4, 0, 14, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0,
  ]);
  const file = new Uint8Array(bytes.length + 16 + cmap.length);
  const out = new DataView(file.buffer);
  file.set(bytes.subarray(0, 12 + 16 * count), 0);
  file.set(bytes.subarray(12 + 16 * count), 28 + 16 * count);
  for (let i = 0; i < count; i++) out.setUint32(20 + 16 * i, view.getUint32(20 + 16 * i) + 16);
  const entry = 12 + 16 * count;
  file.set(new TextEncoder().encode('cmap'), entry);
  out.setUint32(entry + 8, bytes.length + 16);
  out.setUint32(entry + 12, cmap.length);
  file.set(cmap, bytes.length + 16);
  out.setUint16(4, count + 1);
  return readTrueType(file, 'subset');
}
