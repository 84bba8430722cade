/** The three faces of a document: measuring text, and remembering which glyphs were used. */
import { readTrueType, type TrueType } from './true-type.js';

export type Face = 'regular' | 'bold' | 'italic';
export const FACES: readonly Face[] = ['regular', 'bold', 'italic'];

/** The font files as bytes. */
export type FontFiles = Readonly<Record<Face, Uint8Array>>;

/** Width of a text [points] in a face at a size [points]. */
export type Measure = (text: string, face: Face, size: number) => number;

export interface Typeface {
  readonly faces: Readonly<Record<Face, TrueType>>;
  readonly measure: Measure;
}

/** Signs drawn by a near equal where the face lacks them. */
const STANDS_FOR: ReadonlyMap<number, number> = new Map([
  [0x2300, 0x00d8], // diameter sign by O with stroke
  [0x2205, 0x00d8],
  [0x03bc, 0x00b5],
  [0x2126, 0x03a9],
]);

/** Whether a sign only takes room. */
export const isBlank = (codePoint: number): boolean =>
  codePoint === 0x20 ||
  codePoint === 0xa0 ||
  (codePoint >= 0x2000 && codePoint <= 0x200b) ||
  codePoint === 0x202f;

/** Glyph number of a sign, through its near equal if the face lacks it; 0 when there is none. */
export function glyphOf(face: TrueType, codePoint: number): number {
  const glyph = face.glyphOf(codePoint);
  if (glyph !== 0) return glyph;
  const other = STANDS_FOR.get(codePoint);
  if (other !== undefined) return face.glyphOf(other);
  return isBlank(codePoint) ? face.glyphOf(0x20) : 0;
}

/**
 * Reads the three faces and measures text with them.
 *
 * @param files - the font files
 * @returns faces and a measuring function that keeps the advances it has looked up
 * @throws EngineError `render.font-unreadable` when a file cannot be read
 */
export function openTypeface(files: FontFiles): Typeface {
  const faces = {
    regular: readTrueType(files.regular, 'regular'),
    bold: readTrueType(files.bold, 'bold'),
    italic: readTrueType(files.italic, 'italic'),
  };
  const advances = { regular: new Map<number, number>(), bold: new Map(), italic: new Map() };
  const measure: Measure = (text, face, size) => {
    const known = advances[face];
    const font = faces[face];
    let sum = 0;
    for (const sign of text) {
      const codePoint = sign.codePointAt(0) ?? 0;
      let advance = known.get(codePoint);
      if (advance === undefined) {
        advance = font.advanceOf(glyphOf(font, codePoint)) / font.unitsPerEm;
        known.set(codePoint, advance);
      }
      sum += advance;
    }
    return sum * size;
  };
  return { faces, measure };
}

/** Signs of a text that a face can only show as an empty box, each once. */
export function missingSigns(text: string, files: FontFiles): readonly string[] {
  const { faces } = openTypeface(files);
  const missing = new Set<string>();
  for (const sign of text.normalize('NFC')) {
    const codePoint = sign.codePointAt(0) ?? 0;
    if (codePoint >= 0x20 && glyphOf(faces.regular, codePoint) === 0) missing.add(sign);
  }
  return [...missing];
}
