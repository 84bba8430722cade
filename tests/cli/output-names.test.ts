import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { nameOutputs } from '../../src/cli/review/output-names.js';
import { IssuesError } from '../../src/issues/issue.js';
import { temporaryFolder } from './temporary-folder.js';

const shownNames = (...parameters: Parameters<typeof nameOutputs>) =>
  nameOutputs(...parameters).map((names) => Object.values(names).map(({ shown }) => shown));

function refusals(...parameters: Parameters<typeof nameOutputs>): readonly string[] {
  try {
    nameOutputs(...parameters);
  } catch (error) {
    if (error instanceof IssuesError) return error.issues.map(({ code }) => code);
    throw error;
  }
  return [];
}

test('without -o the review goes to the working folder under the name of the input', () => {
  expect(shownNames(['plant/north/p-1.yaml'], {}, temporaryFolder())).toEqual([['p-1-review.pdf']]);
  expect(shownNames(['-'], {}, temporaryFolder())).toEqual([['standard-input-review.pdf']]);
});

test('a name is taken as it is', () => {
  const asked = { pdf: 'out/a.pdf', results: 'b.json', html: 'c.html' };
  expect(shownNames(['p.yaml'], asked, temporaryFolder())).toEqual([['out/a.pdf', 'b.json', 'c.html']]);
});

test('a folder that is there, or a name with a slash at its end, holds outputs under their own names', () => {
  const folder = temporaryFolder();
  mkdirSync(join(folder, 'there'));
  const asked = { pdf: 'there', results: 'new/' };
  expect(shownNames(['p.yaml', 'q.json'], asked, folder)).toEqual([
    ['there/p-review.pdf', 'new/p-review.json'],
    ['there/q-review.pdf', 'new/q-review.json'],
  ]);
});

test('several inputs want a folder, said once', () => {
  expect(refusals(['p.yaml', 'q.yaml', 'r.yaml'], { pdf: 'all.pdf' }, temporaryFolder())).toContain(
    'cli.arguments.folder-wanted',
  );
});

test('a wrong ending is refused, so that no source is overwritten by a slip', () => {
  expect(refusals(['p.yaml'], { pdf: 'other.yaml' }, temporaryFolder())).toEqual([
    'cli.arguments.wrong-ending',
  ]);
  expect(refusals(['p.yaml'], { html: 'page.pdf' }, temporaryFolder())).toEqual([
    'cli.arguments.wrong-ending',
  ]);
});

test('an input is never an output, not even through a link', () => {
  const folder = temporaryFolder();
  writeFileSync(join(folder, 'p.json'), '{}');
  symlinkSync(join(folder, 'p.json'), join(folder, 'link.json'));
  expect(refusals(['p.json'], { results: 'p.json' }, folder)).toEqual(['cli.arguments.over-input']);
  expect(refusals(['p.json'], { results: 'link.json' }, folder)).toEqual(['cli.arguments.over-input']);
});

test('two inputs of one name are not written over each other', () => {
  expect(refusals(['a/p.yaml', 'b/p.yaml'], {}, temporaryFolder())).toEqual(['cli.arguments.same-output']);
});

test('standard input is read once', () => {
  expect(refusals(['-', '-'], {}, temporaryFolder())).toContain('cli.arguments.input-twice');
});

test('all that is wrong is said in one go', () => {
  const asked = { pdf: 'x.yaml', results: 'y.pdf' };
  expect(refusals(['p.yaml'], asked, temporaryFolder())).toHaveLength(2);
});
