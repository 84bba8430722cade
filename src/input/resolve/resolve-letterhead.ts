import type * as z from 'zod';
import type { Letterhead } from '../installation.js';
import type { letterhead } from '../schema/letterhead.js';

/**
 * The letterhead as plain data.
 *
 * @param file - what the file says [-]
 * @returns name, lines of the address, and the logo where there is one [-]
 */
export function resolveLetterhead(file: z.output<ReturnType<typeof letterhead>>): Letterhead {
  const { name, address = [], logo } = file;
  const logoText = file['logo-text'];
  return {
    name,
    address,
    ...(logo !== undefined && { logo }),
    ...(logoText !== undefined && { logoText }),
  };
}
