import { execFileSync } from 'node:child_process';
import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { version } from '../../src/app/version.js';
import { projectRoot } from './source-tree.js';

const isText = (name: string) => !/\.(ttf|png|pdf|woff2?)$/.test(name);

/** Files of the project: those known to git and those about to be, so that a test run before a commit sees them too. */
const files = execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard'], {
  cwd: projectRoot,
  encoding: 'utf8',
})
  .split('\n')
  .filter(
    (name) =>
      name !== '' && isText(name) && statSync(join(projectRoot, name), { throwIfNoEntry: false })?.isFile(),
  );

const texts = files.map((name) => ({ name, text: readFileSync(join(projectRoot, name), 'utf8') }));

/** Written in pieces, so that this file does not find itself. */
const pattern = (...pieces: readonly string[]) => new RegExp(pieces.join(''), 'i');

const nowhere: readonly {
  readonly reason: string;
  readonly words: RegExp;
  readonly except?: readonly string[];
}[] = [
  {
    reason: 'the project names no place to fetch packages from',
    words: pattern('registry', '\\.npmjs|npm', 'mirror|yarn', 'pkg\\.com'),
  },
  {
    reason: 'the project runs on any machine',
    words: pattern('(^|[^\\w.])/(work|home|root|Users)', '/[a-z]'),
  },
  { reason: 'a value carries its published source', words: pattern('shared/', 'reference') },
  {
    reason: 'work to be done is not left in comments',
    words: new RegExp(['\\b(TO', 'DO|FIX', 'ME|XX', 'X|HA', 'CK)\\b'].join('')),
  },
];

test.each(nowhere)('$reason', ({ words, except = [] }) => {
  const found = texts
    .filter(({ name }) => name !== 'package-lock.json' && name !== 'LICENSE' && !except.includes(name))
    .filter(({ text }) => words.test(text))
    .map(({ name }) => name);
  expect(found).toEqual([]);
});

test('the lock file names no address', () => {
  expect(texts.find(({ name }) => name === 'package-lock.json')?.text).not.toMatch(/"resolved"/);
});

/** What a reader sees: templates, sentences, help. An estimate approves and certifies nothing. */
const printed = texts.filter(
  ({ name }) => name.startsWith('templates/') || /^src\/(issues\/sentences|cli|report)\//.test(name),
);

test('no printed word claims what only the engineer of record may', () => {
  const found = printed
    .filter(
      ({ name, text }) =>
        name !== 'templates/fonts/OFL.txt' && pattern('certif', 'ied|certif', 'ies').test(text),
    )
    .map(({ name }) => name);
  expect(found).toEqual([]);
});

test('no printed word hides the findings behind one figure', () => {
  expect(printed.filter(({ text }) => pattern('\\bsco', 're').test(text)).map(({ name }) => name)).toEqual(
    [],
  );
});

test('the version in the source is that of the package', () => {
  const { version: packaged } = JSON.parse(readFileSync(join(projectRoot, 'package.json'), 'utf8'));
  expect(version).toBe(packaged);
});
