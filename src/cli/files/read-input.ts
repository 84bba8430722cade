/** Reading an input file or standard input, with a limit, as UTF-8 text. */
import { createReadStream } from 'node:fs';
import { resolve } from 'node:path';
import { EngineError } from '../../issues/issue.js';
import type { Environment } from '../environment.js';
import { reasonOf } from '../system-reason.js';

/** Largest input accepted. A description of one pump is a few kilobytes; this keeps a wrong file from being read. */
export const INPUT_LIMIT_BYTES = 1024 * 1024;

/** Name that stands for standard input on the command line. */
export const STANDARD_INPUT = '-';

/** An input as read. */
export interface InputText {
  /** Name for messages, as the user gave it. */
  readonly name: string;
  readonly text: string;
}

/**
 * Reads one input.
 *
 * @param file - name as given, or `-` for standard input
 * @param environment - working folder and standard input
 * @param limit - largest size [bytes]
 * @returns the name for messages and the text
 * @throws EngineError `cli.read.failed` when it cannot be read, `cli.input.too-large`, `cli.input.not-text`
 */
export async function readInput(
  file: string,
  environment: Environment,
  limit: number = INPUT_LIMIT_BYTES,
): Promise<InputText> {
  const name = file === STANDARD_INPUT ? 'standard input' : file;
  const bytes = await readLimited(
    file === STANDARD_INPUT
      ? environment.standardInput()
      : createReadStream(resolve(environment.folder, file)),
    name,
    limit,
  );
  try {
    // The mark of byte order is kept: the fingerprint printed in the review is that of the file's own bytes.
    return { name, text: new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes) };
  } catch {
    throw new EngineError('cli.input.not-text', { file: name });
  }
}

/** Largest filled sheet accepted; one of ours takes some hundred kilobytes, and a viewer may write it anew. */
const SHEET_LIMIT_BYTES = 32 * 1024 * 1024;

/**
 * Reads a filled sheet or a file of readings.
 *
 * @param file - name as given
 * @param environment - working folder
 * @returns the bytes
 * @throws EngineError `cli.read.failed` when it cannot be read, `cli.input.too-large`
 */
export async function readSheetBytes(file: string, environment: Environment): Promise<Uint8Array> {
  return readLimited(createReadStream(resolve(environment.folder, file)), file, SHEET_LIMIT_BYTES);
}

async function readLimited(
  chunks: AsyncIterable<Uint8Array>,
  name: string,
  limit: number,
): Promise<Uint8Array> {
  const parts: Uint8Array[] = [];
  let size = 0;
  try {
    for await (const chunk of chunks) {
      size += chunk.byteLength;
      if (size > limit) break;
      parts.push(chunk);
    }
  } catch (error) {
    throw new EngineError('cli.read.failed', { file: name, reason: reasonOf(error) });
  }
  if (size > limit) {
    throw new EngineError('cli.input.too-large', { file: name, limit: `${limit / 1024} KiB` });
  }
  return Buffer.concat(parts);
}
