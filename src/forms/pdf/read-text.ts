/** Reads the two ways of writing a text: between round brackets, and in digits of sixteen. */
import { type Budget, spendSigns } from './limits.js';
import { BACKSLASH, CLOSE, type Cursor, code, hexDigit, isLineEnd, MORE, OPEN } from './signs.js';
import type { PdfValue } from './value.js';

/** Reads `<48656C6C6F>`. @throws EngineError `fieldwork.form.too-much` */
export function readHex(cursor: Cursor, budget: Budget): PdfValue {
  const { bytes } = cursor;
  const found = bytes.indexOf(MORE, cursor.at);
  const end = found < 0 ? bytes.length : found;
  spendSigns(budget, end - cursor.at);
  const out = new Uint8Array(Math.ceil((end - cursor.at) / 2));
  let digits = 0;
  for (let at = cursor.at + 1; at < end; at++) {
    const digit = hexDigit(bytes[at]);
    if (digit < 0) continue;
    const place = digits >> 1;
    out[place] = (out[place] ?? 0) | (digits % 2 === 0 ? digit << 4 : digit);
    digits += 1;
  }
  cursor.at = Math.min(bytes.length, end + 1);
  return { kind: 'text', bytes: out.subarray(0, (digits + 1) >> 1) };
}

/** What a backslash makes of the letter behind it. */
const ESCAPED: ReadonlyMap<number, number> = new Map(
  [...'nrtbf'].map((sign, i) => [code(sign), [10, 13, 9, 8, 12][i] ?? 0]),
);

/** Reads `(Hello)`. @throws EngineError `fieldwork.form.too-much` */
export function readLiteral(cursor: Cursor, budget: Budget): Uint8Array {
  const { bytes } = cursor;
  const from = cursor.at + 1;
  let end = from;
  for (let open = 1; end < bytes.length; end++) {
    const byte = bytes[end];
    if (byte === BACKSLASH) end += 1;
    else if (byte === OPEN) open += 1;
    else if (byte === CLOSE) {
      open -= 1;
      if (open === 0) break;
    }
  }
  end = Math.min(end, bytes.length);
  spendSigns(budget, end - from);
  cursor.at = Math.min(bytes.length, end + 1);
  const out = new Uint8Array(end - from);
  let length = 0;
  for (let at = from; at < end; at++) {
    let byte = bytes[at] ?? 0;
    if (byte === 13) {
      // A line end inside is a line feed, however it is written.
      if (bytes[at + 1] === 10) at += 1;
      byte = 10;
    } else if (byte === BACKSLASH) {
      at += 1;
      const next = bytes[at] ?? 0;
      if (isLineEnd(next)) {
        if (next === 13 && bytes[at + 1] === 10) at += 1;
        continue;
      }
      let octal = 0;
      let digits = 0;
      while (
        digits < 3 &&
        (bytes[at + digits] ?? 0) >= 48 &&
        (bytes[at + digits] ?? 0) <= 55 &&
        at + digits < end
      ) {
        octal = 8 * octal + (bytes[at + digits] ?? 48) - 48;
        digits += 1;
      }
      if (digits > 0) {
        at += digits - 1;
        byte = octal & 255;
      } else byte = ESCAPED.get(next) ?? next;
    }
    out[length] = byte;
    length += 1;
  }
  return out.subarray(0, length);
}
