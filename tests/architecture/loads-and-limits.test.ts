import ts from 'typescript';
import { expect, test } from 'vitest';
import { lineOf, type SourceFile, sourceFiles, walk } from './source-tree.js';

/** A piece of work that has one room, so that a figure has one birthplace. */
interface Homed {
  readonly what: string;
  readonly reason: string;
  /** Files it is done in. */
  readonly home: (file: SourceFile) => boolean;
  readonly matches: (node: ts.Node) => boolean;
  /** Pieces of code that must be seen. */
  readonly planted: readonly string[];
}

const inside =
  (...folders: readonly string[]) =>
  ({ folder }: SourceFile): boolean =>
    folders.includes(folder);

/** Last name of `a.b.c`, `a?.b`, `a!`, `(a)`, `a.value`, where `value` is the value of what stands before it. */
function lastName(node: ts.Node): string | undefined {
  if (ts.isParenthesizedExpression(node) || ts.isNonNullExpression(node)) return lastName(node.expression);
  if (ts.isIdentifier(node)) return node.text;
  if (!ts.isPropertyAccessExpression(node)) return undefined;
  return node.name.text === 'value' ? lastName(node.expression) : node.name.text;
}

const LIMITS = /^(limit|allowable|allowed|allowance|rating|\w+(Limit|Allowable|Allowed|Rating))$/;

const isLimit = (node: ts.Node): boolean => LIMITS.test(lastName(node) ?? '');

const COMPARING = [
  ts.SyntaxKind.LessThanToken,
  ts.SyntaxKind.LessThanEqualsToken,
  ts.SyntaxKind.GreaterThanToken,
  ts.SyntaxKind.GreaterThanEqualsToken,
];

const homed: readonly Homed[] = [
  {
    what: 'the force or moment of a load of a response',
    reason:
      'what a support carries is worked out once, in the analysis, with its directions and its rounding',
    home: inside('mechanics', 'analysis'),
    matches: (node) =>
      ts.isPropertyAccessExpression(node) &&
      ['force', 'moment'].includes(node.name.text) &&
      lastName(node.expression) === 'load',
    planted: ['solved.supports[mark]?.load.force[2]', 'load.force', 'own!.load?.moment'],
  },
  {
    what: 'a quotient by a limit',
    reason: 'a ratio is made where it is judged',
    home: inside('judging', 'mechanics', 'catalog', 'algebra'),
    matches: (node) =>
      ts.isBinaryExpression(node) &&
      node.operatorToken.kind === ts.SyntaxKind.SlashToken &&
      isLimit(node.right),
    planted: ['demand / limit', 'each / rods.rating.value', 'stress / hotAllowable'],
  },
  {
    what: 'a comparison with a limit',
    reason: 'there is one comparison with one rounding, where it is judged',
    home: inside(
      'judging',
      'mechanics',
      'algebra',
      'geometry',
      'cli',
      'render',
      'input',
      'forms',
      'readings',
    ),
    matches: (node) =>
      ts.isBinaryExpression(node) &&
      COMPARING.includes(node.operatorToken.kind) &&
      (isLimit(node.left) || isLimit(node.right)),
    planted: ['demand > limit', 'finding.limit <= value', 'stress < allowed', 'rating.value >= load'],
  },
];

const seenIn = (tree: ts.Node, matches: Homed['matches']): readonly ts.Node[] => {
  const seen: ts.Node[] = [];
  walk(tree, (node) => {
    if (matches(node)) seen.push(node);
  });
  return seen;
};

test.each(homed)('$what: $reason', ({ home, matches }) => {
  const places = sourceFiles
    .filter((file) => !home(file))
    .flatMap((file) => seenIn(file.tree, matches).map((node) => `${file.name}:${lineOf(node)}`));
  expect(places).toEqual([]);
});

test.each(homed.flatMap(({ what, matches, planted }) => planted.map((code) => ({ what, matches, code }))))(
  '$code would be seen as $what',
  ({ matches, code }) => {
    const tree = ts.createSourceFile('planted.ts', `const x = ${code};`, ts.ScriptTarget.Latest, true);
    expect(seenIn(tree, matches)).toHaveLength(1);
  },
);

test('what is none of these is not taken for it', () => {
  const harmless = 'const x = [wrench.force, limit * 2, distance / length, loads > 3, spring.load.value];';
  const tree = ts.createSourceFile('harmless.ts', harmless, ts.ScriptTarget.Latest, true);
  expect(homed.flatMap(({ matches }) => seenIn(tree, matches))).toEqual([]);
});
