/** Reading the fonts of the package. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { FontFiles } from '../../index.js';
import { EngineError } from '../../issues/issue.js';
import { reasonOf } from '../system-reason.js';

/**
 * The fonts a review is set in.
 *
 * @param folder - folder of the package's fonts
 * @returns the bytes of each face
 * @throws EngineError `cli.read.shipped-missing`
 */
export async function readFonts(folder: string): Promise<FontFiles> {
  const read = async (face: string): Promise<Uint8Array> => {
    const file = join(folder, `SourceSans3-${face}.ttf`);
    try {
      return await readFile(file);
    } catch (error) {
      throw new EngineError('cli.read.shipped-missing', { file, reason: reasonOf(error) });
    }
  };
  const [regular, bold, italic] = await Promise.all([read('Regular'), read('SemiBold'), read('Italic')]);
  return { regular, bold, italic };
}
