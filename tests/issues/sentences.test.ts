import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import type { Coded } from '../../src/issues/issue.js';
import { sentenceOf } from '../../src/issues/print.js';
import { sentences } from '../../src/issues/sentences/index.js';

const source = fileURLToPath(new URL('../../src', import.meta.url));
const textOf = (folder: string): string =>
  readdirSync(join(source, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => readFileSync(join(source, folder, name), 'utf8'))
    .join('\n');

const codesIn = (folder: string, pattern: RegExp) =>
  [...new Set([...textOf(folder).matchAll(pattern)].map(([, code = '']) => code))].sort();
const written = [
  ...codesIn('input', /'(input\.[a-z-]+)'/gu),
  ...codesIn('units', /'((?:quantity|expression)\.[a-z-]+)'/gu),
];
const own = Object.keys(sentences).filter((code) => /^(input|quantity|expression)\./u.test(code));

test.each(written)('%s has a sentence', (code) => {
  expect(sentences).toHaveProperty([code]);
});

test('no sentence about the input is left over', () => {
  expect(own.filter((code) => !written.includes(code))).toEqual([]);
});

test.each(own)('the sentence of %s is plain: no full stop, no line end, no empty part', (code) => {
  const { message, wanted, example, hint } = sentenceOf({ code, data: {} } as Coded);
  for (const part of [message, wanted, example, hint]) {
    if (part === undefined) continue;
    expect(part.trim()).not.toBe('');
    expect(part).not.toMatch(/\n|undefined|\[object/u);
  }
  expect(message).not.toMatch(/\.$/u);
  expect(message).not.toContain(code);
});

test('a code without a sentence is still told', () => {
  expect(sentenceOf({ code: 'no.such-code', data: { found: 3 } } as unknown as Coded).message).toBe(
    'no.such-code {"found":3}',
  );
});
