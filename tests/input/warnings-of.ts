import { readInstallation } from '../../src/input/read-installation.js';

/** Warnings of a text that must be readable, as code and path. */
export function warningsOf(text: string): readonly string[] {
  const read = readInstallation(text);
  if (!read.ok) throw new Error(read.issues.map((issue) => `${issue.code} ${issue.place?.path}`).join('\n'));
  return read.warnings.map(({ code, place }) => `${code} ${place?.path}`);
}
