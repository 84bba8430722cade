import { existsSync } from 'node:fs';
import { basename, join } from 'node:path';
import { expect, test } from 'vitest';
import { allChecks as checks } from '../../src/checks/all-checks.js';
import { sources } from '../../src/sources/index.js';
import { projectRoot, sourceFiles } from './source-tree.js';

/** Files that make a check; the others in the folder are what checks are made with. */
const checkFiles = sourceFiles.filter(
  ({ folder, text }) => folder === 'checks' && /= defineCheck[<(]/.test(text),
);

test('there are checks', () => {
  expect(checkFiles.length).toBeGreaterThan(5);
});

test.each(checkFiles)('$name is in the registry under the name of its file', ({ name }) => {
  const id = basename(name, '.ts');
  expect(checks.map((check) => check.id)).toContain(id);
});

test('no two checks have one id, and none has no file', () => {
  const ids = checks.map((check) => check.id);
  expect(new Set(ids).size).toBe(ids.length);
  expect(checkFiles).toHaveLength(ids.length);
});

test.each(checks)('$id has a test file', ({ id }) => {
  expect(existsSync(join(projectRoot, `tests/checks/${id}.test.ts`))).toBe(true);
});

test.each(checks)('$id rests on known publications, with a clause or as a whole', ({ basis, title }) => {
  expect(basis.length).toBeGreaterThan(0);
  for (const { source } of basis) expect(Object.keys(sources)).toContain(source);
  expect(title).toMatch(/^[A-Z]/);
});
