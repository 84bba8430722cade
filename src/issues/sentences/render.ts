import type { Sentences } from './sentence.js';

/** Most names of a list that a message shows. */
const SHOWN = 12;

/** Names one after the other; says how many more there are. */
function named(value: readonly string[]): string {
  if (value.length === 0) return 'nothing';
  const more = value.length > SHOWN ? ` and ${value.length - SHOWN} more` : '';
  return value.slice(0, SHOWN).join(', ') + more;
}

/** A place in a template. */
export type TemplateSpot = {
  readonly template: string;
  readonly line: number;
  readonly column?: number;
  readonly near?: string;
};

/** A place in a logo that is text. */
type LogoSpot = { readonly file: string; readonly line?: number; readonly column?: number };

/** Where it stands: template, line, and the start of that line where known. */
function where(data: TemplateSpot): string {
  const near = data.near === undefined || data.near === '' ? '' : ` (${data.near})`;
  const column = data.column === undefined ? '' : `, column ${data.column}`;
  return `template ${data.template}, line ${data.line}${column}${near}`;
}

/** A logo, with line and column where it is text. */
const logoPlace = (data: LogoSpot): string =>
  data.line === undefined ? data.file : `${data.file}, line ${data.line}, column ${data.column},`;

/** The name that was probably meant. */
const meant = (data: { readonly nearest?: string }): { readonly hint?: string } =>
  data.nearest === undefined ? {} : { hint: `did you mean ${data.nearest}?` };

const element = (name: string): string => (name === 'the document' ? 'the document' : `<${name}>`);

