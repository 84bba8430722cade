import type { IssueData } from '../issue.js';
import type { Sentences } from './sentence.js';

/** Most names of a list that a message shows. */
const SHOWN = 12;

/** Names one after the other; says how many more there are. */
function named(value: IssueData[string] | undefined): string {
  if (value === undefined) return 'nothing';
  if (typeof value === 'string' || typeof value === 'number') return String(value);
  if (value.length === 0) return 'nothing';
  const more = value.length > SHOWN ? ` and ${value.length - SHOWN} more` : '';
  return value.slice(0, SHOWN).join(', ') + more;
}

/** Where it stands: template, line, and the start of that line where known. */
function where(data: IssueData): string {
  const near = data.near === undefined || data.near === '' ? '' : ` (${String(data.near)})`;
  const column = data.column === undefined ? '' : `, column ${String(data.column)}`;
  return `template ${String(data.template)}, line ${String(data.line)}${column}${near}`;
}

/** A logo, with line and column where it is text. */
const logoPlace = (data: IssueData): string =>
  data.line === undefined
    ? String(data.file)
    : `${String(data.file)}, line ${String(data.line)}, column ${String(data.column)},`;

/** The name that was probably meant. */
const meant = (data: IssueData): { readonly hint?: string } =>
  data.nearest === undefined ? {} : { hint: `did you mean ${String(data.nearest)}?` };

const element = (name: IssueData[string] | undefined): string =>
  name === 'the document' ? 'the document' : `<${String(name)}>`;

