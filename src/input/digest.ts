import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

/**
 * SHA-256 of a text.
 *
 * @param text - any text, taken as UTF-8 [-]
 * @returns sixty-four hexadecimal signs [-]
 */
export function digestOf(text: string): string {
  return bytesToHex(sha256(utf8ToBytes(text)));
}
