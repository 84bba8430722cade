import ts from 'typescript';
import { expect, test } from 'vitest';
import { sentences } from '../../src/issues/sentences/index.js';
import { filesBelow, lineOf, sourceFiles, walk } from './source-tree.js';

interface CodeUse {
  readonly code: string;
  readonly place: string;
}

/** Codes are dotted lower-case words. */
const isCode = (text: string) => /^[a-z][a-z0-9-]*(\.[a-z0-9-]+)+$/.test(text);

const speaking = sourceFiles.filter(({ name }) => !name.startsWith('issues/sentences/'));

/** What is thrown as `new EngineError(code)` or written as `code: '…'` in an issue or a reason. */
const raised: readonly CodeUse[] = speaking.flatMap(({ name, tree }) => {
  const found: CodeUse[] = [];
  walk(tree, (node) => {
    if (!ts.isStringLiteralLike(node) || !isCode(node.text)) return;
    const { parent } = node;
    const thrown = ts.isNewExpression(parent) && parent.expression.getText() === 'EngineError';
    const written = ts.isPropertyAssignment(parent) && parent.name.getText() === 'code';
    if (thrown || written) found.push({ code: node.text, place: `${name}:${lineOf(node)}` });
  });
  return found;
});

test.each(raised)('$code, raised at $place, has a sentence', ({ code }) => {
  expect(Object.keys(sentences)).toContain(code);
});

test('every sentence is said somewhere', () => {
  const texts = speaking.map(({ text }) => text).join('\n');
  const unused = Object.keys(sentences).filter(
    (code) => !texts.includes(`'${code}'`) && !texts.includes(`\`${code}\``),
  );
  expect(unused).toEqual([]);
});

test('every folder’s sentences are in the one list', () => {
  const files = filesBelow('src/issues/sentences', '.ts').filter(
    (name) => !/^(index|sentence)\.ts$/.test(name),
  );
  const index = sourceFiles.find(({ name }) => name === 'issues/sentences/index.ts')?.text ?? '';
  expect(files.filter((name) => !index.includes(`./${name.replace(/\.ts$/, '.js')}`))).toEqual([]);
});

/** Data that has everything, as text that shows where it was put. */
const anything = new Proxy({}, { get: () => 'x', has: () => true }) as Readonly<Record<string, string>>;

test.each(Object.entries(sentences))('%s is one clause without a full stop', (_code, sentence) => {
  const parts = Object.values(sentence(anything)).filter((part): part is string => typeof part === 'string');
  expect(parts.length).toBeGreaterThan(0);
  for (const part of parts) {
    expect(part.trim()).toBe(part);
    expect(part).not.toMatch(/(^|[^.])\.$/);
    expect(part).not.toMatch(/undefined|NaN|\[object/);
  }
});