/** Sentences of the renderer: filled templates, markup, fonts and pages. */
export const renderSentences = {
  'render.markup.too-large': (data) => ({
    message: `${where(data)}: the filled template has ${String(data.size)} characters`,
    wanted: `at most ${String(data.largest)} characters`,
  }),
  'render.markup.not-well-formed': (data) => ({
    message: `${where(data)}: the markup cannot be read: ${String(data.reason)}`,
    wanted:
      'every element closed in the order in which it was opened, & and < in words written as &amp; and &lt;',
    example: '<p>Bolts &amp; nuts</p>',
  }),
  'render.markup.text-not-allowed': (data) => ({
    message: `${where(data)}: words stand directly in ${element(data.inside)}: "${String(data.found)}"`,
    wanted: `one of these elements: ${named(data.allowed)}`,
    example: '<p>words</p>',
  }),
  'render.markup.unknown-element': (data) => ({
    message: `${where(data)}: there is no element ${element(data.found)}`,
    wanted: `inside ${element(data.inside)}: ${named(data.allowed)}`,
  }),
  'render.markup.misplaced-element': (data) => ({
    message: `${where(data)}: ${element(data.found)} may not stand in ${element(data.inside)}`,
    wanted: `inside ${element(data.inside)}: ${named(data.allowed)}`,
  }),
  'render.markup.missing-attribute': (data) => ({
    message: `${where(data)}: ${element(data.element)} has no ${String(data.attribute)}`,
    wanted: `${String(data.attribute)} given`,
  }),
  'render.markup.unknown-attribute': (data) => ({
    message: `${where(data)}: ${element(data.element)} takes no ${String(data.found)}`,
    wanted: `only these: ${named(data.allowed)}`,
  }),
  'render.markup.wrong-value': (data) => ({
    message: `${where(data)}: ${String(data.attribute)} of ${element(data.element)} is "${String(data.found)}"`,
    wanted: named(data.allowed),
  }),
  'render.markup.id-twice': (data) => ({
    message: `${where(data)}: the id ${String(data.id)} is given twice`,
    wanted: 'each id once, so that links know where to lead',
  }),
  'render.markup.link-leads-nowhere': (data) => ({
    message: `${where(data)}: a link leads to ${String(data.to)}, which no block has as its id`,
    wanted: `an id of this document: ${named(data.available)}`,
  }),
  'render.markup.head-after-rows': (data) => ({
    message: `${where(data)}: the head of a table stands below its rows`,
    wanted: '<head> before the first <row>',
  }),
  'render.markup.row-does-not-fit': (data) => ({
    message: `${where(data)}: the cells of a row fill ${String(data.found)} columns, the table has ${String(data.wanted)}`,
    wanted: 'as many cells as columns, or cells with span',
    example: '<cell span="2">…</cell>',
  }),
  'render.markup.box-in-box': (data) => ({
    message: `${where(data)}: the box ${String(data.id)} stands in a group named like the box ${String(data.group)}`,
    wanted: 'names of which none is the beginning of another',
  }),
  'render.markup.choices-do-not-fit': (data) => ({
    message: `${where(data)}: the box ${String(data.id)} has ${String(data.found)} choices`,
    wanted: 'two or more in a box of kind "choice", none in any other',
    example: '<box id="valve.open" kind="choice" tip="Open?"><choice>yes</choice><choice>no</choice></box>',
  }),
  'render.template.missing': (data) => ({
    message: `the template ${String(data.name)} is missing`,
    wanted: `a file ${String(data.name)}.hbs in the folder of templates`,
  }),
  'render.template.section-left-out': (data) => ({
    message: `the master template leaves out what the outline asks for: ${named(data.missing)}`,
    wanted: 'a line for each section in review.hbs, and for sections of your own the slot own',
    example: '{{#with weights}}{{> sections/weights}}{{/with}}',
    hint: 'a review.hbs copied from an earlier version lacks what was added since: copy it again',
  }),
  'render.template.fixed-words': (data) => ({
    message: `words that stand in every review are missing: "${String(data.words)} …"`,
    wanted: `the template ${String(data.template)} put in, unchanged`,
    example: `{{> ${String(data.template)}}}`,
    hint: 'what a review is and is not, and what can hurt someone, cannot be left out; cautions may be added in firm.yaml',
  }),
  'render.logo.unknown-kind': (data) => ({
    message: `the logo ${String(data.file)} is not a PNG, JPEG or SVG`,
    wanted: 'one of these, whatever its name ends in',
  }),
  'render.logo.too-large': (data) => ({
    message: `the logo ${String(data.file)} has ${String(data.size)}`,
    wanted: `at most ${String(data.largest)}`,
    hint: 'an SVG of plain outlines takes a few kilobytes and prints sharp at any size',
  }),
  'render.logo.too-many-pixels': (data) => ({
    message: `the logo ${String(data.file)} has ${String(data.width)} by ${String(data.height)} pixels`,
    wanted: `at most ${String(data.most)} pixels; a few hundred a side print well`,
  }),
  'render.logo.too-thin': (data) => ({
    message: `the logo ${String(data.file)} is more than ${String(data.times)} times as long as it is wide`,
    wanted: 'a picture that can be seen at the height of a letterhead',
  }),
  'render.logo.damaged': (data) => ({
    message: `the logo ${logoPlace(data)} cannot be read: ${String(data.reason)}`,
    wanted: 'a whole file, saved again by the program that made it',
  }),
  'render.logo.not-drawn': (data) => ({
    message: `the logo ${logoPlace(data)} holds something that is not drawn: ${String(data.found)}`,
    wanted:
      'of SVG: g, path, rect, circle, ellipse, line, polyline and polygon in plain opaque colours; PNG without interlacing; JPEG in grey or RGB',
    hint: 'turn letters and strokes into paths and gradients into plain colours, or save the logo as PNG',
  }),
  'render.logo.not-allowed': (data) => ({
    message: `the logo ${logoPlace(data)} holds ${String(data.found)}`,
    wanted: 'a picture without scripts, references to other files, or entities',
    hint: 'save it as a plain SVG',
  }),
  'render.template.broken': (data) => ({
    message: `${where(data)}: the template cannot be read: ${String(data.reason)}`,
    wanted: 'every {{#if}}, {{#unless}}, {{#each}} and {{#with}} closed',
    example: '{{#each rows}}…{{/each}}',
  }),
  'render.template.unknown-name': (data) => ({
    message: `${where(data)}: nothing is called ${String(data.found)} here; ${String(data.missing)} is not known`,
    wanted: `one of these: ${named(data.available)}`,
    hint:
      data.nearest === undefined
        ? 'inside {{#each}} and {{#with}} names of the data outside start with ../'
        : `did you mean ${String(data.nearest)}?`,
  }),
  'render.template.unknown-helper': (data) => ({
    message: `${where(data)}: ${String(data.found)} is not something a template can do`,
    wanted: `a plain name, or one of these with one name behind it: ${named(data.available)}`,
    ...meant(data),
  }),
  'render.template.unknown-partial': (data) => ({
    message: `${where(data)}: there is no template ${String(data.found)} to put in`,
    wanted: `one of these: ${named(data.available)}`,
    ...meant(data),
  }),
  'render.template.not-text': (data) => ({
    message: `${where(data)}: ${String(data.found)} is a list or a group of values, not a text`,
    wanted: 'a text, or {{#each}} over the list',
  }),
  'render.template.not-a-list': (data) => ({
    message: `${where(data)}: ${String(data.found)} is one value, not a list`,
    wanted: 'a list behind {{#each}}',
  }),
  'render.template.not-allowed': (data) => ({
    message: `${where(data)}: templates may not use this: ${String(data.found)}`,
    wanted: 'names, #if, #unless, #each, #with, and templates put in by name',
  }),
  'render.template.too-large': (data) => ({
    message: `${where(data)}: the template is too large, or fills to more than can be printed`,
    wanted: `at most ${String(data.largest)} characters or steps`,
  }),
  'render.font-unreadable': (data) => ({
    message: `the ${String(data.name)} font cannot be read: ${String(data.reason)}`,
    wanted: 'a TrueType file with outlines',
  }),
  'render.unknown-drawing': (data) => ({
    message: `the markup, line ${String(data.line)}, calls for a drawing ${String(data.found)}, which this review does not have`,
    wanted: `one of these: ${named(data.available)}`,
  }),
  'render.table-too-wide': (data) => ({
    message: `a table of ${String(data.columns)} columns is wider than the page, even in the smallest type`,
    wanted: 'fewer columns, or shorter numbers',
  }),
  'render.block-too-tall': (data) => ({
    message: `a ${String(data.block)} is ${String(data.height)} points tall and cannot be parted; the page has ${String(data.available)}`,
    wanted: 'less in one piece',
  }),
  'render.date-unreadable': (data) => ({
    message: `the date of the document is "${String(data.found)}"`,
    wanted: 'a day such as 2026-03-14',
  }),
} as const satisfies Sentences;