/** Sentences of the renderer: filled templates, markup, fonts and pages. */
export const renderSentences = {
  'render.markup.too-large': (data: TemplateSpot & { size: number; largest: number }) => ({
    message: `${where(data)}: the filled template has ${data.size} characters`,
    wanted: `at most ${data.largest} characters`,
  }),
  'render.markup.not-well-formed': (data: TemplateSpot & { reason: string }) => ({
    message: `${where(data)}: the markup cannot be read: ${data.reason}`,
    wanted:
      'every element closed in the order in which it was opened, & and < in words written as &amp; and &lt;',
    example: '<p>Bolts &amp; nuts</p>',
  }),
  'render.markup.text-not-allowed': (
    data: TemplateSpot & { inside: string; found: string; allowed: readonly string[] },
  ) => ({
    message: `${where(data)}: words stand directly in ${element(data.inside)}: "${data.found}"`,
    wanted: `one of these elements: ${named(data.allowed)}`,
    example: '<p>words</p>',
  }),
  'render.markup.unknown-element': (
    data: TemplateSpot & { found: string; inside: string; allowed: readonly string[] },
  ) => ({
    message: `${where(data)}: there is no element ${element(data.found)}`,
    wanted: `inside ${element(data.inside)}: ${named(data.allowed)}`,
  }),
  'render.markup.misplaced-element': (
    data: TemplateSpot & { found: string; inside: string; allowed: readonly string[] },
  ) => ({
    message: `${where(data)}: ${element(data.found)} may not stand in ${element(data.inside)}`,
    wanted: `inside ${element(data.inside)}: ${named(data.allowed)}`,
  }),
  'render.markup.missing-attribute': (data: TemplateSpot & { element: string; attribute: string }) => ({
    message: `${where(data)}: ${element(data.element)} has no ${data.attribute}`,
    wanted: `${data.attribute} given`,
  }),
  'render.markup.unknown-attribute': (
    data: TemplateSpot & { element: string; found: string; allowed: readonly string[] },
  ) => ({
    message: `${where(data)}: ${element(data.element)} takes no ${data.found}`,
    wanted: `only these: ${named(data.allowed)}`,
  }),
  'render.markup.wrong-value': (
    data: TemplateSpot & { attribute: string; element: string; found: string; allowed: readonly string[] },
  ) => ({
    message: `${where(data)}: ${data.attribute} of ${element(data.element)} is "${data.found}"`,
    wanted: named(data.allowed),
  }),
  'render.markup.id-twice': (data: TemplateSpot & { id: string }) => ({
    message: `${where(data)}: the id ${data.id} is given twice`,
    wanted: 'each id once, so that links know where to lead',
  }),
  'render.markup.link-leads-nowhere': (
    data: TemplateSpot & { to: string; available: readonly string[] },
  ) => ({
    message: `${where(data)}: a link leads to ${data.to}, which no block has as its id`,
    wanted: `an id of this document: ${named(data.available)}`,
  }),
  'render.markup.head-after-rows': (data: TemplateSpot) => ({
    message: `${where(data)}: the head of a table stands below its rows`,
    wanted: '<head> before the first <row>',
  }),
  'render.markup.row-does-not-fit': (data: TemplateSpot & { found: number; wanted: number }) => ({
    message: `${where(data)}: the cells of a row fill ${data.found} columns, the table has ${data.wanted}`,
    wanted: 'as many cells as columns, or cells with span',
    example: '<cell span="2">…</cell>',
  }),
  'render.markup.box-in-box': (data: TemplateSpot & { id: string; group: string }) => ({
    message: `${where(data)}: the box ${data.id} stands in a group named like the box ${data.group}`,
    wanted: 'names of which none is the beginning of another',
  }),
  'render.markup.choices-do-not-fit': (data: TemplateSpot & { id: string; found: number }) => ({
    message: `${where(data)}: the box ${data.id} has ${data.found} choices`,
    wanted: 'two or more in a box of kind "choice", none in any other',
    example: '<box id="valve.open" kind="choice" tip="Open?"><choice>yes</choice><choice>no</choice></box>',
  }),
  'render.template.missing': (data: { name: string }) => ({
    message: `the template ${data.name} is missing`,
    wanted: `a file ${data.name}.hbs in the folder of templates`,
  }),
  'render.template.section-left-out': (data: { missing: readonly string[] }) => ({
    message: `the master template leaves out what the outline asks for: ${named(data.missing)}`,
    wanted: 'a line for each section in review.hbs, and for sections of your own the slot own',
    example: '{{#with weights}}{{> sections/weights}}{{/with}}',
    hint: 'a review.hbs copied from an earlier version lacks what was added since: copy it again',
  }),
  'render.template.fixed-words': (data: { words: string; template: string }) => ({
    message: `words that stand in every review are missing: "${data.words} …"`,
    wanted: `the template ${data.template} put in, unchanged`,
    example: `{{> ${data.template}}}`,
    hint: 'what a review is and is not, and what can hurt someone, cannot be left out; cautions may be added in firm.yaml',
  }),
  'render.logo.unknown-kind': (data: { file: string }) => ({
    message: `the logo ${data.file} is not a PNG, JPEG or SVG`,
    wanted: 'one of these, whatever its name ends in',
  }),
  'render.logo.too-large': (data: { file: string; size: string; largest: string }) => ({
    message: `the logo ${data.file} has ${data.size}`,
    wanted: `at most ${data.largest}`,
    hint: 'an SVG of plain outlines takes a few kilobytes and prints sharp at any size',
  }),
  'render.logo.too-many-pixels': (data: { file: string; width: number; height: number; most: number }) => ({
    message: `the logo ${data.file} has ${data.width} by ${data.height} pixels`,
    wanted: `at most ${data.most} pixels; a few hundred a side print well`,
  }),
  'render.logo.too-thin': (data: { file: string; times: number }) => ({
    message: `the logo ${data.file} is more than ${data.times} times as long as it is wide`,
    wanted: 'a picture that can be seen at the height of a letterhead',
  }),
  'render.logo.damaged': (data: LogoSpot & { reason: string }) => ({
    message: `the logo ${logoPlace(data)} cannot be read: ${data.reason}`,
    wanted: 'a whole file, saved again by the program that made it',
  }),
  'render.logo.not-drawn': (data: LogoSpot & { found: string }) => ({
    message: `the logo ${logoPlace(data)} holds something that is not drawn: ${data.found}`,
    wanted:
      'of SVG: g, path, rect, circle, ellipse, line, polyline and polygon in plain opaque colours; PNG without interlacing; JPEG in grey or RGB',
    hint: 'turn letters and strokes into paths and gradients into plain colours, or save the logo as PNG',
  }),
  'render.logo.not-allowed': (data: LogoSpot & { found: string }) => ({
    message: `the logo ${logoPlace(data)} holds ${data.found}`,
    wanted: 'a picture without scripts, references to other files, or entities',
    hint: 'save it as a plain SVG',
  }),
  'render.template.broken': (data: TemplateSpot & { reason: string }) => ({
    message: `${where(data)}: the template cannot be read: ${data.reason}`,
    wanted: 'every {{#if}}, {{#unless}}, {{#each}} and {{#with}} closed',
    example: '{{#each rows}}…{{/each}}',
  }),
  'render.template.unknown-name': (
    data: TemplateSpot & { found: string; missing: string; available: readonly string[]; nearest?: string },
  ) => ({
    message: `${where(data)}: nothing is called ${data.found} here; ${data.missing} is not known`,
    wanted: `one of these: ${named(data.available)}`,
    hint:
      data.nearest === undefined
        ? 'inside {{#each}} and {{#with}} names of the data outside start with ../'
        : `did you mean ${data.nearest}?`,
  }),
  'render.template.unknown-helper': (
    data: TemplateSpot & { found: string; available: readonly string[]; nearest?: string },
  ) => ({
    message: `${where(data)}: ${data.found} is not something a template can do`,
    wanted: `a plain name, or one of these with one name behind it: ${named(data.available)}`,
    ...meant(data),
  }),
  'render.template.unknown-partial': (
    data: TemplateSpot & { found: string; available: readonly string[]; nearest?: string },
  ) => ({
    message: `${where(data)}: there is no template ${data.found} to put in`,
    wanted: `one of these: ${named(data.available)}`,
    ...meant(data),
  }),
  'render.template.not-text': (data: TemplateSpot & { found: string }) => ({
    message: `${where(data)}: ${data.found} is a list or a group of values, not a text`,
    wanted: 'a text, or {{#each}} over the list',
  }),
  'render.template.not-a-list': (data: TemplateSpot & { found: string }) => ({
    message: `${where(data)}: ${data.found} is one value, not a list`,
    wanted: 'a list behind {{#each}}',
  }),
  'render.template.not-allowed': (data: TemplateSpot & { found: string }) => ({
    message: `${where(data)}: templates may not use this: ${data.found}`,
    wanted: 'names, #if, #unless, #each, #with, and templates put in by name',
  }),
  'render.template.too-large': (data: TemplateSpot & { largest: number }) => ({
    message: `${where(data)}: the template is too large, or fills to more than can be printed`,
    wanted: `at most ${data.largest} characters or steps`,
  }),
  'render.font-unreadable': (data: { name: string; reason: string }) => ({
    message: `the ${data.name} font cannot be read: ${data.reason}`,
    wanted: 'a TrueType file with outlines',
  }),
  'render.unknown-drawing': (data: { line: number; found: string; available: readonly string[] }) => ({
    message: `the markup, line ${data.line}, calls for a drawing ${data.found}, which this review does not have`,
    wanted: `one of these: ${named(data.available)}`,
  }),
  'render.table-too-wide': (data: { columns: number }) => ({
    message: `a table of ${data.columns} columns is wider than the page, even in the smallest type`,
    wanted: 'fewer columns, or shorter numbers',
  }),
  'render.block-too-tall': (data: { block: string; height: number; available: number }) => ({
    message: `a ${data.block} is ${data.height} points tall and cannot be parted; the page has ${data.available}`,
    wanted: 'less in one piece',
  }),
  'render.date-unreadable': (data: { found: string }) => ({
    message: `the date of the document is "${data.found}"`,
    wanted: 'a day such as 2026-03-14',
  }),
} as const satisfies Sentences;
