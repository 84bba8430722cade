import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { fillReview } from '../../src/app/fill-review.js';
import { readFirm } from '../../src/input/read-firm.js';
import { EngineError, IssuesError } from '../../src/issues/issue.js';
import type { MarkupElement } from '../../src/render/markup.js';
import { composeReview, type FirmStyle } from '../../src/report/compose-review.js';
import { fixedTemplates } from '../../src/report/fixed-templates.js';
import { outline } from '../../src/report/outline.js';
import { reviewed } from './fixture.js';

const read = (folder: string): Record<string, string> => {
  const root = fileURLToPath(new URL(`../../${folder}`, import.meta.url));
  const names = readdirSync(root, { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.hbs'),
  );
  return Object.fromEntries(
    names.map((name) => [name.slice(0, -4), readFileSync(`${root}/${name}`, 'utf8')]),
  );
};
const shipped = read('templates');
const sample = read('samples/letterhead');
const sampleFirm = readFileSync(new URL('../../samples/letterhead/firm.yaml', import.meta.url), 'utf8');
const sectionsOf = (templates: Record<string, string>) =>
  Object.keys(templates).flatMap((name) => (name.startsWith('sections/') ? [name.slice(9)] : []));
const whole = reviewed();

function filled(
  templates: Record<string, string>,
  firm: FirmStyle = {},
  headings: Record<string, string> = {},
  reader: 'contractor' | 'engineer' | 'commissioning' = 'contractor',
): MarkupElement {
  const composed = composeReview(whole, { reader, units: 'us', version: '0', firm });
  return fillReview(composed, { templates, headings, hasOwnOrder: firm.outline !== undefined });
}

const topSections = (root: MarkupElement) =>
  root.children.flatMap((child) =>
    child.kind === 'element' && child.name === 'section' ? [child.attributes] : [],
  );

function faultOf(work: () => unknown): { code: string; data: EngineError['data']; place?: unknown } {
  try {
    work();
  } catch (error) {
    if (error instanceof EngineError) return { code: error.code, data: error.data };
    if (error instanceof IssuesError && error.issues[0]) return error.issues[0];
    throw error;
  }
  throw new Error('nothing was wrong');
}

describe('the sample of a firm', () => {
  const reading = readFirm(sampleFirm, {
    file: 'firm.yaml',
    sections: sectionsOf({ ...shipped, ...sample }),
  });
  const firm = reading.ok ? reading.firm : undefined;

  test('is read, and makes sound reviews for every reader', () => {
    expect(reading).toMatchObject({ ok: true, firm: { letterhead: { logo: 'logo.svg' } } });
    for (const reader of ['contractor', 'engineer', 'commissioning'] as const) {
      const order = firm?.outline[reader];
      const style = {
        ...(firm?.letterhead && { letterhead: firm.letterhead }),
        cautions: firm?.cautions ?? [],
        ...(order && { outline: order }),
      };
      const root = filled({ ...shipped, ...sample }, style, firm?.headings, reader);
      // Without bands, and without flexible connectors, there is nothing to say.
      const nothing = (id: string): boolean => id === 'bands' || id === 'connectors';
      expect(topSections(root).map(({ id }) => id)).toEqual(
        (order ?? outline[reader]).filter((id) => !nothing(id)),
      );
      const words = JSON.stringify(root);
      expect(words).toContain('Tarn & Weir, piping engineers');
      expect(words).toContain('Nobody works alone in a plant room of ours.');
      expect(words).toContain('engineer of record, who alone decides');
    }
  });

  test('has headings of its own behind the numbers of the new order', () => {
    const order = firm?.outline.contractor ?? [];
    const root = filled({ ...shipped, ...sample }, { outline: order }, firm?.headings);
    const titles = Object.fromEntries(topSections(root).map(({ id, title }) => [id, title]));
    expect(titles.hangers).toBe(`${order.indexOf('hangers') + 1} What hangs on each support`);
    expect(titles.scope).toBe('2 What we were asked, and what we were not');
  });

  test('replaces a template, adds one, and replaces none that stands in every review', () => {
    const names = Object.keys(sample);
    expect(names.filter((name) => Object.hasOwn(shipped, name))).toEqual(['sections/signature']);
    expect(names.filter((name) => (fixedTemplates as readonly string[]).includes(name))).toEqual([]);
  });
});

test('a letterhead in the input comes before that of the firm', () => {
  const own = { name: 'Ours', address: [] };
  const review = { ...whole.installation.review, letterhead: own };
  const subject = { ...whole, installation: { ...whole.installation, review } };
  const { view } = composeReview(subject, {
    reader: 'engineer',
    units: 'us',
    version: '0',
    firm: { letterhead: { name: 'Theirs', address: [] } },
  });
  expect(view.letterhead).toEqual(own);
});

test('links to sections that an outline leaves out become words; with the shipped order a loose link is a fault', () => {
  const root = filled(shipped, { outline: ['summary', 'assumptions', 'cautions'] });
  expect(topSections(root).map(({ id }) => id)).toEqual(['summary', 'assumptions', 'cautions']);
  expect(JSON.stringify(root)).toContain('lockout card');
  expect(JSON.stringify(root)).not.toContain('"to":"lockout"');
  const loose = {
    ...shipped,
    'sections/weights': '<section id="weights" title="w"><p><ref to="nowhere">x</ref></p></section>',
  };
  expect(faultOf(() => filled(loose, {}, {}, 'engineer'))).toMatchObject({
    code: 'render.markup.link-leads-nowhere',
    place: { file: 'sections/weights.hbs', line: 1 },
  });
});

describe('words that stand in every review', () => {
  const summary = shipped['sections/summary'] ?? '';

  test('call no other template, so that no folder can change them by the way', () => {
    for (const name of fixedTemplates) expect(shipped[name]).not.toContain('{{>');
  });

  test.each([
    ['left out', summary.replace('{{> fixed/deferral}}', '')],
    ['put in a remark', summary.replace('{{> fixed/deferral}}', '<!-- {{> fixed/deferral}} -->')],
    [
      'kept for another case',
      summary.replace('{{> fixed/deferral}}', '{{#unless pump}}{{> fixed/deferral}}{{/unless}}'),
    ],
    ['worded otherwise', summary.replace('{{> fixed/deferral}}', '<note kind="caution"><p>Safe.</p></note>')],
  ])('cannot be %s by another template', (_, text) => {
    expect(text).not.toBe(summary);
    expect(faultOf(() => filled({ ...shipped, 'sections/summary': text }))).toMatchObject({
      code: 'render.template.fixed-words',
      data: { template: 'fixed/deferral' },
    });
  });

  test('no section of the outline can be left out by a master template, as one of an earlier version would', () => {
    const master = (shipped.review ?? '').replace('{{#with sources}}{{> sections/sources}}{{/with}}', '');
    expect(faultOf(() => filled({ ...shipped, review: master }, {}, {}, 'engineer'))).toMatchObject({
      code: 'render.template.section-left-out',
      data: { missing: ['sources'] },
    });
  });

  test('may stand elsewhere, and under another heading', () => {
    const moved = {
      ...shipped,
      'sections/summary': summary.replace('{{> fixed/deferral}}', '<keep>{{> fixed/deferral}}</keep>'),
    };
    expect(() => filled(moved, {}, { cautions: 'Mind your head' })).not.toThrow();
  });
});

test('a fault of the markup is told where the template wrote it', () => {
  const text =
    '<section id="weights" title="{{number}} W">\n  {{#if hasRows}}\n  <p>one</p>\n  {{/if}}\n  <para>two</para>\n</section>\n';
  const weights = { ...shipped, 'sections/weights': text.replace('hasRows', 'number') };
  expect(faultOf(() => filled(weights, {}, {}, 'engineer'))).toMatchObject({
    code: 'render.markup.unknown-element',
    data: { found: 'para', template: 'sections/weights' },
    place: { file: 'sections/weights.hbs', line: 5 },
  });
  const own = { ...shipped, 'sections/ours': '<section id="ours" title="o">\n<p>a<p>b</p></section>' };
  const order = ['summary', 'ours', 'assumptions', 'cautions'];
  expect(faultOf(() => filled(own, { outline: order }))).toMatchObject({
    place: { file: 'sections/ours.hbs', line: 2 },
  });
});

test.each([
  ['a name that is not there', '{{nmae}}', 'render.template.unknown-name'],
  ['itself', '{{> sections/ours}}', 'render.template.not-allowed'],
  ['another id than its own', '', 'render.template.section-left-out'],
])("a firm's own section that prints %s is refused", (_, inside, code) => {
  const id = inside === '' ? 'other' : 'ours';
  const own = { ...shipped, 'sections/ours': `<section id="${id}" title="o"><p>${inside}</p></section>` };
  expect(faultOf(() => filled(own, { outline: ['summary', 'ours', 'assumptions', 'cautions'] })).code).toBe(
    code,
  );
});

describe('firm.yaml', () => {
  const sections = sectionsOf(shipped);
  const codes = (text: string) => {
    const reading = readFirm(`format: pipeborne-firm/1\n${text}`, { file: 'firm.yaml', sections });
    return reading.ok ? [] : reading.issues.map(({ code, place }) => `${code} ${place?.line}`);
  };

  test('may say nothing but its format', () => {
    expect(codes('')).toEqual([]);
  });

  test.each([
    ['headings: { wieghts: x }', ['input.unknown-section 2']],
    ['outline: { engineer: [summary, assumptions, cautions, summary] }', ['input.section-twice 2']],
    ['outline:\n  engineer: [summary, weights]', ['input.section-kept 3']],
    [
      'outline:\n  engineer: [summary, asumptions, cautions]',
      ['input.unknown-section 3', 'input.section-kept 3'],
    ],
    ['outlin: {}', ['input.unknown-key 2']],
    ['letterhead: { address: [a] }', ['input.missing 2']],
    ['letterhead: { name: a, address: [1,2,3,4,5,6,7,8,9] }', ['input.too-many 2']],
    ['cautions: caution', ['input.wrong-kind 2']],
  ])('%s is refused with its line', (text, wanted) => {
    const found = codes(text);
    expect(found.map((one) => one.replace(/^.* /, ''))).toEqual(wanted.map((one) => one.replace(/^.* /, '')));
    if (/unknown-section|twice|kept|unknown-key|missing/.test(wanted[0] ?? '')) expect(found).toEqual(wanted);
  });

  test('tells the section that was meant', () => {
    const reading = readFirm('format: pipeborne-firm/1\nheadings: { wieghts: x }', { file: 'f', sections });
    expect(reading.ok ? '' : reading.issues[0]?.data.nearest).toBe('weights');
  });
});
