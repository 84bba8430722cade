import type { Sentences } from '../sentence.js';
import { say } from '../tell.js';

/** Where a field stands, as far as it is known. */
const field = (data: { readonly field: string; readonly page?: number }): string =>
  `the field ${say(data, 'field')}${data.page === undefined ? '' : ` on page ${say(data, 'page')}`}`;

const fresh =
  'the sheet as `pipeborne field-sheet` writes it, filled in with a program that keeps its fields';

/** Sentences about filled sheets that come back as PDF. */
export const fieldworkFormSentences = {
  'fieldwork.form.not-pdf': () => ({
    message: 'this is no PDF',
    wanted: fresh,
  }),
  'fieldwork.form.too-large': (data: { size: number; limit: number }) => ({
    message: `the PDF has ${say(data, 'size')} bytes`,
    wanted: `at most ${say(data, 'limit')} bytes; a filled sheet has some hundred thousand`,
    hint: 'take pictures and attachments out of it and keep them beside it',
  }),
  'fieldwork.form.too-much': (data: { what: string; limit: number }) => ({
    message: `the PDF holds more ${say(data, 'what')} than are read: over ${say(data, 'limit')}`,
    wanted: fresh,
  }),
  'fieldwork.form.too-deep': (data: { limit: number }) => ({
    message: `the PDF nests values more than ${say(data, 'limit')} deep`,
    wanted: fresh,
  }),
  'fieldwork.form.encrypted': () => ({
    message: 'the PDF is encrypted',
    wanted: 'the same sheet saved without a password and without restrictions',
  }),
  'fieldwork.form.cut-off': () => ({
    message: 'the PDF ends before its end',
    wanted: 'the whole file as it was saved',
    hint: 'copy it again from the device it was filled in on',
  }),
  'fieldwork.form.no-catalog': () => ({
    message: 'the PDF is damaged: nothing in it leads to its pages',
    wanted: fresh,
  }),
  'fieldwork.form.no-fields': (data: { isOurs: string }) => ({
    message: `the PDF has no fields${data.isOurs === 'yes' ? ', though it was made as a field sheet' : ''}`,
    wanted: fresh,
    hint: 'a sheet that was printed to PDF or flattened shows its readings and holds none: save it instead, or write the readings into a readings file',
  }),
  'fieldwork.form.only-xfa': () => ({
    message: 'the PDF holds a form of the XFA kind and no fields',
    wanted: fresh,
    hint: 'forms of that kind are drawn by a program inside the file, which is not run',
  }),
  'fieldwork.form.other-form': (data: { found: number; example: string }) => ({
    message: `none of the ${say(data, 'found')} fields of the PDF belongs to this sheet; the first is called "${say(data, 'example')}"`,
    wanted: 'the field sheet of this pump',
  }),
  'fieldwork.form.field-missing': (data: { field: string; box: string }) => ({
    message: `the field ${say(data, 'field')} is missing: ${say(data, 'box')}`,
    wanted: 'every field of the sheet, empty where nothing was read',
  }),
  'fieldwork.form.field-unknown': (data: { field: string; page?: number }) => ({
    message: `${field(data)} is no box of this sheet`,
    wanted: 'the fields of the sheet and no others',
    hint: 'what stands in it is not read',
  }),
  'fieldwork.form.field-twice': (data: { field: string; page?: number; found: readonly string[] }) => ({
    message: `${field(data)} is there more than once, with different readings: ${say(data, 'found')}`,
    wanted: 'one reading',
  }),
  'fieldwork.form.wrong-type': (data: {
    field: string;
    page?: number;
    found: string;
    box: string;
    wanted: string;
  }) => ({
    message: `${field(data)} is ${say(data, 'found')}: ${say(data, 'box')}`,
    wanted: `a box for a ${say(data, 'wanted')}, as the sheet has it`,
  }),
  'fieldwork.form.wrong-choice': (data: {
    field: string;
    page?: number;
    found: string;
    box: string;
    choices: readonly string[];
  }) => ({
    message: `${field(data)} says "${say(data, 'found')}": ${say(data, 'box')}`,
    wanted: `one of ${say(data, 'choices')}`,
  }),
  'fieldwork.form.unreadable': (data: {
    field: string;
    page?: number;
    found: string;
    wanted: string;
    box: string;
  }) => ({
    message: `${field(data)} cannot be read; it holds ${say(data, 'found')}`,
    wanted: `one ${say(data, 'wanted')}: ${say(data, 'box')}`,
  }),
  'fieldwork.form.script-ignored': () => ({
    message: 'the PDF holds a script, which the sheet does not',
    wanted: 'a sheet without scripts',
    hint: 'it was not run; readings are taken as they stand in the fields',
  }),
  'fieldwork.form.damaged': () => ({
    message: 'parts of the PDF are damaged and could not be read',
    wanted: 'the file as it was saved',
  }),
  'fieldwork.form.more': (data: { count: number }) => ({
    message: `and ${say(data, 'count')} more of the kind`,
    wanted: 'the field sheet of this pump',
  }),
} as const satisfies Sentences;
