/** Puts a subset of a face into a PDF: text is written as glyph numbers, with a table back to Unicode. */
import { type PDFContext, PDFName, type PDFRef, PDFString } from 'pdf-lib';
import { subsetTrueType } from './subset.js';
import type { TrueType } from './true-type.js';
import { type Face, glyphOf } from './typeface.js';

const POSTSCRIPT_STYLES: Readonly<Record<Face, string>> = {
  regular: 'Regular',
  bold: 'SemiBold',
  italic: 'It',
};

/** A face while text is written with it: remembers every glyph used and the sign it stands for. */
export interface UsedFace {
  readonly encode: (text: string) => string;
  readonly used: ReadonlyMap<number, number>;
}

const HEX = Array.from({ length: 256 }, (_, i) => i.toString(16).padStart(2, '0'));
const hex4 = (value: number): string => `${HEX[(value >> 8) & 255]}${HEX[value & 255]}`;

/** Starts writing with a face. */
export function useFace(font: TrueType): UsedFace {
  const used = new Map<number, number>();
  const written = new Map<number, string>();
  return {
    used,
    encode: (text) => {
      let out = '';
      for (const sign of text) {
        const codePoint = sign.codePointAt(0) ?? 0;
        let hex = written.get(codePoint);
        if (hex === undefined) {
          const glyph = glyphOf(font, codePoint);
          hex = hex4(glyph);
          written.set(codePoint, hex);
          // One glyph may stand for several signs; the lowest is written back.
          const known = used.get(glyph);
          used.set(glyph, known === undefined ? codePoint : Math.min(known, codePoint));
        }
        out += hex;
      }
      return out;
    },
  };
}

/**
 * Writes the objects of one face.
 *
 * @param context - the PDF's objects
 * @param face - which of the three
 * @param font - the whole face
 * @param used - glyphs used and their signs
 * @param ref - where pages look for the font
 */
export function embedFace(
  context: PDFContext,
  face: Face,
  font: TrueType,
  used: ReadonlyMap<number, number>,
  ref: PDFRef,
): void {
  const glyphs = [...used.keys()].sort((a, b) => a - b);
  const name = PDFName.of(`${subsetTag(face, glyphs)}+SourceSans3-${POSTSCRIPT_STYLES[face]}`);
  const em = (value: number): number => Math.round((value * 1000) / font.unitsPerEm);
  const file = context.register(context.flateStream(subsetTrueType(font, glyphs), {}));
  const descriptor = context.obj({
    Type: 'FontDescriptor',
    FontName: name,
    Flags: face === 'italic' ? 4 + 64 : 4,
    FontBBox: font.box.map(em),
    ItalicAngle: Math.round(font.italicAngle),
    Ascent: em(font.ascent),
    Descent: em(font.descent),
    CapHeight: em(font.capHeight),
    StemV: face === 'bold' ? 120 : 84,
    FontFile2: file,
  });
  const descendant = context.obj({
    Type: 'Font',
    Subtype: 'CIDFontType2',
    BaseFont: name,
    CIDSystemInfo: {
      Registry: PDFString.of('Adobe'),
      Ordering: PDFString.of('Identity'),
      Supplement: 0,
    },
    FontDescriptor: context.register(descriptor),
    DW: 0,
    W: widthRuns(glyphs, (glyph) => em(font.advanceOf(glyph))),
    CIDToGIDMap: 'Identity',
  });
  const toUnicode = context.register(context.flateStream(unicodeMap(glyphs, used), {}));
  context.assign(
    ref,
    context.obj({
      Type: 'Font',
      Subtype: 'Type0',
      BaseFont: name,
      Encoding: 'Identity-H',
      DescendantFonts: [context.register(descendant)],
      ToUnicode: toUnicode,
    }),
  );
}

/** Six letters from the glyphs, the first telling the face, so that no two faces share a tag. */
export function subsetTag(face: Face, glyphs: readonly number[]): string {
  let hash = 0x811c9dc5;
  for (const glyph of glyphs) hash = Math.imul(hash ^ glyph, 0x01000193) >>> 0;
  let tag = { regular: 'R', bold: 'S', italic: 'T' }[face];
  for (let i = 0; i < 5; i++) {
    tag += String.fromCharCode(65 + (hash % 26));
    hash = Math.floor(hash / 26);
  }
  return tag;
}

/** Widths in runs of glyphs that follow each other. */
function widthRuns(glyphs: readonly number[], widthOf: (glyph: number) => number): (number | number[])[] {
  const runs: (number | number[])[] = [];
  let next = -1;
  for (const glyph of glyphs) {
    const last = runs.at(-1);
    if (glyph === next && Array.isArray(last)) last.push(widthOf(glyph));
    else runs.push(glyph, [widthOf(glyph)]);
    next = glyph + 1;
  }
  return runs;
}

function unicodeMap(glyphs: readonly number[], used: ReadonlyMap<number, number>): string {
  const entries = glyphs.map((glyph) => {
    const sign = String.fromCodePoint(used.get(glyph) ?? 0xfffd);
    const units = Array.from({ length: sign.length }, (_, i) => hex4(sign.charCodeAt(i))).join('');
    return `<${hex4(glyph)}> <${units}>`;
  });
  const blocks: string[] = [];
  // A block of the table may hold a hundred entries.
  for (let i = 0; i < entries.length; i += 100) {
    const block = entries.slice(i, i + 100);
    blocks.push(`${block.length} beginbfchar\n${block.join('\n')}\nendbfchar`);
  }
  return [
    '/CIDInit /ProcSet findresource begin',
    '12 dict begin',
    'begincmap',
    '/CIDSystemInfo <</Registry (Adobe) /Ordering (UCS) /Supplement 0>> def',
    '/CMapName /Adobe-Identity-UCS def',
    '/CMapType 2 def',
    '1 begincodespacerange\n<0000> <ffff>\nendcodespacerange',
    ...blocks,
    'endcmap',
    'CMapName currentdict /CMap defineresource pop',
    'end\nend',
  ].join('\n');
}
