import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { outline, sections } from '../../src/report/outline.js';
import { filesBelow, projectRoot } from './source-tree.js';

const ids = Object.keys(sections).sort();
const namesIn = (folder: string, ending: string) =>
  filesBelow(folder, ending).map((name) => name.slice(0, -ending.length));

test('every section has a template, and every template a section', () => {
  expect(namesIn('templates/sections', '.hbs')).toEqual(ids);
});

test('every section is a file of its own', () => {
  const files = namesIn('src/report/sections', '.ts').map((name) => name.slice(name.indexOf('/') + 1));
  expect(files).toEqual(expect.arrayContaining(ids));
});

test('every section is printed for somebody', () => {
  const printed = new Set<string>(Object.values(outline).flat());
  expect(ids.filter((id) => !printed.has(id))).toEqual([]);
});

test('the master template calls every section', () => {
  const master = readFileSync(join(projectRoot, 'templates/review.hbs'), 'utf8');
  expect(ids.filter((id) => !master.includes(`{{> sections/${id}}}`))).toEqual([]);
});

test('no template computes anything: no subexpression, no number of its own making', () => {
  const computing = filesBelow('templates', '.hbs').flatMap((name) => {
    const text = readFileSync(join(projectRoot, 'templates', name), 'utf8');
    return (text.match(/\{\{[^}]*\}\}/g) ?? []).filter(computes).map((tag) => `${name}: ${tag}`);
  });
  expect(computing).toEqual([]);
});

const computes = (tag: string) => /\(|[*/+]\s*\d/.test(tag.replace(/^\{\{[#/>!~^]?/, ''));

test('a tag that computes would be seen', () => {
  expect(['{{a (b c)}}', '{{a * 2}}', '{{#if a}}', '{{> sections/b}}'].map(computes)).toEqual([
    true,
    true,
    false,
    false,
  ]);
});
