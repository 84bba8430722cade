import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { sources } from '../../src/sources/index.js';
import { filesBelow, projectRoot, type SourceFile, sourceFiles, walk } from './source-tree.js';

const units = new Set(
  '- m m² m³ m⁴ N N·m N/m N·m/rad Pa K 1/K rad kg kg/m kg/m³ kg·m² m/s m/s² m³/s W V A Hz rad/s'.split(' '),
);

/** Folders whose functions compute quantities: their comments carry units, and a test reads them. */
const computing = ['catalog', 'geometry', 'model', 'algebra', 'mechanics', 'analysis', 'judging', 'checks'];

interface DocumentedFunction {
  readonly label: string;
  readonly file: SourceFile;
  readonly declaration: ts.FunctionDeclaration;
}

const exported: readonly DocumentedFunction[] = sourceFiles.flatMap((file) =>
  file.tree.statements
    .filter(ts.isFunctionDeclaration)
    .filter((declaration) => declaration.modifiers?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword))
    .map((declaration) => ({ label: `${file.name} ${declaration.name?.text ?? ''}`, file, declaration })),
);

const commentText = (tag: ts.JSDocTag) => ts.getTextOfJSDocComment(tag.comment) ?? '';
const unitsIn = (words: string) => [...words.matchAll(/\[([^\]]*)\]/g)].map((match) => match[1] ?? '');

/** Bare numbers, where the unit can be nowhere but in the comment; a named type says its units at its fields. */
const isNumeric = (type: ts.TypeNode | undefined) =>
  type !== undefined &&
  /^(readonly )?(number|Float64Array|Vec3|number\[\]|\(number \| undefined\))(\[\])?( \| undefined)?$/.test(
    type.getText(),
  );

test('every exported function says in a sentence what it is', () => {
  expect(exported.filter(({ declaration }) => !hasSentence(declaration)).map(({ label }) => label)).toEqual(
    [],
  );
});

function hasSentence(declaration: ts.FunctionDeclaration): boolean {
  const comments = ts.getJSDocCommentsAndTags(declaration).filter(ts.isJSDoc);
  const words = comments.map((comment) => ts.getTextOfJSDocComment(comment.comment) ?? '').join(' ');
  return words.trim().length > 10;
}

const computed = exported.filter(({ file }) => computing.includes(file.folder));

test('every exported function that computes gives the unit of every number', () => {
  const without = computed.flatMap(({ label, declaration }) =>
    numbersWithoutUnit(declaration).map((which) => `${label}: ${which}`),
  );
  expect(without).toEqual([]);
});

/** Parameters and results that are bare numbers and have no `[unit]` in the comment. */
function numbersWithoutUnit(declaration: ts.FunctionDeclaration): readonly string[] {
  const lacksUnit = (tag: ts.JSDocTag | undefined) =>
    tag === undefined || unitsIn(commentText(tag)).length === 0;
  const parameters = declaration.parameters
    .filter(({ type }) => isNumeric(type))
    .filter((parameter) => lacksUnit(ts.getJSDocParameterTags(parameter)[0]))
    .map((parameter) => `@param ${parameter.name.getText()}`);
  const lacksReturn = isNumeric(declaration.type) && lacksUnit(ts.getJSDocReturnTag(declaration));
  return lacksReturn ? [...parameters, '@returns'] : parameters;
}

test('every exported function that computes uses only units of the list', () => {
  const unknown = computed.flatMap(({ label, declaration }) =>
    unknownUnits(declaration).map((unit) => `${label}: [${unit}]`),
  );
  expect(unknown).toEqual([]);
});

function unknownUnits(declaration: ts.FunctionDeclaration): readonly string[] {
  return ts
    .getJSDocTags(declaration)
    .filter((tag) => ts.isJSDocParameterTag(tag) || ts.isJSDocReturnTag(tag))
    .flatMap((tag) => unitsIn(commentText(tag)).flatMap((text) => text.split(/, | or /)))
    .filter((unit) => !units.has(unit));
}

test('a function without sentence, unit or known unit would be seen', () => {
  const planted = (comment: string) => {
    const text = `${comment}\nexport function f(a: number): number { return a; }`;
    const tree = ts.createSourceFile('planted.ts', text, ts.ScriptTarget.Latest, true);
    const [declaration] = tree.statements.filter(ts.isFunctionDeclaration);
    if (declaration === undefined) throw new Error('nothing planted');
    return declaration;
  };
  expect(hasSentence(planted(''))).toBe(false);
  expect(hasSentence(planted('/** What it is, in words. */'))).toBe(true);
  expect(numbersWithoutUnit(planted('/** Words. @param a no unit */'))).toEqual(['@param a', '@returns']);
  const whole = planted('/**\n * Words.\n * @param a length [m]\n * @returns stretch [furlong]\n */');
  expect(numbersWithoutUnit(whole)).toEqual([]);
  expect(unknownUnits(whole)).toEqual(['furlong']);
});

test('every @source in a comment is a known publication', () => {
  const unknown = sourceFiles.flatMap(({ name, text }) =>
    [...text.matchAll(/@source\s+([a-z0-9](?:[a-z0-9.-]*[a-z0-9])?)/g)]
      .map((match) => match[1] ?? '')
      .filter((id) => !(id in sources))
      .map((id) => `${name}: ${id}`),
  );
  expect(unknown).toEqual([]);
});

test('every known publication is relied on somewhere, in the product or in a check against it', () => {
  const own = sourceFiles.filter(({ folder }) => folder !== 'sources').map(({ text }) => text);
  const checks = filesBelow('tests', '.ts').map((name) =>
    readFileSync(join(projectRoot, 'tests', name), 'utf8'),
  );
  const texts = [...own, ...checks].join('\n');
  const unused = Object.keys(sources).filter((id) => !new RegExp(`['\`\\s]${id}['\`\\s(,:]`).test(texts));
  expect(unused).toEqual([]);
});

test('every field of a number in the frame has a unit near it', () => {
  const contracts = ['model/frame/frame.ts', 'model/conventions.ts'];
  const without: string[] = [];
  for (const { name, tree, text } of sourceFiles.filter((file) => contracts.includes(file.name))) {
    walk(tree, (node) => {
      if (!ts.isPropertySignature(node) || node.type?.getText() !== 'number') return;
      const line = text.slice(node.getFullStart(), text.indexOf('\n', node.end));
      if (!/\[[^\]]+\]/.test(line) && !commentOfInterface(node))
        without.push(`${name} ${node.name.getText()}`);
    });
  }
  expect(without).toEqual([]);
});

/** A unit said once for all fields, in the comment of the interface. */
function commentOfInterface(field: ts.PropertySignature): boolean {
  const comments = ts.getJSDocCommentsAndTags(field.parent).filter(ts.isJSDoc);
  return comments.some((comment) => /\[[^\]]+\]/.test(ts.getTextOfJSDocComment(comment.comment) ?? ''));
}
