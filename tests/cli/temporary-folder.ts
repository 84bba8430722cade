/** A folder of its own for a test, gone when the test is over. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';

export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'pipeborne-test-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}
