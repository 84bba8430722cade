/**
 * Cuts a TrueType file down to the glyphs a document uses. Glyph numbers stay as they are, so that text already
 * encoded stays right; glyphs that are not used keep their place with no outline and no advance.
 */
import { type TrueType, viewOf } from './true-type.js';

/** Tables copied unchanged where the face has them: programs that outlines may call. */
const COPIED = ['cvt ', 'fpgm', 'prep'];

// Flags of one component in a composite outline.
const ARGUMENTS_ARE_WORDS = 0x0001;
const HAS_SCALE = 0x0008;
const MORE_COMPONENTS = 0x0020;
const HAS_TWO_SCALES = 0x0040;
const HAS_MATRIX = 0x0080;

/**
 * Glyph numbers a composite outline is put together from.
 *
 * @param outline - outline record
 * @returns glyph numbers; none for a simple outline
 */
export function componentsOf(outline: Uint8Array): readonly number[] {
  if (outline.length < 10) return [];
  const view = viewOf(outline);
  if (view.getInt16(0) >= 0) return [];
  const components: number[] = [];
  let at = 10;
  for (;;) {
    const flags = view.getUint16(at);
    components.push(view.getUint16(at + 2));
    at += 4 + (flags & ARGUMENTS_ARE_WORDS ? 4 : 2);
    if (flags & HAS_SCALE) at += 2;
    else if (flags & HAS_TWO_SCALES) at += 4;
    else if (flags & HAS_MATRIX) at += 8;
    if (!(flags & MORE_COMPONENTS)) return components;
  }
}

/** Used glyphs, the sign for a missing glyph, and every part of a composite, in rising order. */
export function closeOverComponents(face: TrueType, used: Iterable<number>): readonly number[] {
  const kept = new Set<number>();
  const waiting = [0, ...used];
  for (let glyph = waiting.pop(); glyph !== undefined; glyph = waiting.pop()) {
    if (kept.has(glyph)) continue;
    kept.add(glyph);
    waiting.push(...componentsOf(face.outlineOf(glyph)));
  }
  return [...kept].sort((a, b) => a - b);
}

/**
 * Writes a TrueType file that holds only the used glyphs.
 *
 * @param face - the whole face
 * @param used - glyph numbers used by the text
 * @returns the smaller file; the same face and glyphs give the same bytes
 */
export function subsetTrueType(face: TrueType, used: Iterable<number>): Uint8Array {
  const kept = closeOverComponents(face, used);
  const count = (kept.at(-1) ?? 0) + 1;
  const loca = new Uint8Array(4 * (count + 1));
  const hmtx = new Uint8Array(4 * count);
  const outlines: Uint8Array[] = [];
  const offsets = viewOf(loca);
  const metrics = viewOf(hmtx);
  const bearings = readBearings(face);
  const keep = new Set(kept);
  let offset = 0;
  for (let glyph = 0; glyph < count; glyph++) {
    offsets.setUint32(4 * glyph, offset);
    if (!keep.has(glyph)) continue;
    const outline = face.outlineOf(glyph);
    outlines.push(outline);
    offset += padded(outline.length);
    metrics.setUint16(4 * glyph, face.advanceOf(glyph));
    metrics.setInt16(4 * glyph + 2, bearings(glyph));
  }
  offsets.setUint32(4 * count, offset);

  const head = copyOf(face, 'head');
  viewOf(head).setUint32(8, 0); // whole-file checksum, set last
  viewOf(head).setInt16(50, 1); // long offsets
  const hhea = copyOf(face, 'hhea');
  viewOf(hhea).setUint16(34, count);
  const maxp = copyOf(face, 'maxp');
  viewOf(maxp).setUint16(4, count);
  const tables: [string, Uint8Array][] = [
    ['glyf', join(outlines, offset)],
    ['head', head],
    ['hhea', hhea],
    ['hmtx', hmtx],
    ['loca', loca],
    ['maxp', maxp],
  ];
  for (const tag of COPIED) if (face.tables.has(tag)) tables.push([tag, copyOf(face, tag)]);
  return writeFile(tables.sort(([a], [b]) => (a < b ? -1 : 1)));
}

const padded = (length: number): number => (length + 3) & ~3;
const copyOf = (face: TrueType, tag: string): Uint8Array => Uint8Array.from(face.tables.get(tag) ?? []);

function readBearings(face: TrueType): (glyph: number) => number {
  const hmtx = viewOf(copyOf(face, 'hmtx'));
  const advanceCount = viewOf(copyOf(face, 'hhea')).getUint16(34);
  return (glyph) =>
    hmtx.getInt16(glyph < advanceCount ? 4 * glyph + 2 : 4 * advanceCount + 2 * (glyph - advanceCount));
}

function join(parts: readonly Uint8Array[], length: number): Uint8Array {
  const whole = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += padded(part.length);
  }
  return whole;
}

function writeFile(tables: readonly (readonly [string, Uint8Array])[]): Uint8Array {
  const directory = 12 + 16 * tables.length;
  const file = new Uint8Array(tables.reduce((sum, [, bytes]) => sum + padded(bytes.length), directory));
  const view = viewOf(file);
  const power = Math.floor(Math.log2(tables.length));
  view.setUint32(0, 0x00010000);
  view.setUint16(4, tables.length);
  view.setUint16(6, 16 * 2 ** power);
  view.setUint16(8, power);
  view.setUint16(10, 16 * (tables.length - 2 ** power));
  let at = directory;
  let headAt = 0;
  tables.forEach(([tag, bytes], i) => {
    const entry = 12 + 16 * i;
    for (let k = 0; k < 4; k++) file[entry + k] = tag.charCodeAt(k);
    file.set(bytes, at);
    view.setUint32(entry + 4, checksum(file, at, padded(bytes.length)));
    view.setUint32(entry + 8, at);
    view.setUint32(entry + 12, bytes.length);
    if (tag === 'head') headAt = at;
    at += padded(bytes.length);
  });
  view.setUint32(headAt + 8, (0xb1b0afba - checksum(file, 0, file.length)) >>> 0);
  return file;
}

function checksum(file: Uint8Array, start: number, length: number): number {
  const view = viewOf(file);
  let sum = 0;
  for (let at = start; at < start + length; at += 4) sum = (sum + view.getUint32(at)) >>> 0;
  return sum;
}
