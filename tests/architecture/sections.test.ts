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
  expect(namesIn('src/report/sections', '.ts')).toEqual(expect.arrayContaining(ids));
});

test('every section is printed for somebody', () => {
  const printed = new Set<string>(Object.values(outline).flat());
  expect(ids.filter((id) => !printed.has(id))).toEqual([]);
});

test('the master template calls every section', () => {
  const master = readFileSync(join(projectRoot, 'templates/review.hbs'), 'utf8');
  expect(ids.filter((id) => !master.includes(`{{> sections/${id}}}`))).toEqual([]);
});

test.each(filesBelow('templates', '.hbs'))(
  '%s computes nothing: no subexpression, no number of its own making',
  (name) => {
    const text = readFileSync(join(projectRoot, 'templates', name), 'utf8');
    const tags = text.match(/\{\{[^}]*\}\}/g) ?? [];
    expect(tags.filter((tag) => /\(|[*/+]\s*\d/.test(tag.replace(/^\{\{[#/>!~^]?/, '')))).toEqual([]);
  },
);
