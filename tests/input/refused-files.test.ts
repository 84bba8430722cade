import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { readInstallation } from '../../src/input/read-installation.js';
import { printIssue } from '../../src/issues/print.js';
import { fileText } from './sample-text.js';

const FOLDER = '../samples/refused';
const files = readdirSync(fileURLToPath(new URL(FOLDER, import.meta.url)));
const refused = files.filter((name) => name.endsWith('.yaml'));

test.each(refused)('%s is refused with the message beside it', (file) => {
  const read = readInstallation(fileText(`${FOLDER}/${file}`), { file });
  expect(read.ok).toBe(false);
  const printed = read.ok ? [] : read.issues.flatMap(printIssue);
  expect(`${printed.join('\n')}\n`).toBe(fileText(`${FOLDER}/${file.replace('.yaml', '.txt')}`));
});

test('there are at least twenty of them, each with its message', () => {
  expect(refused.length).toBeGreaterThanOrEqual(20);
  expect(files.filter((name) => name.endsWith('.txt')).map((name) => name.replace('.txt', '.yaml'))).toEqual(
    refused,
  );
});

test.each([
  ['a code that is no sign', '"a\\uFFFEb"', 'U+FFFE'],
  ['another', '"a\\uFDD0b"', 'U+FDD0'],
  ['one of another plane', '"a\\U0001FFFFb"', 'U+1FFFF'],
  ['half of a pair', '"a\\uD800b"', 'U+D800'],
])('%s is refused where it stands', (_what, written, sign) => {
  const read = readInstallation(`format: pipeborne/1\nreview:\n  project: ${written}\n`);
  expect(read.ok ? [] : read.issues).toMatchObject([
    { code: 'input.steering-sign', data: { sign }, place: { line: 3, column: 12 } },
  ]);
});
