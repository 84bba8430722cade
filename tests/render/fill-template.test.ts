import { expect, test } from 'vitest';
import { EngineError } from '../../src/issues/issue.js';
import { fillTemplate } from '../../src/render/template/fill-template.js';
import { missingNames } from '../../src/render/template/missing-names.js';
import type { TemplateView } from '../../src/render/template/template-view.js';

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
  expect(data).toMatchObject({
    template: 'part',
    line: 3,
    column: 3,
    found: 'pmup',
    available: ['pump', 'project'],
    nearest: 'pump',
  });
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

test.each([
  ['a\nb\n{{#if x}}{{/each}}', 3, 4],
  ['a\n<p>{{x}</p>', 2, 7],
  ['a\n<p>words before {{x y z}</p>', 2, 24],
])('a broken template names its line and column: %j', (template, line, column) => {
  expect(fault(template, { x: 'y' }).data).toMatchObject({ template: 'mine', line, column });
});

test.each([
  ['inside if', '{{#if yes}}\n {{nmae}}{{/if}}', 'name', 4],
  ['inside each', '{{#each rows}}\n {{nmae}}{{/each}}', 'name', 4],
  ['as what if asks', '\n {{#if nmae}}{{/if}}', 'name', 8],
  ['as a partial', '\n {{> prat}}', 'part', 2],
  ['as a helper', '\n {{#ech rows}}{{/ech}}', '#each', 2],
])('a slip of the hand %s is told with the name that was meant, line and column', (...given) => {
  const [, template, nearest, column] = given;
  const { data } = fault(template, { name: 'a', yes: true, rows: [{ name: 'b' }] }, { part: '' });
  expect(data).toMatchObject({ line: 2, column, nearest });
});

test.each([
  ['a partial that is called as deep as it goes', '{{#each list}}{{> part}}{{/each}}', '{{> part2}}'],
  ['a partial chosen by a member of an object', '{{> [constructor]}}', ''],
  ['a prototype by a bracketed path', '{{[__proto__]}}', ''],
  ['a prototype from the root', '{{@root.__proto__}}', ''],
  ['a constructor through this', '{{this.constructor.name}}', ''],
  ['a constructor through a parent', '{{#with list}}{{../constructor}}{{/with}}', ''],
  ['data of the program', '{{@process}}', ''],
  ['a decorator', '{{* doIt}}', ''],
  ['a raw block', '{{{{raw}}}}x{{{{/raw}}}}', ''],
])('%s is refused', (_, template, part) => {
  expect(fault(template, { list: ['a'] }, { part }).code).toMatch(/^render\.template\./);
});

test.each([
  ['blocks', '{{#if a}}', '{{/if}}'],
  ['blocks left open', '{{#if a}}', ''],
  ['inverted blocks', '{{^a}}', '{{/a}}'],
  ['branches', '{{#if a}}{{else if b}}', '{{/if}}'],
  ['brackets', '{{(', ')}}'],
])('%s nested ten thousand deep end in an error, not in a fall', (_, open, close) => {
  const deep = open.repeat(10_000) + close.repeat(10_000);
  expect(fault(deep, { a: true }).code).toMatch(/^render\.template\.(broken|not-allowed|unknown-helper)/);
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

test('names are looked up in branches that are not taken, in partials and in lists, over all views together', () => {
  const partials = {
    main: '{{#if no}}{{wrong}}{{#each rows}}{{a}}{{b}}{{../title}}{{c}}{{/each}}{{else}}{{tilte}}{{/if}}\n{{> part}}',
    part: '{{#with inner}}{{deep}}{{shallow}}{{/with}}{{#each none}}{{anything}}{{/each}}',
  };
  const views = [
    { no: false, title: 't', rows: [{ a: 'x' }], inner: false, none: [] },
    { no: false, title: 't', rows: [{ b: 'x' }], inner: { deep: 'd' }, none: [] },
  ];
  expect(
    missingNames('main', partials, views).map(({ template, line, found }) => `${template} ${line} ${found}`),
  ).toEqual(['main 1 wrong', 'main 1 c', 'main 1 tilte', 'part 1 shallow']);
  expect(missingNames('main', partials, views)[2]).toMatchObject({ column: 80, nearest: 'title' });
});
