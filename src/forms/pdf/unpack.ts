/** Unpacks streams, no further than the budget goes. */
import { Unzlib } from 'fflate';
import { EngineError } from '../../issues/issue.js';
import { takeObject } from './find-objects.js';
import { type Budget, LIMITS, spendSigns } from './limits.js';
import { readValue } from './read-value.js';
import type { Cursor } from './signs.js';
import { isKind, type PdfGroup, type PdfObject, type PdfValue } from './value.js';

/** Looks up what a reference leads to; anything else is returned as it is. */
export type Resolve = (value: PdfValue | undefined) => PdfValue | undefined;

/** Packed bytes given to the unpacker at once: what they can grow to is still small. */
const PORTION = 8 * 1024;

/**
 * What a stream holds.
 *
 * @param head - group with its stream
 * @param resolve - looks up references
 * @param budget - what may be unpacked
 * @returns its bytes; undefined where it is damaged or packed in a way that forms do not use
 * @throws EngineError `fieldwork.form.too-much`
 */
export function unpackStream(head: PdfGroup, resolve: Resolve, budget: Budget): Uint8Array | undefined {
  const { entries, stream } = head;
  if (!stream) return undefined;
  const filters = listOf(resolve(entries.get('Filter')));
  const parameters = listOf(resolve(entries.get('DecodeParms')));
  if (filters.length > 2) return undefined;
  let bytes: Uint8Array | undefined = stream;
  filters.forEach((filter, i) => {
    const name = resolve(filter);
    const isFlate = isKind(name, 'name') && (name.name === 'FlateDecode' || name.name === 'Fl');
    const unpacked = isFlate && bytes ? inflate(bytes, budget) : undefined;
    bytes = unpacked && withoutPredictor(unpacked, resolve(parameters[i]), resolve);
  });
  return bytes;
}

const listOf = (value: PdfValue | undefined): readonly PdfValue[] =>
  value === undefined || value === null ? [] : isKind(value, 'list') ? value.items : [value];

/** Inflates; what came before a fault is kept, as every reader of damaged files does. */
function inflate(packed: Uint8Array, budget: Budget): Uint8Array | undefined {
  const parts: Uint8Array[] = [];
  let size = 0;
  const unzip = new Unzlib((part) => {
    parts.push(part);
    size += part.length;
    budget.unpacked -= part.length;
  });
  for (let at = 0; at < packed.length; at += PORTION) {
    try {
      const end = Math.min(packed.length, at + PORTION);
      unzip.push(packed.subarray(at, end), end === packed.length);
    } catch {
      if (size === 0) return undefined;
      break;
    }
    if (budget.unpacked < 0)
      throw new EngineError('fieldwork.form.too-much', { what: 'bytes unpacked', limit: LIMITS.unpacked });
  }
  const whole = new Uint8Array(size);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** Takes back the differences to the row above that ISO 32000-1, 7.4.4.4 calls PNG predictors. */
function withoutPredictor(
  bytes: Uint8Array,
  parameters: PdfValue | undefined,
  resolve: Resolve,
): Uint8Array | undefined {
  const number = (key: string, otherwise: number): number => {
    const value = isKind(parameters, 'group') ? resolve(parameters.entries.get(key)) : undefined;
    return typeof value === 'number' ? value : otherwise;
  };
  const predictor = number('Predictor', 1);
  if (predictor === 1) return bytes;
  const columns = number('Columns', 1);
  if (predictor < 10 || number('Colors', 1) !== 1 || number('BitsPerComponent', 8) !== 8) return undefined;
  if (!(columns >= 1 && columns <= 65_536)) return undefined;
  const rows = Math.floor(bytes.length / (columns + 1));
  const out = new Uint8Array(rows * columns);
  for (let row = 0; row < rows; row++) {
    const kind = bytes[row * (columns + 1)] ?? 0;
    for (let i = 0; i < columns; i++) {
      const at = row * columns + i;
      const left = i > 0 ? (out[at - 1] ?? 0) : 0;
      const up = row > 0 ? (out[at - columns] ?? 0) : 0;
      const corner = row > 0 && i > 0 ? (out[at - columns - 1] ?? 0) : 0;
      out[at] = (bytes[row * (columns + 1) + 1 + i] ?? 0) + guess(kind, left, up, corner);
    }
  }
  return out;
}

function guess(kind: number, left: number, up: number, corner: number): number {
  if (kind === 1) return left;
  if (kind === 2) return up;
  if (kind === 3) return (left + up) >> 1;
  if (kind !== 4) return 0;
  const p = left + up - corner;
  const [a, b, c] = [Math.abs(p - left), Math.abs(p - up), Math.abs(p - corner)];
  return a <= b && a <= c ? left : b <= c ? up : corner;
}

/**
 * Puts the objects of a packed stream among the others, unless a later place in the file has them.
 *
 * @param packed - the stream and where it stands
 * @param objects - all objects by number; added to
 * @param resolve - looks up references
 * @param budget - what may be unpacked and read
 * @returns whether the stream could be read
 * @throws EngineError `fieldwork.form.too-much`, `fieldwork.form.too-deep`
 */
export function unpackObjects(
  packed: PdfObject,
  objects: Map<number, PdfObject>,
  resolve: Resolve,
  budget: Budget,
): boolean {
  const head = packed.value;
  if (!isKind(head, 'group')) return false;
  const bytes = unpackStream(head, resolve, budget);
  const first = resolve(head.entries.get('First'));
  const count = resolve(head.entries.get('N'));
  if (!bytes || typeof first !== 'number' || typeof count !== 'number') return false;
  const contents: Cursor = { bytes: bytes.subarray(0, Math.max(0, first)), at: 0 };
  for (let i = 0; i < count; i++) {
    const number = readValue(contents, budget);
    const offset = readValue(contents, budget);
    if (typeof number !== 'number' || typeof offset !== 'number' || offset < 0) return false;
    takeObject(budget);
    const cursor: Cursor = { bytes, at: first + offset };
    const value = readValue(cursor, budget);
    // Many entries may lead to one long text: each time it is read counts.
    spendSigns(budget, Math.max(0, cursor.at - first - offset));
    if (value === undefined) return false;
    const known = objects.get(number);
    if (!known || known.at < packed.at) objects.set(number, { at: packed.at, value });
  }
  return true;
}
