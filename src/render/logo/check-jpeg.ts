/** Looks through a JPEG before it is embedded: a frame that PDF readers know, a bearable size, and its end. */
import { EngineError } from '../../issues/issue.js';
import { refusePixels } from './refuse-pixels.js';

/** Frames that every PDF reader draws: baseline, extended, progressive. */
const FRAMES: readonly number[] = [0xc0, 0xc1, 0xc2];
/** Every marker that begins a frame, drawn or not. */
const isFrame = (marker: number): boolean =>
  marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
const hasNoLength = (marker: number): boolean => marker === 0x01 || (marker >= 0xd0 && marker <= 0xd7);

/**
 * Checks a JPEG.
 *
 * @param bytes - the file, its first marker already known to be right
 * @param file - name for messages
 * @returns width and height [pixels]
 * @throws EngineError `render.logo.damaged` | `render.logo.too-many-pixels` | `render.logo.not-drawn`
 */
export function checkJpeg(
  bytes: Uint8Array,
  file: string,
): { readonly width: number; readonly height: number } {
  const damaged = (reason: string): never => {
    throw new EngineError('render.logo.damaged', { file, reason });
  };
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let size: { readonly width: number; readonly height: number } | undefined;
  let at = 2;
  for (;;) {
    if (at + 4 > bytes.length) damaged('it ends before its pixels');
    if (bytes[at] !== 0xff) damaged('its parts do not follow each other');
    const marker = bytes[at + 1] ?? 0;
    if (marker === 0xff || hasNoLength(marker)) {
      at += marker === 0xff ? 1 : 2;
      continue;
    }
    const length = view.getUint16(at + 2);
    if (length < 2 || at + 2 + length > bytes.length) damaged('one of its parts is cut off');
    if (isFrame(marker)) {
      if (size) damaged('it says its size twice');
      size = frameSize(view, at, marker, file, damaged);
    }
    if (marker === 0xda) break;
    at += 2 + length;
  }
  if (size === undefined) return damaged('it does not say its size');
  if (!endsSoundly(bytes)) damaged('it is cut off');
  return size;
}

function frameSize(
  view: DataView,
  at: number,
  marker: number,
  file: string,
  damaged: (reason: string) => never,
) {
  const notDrawn = (found: string): never => {
    throw new EngineError('render.logo.not-drawn', { file, found });
  };
  if (!FRAMES.includes(marker)) notDrawn('a lossless or arithmetic JPEG');
  if (view.getUint16(at + 2) < 8) damaged('one of its parts is cut off');
  if (view.getUint8(at + 4) !== 8) notDrawn('a JPEG of more than eight bits a colour');
  const components = view.getUint8(at + 9);
  // Printing colours are written inverted by some programs and not by others: the picture would be a guess.
  if (components === 4) notDrawn('a JPEG in printing colours (CMYK)');
  if (components !== 1 && components !== 3) damaged('its kind of colour is not known');
  const [height, width] = [view.getUint16(at + 5), view.getUint16(at + 7)];
  refusePixels(width, height, file);
  return { width, height };
}

/** The end marker, with nothing but padding behind it. */
function endsSoundly(bytes: Uint8Array): boolean {
  let last = bytes.length - 1;
  while (last > 0 && bytes[last] === 0) last -= 1;
  return bytes[last] === 0xd9 && bytes[last - 1] === 0xff;
}
