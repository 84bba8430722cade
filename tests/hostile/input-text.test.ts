import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parse, stringify } from 'yaml';
import { readInstallation } from '../../src/input/read-installation.js';
import { printIssue } from '../../src/issues/print.js';
import { everyPart, issuesOf, shortest } from '../input/sample-text.js';

/** Whatever the text, there is an installation or there are issues that can be printed; nothing is thrown. */
function staysCalm(text: string): void {
  const read = readInstallation(text, { file: 'hostile.yaml' });
  if (read.ok) return;
  expect(read.issues.length).toBeGreaterThan(0);
  for (const issue of read.issues) {
    expect(issue.place?.line).toBeGreaterThanOrEqual(1);
    expect(issue.place?.column).toBeGreaterThanOrEqual(1);
    const [first = ''] = printIssue(issue);
    expect(first).toMatch(/^(error|warning)\[(input|quantity)\.[a-z-]+\]: [^{]/u);
  }
}

test('any text', () => {
  fc.assert(
    fc.property(
      fc.oneof(fc.string(), fc.string({ unit: 'binary' }), fc.string({ unit: 'grapheme' })),
      staysCalm,
    ),
    { numRuns: 300 },
  );
});

test('any bytes', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => staysCalm(new TextDecoder().decode(bytes))),
    { numRuns: 200 },
  );
});

test('any plain data', () => {
  fc.assert(
    fc.property(fc.jsonValue(), (value) => staysCalm(JSON.stringify(value))),
    { numRuns: 200 },
  );
});

test('a good file with a piece cut out, doubled or overwritten', () => {
  const place = fc.nat({ max: everyPart.length });
  fc.assert(
    fc.property(
      place,
      fc.nat({ max: 40 }),
      fc.oneof(fc.constant(''), fc.string({ maxLength: 8 })),
      (from, length, put) => {
        staysCalm(everyPart.slice(0, from) + put + everyPart.slice(from + length));
      },
    ),
    { numRuns: 100 },
  );
});

test('a good file with any value put anywhere', () => {
  const paths = pathsOf(parse(everyPart));
  fc.assert(
    fc.property(
      fc.constantFrom(...paths),
      fc.oneof(
        fc.jsonValue({ maxDepth: 1 }),
        fc.constantFrom('1e308 ft', '-5 lb', '0', 'up', '__proto__', null, true),
      ),
      (path, value) => {
        const content: unknown = parse(everyPart);
        put(content, path, value);
        staysCalm(stringify(content));
      },
    ),
    { numRuns: 150 },
  );
});

type Steps = readonly (string | number)[];

function pathsOf(value: unknown, path: Steps = []): readonly Steps[] {
  if (typeof value !== 'object' || value === null) return [path];
  return [
    ...(path.length > 0 ? [path] : []),
    ...Object.entries(value).flatMap(([key, inner]) => pathsOf(inner, [...path, key])),
  ];
}

function put(content: unknown, path: Steps, value: unknown): void {
  const holder = path
    .slice(0, -1)
    .reduce<unknown>((inner, step) => (inner as Record<string, unknown>)[step], content);
  (holder as Record<string, unknown>)[path.at(-1) ?? ''] = value;
}

const codes = (text: string) => [...new Set(issuesOf(text).map(({ code }) => code))];

test.each([
  ['brackets without end', '['.repeat(20000), 'input.too-deep'],
  ['lists in lists', `${'- '.repeat(5000)}x`, 'input.too-deep'],
  ['maps in maps', `${'{a: '.repeat(100)}x${'}'.repeat(100)}`, 'input.too-deep'],
  ['a text without end', 'a'.repeat(2_000_000), 'input.file-too-large'],
  ['a zero byte', 'format: pipeborne/1\0', 'input.not-text'],
  ['an alias that holds itself', 'a: &a [*a]', 'input.too-deep'],
  [
    'aliases of aliases of aliases',
    [
      'a: &a [x,x,x,x,x,x,x,x,x]',
      ...'bcdefghi'
        .split('')
        .map((name, index) => `${name}: &${name} [${Array(9).fill(`*${'abcdefghi'[index]}`).join(',')}]`),
    ].join('\n'),
    'input.too-many-aliases',
  ],
  ['a tag', 'format: !!python/object x', 'input.tag'],
  ['two documents', 'a: 1\n---\nb: 2\n', 'input.many-documents'],
] as const)('%s: refused in time', (_what, text, code) => {
  expect(codes(text)).toEqual([code]);
});

test.each([
  ['an escape in a value', 'a: "x\\e[2J"', 'U+001B', 1, 4],
  ['an escape in a key', 'b: 1\n"\\x1b]0;": 2', 'U+001B', 2, 1],
  ['a bell in a list', 'a:\n  - 1\n  - "\\a"', 'U+0007', 3, 5],
  ['a return in a mark', 'a: "x\\r1"', 'U+000D', 1, 4],
  ['a turned reading direction', 'a: H1\u202eabc', 'U+202E', 1, 4],
] as const)('%s: refused where it stands', (_what, text, sign, line, column) => {
  const [issue, ...others] = issuesOf(text);
  expect(others).toEqual([]);
  expect(issue).toMatchObject({ code: 'input.steering-sign', data: { sign }, place: { line, column } });
});

test('tabs, line ends and every letter may stand in a text', () => {
  expect(codes('a: "x\\ty\\nz ⅜″ Ø é 漢 👷"')).not.toContain('input.steering-sign');
});

test('keys named like the insides of an object are unknown keys', () => {
  const text = `${shortest}__proto__: {polluted: yes}\nconstructor: 1\nhasOwnProperty: 2\n`;
  expect(
    issuesOf(text)
      .map(({ data }) => data.key)
      .sort(),
  ).toEqual(['__proto__', 'constructor', 'hasOwnProperty']);
  expect(({} as Record<string, unknown>).polluted).toBeUndefined();
});

const nested = (depth: number): string =>
  depth === 0
    ? '[{straight: 1 ft}, {end: free}]'
    : `[{tee: {enter-by: branch, turn: ${depth % 2 ? 'up' : 'east'}, make: welding tee, side: {walk: ${nested(depth - 1)}}}}, {end: free}]`;
const nestedFile = (depth: number) =>
  shortest
    .replace(/ {8}- straight: 4 ft\n {8}- hanger: \{mark: H2.*\n {8}- end: anchored\n$/u, '')
    .replace(/walk:\n$/u, `walk: ${nested(depth)}\n`);

test('side legs of side legs are read to a depth, and refused beyond', () => {
  expect(nestedFile(7)).not.toBe(shortest);
  staysCalm(nestedFile(7));
  const { ok } = readInstallation(nestedFile(7));
  expect(ok || codes(nestedFile(7)).includes('input.walk-too-deep') === false).toBe(true);
  expect(codes(nestedFile(9))).toContain('input.walk-too-deep');
});

test('more parts than any pump has are refused', () => {
  const text = shortest.replace('        - straight: 2 ft\n', '        - straight: 2 ft\n'.repeat(5000));
  expect(codes(text)).toEqual(['input.too-many-parts']);
});
