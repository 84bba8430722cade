/**
 * Finds every object of a PDF by going through the file from its beginning, so that a wrong or a missing table of
 * contents does no harm. What stands later counts: that is how viewers append what was filled in.
 */
import { EngineError } from '../../issues/issue.js';
import { type Budget, LIMITS } from './limits.js';
import { readValue, skipBlanks } from './read-value.js';
import { type Cursor, isBlank, isDigit, standsAt } from './signs.js';
import { isKind, type PdfGroup, type PdfObject, type PdfValue } from './value.js';

/** What was found in a file, streams still packed. */
export interface FoundObjects {
  /** By number; the last of each. */
  readonly objects: Map<number, PdfObject>;
  /** Streams that hold objects, in the order of the file. */
  readonly packed: readonly PdfObject[];
  /** Trailers, and the heads of tables of contents that are trailers too, in the order of the file. */
  readonly trailers: readonly PdfGroup[];
  /** Whether something stands behind the last trailer: the file was cut off while it was written. */
  readonly isCutOff: boolean;
}

/**
 * Goes through a file.
 *
 * @param bytes - the file
 * @param budget - what may be read
 * @returns objects, packed streams and trailers
 * @throws EngineError `fieldwork.form.too-much`, `fieldwork.form.too-deep`
 */
export function findObjects(bytes: Uint8Array, budget: Budget): FoundObjects {
  const objects = new Map<number, PdfObject>();
  const packed: PdfObject[] = [];
  const trailers: PdfGroup[] = [];
  const cursor: Cursor = { bytes, at: 0 };
  let isClosed = false;
  while (cursor.at < bytes.length) {
    const { at } = cursor;
    const byte = bytes[at];
    if (isDigit(byte) && !isDigit(bytes[at - 1])) {
      const number = readHeading(cursor);
      if (number === undefined) continue;
      takeObject(budget);
      const value = withStream(cursor, readValue(cursor, budget), objects);
      const object = { at, value: value ?? null };
      isClosed = false;
      objects.set(number, object);
      if (!isKind(value, 'group')) continue;
      const type = value.entries.get('Type');
      if (isKind(type, 'name') && type.name === 'ObjStm') packed.push(object);
      if (isKind(type, 'name') && type.name === 'XRef') {
        trailers.push(value);
        isClosed = true;
      }
      continue;
    }
    if (byte === 116 && standsAt(bytes, at, 'trailer')) {
      cursor.at += 'trailer'.length;
      const value = readValue(cursor, budget);
      if (isKind(value, 'group')) {
        trailers.push(value);
        isClosed = true;
      }
      continue;
    }
    cursor.at += 1;
  }
  return { objects, packed, trailers, isCutOff: !isClosed };
}

/** Counts an object. @throws EngineError `fieldwork.form.too-much` */
export function takeObject(budget: Budget): void {
  budget.objects -= 1;
  if (budget.objects < 0)
    throw new EngineError('fieldwork.form.too-much', { what: 'objects', limit: LIMITS.objects });
}

/** Reads `12 0 obj` and moves behind it; moves behind the first number where there is no such thing. */
function readHeading(cursor: Cursor): number | undefined {
  const { bytes } = cursor;
  const from = cursor.at;
  let at = from;
  while (isDigit(bytes[at])) at += 1;
  const end = at;
  cursor.at = end;
  if (end - from > 10 || !isBlank(bytes[at])) return undefined;
  while (isBlank(bytes[at])) at += 1;
  const second = at;
  while (isDigit(bytes[at])) at += 1;
  if (at === second || !isBlank(bytes[at])) return undefined;
  while (isBlank(bytes[at])) at += 1;
  if (!standsAt(bytes, at, 'obj')) return undefined;
  cursor.at = at + 3;
  return Number(String.fromCharCode(...bytes.subarray(from, end)));
}

/** Gives a group the stream behind it, and moves behind that. */
function withStream(
  cursor: Cursor,
  value: PdfValue | undefined,
  known: ReadonlyMap<number, PdfObject>,
): PdfValue | undefined {
  if (!isKind(value, 'group')) return value;
  const { bytes } = cursor;
  const before = cursor.at;
  skipBlanks(cursor);
  if (!standsAt(bytes, cursor.at, 'stream')) {
    cursor.at = before;
    return value;
  }
  let from = cursor.at + 'stream'.length;
  if (bytes[from] === 13) from += 1;
  if (bytes[from] === 10) from += 1;
  const end = endOfStream(bytes, from, lengthOf(value, known));
  cursor.at = end;
  return { ...value, stream: bytes.subarray(from, end) };
}

function lengthOf(head: PdfGroup, known: ReadonlyMap<number, PdfObject>): number | undefined {
  const length = head.entries.get('Length');
  const value = isKind(length, 'ref') ? known.get(length.number)?.value : length;
  return typeof value === 'number' && value >= 0 ? value : undefined;
}

const END = 'endstream';
/** How far the search goes on when a sign stands where the word would end. */
const LEAPS = Array.from({ length: 256 }, (_, byte) => {
  const last = END.lastIndexOf(String.fromCharCode(byte), END.length - 2);
  return END.length - 1 - last;
});

/** The length that is given counts where the stream ends there; if not, the word that ends streams is searched for. */
function endOfStream(bytes: Uint8Array, from: number, length: number | undefined): number {
  if (length !== undefined) {
    let at = from + length;
    while (isBlank(bytes[at]) && at < from + length + 4) at += 1;
    if (standsAt(bytes, at, END)) return from + length;
  }
  // From the last letter of the word: one that the word does not hold lets the search leap over it.
  for (let at = from + END.length - 1; at < bytes.length; at += LEAPS[bytes[at] ?? 0] ?? END.length)
    if (standsAt(bytes, at - END.length + 1, END)) return at - END.length + 1;
  return bytes.length;
}
