/** A firm's picture beside its name, checked and ready to be drawn. */
import { EngineError } from '../../issues/issue.js';
import { checkJpeg } from './check-jpeg.js';
import { checkPng } from './check-png.js';
import { LOGO_LIMIT_BYTES, THINNEST } from './limits.js';
import type { Logo, LogoPicture } from './logo-shape.js';
import { readSvgLogo } from './read-svg.js';

/**
 * Reads a logo: PNG, JPEG, or the part of SVG that draws filled and stroked outlines. The kind is told by the bytes,
 * not by the name.
 *
 * @param bytes - the file
 * @param options - name for messages, and what the logo shows
 * @returns the logo
 * @throws EngineError `render.logo.unknown-kind` | `.too-large` | `.damaged` | `.not-drawn` | `.not-allowed` |
 *   `.too-thin` with the file and the reason
 */
export async function readLogo(
  bytes: Uint8Array,
  options: { readonly file: string; readonly alt: string },
): Promise<Logo> {
  const { file, alt } = options;
  if (bytes.length > LOGO_LIMIT_BYTES) {
    const [size, largest] = [`${Math.ceil(bytes.length / 1024)} KiB`, `${LOGO_LIMIT_BYTES / 1024} KiB`];
    throw new EngineError('render.logo.too-large', { file, size, largest });
  }
  const picture = await readPicture(bytes, file);
  const { width, height } = picture;
  if (Math.max(width, height) > THINNEST * Math.min(width, height))
    throw new EngineError('render.logo.too-thin', { file, times: THINNEST });
  return { ...picture, alt };
}

const PNG = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
const JPEG = [0xff, 0xd8, 0xff];
const startsWith = (bytes: Uint8Array, start: readonly number[]): boolean =>
  start.every((byte, i) => bytes[i] === byte);

async function readPicture(bytes: Uint8Array, file: string): Promise<LogoPicture> {
  if (startsWith(bytes, PNG)) return { kind: 'png', bytes, ...(await checkPng(bytes, file)) };
  if (startsWith(bytes, JPEG)) return { kind: 'jpeg', bytes, ...checkJpeg(bytes, file) };
  const text = textOf(bytes);
  if (text !== undefined && /<(\w+:)?svg[\s>]/.test(text.slice(0, 20_000)))
    return { kind: 'vector', ...readSvgLogo(text, file) };
  throw new EngineError('render.logo.unknown-kind', { file });
}

function textOf(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
}
