import { SaxesParser } from 'saxes';
import { expect, test } from 'vitest';
import { renderHtml } from '../../src/render/html/render-html.js';
import { drawingToSvg } from '../../src/render/svg.js';
import { drawing, options, specimen } from './specimen.js';

const html = renderHtml(specimen, { drawings: options.drawings, title: 'A <b>', language: 'en-US' });

/** Reads as XML; void elements of HTML are closed first. */
function readsAsXml(text: string): boolean {
  const closed = text
    .replace(/^<!doctype html>\n/, '')
    .replace(/<style>[\s\S]*?<\/style>/, '')
    .replace(/<(meta|br)([^>]*)>/g, '<$1$2/>');
  const parser = new SaxesParser();
  let fine = true;
  parser.on('error', () => {
    fine = false;
  });
  parser.write(closed).close();
  return fine;
}

test('the page is well-formed, says its language and escapes its title', () => {
  expect(html.startsWith('<!doctype html>\n<html lang="en-US">')).toBe(true);
  expect(html).toContain('<title>A &lt;b&gt;</title>');
  expect(readsAsXml(html)).toBe(true);
});

test('the page runs nothing and fetches nothing', () => {
  expect(html).not.toMatch(/<script|javascript:|\son\w+=|<link|<img|@import|url\((?!#)/i);
  expect([...html.matchAll(/https?:[^"\s<]+/g)].map(([address]) => address)).toEqual(
    Array.from({ length: 3 }, () => 'http://www.w3.org/2000/svg'),
  );
});

test('every link leads to an id of the page', () => {
  const ids = new Set([...html.matchAll(/ id="([^"]+)"/g)].map((match) => match[1]));
  const links = [...html.matchAll(/href="#([^"]+)"/g)].map((match) => match[1]);
  expect(links).toEqual(['review', 'c1', 'c1']);
  for (const link of links) expect(ids).toContain(link);
});

test('contents stand behind the first section, what is below a section folded; sections it leads to lead back', () => {
  const section = (id: string, inside = ''): string =>
    `<section id="${id}" title="${id}">${inside}</section>`;
  const page = renderHtml(
    `<review title="t" language="en">${section('start', '<p><ref to="deep">x</ref></p>')}${section('one', section('deep'))}${section('two')}</review>`,
    { drawings: {}, title: 't', language: 'en' },
  );
  expect(page.indexOf('<nav')).toBeGreaterThan(page.indexOf('id="start"'));
  expect(page.indexOf('<nav')).toBeLessThan(page.indexOf('id="one"'));
  expect(page).toContain('<details><summary>one part<span class="unseen"> of one</span></summary>');
  expect(page.match(/class="back" href="#start"/g)).toHaveLength(1);
});

test('the page forbids itself everything but its own style', () => {
  expect(html).toContain(
    `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'">`,
  );
});

test('words of the input cannot end the style that prints them', () => {
  const page = renderHtml(specimen, { drawings: options.drawings, title: '"}</style><b>', language: 'en' });
  expect(page.match(/<\/style>/g)).toHaveLength(1);
  expect(page).toContain(String.raw`@top-left{content:"\22 \7d \3c \2f style`);
});

test('verdicts are shape and word, tables have heads with a scope, half figures stand in pairs', () => {
  for (const word of ['meets', 'exceeds', 'cannot tell', 'does not apply']) expect(html).toContain(word);
  expect(html.match(/class="mark"/g)).toHaveLength(5);
  expect(html).toContain('<th scope="col">Support</th>');
  expect(html).toContain('<th scope="rowgroup" colspan="3">Rods</th>');
  expect(html).toContain('<th scope="row">H2</th>');
  expect(html).toContain('<div class="pair"><figure class="half">');
});

test('numbers of a decimal column are filled up with blanks as wide as digits', () => {
  expect(html).toContain('>12.5\u2007\u2007</td>');
  expect(html).toContain('>1,240\u2008\u2007\u2007\u2007</td>');
});

test('a drawing is one SVG with title and description, hatch and dashes', () => {
  const svg = drawingToSvg(drawing);
  expect(readsAsXml(svg)).toBe(true);
  expect(svg).toContain('<desc id="drawing-line-alt">A pump between two elbows');
  expect(svg).toContain('url(#drawing-line-hatch-grey)');
  expect(svg).toContain('stroke-dasharray="4 2.5"');
});

test('words in a drawing are escaped', () => {
  const shapes = [
    { kind: 'text', at: [0, 0], text: '<script>', size: 8, anchor: 'start', weight: 'regular', ink: 'black' },
  ] as const;
  expect(drawingToSvg({ ...drawing, shapes })).toContain('&lt;script&gt;');
});
