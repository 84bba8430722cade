/** What a path leads to. */
import { realpathSync, statSync } from 'node:fs';

/** Whether a folder is there. */
export function isFolder(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;
}

/** The path with symbolic links followed as far as it exists, so that one file under two names is seen as one. */
export function realPath(path: string): string {
  try {
    return realpathSync(path);
  } catch {
    return path;
  }
}
