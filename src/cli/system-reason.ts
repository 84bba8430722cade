/** What the operating system meant, in words. */
import type { Stats } from 'node:fs';

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file or folder',
  EACCES: 'permission is denied',
  EPERM: 'the operation is not permitted',
  EISDIR: 'it is a folder',
  ENOTDIR: 'a part of the path is not a folder',
  ENOSPC: 'the disk is full',
  EROFS: 'the disk is read-only',
  EDQUOT: 'the quota is used up',
  ENAMETOOLONG: 'the name is too long',
  ELOOP: 'its symbolic links run in a circle',
  EMFILE: 'too many files are open',
  EEXIST: 'something of that name is there',
};

/**
 * The reason of a failed file operation.
 *
 * @param error - whatever was thrown
 * @returns a phrase for a message; the system's own text where the code is not known
 */
export function reasonOf(error: unknown): string {
  const { code, message } = error as NodeJS.ErrnoException;
  return reasons[code ?? ''] ?? message ?? String(error);
}

/**
 * What stands under a name.
 *
 * @param found - what the operating system says of it
 * @returns words for a message
 */
export function kindOf(found: Pick<Stats, 'isFIFO' | 'isSocket' | 'isDirectory' | 'isFile'>): string {
  if (found.isFIFO()) return 'a named pipe';
  if (found.isSocket()) return 'a socket';
  if (found.isDirectory()) return 'a folder';
  return found.isFile() ? 'a file' : 'a device';
}

/** True when the error says that the thing is not there. */
export function isMissing(error: unknown): boolean {
  return (error as NodeJS.ErrnoException).code === 'ENOENT';
}
