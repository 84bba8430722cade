import ts from 'typescript';
import { expect, test } from 'vitest';
import { lineOf, sourceFiles, walk } from './source-tree.js';

/** Conditions are picked by role; the file that makes ids from roles alone may look at them. */
const ROLES_FILE = 'model/conditions/condition-roles.ts';
/** The table of kinds; the input and the help of the command line, which stand left of the model, list the keys of the file. */
const KIND_FILES = [
  'model/support-parts.ts',
  'input/resolve/resolve-support.ts',
  'cli/help/input-reference.ts',
];

// `slack-hanger` is a check.
const ID =
  /^(empty|filled|test|running|hot|cold|pump-out|motor-off|starting(-opposite)?|(slack-(?!hanger$)|lateral-).*)$/;
const PREFIX = /^(slack|lateral|starting)/;
const NAMED = /(^|[.?])(name|condition|target|conditionName)$/;
const KIND = /^(hanger|spring-hanger|rest|guide|stop|anchor|stand|pump base)$/;

const literal = (node: ts.Node): string | undefined =>
  ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)
    ? node.text
    : ts.isTemplateExpression(node)
      ? node.head.text
      : undefined;
const isId = (node: ts.Node): boolean => ID.test(literal(node) ?? '');

/** Whether code tells a condition by its name. */
function tellsByName(node: ts.Node): boolean {
  if (ts.isBinaryExpression(node) && /^[!=]==?$/.test(node.operatorToken.getText())) {
    const { left, right } = node;
    return (isId(right) && NAMED.test(left.getText())) || (isId(left) && NAMED.test(right.getText()));
  }
  if (ts.isCallExpression(node) && ts.isPropertyAccessExpression(node.expression)) {
    const [first] = node.arguments;
    const method = node.expression.name.text;
    if (/^(startsWith|endsWith|replace|replaceAll|slice|indexOf|match)$/.test(method))
      return first !== undefined && PREFIX.test(literal(first) ?? '');
  }
  if (ts.isPropertyAccessExpression(node))
    return (
      ID.test(node.name.text) && /(^|\.)(conditions|unsolved|responses)\??$/.test(node.expression.getText())
    );
  if (ts.isElementAccessExpression(node))
    return (
      isId(node.argumentExpression) &&
      /(^|\.)(conditions|unsolved|responses)\??$/.test(node.expression.getText())
    );
  if (ts.isPropertyAssignment(node))
    return /^(condition|name)$/.test(node.name.getText()) && isId(node.initializer);
  if (ts.isVariableDeclaration(node) && node.initializer && ts.isArrayLiteralExpression(node.initializer))
    return /string\[\]/.test(node.type?.getText() ?? '') && node.initializer.elements.some(isId);
  return false;
}

/** Whether code lists kinds of support. */
function listsKinds(node: ts.Node): boolean {
  return (
    ts.isArrayLiteralExpression(node) &&
    node.elements.filter((element) => KIND.test(literal(element) ?? '')).length > 1
  );
}

function findings(tree: ts.SourceFile, is: (node: ts.Node) => boolean): readonly number[] {
  const lines: number[] = [];
  walk(tree, (node) => {
    if (is(node)) lines.push(lineOf(node));
  });
  return lines;
}

const everywhere = (is: (node: ts.Node) => boolean, but: readonly string[]) =>
  sourceFiles
    .filter(({ name }) => !but.includes(name))
    .flatMap(({ name, tree }) => findings(tree, is).map((line) => `${name}:${line}`));

test('no code tells a condition by its name', () => {
  expect(everywhere(tellsByName, [ROLES_FILE])).toEqual([]);
});

test('kinds of support are listed in their table alone', () => {
  expect(everywhere(listsKinds, KIND_FILES)).toEqual([]);
});

const planted = (text: string) => ts.createSourceFile('planted.ts', text, ts.ScriptTarget.Latest, true);

test.each([
  "conditions.find(({ name }) => name === 'filled')",
  "rows.filter((row) => 'starting-opposite' !== row.condition)",
  "name.startsWith('slack-')",
  "name.replace('lateral-', '')",
  'response.conditions.filled',
  "response.conditions['pump-out']",
  "({ condition: 'hot' })",
  'const x = { name: `slack-$' + '{mark}` }',
  "const SHOWN: readonly string[] = ['hot', 'cold']",
])('a planted look at a name is seen: %s', (text) => {
  expect(findings(planted(text), tellsByName)).toEqual([1]);
});

test.each([
  "ofRole(all, 'filled')",
  "role.kind === 'start'",
  "const READ = ['hot', 'cold'] as const",
  "state !== 'filled'",
])('picking by role is none: %s', (text) => {
  expect(findings(planted(text), tellsByName)).toEqual([]);
});

test('a planted list of kinds is seen', () => {
  expect(findings(planted("const HUNG = ['hanger', 'spring-hanger']"), listsKinds)).toEqual([1]);
});
