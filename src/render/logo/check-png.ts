/** Looks through a PNG before anything unpacks it: sound parts, a bearable size, and no more data than the size asks for. */
import { EngineError } from '../../issues/issue.js';
import { refusePixels } from './refuse-pixels.js';

/** Samples a pixel by colour type, with the depths PNG allows for it. */
const COLOURS: Readonly<Record<number, { readonly samples: number; readonly depths: readonly number[] }>> = {
  0: { samples: 1, depths: [1, 2, 4, 8, 16] },
  2: { samples: 3, depths: [8, 16] },
  3: { samples: 1, depths: [1, 2, 4, 8] },
  4: { samples: 2, depths: [8, 16] },
  6: { samples: 4, depths: [8, 16] },
};

/**
 * Checks a PNG.
 *
 * @param bytes - the file, its first eight bytes already known to be right
 * @param file - name for messages
 * @returns width and height [pixels]
 * @throws EngineError `render.logo.damaged` | `render.logo.too-many-pixels` | `render.logo.not-drawn`
 */
export async function checkPng(
  bytes: Uint8Array,
  file: string,
): Promise<{ readonly width: number; readonly height: number }> {
  const damaged = (reason: string): never => {
    throw new EngineError('render.logo.damaged', { file, reason });
  };
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const packed: Uint8Array<ArrayBuffer>[] = [];
  let head: DataView | undefined;
  let hasPalette = false;
  let at = 8;
  for (let last = ''; last !== 'IEND'; ) {
    if (at + 12 > bytes.length) damaged('it ends before its last part');
    const length = view.getUint32(at);
    last = String.fromCharCode(...bytes.subarray(at + 4, at + 8));
    if (at + 12 + length > bytes.length) damaged(`its part ${printable(last)} is cut off`);
    const sum = view.getUint32(at + 8 + length);
    if (crc32(bytes.subarray(at + 4, at + 8 + length)) !== sum)
      damaged(`its part ${printable(last)} does not match its checksum`);
    const data = bytes.slice(at + 8, at + 8 + length);
    if (last === 'IHDR' && length === 13) head ??= new DataView(data.buffer);
    if (last === 'PLTE') hasPalette = true;
    if (last === 'acTL') throw new EngineError('render.logo.not-drawn', { file, found: 'a moving picture' });
    if (last === 'IDAT') packed.push(data);
    if (head === undefined) damaged('it does not begin with its size');
    at += 12 + length;
  }
  const size = sizeOf(head ?? damaged('it does not say its size'), hasPalette, file, damaged);
  const found = await unpackedLength(packed, size.bytes, damaged);
  if (found > size.bytes) damaged('it unpacks to more than its size asks for');
  if (found < size.bytes) damaged('rows of pixels are missing');
  return { width: size.width, height: size.height };
}

function sizeOf(head: DataView, hasPalette: boolean, file: string, damaged: (reason: string) => never) {
  const [width, height] = [head.getUint32(0), head.getUint32(4)];
  const [depth, type, interlace] = [head.getUint8(8), head.getUint8(9), head.getUint8(12)];
  const colour = COLOURS[type];
  if (!colour?.depths.includes(depth)) damaged('its kind of colour is not one of PNG');
  if (type === 3 && !hasPalette) damaged('its palette is missing');
  if (interlace !== 0)
    throw new EngineError('render.logo.not-drawn', { file, found: 'an interlaced picture' });
  refusePixels(width, height, file);
  const row = 1 + Math.ceil((width * (colour?.samples ?? 1) * depth) / 8);
  return { width, height, bytes: row * height };
}

/** Unpacks without keeping anything, and stops one byte past what is wanted: a small file may unpack to gigabytes. */
async function unpackedLength(
  packed: readonly Uint8Array<ArrayBuffer>[],
  wanted: number,
  damaged: (reason: string) => never,
): Promise<number> {
  let length = 0;
  const reader = new Blob([...packed]).stream().pipeThrough(new DecompressionStream('deflate')).getReader();
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) return length;
      length += value.length;
      if (length > wanted) {
        // What the cancelled stream still has to say is of no interest.
        void reader.cancel().catch(() => undefined);
        return length;
      }
    }
  } catch {
    return damaged('its pixels cannot be unpacked');
  }
}

const printable = (name: string): string => (/^[A-Za-z]{4}$/.test(name) ? name : 'of no name');

/** Checksum of PNG (ISO 15948, annex D). */
function crc32(bytes: Uint8Array): number {
  let sum = 0xffffffff;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit++) sum = (sum >>> 1) ^ (sum & 1 ? 0xedb88320 : 0);
  }
  return (sum ^ 0xffffffff) >>> 0;
}
