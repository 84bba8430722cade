/** Finds the browser that the tests look at the page with. */
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

const PROGRAMS = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];

/** Where the browser is; nothing when there is none on the path. */
export function findBrowser(): string | undefined {
  const folders = (process.env.PATH ?? '').split(delimiter);
  return PROGRAMS.flatMap((program) => folders.map((folder) => join(folder, program))).find(isProgram);
}

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
