/** Signs of a PDF as bytes, and a place among them. */

/** A place in bytes that moves on. */
export interface Cursor {
  readonly bytes: Uint8Array;
  at: number;
}

export const code = (sign: string): number => sign.charCodeAt(0);
export const SLASH = code('/');
export const OPEN = code('(');
export const CLOSE = code(')');
export const LESS = code('<');
export const MORE = code('>');
export const LIST = code('[');
export const LIST_END = code(']');
export const COMMENT = code('%');
export const BACKSLASH = code('\\');
export const CAPITAL_R = code('R');

/** Null, tab, line feed, form feed, carriage return, blank. */
export const isBlank = (byte: number | undefined): boolean =>
  byte === 32 || byte === 10 || byte === 13 || byte === 9 || byte === 12 || byte === 0;
export const isDigit = (byte: number | undefined): boolean => byte !== undefined && byte >= 48 && byte <= 57;
/** What ends a word. */
export const isDelimiter = (byte: number | undefined): boolean =>
  byte === undefined ||
  isBlank(byte) ||
  byte === SLASH ||
  byte === OPEN ||
  byte === CLOSE ||
  byte === LESS ||
  byte === MORE ||
  byte === LIST ||
  byte === LIST_END ||
  byte === COMMENT ||
  byte === 123 ||
  byte === 125;

/** Whether a word stands at a place. */
export function standsAt(bytes: Uint8Array, at: number, word: string): boolean {
  for (let i = 0; i < word.length; i++) if (bytes[at + i] !== word.charCodeAt(i)) return false;
  return true;
}

/** Line feed or carriage return. */
export const isLineEnd = (byte: number | undefined): boolean => byte === 10 || byte === 13;

/** Value of a digit of sixteen; negative for another sign. */
export function hexDigit(byte: number | undefined): number {
  if (byte === undefined) return -1;
  if (isDigit(byte)) return byte - 48;
  const letter = byte | 32;
  return letter >= 97 && letter <= 102 ? letter - 87 : -1;
}
