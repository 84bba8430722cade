import { expect, test } from 'vitest';
import { EngineError } from '../../src/issues/issue.js';
import { fillTemplate, type TemplateView } from '../../src/render/index.js';

/** Code and data of the error a filling stops with. */
function fault(
  template: string,
  view: TemplateView,
  partials: Record<string, string> = {},
): { code: string; data: EngineError['data'] } {
  try {
    fillTemplate(template, view, { name: 'mine', partials });
  } catch (error) {
    if (error instanceof EngineError) return { code: error.code, data: error.data };
    throw error;
  }
  throw new Error('nothing was wrong');
}

test('values are written escaped, so that a name with < and & stays words', () => {
  expect(fillTemplate('<p>{{name}}</p>', { name: 'A & B <6 in> "x" \'y\'' })).toBe(
    '<p>A &amp; B &lt;6 in&gt; &quot;x&quot; &#39;y&#39;</p>',
  );
  expect(fillTemplate('{{{markup}}}', { markup: '<b>x</b>' })).toBe('<b>x</b>');
});

test('if, unless, each, with, else and block names choose and repeat', () => {
  const view = { rows: [{ n: 'a' }, { n: 'b' }], none: [], empty: '', inner: { deep: 'd' }, outer: 'o' };
  expect(
    fillTemplate(
      '{{#each rows as |row i|}}{{i}}{{row.n}}{{@index}}{{../outer}}{{#unless @last}},{{/unless}}{{/each}}',
      view,
    ),
  ).toBe('0a0o,1b1o');
  expect(
    fillTemplate('{{#each none}}x{{else}}nothing{{/each}}{{#if empty}}y{{else if outer}}z{{/if}}', view),
  ).toBe('nothingz');
  expect(
    fillTemplate('{{#with inner}}{{deep}}{{@root.outer}}{{/with}}{{rows.1.n}}{{rows.length}}', view),
  ).toBe('dob2');
  expect(fillTemplate('{{! a remark }}{{#each inner}}{{@key}}={{this}}{{/each}}', view)).toBe('deep=d');
});

test('partials get the context they stand in, or values by name', () => {
  expect(fillTemplate('{{> row}}|{{> row n="z"}}', { n: 'a' }, { partials: { row: '[{{n}}]' } })).toBe(
    '[a]|[z]',
  );
});

test.each([
  ['{{title}}', 'title'],
  ['{{#if title}}x{{/if}}', 'title'],
  ['{{#unless title}}x{{/unless}}', 'title'],
  ['{{#each title}}x{{/each}}', 'title'],
  ['{{#with title}}x{{/with}}', 'title'],
  ['{{name.title}}', 'title'],
])('a name that was not given is an error in %s, which would print nothing', (template, missing) => {
  const { code, data } = fault(`one\ntwo ${template}`, { name: { a: '' }, other: '' });
  expect(code).toBe('render.template.unknown-name');
  expect(data).toMatchObject({ template: 'mine', line: 2, missing });
});

test('an unknown name lists what is available, and names the partial it stands in', () => {
  const { data } = fault('{{> part}}', { pump: 'P-3', project: 'x' }, { part: '\n\n{{pmup}}' });
  expect(data).toMatchObject({ template: 'part', line: 3, found: 'pmup', available: ['pump', 'project'] });
});

test.each([
  'constructor',
  '__proto__',
  'toString',
  'hasOwnProperty',
  'list.constructor',
  'list.map',
  'word.length',
])('inherited member %s cannot be seen', (path) => {
  expect(fault(`{{${path}}}`, { list: ['a'], word: 'w' }).code).toBe('render.template.unknown-name');
});

test.each([
  ['{{lookup list 0}}', 'unknown-helper'],
  ['{{log list}}', 'unknown-helper'],
  ['{{#repeat list}}{{/repeat}}', 'unknown-helper'],
  ['{{#if list includeZero=true}}{{/if}}', 'unknown-helper'],
  ['{{#if (lookup list 0)}}{{/if}}', 'not-allowed'],
  ['{{#*inline "x"}}{{/inline}}', 'not-allowed'],
  ['{{> (lookup . "list")}}', 'not-allowed'],
  ['{{> nowhere}}', 'unknown-partial'],
  ['{{list}}', 'not-text'],
  ['{{#each word}}{{/each}}', 'not-a-list'],
  ['{{#if list}}', 'broken'],
  ['{{word', 'broken'],
])('%s is refused as %s', (template, code) => {
  expect(fault(template, { list: ['a'], word: 'w' }).code).toBe(`render.template.${code}`);
});

test('a broken template names its line', () => {
  expect(fault('a\nb\n{{#if x}}{{/each}}', { x: 'y' }).data).toMatchObject({ template: 'mine', line: 3 });
});

test('a template that calls itself, or fills to more than 5 million characters, is stopped', () => {
  expect(fault('{{> loop}}', {}, { loop: '{{> loop}}' }).code).toBe('render.template.not-allowed');
  const list = Array.from({ length: 400 }, () => 'x');
  const nested = '{{#each list}}{{#each ../list}}{{#each ../../list}}0123456789{{/each}}{{/each}}{{/each}}';
  expect(fault(nested, { list }).code).toBe('render.template.too-large');
  const doubling = Object.fromEntries(
    Array.from({ length: 40 }, (_, i) => [`p${i}`, `{{> p${i + 1}}}{{> p${i + 1}}}`]),
  );
  expect(fault('{{> p0}}', {}, { ...doubling, p40: '' }).code).toBe('render.template.too-large');
});
