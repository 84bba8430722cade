import ts from 'typescript';
import { expect, test } from 'vitest';
import { coded, EngineError, type Issue } from '../../src/issues/issue.js';
import { sentences } from '../../src/issues/sentences/index.js';
import type { Sentence } from '../../src/issues/sentences/sentence.js';
import { filesBelow, lineOf, sourceFiles, walk } from './source-tree.js';

interface CodeUse {
  readonly code: string;
  readonly place: string;
}

/** Codes are dotted lower-case words. */
const isCode = (text: string) => /^[a-z][a-z0-9-]*(\.[a-z0-9-]+)+$/.test(text);

/** First words of all codes. */
const folders = new Set(Object.keys(sentences).map((code) => code.split('.')[0] ?? ''));

const speaking = sourceFiles.filter(({ name }) => !name.startsWith('issues/sentences/'));

/** Names of properties that hold a code. */
const codeProperties = ['code', 'missing', 'advice', 'remark', 'doubt'];

/** What is thrown as `new EngineError(code)`, given to a function that makes an issue, or written as a property. */
const raised: readonly CodeUse[] = speaking.flatMap(({ name, tree }) => {
  const found: CodeUse[] = [];
  walk(tree, (node) => {
    if (!ts.isStringLiteralLike(node) || !isCode(node.text)) return;
    const { parent } = node;
    // Words of types the compiler holds against the sentences.
    if (ts.isLiteralTypeNode(parent)) return;
    const thrown = ts.isNewExpression(parent) && parent.expression.getText() === 'EngineError';
    const written = ts.isPropertyAssignment(parent) && codeProperties.includes(parent.name.getText());
    const known = folders.has(node.text.split('.')[0] ?? '') && !/\.(ts|js|hbs|ya?ml|json)$/.test(node.text);
    if (thrown || written || known) found.push({ code: node.text, place: `${name}:${lineOf(node)}` });
  });
  return found;
});

/** Every check may find no place, and may exceed: the runner makes these codes from its id. */
const made: readonly CodeUse[] = speaking
  .filter(({ folder, text }) => folder === 'checks' && /= defineCheck[<(]/.test(text))
  .flatMap(({ name, text }) => {
    const id = /\bid: '([a-z-]+)'/.exec(text)?.[1] ?? '?';
    return [
      { code: `checks.${id}.no-place`, place: name },
      { code: `checks.${id}.exceeds`, place: name },
    ];
  });

/** Codes made in the text from a beginning and something else: the beginnings. */
const beginnings: readonly string[] = speaking.flatMap(({ tree }) => {
  const found: string[] = [];
  walk(tree, (node) => {
    if (ts.isTemplateHead(node) && /^[a-z]+\.([a-z-]+\.)*$/.test(node.text)) found.push(node.text);
  });
  return found;
});

test('every code that is raised has a sentence', () => {
  expect(raised.length).toBeGreaterThan(100);
  expect(raised.filter(({ code }) => !(code in sentences))).toEqual([]);
});

test('every check has a sentence for having no place', () => {
  const needed = made.filter(({ code }) => code.endsWith('.no-place'));
  expect(needed.filter(({ code }) => !(code in sentences))).toEqual([]);
});

test('every sentence is said somewhere', () => {
  const said = new Set([...raised, ...made].map(({ code }) => code));
  const unused = Object.keys(sentences).filter(
    (code) => !said.has(code) && !beginnings.some((beginning) => code.startsWith(beginning)),
  );
  expect(unused).toEqual([]);
});

test('every file of sentences is in the one list', () => {
  const reached = new Set<string>();
  const reach = (name: string): void => {
    if (reached.has(name)) return;
    reached.add(name);
    const file = sourceFiles.find((each) => each.name === name);
    for (const { file: next } of file?.imports ?? []) if (next !== undefined) reach(next);
  };
  reach('issues/sentences/index.ts');
  const files = filesBelow('src/issues/sentences', '.ts').map((name) => `issues/sentences/${name}`);
  expect(files.filter((name) => !reached.has(name))).toEqual([]);
});

/** Names of the lists that a sentence declares among its data. */
const lists = new Map<string, ReadonlySet<string>>();
for (const { name, tree } of sourceFiles.filter((file) => file.name.startsWith('issues/sentences/')))
  walk(tree, (node) => {
    if (!ts.isPropertyAssignment(node) || !ts.isStringLiteralLike(node.name) || !isCode(node.name.text))
      return;
    const found = new Set<string>();
    walk(node.initializer, (inner) => {
      if (ts.isPropertySignature(inner) && inner.type?.getText() === 'readonly string[]')
        found.add(inner.name.getText());
    });
    if (lists.has(node.name.text)) throw new Error(`${node.name.text} is told twice, again in ${name}`);
    lists.set(node.name.text, found);
  });

/** Data that has everything, as text that shows where it was put; lists where the sentence declares one. */
const anything = (code: string): object =>
  new Proxy({}, { get: (_, key) => (lists.get(code)?.has(String(key)) ? ['x', 'x'] : 'x'), has: () => true });

test('every sentence is one clause without a full stop', () => {
  const faulty = Object.entries(sentences).filter(([code, sentence]) => {
    const tell: (data: never) => Sentence = sentence;
    const parts = Object.values(tell(anything(code) as never)).filter(
      (part): part is string => typeof part === 'string',
    );
    return parts.length === 0 || parts.some(isNoClause);
  });
  expect(faulty.map(([code]) => code)).toEqual([]);
});

const isNoClause = (part: string) =>
  part.trim() !== part || /(^|[^.])\.$/.test(part) || /undefined|NaN|\[object/.test(part);

test('a sentence that is no clause would be seen', () => {
  expect(['ends.', ' begins', 'is undefined', 'and so on …', 'wanted: 3 in'].map(isNoClause)).toEqual([
    true,
    true,
    true,
    false,
    false,
  ]);
});

test('a sentence says which data it is made of: none of it is looked up untyped', () => {
  const untyped = sourceFiles
    .filter(({ name }) => name.startsWith('issues/sentences/') && !/\/(tell|sentence)\.ts$/.test(name))
    .filter(({ text }) => /String\(data|data as |: any\b/.test(text))
    .map(({ name }) => name);
  expect(untyped).toEqual([]);
});

test('a code, or a datum of its sentence, that is not there does not compile', () => {
  // @ts-expect-error no sentence has this code
  expect(() => coded('checks.no-such-code', {})).not.toThrow();
  // @ts-expect-error the sentence names the condition
  expect(() => coded('checks.rod-load.exceeds', { at: 'H1' })).not.toThrow();
  // @ts-expect-error the same for what is thrown
  expect(() => new EngineError('cli.write.failed', { file: 'a.pdf' })).not.toThrow();
  // @ts-expect-error of two codes, what either needs
  expect(() => coded(Math.PI > 3 ? 'input.one-key' : 'cli.write.failed', {})).not.toThrow();
  // @ts-expect-error and for an issue written out
  const issue: Issue = { code: 'cli.write.failed', severity: 'error', data: { file: 'a.pdf' } };
  expect(issue.code).toBe('cli.write.failed');
});
