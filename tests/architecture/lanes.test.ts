import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { lanes, lanesOf, lanesOfFile } from '../tooling/lanes.mjs';
import { filesBelow, projectRoot } from './source-tree.js';

const testFiles = filesBelow('tests', '.test.ts').map((name) => `tests/${name}`);

test('every test stands in exactly one lane, by its folder', () => {
  expect(testFiles.length).toBeGreaterThan(200);
  expect(testFiles.filter((file) => lanesOfFile(file).length !== 1)).toEqual([]);
});

test('a test of a folder without a lane would be seen', () => {
  expect(lanesOfFile('tests/attic/some.test.ts')).toEqual([]);
  expect(lanesOfFile('tests/some.test.ts')).toEqual([]);
  expect(lanesOfFile('tests/published/some.test.ts')).toEqual(['published']);
});

test('quick and whole are all lanes, and none is in both', () => {
  expect([...lanesOf('quick'), ...lanesOf('whole')].sort()).toEqual([...lanesOf('all')].sort());
  expect(() => lanesOf('attic')).toThrow('there is no lane "attic"');
});

test('the read-me names every lane', () => {
  const readme = readFileSync(join(projectRoot, 'README.md'), 'utf8');
  expect(Object.keys(lanes).filter((name) => !readme.includes(`| ${name} |`))).toEqual([]);
});

test('everything that must hold runs every lane, and there nothing outside may be skipped', () => {
  const script = readFileSync(join(projectRoot, '.ci/run'), 'utf8');
  expect(script).toContain('run-lanes.mjs all');
  const switches = new Set(
    testFiles.flatMap((file) =>
      [
        ...readFileSync(join(projectRoot, file), 'utf8').matchAll(/process\.env\.([A-Z_]+) === 'required'/g),
      ].map((match) => match[1] ?? ''),
    ),
  );
  expect([...switches].filter((name) => !script.includes(`${name}=required`))).toEqual([]);
  expect(switches.size).toBeGreaterThan(3);
});
