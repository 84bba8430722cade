/** Reads what a layout and a subset need of a TrueType file: glyph numbers, advances, metrics and outlines. */
import { EngineError } from '../../issues/issue.js';

export interface TrueType {
  readonly bytes: Uint8Array;
  readonly tables: ReadonlyMap<string, Uint8Array>;
  readonly unitsPerEm: number;
  readonly glyphCount: number;
  /** Heights in units of the em: negative below the baseline. */
  readonly ascent: number;
  readonly descent: number;
  readonly capHeight: number;
  readonly italicAngle: number;
  readonly box: readonly [number, number, number, number];
  /** Glyph number of a code point; 0 when the face lacks the sign. */
  readonly glyphOf: (codePoint: number) => number;
  /** Advance width of a glyph in units of the em. */
  readonly advanceOf: (glyph: number) => number;
  /** Outline record of a glyph; empty for a blank such as the space. */
  readonly outlineOf: (glyph: number) => Uint8Array;
}

/** A window on part of a file, to read big-endian numbers from. */
export const viewOf = (bytes: Uint8Array): DataView =>
  new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

/**
 * Reads a TrueType file with `glyf` outlines.
 *
 * @param bytes - the file
 * @param name - what to call it in a message
 * @returns glyph lookup, advances and metrics
 * @throws EngineError `render.font-unreadable` when a needed table is missing or broken
 */
export function readTrueType(bytes: Uint8Array, name: string): TrueType {
  try {
    return read(bytes);
  } catch (error) {
    throw new EngineError('render.font-unreadable', { name, reason: (error as Error).message });
  }
}

function read(bytes: Uint8Array): TrueType {
  const tables = readDirectory(bytes);
  const table = (tag: string): Uint8Array => {
    const found = tables.get(tag);
    if (!found) throw new Error(`table "${tag}" is missing`);
    return found;
  };
  const head = viewOf(table('head'));
  const hhea = viewOf(table('hhea'));
  const os2 = tables.get('OS/2');
  const post = tables.get('post');
  const glyphCount = viewOf(table('maxp')).getUint16(4);
  const advances = viewOf(table('hmtx'));
  const advanceCount = hhea.getUint16(34);
  const offsets = readOffsets(table('loca'), head.getInt16(50) === 1, glyphCount);
  const outlines = table('glyf');
  return {
    bytes,
    tables,
    unitsPerEm: head.getUint16(18),
    glyphCount,
    ascent: hhea.getInt16(4),
    descent: hhea.getInt16(6),
    capHeight: os2 && os2.length >= 90 ? viewOf(os2).getInt16(88) : 700,
    italicAngle: post ? viewOf(post).getInt32(4) / 65536 : 0,
    box: [head.getInt16(36), head.getInt16(38), head.getInt16(40), head.getInt16(42)],
    glyphOf: readCharacterMap(table('cmap')),
    advanceOf: (glyph) => advances.getUint16(4 * Math.min(glyph, advanceCount - 1)),
    outlineOf: (glyph) => outlines.subarray(offsets[glyph] ?? 0, offsets[glyph + 1] ?? 0),
  };
}

function readDirectory(bytes: Uint8Array): Map<string, Uint8Array> {
  const file = viewOf(bytes);
  const version = file.getUint32(0);
  if (version !== 0x00010000 && version !== 0x74727565) throw new Error('it is not a TrueType file');
  const tables = new Map<string, Uint8Array>();
  for (let i = 0; i < file.getUint16(4); i++) {
    const at = 12 + 16 * i;
    const tag = String.fromCharCode(...bytes.subarray(at, at + 4));
    const start = file.getUint32(at + 8);
    const end = start + file.getUint32(at + 12);
    if (end > bytes.length) throw new Error(`table "${tag}" ends outside the file`);
    tables.set(tag, bytes.subarray(start, end));
  }
  return tables;
}

function readOffsets(loca: Uint8Array, isLong: boolean, glyphCount: number): Uint32Array {
  const view = viewOf(loca);
  const offsets = new Uint32Array(glyphCount + 1);
  for (let i = 0; i <= glyphCount; i++)
    offsets[i] = isLong ? view.getUint32(4 * i) : 2 * view.getUint16(2 * i);
  return offsets;
}

/** Prefers format 12 (all of Unicode) and falls back to format 4 (the basic plane). */
function readCharacterMap(cmap: Uint8Array): (codePoint: number) => number {
  const view = viewOf(cmap);
  let basic: number | undefined;
  for (let i = 0; i < view.getUint16(2); i++) {
    const platform = view.getUint16(4 + 8 * i);
    const start = view.getUint32(8 + 8 * i);
    const format = view.getUint16(start);
    if (platform !== 0 && platform !== 3) continue;
    if (format === 12) return (codePoint) => lookUpGroups(view, start, codePoint);
    if (format === 4) basic = start;
  }
  if (basic === undefined) throw new Error('no Unicode character map of format 4 or 12');
  const start = basic;
  return (codePoint) => lookUpSegments(view, start, codePoint);
}

function lookUpGroups(view: DataView, start: number, codePoint: number): number {
  let low = 0;
  let high = view.getUint32(start + 12) - 1;
  while (low <= high) {
    const middle = (low + high) >> 1;
    const at = start + 16 + 12 * middle;
    const first = view.getUint32(at);
    if (codePoint < first) high = middle - 1;
    else if (codePoint > view.getUint32(at + 4)) low = middle + 1;
    else return view.getUint32(at + 8) + codePoint - first;
  }
  return 0;
}

function lookUpSegments(view: DataView, start: number, codePoint: number): number {
  if (codePoint > 0xffff) return 0;
  const doubledCount = view.getUint16(start + 6);
  for (let i = 0; i < doubledCount; i += 2) {
    if (codePoint > view.getUint16(start + 14 + i)) continue;
    const first = view.getUint16(start + 16 + doubledCount + i);
    if (codePoint < first) return 0;
    const delta = view.getInt16(start + 16 + 2 * doubledCount + i);
    const rangeAt = start + 16 + 3 * doubledCount + i;
    const range = view.getUint16(rangeAt);
    if (range === 0) return (codePoint + delta) & 0xffff;
    const glyph = view.getUint16(rangeAt + range + 2 * (codePoint - first));
    return glyph === 0 ? 0 : (glyph + delta) & 0xffff;
  }
  return 0;
}
