import ts from 'typescript';
import { expect, test } from 'vitest';
import { lineOf, type SourceFile, sourceFiles, walk } from './source-tree.js';

/** A habit the house does not allow, with the reason that the failing test prints. */
interface Banned {
  readonly what: string;
  readonly reason: string;
  /** Files it is allowed in. */
  readonly allowedIn: (file: SourceFile) => boolean;
  readonly matches: (node: ts.Node) => boolean;
}

const inCommandLine = ({ folder }: SourceFile) => folder === 'cli';
const nowhere = () => false;

const isGlobal = (name: string) => (node: ts.Node) =>
  ts.isIdentifier(node) &&
  node.text === name &&
  !(ts.isPropertyAccessExpression(node.parent) && node.parent.name === node) &&
  !(ts.isPropertyAssignment(node.parent) && node.parent.name === node) &&
  !(ts.isPropertySignature(node.parent) && node.parent.name === node);

const isCallOf = (object: string, method: string) => (node: ts.Node) =>
  ts.isPropertyAccessExpression(node) &&
  node.name.text === method &&
  ts.isIdentifier(node.expression) &&
  node.expression.text === object;

const isMethod = (pattern: RegExp) => (node: ts.Node) =>
  ts.isPropertyAccessExpression(node) && pattern.test(node.name.text);

/** `list[index]` or `map.get(key)`. */
const isRead = (node: ts.Node) =>
  ts.isElementAccessExpression(node) ||
  (ts.isCallExpression(node) &&
    ts.isPropertyAccessExpression(node.expression) &&
    node.expression.name.text === 'get');

const banned: readonly Banned[] = [
  {
    what: 'process',
    reason: 'only the command line knows the process',
    allowedIn: inCommandLine,
    matches: isGlobal('process'),
  },
  {
    what: 'console',
    reason: 'only the command line speaks',
    allowedIn: inCommandLine,
    matches: isGlobal('console'),
  },
  {
    what: 'Buffer',
    reason: 'everything but the command line runs in a browser',
    allowedIn: inCommandLine,
    matches: isGlobal('Buffer'),
  },
  {
    what: 'the clock',
    reason:
      'the same input gives the same bytes: dates are input; a new file alone is dated, by its surroundings',
    allowedIn: ({ name }) => name === 'cli/environment.ts',
    matches: (node) =>
      isCallOf('Date', 'now')(node) ||
      (ts.isCallExpression(node) && node.expression.getText() === 'Date') ||
      (ts.isNewExpression(node) && node.expression.getText() === 'Date' && !node.arguments?.length),
  },
  {
    what: 'performance',
    reason: 'the same input gives the same bytes',
    allowedIn: nowhere,
    matches: isGlobal('performance'),
  },
  {
    what: 'Math.random',
    reason: 'the same input gives the same bytes',
    allowedIn: nowhere,
    matches: isCallOf('Math', 'random'),
  },
  {
    what: 'toLocale…',
    reason: 'the machine must not decide how a number is printed',
    allowedIn: nowhere,
    matches: isMethod(/^toLocale/),
  },
  {
    what: 'Intl',
    reason: 'the machine must not decide how a number is printed',
    allowedIn: nowhere,
    matches: isGlobal('Intl'),
  },
  {
    what: 'toFixed, toPrecision, toExponential',
    reason: 'digits are cut in one place',
    allowedIn: ({ name }) => name === 'units/format.ts',
    matches: isMethod(/^to(Fixed|Precision|Exponential)$/),
  },
  {
    what: 'any',
    reason: 'the compiler cannot check it',
    allowedIn: nowhere,
    matches: (node) => node.kind === ts.SyntaxKind.AnyKeyword,
  },
  {
    what: 'a class that is not an error',
    reason: 'data are plain, functions are functions',
    allowedIn: nowhere,
    matches: (node) =>
      ts.isClassLike(node) && !/\bextends \w*Error\b/.test(node.getText().split('{')[0] ?? ''),
  },
  {
    what: 'a default export',
    reason: 'a thing has one name everywhere',
    allowedIn: nowhere,
    matches: (node) =>
      ts.isExportAssignment(node) ||
      (node.kind === ts.SyntaxKind.DefaultKeyword && ts.isFunctionDeclaration(node.parent)),
  },
  {
    what: '! after something that is not a read by index or key',
    reason: 'what may be missing is handled, not wished away',
    allowedIn: nowhere,
    matches: (node) => ts.isNonNullExpression(node) && !isRead(node.expression),
  },
  {
    what: '! outside the loops over arrays',
    reason: 'what may be missing is handled, not wished away',
    allowedIn: ({ folder }) => ['algebra', 'mechanics', 'model'].includes(folder),
    matches: ts.isNonNullExpression,
  },
];

/** Where each habit was found, all in one walk. */
const found = new Map<Banned, string[]>(banned.map((habit) => [habit, []]));
for (const file of sourceFiles) {
  const forbidden = banned.filter(({ allowedIn }) => !allowedIn(file));
  walk(file.tree, (node) => {
    for (const habit of forbidden)
      if (habit.matches(node)) found.get(habit)?.push(`${file.name}:${lineOf(node)}`);
  });
}

test.each(banned)('$what: $reason', (habit) => {
  expect(found.get(habit)).toEqual([]);
});

test('a planted habit of each kind would be seen', () => {
  const planted = `
    process.exit(); console.log(); Buffer.from(''); new Date(); performance.now(); Math.random();
    x.toLocaleString(); Intl.x; x.toFixed(1); let a: any; class Thing {}; export default 1; a!; a[0]!;`;
  const tree = ts.createSourceFile('planted.ts', planted, ts.ScriptTarget.Latest, true);
  const unseen = banned.filter(({ matches }) => {
    let seen = false;
    walk(tree, (node) => {
      seen ||= matches(node);
    });
    return !seen;
  });
  expect(unseen.map(({ what }) => what)).toEqual([]);
});
