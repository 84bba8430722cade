import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Installation } from '../../src/input/installation.js';
import { readInstallation } from '../../src/input/read-installation.js';
import type { Issue } from '../../src/issues/issue.js';

/** A file of this folder's fixtures, or of the samples. */
export function fileText(path: string): string {
  return readFileSync(fileURLToPath(new URL(path, import.meta.url)), 'utf8');
}

/** The fixture with every kind of part. */
export const everyPart = fileText('fixtures/every-part.yaml');
/** The shortest file that is accepted; small enough to break on purpose. */
export const shortest = fileText('fixtures/shortest.yaml');

/** Reads what must be readable. */
export function installationOf(text: string): Installation {
  const read = readInstallation(text);
  if (!read.ok) throw new Error(read.issues.map((issue) => `${issue.code} ${issue.place?.path}`).join('\n'));
  return read.installation;
}

/** Reads what must be refused. */
export function issuesOf(text: string): readonly Issue[] {
  const read = readInstallation(text);
  if (read.ok) throw new Error('was accepted');
  return read.issues;
}

/** A text with one piece replaced; the piece must be there. */
export function changed(text: string, ...changes: readonly (readonly [from: string, to: string])[]): string {
  return changes.reduce((result, [from, to]) => {
    if (!result.includes(from)) throw new Error(`"${from}" is not in the text`);
    return result.replace(from, to);
  }, text);
}

/**
 * A file that says nothing of the motor's bracket, and in which nobody assumes anything for all supports alike.
 *
 * @param text - text of the file
 * @returns the same without these lines
 */
export function withoutStructure(text: string): string {
  return text.replace(/^ +bracket: .*\n/mu, '').replace(/^assumed:\n(?: +.*\n)+/mu, '');
}
