import { expect, test } from 'vitest';
import { type Issue, IssuesError } from '../../src/issues/issue.js';
import { sentenceOf } from '../../src/issues/print.js';
import { parseMarkup } from '../../src/render/parse-markup.js';
import { specimen } from './specimen.js';

/** Issues found in a document whose root holds the given markup from line 2 on. */
function issuesIn(inside: string): readonly Issue[] {
  try {
    parseMarkup(`<review title="t" language="en">\n${inside}\n</review>`, { name: 'mine' });
  } catch (error) {
    if (error instanceof IssuesError) return error.issues;
    throw error;
  }
  return [];
}

const codes = (inside: string): readonly string[] =>
  issuesIn(inside).map((issue) => issue.code.replace('render.markup.', ''));

test('a document with every kind of block is read, entities decoded', () => {
  const root = parseMarkup(specimen);
  expect(root.name).toBe('review');
  expect(JSON.stringify(root)).toContain('North & South plant');
});

test.each([
  ['<para>x</para>', 'unknown-element'],
  ['<script>x</script>', 'unknown-element'],
  ['<constructor/>', 'unknown-element'],
  ['<b>x</b>', 'misplaced-element'],
  ['<p><table columns="left"/></p>', 'misplaced-element'],
  ['<p role="huge">x</p>', 'wrong-value'],
  ['<p colour="red">x</p>', 'unknown-attribute'],
  ['<p toString="red">x</p>', 'unknown-attribute'],
  ['<section title="x"/>', 'missing-attribute'],
  ['<section id="6 in" title="x"/>', 'wrong-value'],
  ['<section id="a" title="x"/><section id="a" title="y"/>', 'id-twice'],
  ['<p><ref to="nowhere">x</ref></p>', 'link-leads-nowhere'],
  ['<table columns="left middle"/>', 'wrong-value'],
  ['<table columns="left right"><row><cell>x</cell></row></table>', 'row-does-not-fit'],
  [
    '<table columns="left"><row><cell>x</cell></row><head><row><cell>x</cell></row></head></table>',
    'head-after-rows',
  ],
  ['<table columns="left">words</table>', 'text-not-allowed'],
  ['loose words', 'text-not-allowed'],
  ['<p>never closed', 'not-well-formed'],
  ['<p>&unknown;</p>', 'not-well-formed'],
  ['<?php x ?>', 'not-well-formed'],
])('%s is refused as %s', (inside, code) => {
  expect(codes(inside)).toContain(code);
});

test('a fault says template, line and what is allowed', () => {
  const [issue] = issuesIn('<p>fine</p>\n<list><p>x</p></list>');
  expect(issue?.place).toMatchObject({ file: 'mine', line: 3 });
  expect(issue?.data).toMatchObject({
    found: 'p',
    inside: 'list',
    allowed: ['item'],
    near: '<list><p>x</p></list>',
  });
});

test('all faults come in one go, up to twenty', () => {
  expect(codes('<para/><p role="x"/><b/>')).toEqual(['unknown-element', 'wrong-value', 'misplaced-element']);
  expect(codes('<para/>'.repeat(50))).toHaveLength(20);
});

test('a document type, which could hold entities that grow, is refused', () => {
  const bomb = '<!DOCTYPE review [<!ENTITY a "aaaa">]><review title="t" language="en"><p>&a;</p></review>';
  expect(() => parseMarkup(bomb)).toThrow(IssuesError);
});

test('elements nested too deep and texts too large are refused', () => {
  expect(codes(`<p>${'<b>'.repeat(60)}x${'</b>'.repeat(60)}</p>`)).toContain('not-well-formed');
  expect(codes(`<p>${'x'.repeat(5_000_001)}</p>`)).toEqual(['too-large']);
});

test('every fault has a sentence that names the template and the line', () => {
  const faults = [
    '<para/>',
    '<p role="x"/>',
    '<p x="y"/>',
    '<b/>',
    '<section/>',
    'x',
    '<table columns="left right"><row><cell/></row></table>',
  ];
  for (const issue of faults.flatMap(issuesIn))
    expect(sentenceOf(issue).message).toContain('template mine, line 2');
});
