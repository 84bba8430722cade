import { expect, test } from 'vitest';
import { readInstallation } from '../../src/input/read-installation.js';
import { printIssue } from '../../src/issues/print.js';

const issuesOf = (text: string) => {
  const read = readInstallation(text, { file: 'a.yaml' });
  return read.ok ? [] : read.issues;
};
const keys = (count: number) => Array.from({ length: count }, (_, index) => `k${index}: 1\n`).join('');

test('sixty thousand different keys are refused by their number, where their map begins', () => {
  expect(issuesOf(`review:\n  project: a\n${keys(60_000)}`)).toMatchObject([
    { code: 'input.too-many-keys', data: { found: 60_001, most: 10_000 }, place: { line: 1, column: 1 } },
  ]);
});

test('issues past the first hundred are counted', () => {
  const issues = issuesOf(`format: pipeborne/1\n${keys(4_000)}`);
  expect(issues).toHaveLength(101);
  const lines = issues.slice(-1).flatMap(printIssue);
  expect(lines[0]).toMatch(/^error\[input\.more-issues\]: and 3,9\d\d more$/u);
  expect(lines[1]).toContain('a.yaml:');
});

test('a key that stands twice is named with the line of the first, block or flow, text or number', () => {
  for (const [text, key, first, line] of [
    ['a: 1\nb: 2\na: 3\n', 'a', 1, 3],
    ['x: {p: 1,\n  q: 2, "p": 3}\n', 'p', 1, 2],
    ['"1": a\n1: b\n', '1', 1, 2],
  ] as const)
    expect(issuesOf(text)).toMatchObject([
      { code: 'input.key-twice', data: { key, first }, place: { line } },
    ]);
});

test('many faults of one file are told once each', () => {
  const issues = issuesOf('a: [\n'.repeat(40_000));
  expect(issues.length).toBeGreaterThan(0);
  expect(issues.length).toBeLessThanOrEqual(101);
});
