/** Text of a PDF as text: Unicode in its three ways, or the encoding of PDF's own. */

/** Signs of PDFDocEncoding that are not those of Latin-1: ISO 32000-1, annex D.2. */
const LOW = '˘ˇˆ˙˝˛˚˜';
const HIGH = '•†‡…—–ƒ⁄‹›−‰„“”‘’‚™ﬁﬂŁŒŠŸŽıłœšž';

/** Marks of language stand between two signs of escape. */
const ESCAPE = String.fromCharCode(27);
const LANGUAGE = new RegExp(`${ESCAPE}[^${ESCAPE}]{0,10}${ESCAPE}`, 'g');

/**
 * Reads a text string.
 *
 * @param bytes - as they stand in the file
 * @returns the text, line ends as line feeds, without the marks of language that Unicode text may hold
 */
export function pdfText(bytes: Uint8Array): string {
  const text = decode(bytes).replace(LANGUAGE, '').replace(/\r\n?/g, '\n');
  let end = text.length;
  while (end > 0 && text.charCodeAt(end - 1) === 0) end -= 1;
  return text.slice(0, end);
}

function decode(bytes: Uint8Array): string {
  const [a, b, c] = bytes;
  if (a === 0xfe && b === 0xff) return utf16(bytes.subarray(2), 0);
  if (a === 0xff && b === 0xfe) return utf16(bytes.subarray(2), 1);
  if (a === 0xef && b === 0xbb && c === 0xbf) return new TextDecoder('utf-8').decode(bytes.subarray(3));
  let text = '';
  for (const byte of bytes) text += documentSign(byte);
  return text;
}

function documentSign(byte: number): string {
  if (byte >= 0x18 && byte <= 0x1f) return LOW[byte - 0x18] ?? '';
  if (byte >= 0x80 && byte <= 0x9e) return HIGH[byte - 0x80] ?? '';
  if (byte === 0xa0) return '€';
  return String.fromCharCode(byte);
}

/** Pairs of bytes; `low` is where the byte of the higher value stands. */
function utf16(bytes: Uint8Array, low: 0 | 1): string {
  let text = '';
  for (let at = 0; at + 1 < bytes.length; at += 2)
    text += String.fromCharCode(256 * (bytes[at + low] ?? 0) + (bytes[at + 1 - low] ?? 0));
  return text;
}

/**
 * The words of a rich text, for a viewer that kept nothing else.
 *
 * @param rich - XHTML as ISO 32000-1, 12.7.3.4 has it
 * @returns its words; paragraphs and breaks as line feeds
 */
export function wordsOfRichText(rich: string): string {
  return rich
    .replace(/<\?[^>]*>/g, '')
    .replace(/<br\s*\/?>|<\/p>(?=\s*<p)/gi, '\n')
    .replace(/<[^>]*>/g, '')
    .replace(/&(lt|gt|amp|quot|apos);/g, (_, name: string) => ENTITIES[name] ?? '')
    .trim();
}

const ENTITIES: Readonly<Record<string, string>> = { lt: '<', gt: '>', amp: '&', quot: '"', apos: "'" };
