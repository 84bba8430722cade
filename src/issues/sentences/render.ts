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
  return `template ${String(data.template)}, line ${String(data.line)}${near}`;
}

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
  'render.template.broken': (data) => ({
    message: `${where(data)}: the template cannot be read: ${String(data.reason)}`,
    wanted: 'every {{#if}}, {{#unless}}, {{#each}} and {{#with}} closed',
    example: '{{#each rows}}…{{/each}}',
  }),
  'render.template.unknown-name': (data) => ({
    message: `${where(data)}: nothing is called ${String(data.found)} here; ${String(data.missing)} is not known`,
    wanted: `one of these: ${named(data.available)}`,
    hint: 'inside {{#each}} and {{#with}} names of the data outside start with ../',
  }),
  'render.template.unknown-helper': (data) => ({
    message: `${where(data)}: ${String(data.found)} is not something a template can do`,
    wanted: `a plain name, or one of these with one name behind it: ${named(data.available)}`,
  }),
  'render.template.unknown-partial': (data) => ({
    message: `${where(data)}: there is no template ${String(data.found)} to put in`,
    wanted: `one of these: ${named(data.available)}`,
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
