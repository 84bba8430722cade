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

test('every file of a check is in the registry under its name', () => {
  const ids = new Set<string>(checks.map((check) => check.id));
  expect(checkFiles.map(({ name }) => basename(name, '.ts')).filter((id) => !ids.has(id))).toEqual([]);
});

test('no two checks have one id, and none has no file', () => {
  const ids = checks.map((check) => check.id);
  expect(new Set(ids).size).toBe(ids.length);
  expect(checkFiles).toHaveLength(ids.length);
});

test('every check has a test file', () => {
  const without = checks.filter(({ id }) => !existsSync(join(projectRoot, `tests/checks/${id}.test.ts`)));
  expect(without.map(({ id }) => id)).toEqual([]);
});

test('every check has a title and rests on known publications, with a clause or as a whole', () => {
  const unfounded = checks.filter(
    ({ basis, title }) =>
      basis.length === 0 || basis.some(({ source }) => !(source in sources)) || !/^[A-Z]/.test(title),
  );
  expect(unfounded.map(({ id }) => id)).toEqual([]);
});
