/** Reads one value from bytes. What is broken is passed over; only what is too much is an error. */
import { EngineError } from '../../issues/issue.js';
import { type Budget, LIMITS } from './limits.js';
import { readHex, readLiteral } from './read-text.js';
import {
  CAPITAL_R,
  COMMENT,
  type Cursor,
  hexDigit,
  isBlank,
  isDelimiter,
  isDigit,
  isLineEnd,
  LESS,
  LIST,
  LIST_END,
  MORE,
  OPEN,
  SLASH,
  standsAt,
} from './signs.js';
import type { PdfValue } from './value.js';

/** Moves past blanks and comments. */
export function skipBlanks(cursor: Cursor): void {
  const { bytes } = cursor;
  while (cursor.at < bytes.length) {
    const byte = bytes[cursor.at];
    if (isBlank(byte)) cursor.at += 1;
    else if (byte === COMMENT)
      while (cursor.at < bytes.length && !isLineEnd(bytes[cursor.at])) cursor.at += 1;
    else return;
  }
}

/**
 * Reads the value at the cursor.
 *
 * @param cursor - moves behind the value; stays where there is none
 * @param budget - what may still be read
 * @param depth - lists and groups around it
 * @returns the value; undefined where there is none
 * @throws EngineError `fieldwork.form.too-deep`, `fieldwork.form.too-much`
 */
export function readValue(cursor: Cursor, budget: Budget, depth = 0): PdfValue | undefined {
  skipBlanks(cursor);
  if (depth > LIMITS.depth) throw new EngineError('fieldwork.form.too-deep', { limit: LIMITS.depth });
  budget.values -= 1;
  if (budget.values < 0)
    throw new EngineError('fieldwork.form.too-much', { what: 'values', limit: LIMITS.values });
  const { bytes, at } = cursor;
  const byte = bytes[at];
  if (byte === undefined) return undefined;
  if (byte === SLASH) return { kind: 'name', name: readName(cursor) };
  if (byte === OPEN) return { kind: 'text', bytes: readLiteral(cursor, budget) };
  if (byte === LESS)
    return bytes[at + 1] === LESS ? readGroup(cursor, budget, depth) : readHex(cursor, budget);
  if (byte === LIST) return readList(cursor, budget, depth);
  if (isDigit(byte) || byte === 43 || byte === 45 || byte === 46) return readNumber(cursor);
  for (const [word, value] of [
    ['true', true],
    ['false', false],
    ['null', null],
  ] as const) {
    if (!standsAt(bytes, at, word) || !isDelimiter(bytes[at + word.length])) continue;
    cursor.at += word.length;
    return value;
  }
  return undefined;
}

function readList(cursor: Cursor, budget: Budget, depth: number): PdfValue {
  const items: PdfValue[] = [];
  cursor.at += 1;
  for (;;) {
    skipBlanks(cursor);
    const byte = cursor.bytes[cursor.at];
    if (byte === undefined || endsObject(cursor)) return { kind: 'list', items };
    if (byte === LIST_END) {
      cursor.at += 1;
      return { kind: 'list', items };
    }
    const item = readValue(cursor, budget, depth + 1);
    if (item === undefined) cursor.at += 1;
    else items.push(item);
  }
}

function readGroup(cursor: Cursor, budget: Budget, depth: number): PdfValue {
  const entries = new Map<string, PdfValue>();
  cursor.at += 2;
  for (;;) {
    skipBlanks(cursor);
    const { bytes, at } = cursor;
    if (at >= bytes.length || endsObject(cursor)) return { kind: 'group', entries };
    if (bytes[at] === MORE && bytes[at + 1] === MORE) {
      cursor.at += 2;
      return { kind: 'group', entries };
    }
    if (bytes[at] !== SLASH) {
      cursor.at += 1;
      continue;
    }
    const key = readName(cursor);
    const value = readValue(cursor, budget, depth + 1);
    if (value !== undefined) entries.set(key, value);
  }
}

/** A list or a group that nobody closed ends with its object. */
const endsObject = ({ bytes, at }: Cursor): boolean => bytes[at] === 101 && standsAt(bytes, at, 'endobj');

/** A whole number with another and an R behind it is a reference. */
function readNumber(cursor: Cursor): PdfValue {
  const { bytes } = cursor;
  const from = cursor.at;
  let isWhole = true;
  while (cursor.at < bytes.length && !isDelimiter(bytes[cursor.at])) {
    if (!isDigit(bytes[cursor.at])) isWhole = false;
    cursor.at += 1;
  }
  const text = String.fromCharCode(...bytes.subarray(from, Math.min(cursor.at, from + 40)));
  const number = Number.parseFloat(text);
  if (!isWhole || text.length > 10) return Number.isFinite(number) ? number : 0;
  let at = cursor.at;
  while (isBlank(bytes[at]) && at < cursor.at + 8) at += 1;
  const second = at;
  while (isDigit(bytes[at]) && at < second + 6) at += 1;
  if (at === second) return number;
  const third = at;
  while (isBlank(bytes[at]) && at < third + 8) at += 1;
  if (at === third || bytes[at] !== CAPITAL_R || !isDelimiter(bytes[at + 1])) return number;
  cursor.at = at + 1;
  return { kind: 'ref', number };
}

function readName(cursor: Cursor): string {
  const { bytes } = cursor;
  const from = cursor.at + 1;
  cursor.at += 1;
  while (!isDelimiter(bytes[cursor.at])) cursor.at += 1;
  const raw = bytes.subarray(from, Math.min(cursor.at, from + LIMITS.text));
  if (!raw.includes(35)) return utf8(raw);
  const out = new Uint8Array(raw.length);
  let length = 0;
  for (let i = 0; i < raw.length; i++) {
    const high = raw[i] === 35 ? hexDigit(raw[i + 1]) : -1;
    const low = raw[i] === 35 ? hexDigit(raw[i + 2]) : -1;
    if (high >= 0 && low >= 0) {
      out[length] = 16 * high + low;
      i += 2;
    } else out[length] = raw[i] ?? 0;
    length += 1;
  }
  return utf8(out.subarray(0, length));
}

const STRICT = new TextDecoder('utf-8', { fatal: true });
const ONE_BYTE = new TextDecoder('latin1');

/** Names are UTF-8 in files of today and of one byte a sign in some older ones; nearly all are plain letters. */
function utf8(bytes: Uint8Array): string {
  if (bytes.length < 64 && bytes.every((byte) => byte < 128)) return String.fromCharCode(...bytes);
  try {
    return STRICT.decode(bytes);
  } catch {
    return ONE_BYTE.decode(bytes);
  }
}
