import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect, test } from 'vitest';
import { filesBelow, projectRoot } from './source-tree.js';

const read = (name: string) => readFileSync(join(projectRoot, name), 'utf8');
const isThere = (name: string) => existsSync(join(projectRoot, name));

/** Decisions stand in the rooms they rule. */
const rooms = [
  ...filesBelow('src', 'README.md').map((name) => `src/${name}`),
  ...filesBelow('tests', 'README.md').map((name) => `tests/${name}`),
];

/** What a decision lacks: its choice, and a test or script that is there. */
function lacks(decision: string): readonly string[] {
  const kept = /\*\*Kept by\*\*(.*)$/s.exec(decision)?.[1] ?? '';
  const names = [...kept.matchAll(/`((?:tests|\.ci)[^`]*)`/g)].map((match) => match[1] ?? '');
  const scripts = [...kept.matchAll(/`npm run ([a-z:]+)`/g)].map((match) => match[1] ?? '');
  const known = JSON.parse(read('package.json')).scripts as Readonly<Record<string, string>>;
  return [
    ...(decision.includes('**Choice**') ? [] : ['a choice']),
    ...(names.length + scripts.length > 0 ? [] : ['what keeps it']),
    ...names.filter((name) => !isThere(name)),
    ...scripts.filter((name) => !(name in known)),
  ];
}

test('every decision has a choice, and names what keeps it: a test or a script that is there', () => {
  const decisions = rooms.flatMap((room) =>
    read(room)
      .split(/^## /m)
      .slice(1)
      .map((text) => ({ at: `${room}: ${text.split('\n')[0]}`, text })),
  );
  expect(decisions.length).toBeGreaterThan(40);
  expect(decisions.flatMap(({ at, text }) => lacks(text).map((what) => `${at} lacks ${what}`))).toEqual([]);
});

test('a decision that names nothing, or what is not there, would be seen', () => {
  expect(lacks('Why?\n\nBecause.')).toEqual(['a choice', 'what keeps it']);
  expect(lacks('Why?\n\n**Choice** so\n\n**Kept by** `tests/attic.test.ts`')).toEqual([
    'tests/attic.test.ts',
  ]);
});

test('the list of decisions leads to every room that has some', () => {
  const guide = read('DEVELOPERS.md');
  expect(rooms.filter((room) => !guide.includes(`](${room})`))).toEqual([]);
});

test('every link of the guides leads to a file', () => {
  const astray = ['README.md', 'DEVELOPERS.md', ...rooms].flatMap((name) =>
    [...read(name).matchAll(/\]\(([^)#]+)(?:#[^)]*)?\)/g)]
      .map((match) => match[1] ?? '')
      .filter((link) => !/^[a-z]+:/.test(link) && !isThere(join(dirname(name), link)))
      .map((link) => `${name}: ${link}`),
  );
  expect(astray).toEqual([]);
});

test('the guide for developers stays one that is read: under 200 lines without its list of changes', () => {
  const [guide = ''] = read('DEVELOPERS.md').split('## Changes');
  expect(guide.split('\n').length).toBeLessThan(200);
});
