/** What stands in a field, in the words of the sheet; or why it cannot be said. */
import { choiceState } from '../render/form/field.js';
import type { Box } from '../sheet/sheet.js';
import type { PdfField } from './pdf/find-fields.js';
import { LIMITS } from './pdf/limits.js';
import type { OpenPdf } from './pdf/open-pdf.js';
import { pdfText, wordsOfRichText } from './pdf/pdf-text.js';
import { unpackStream } from './pdf/unpack.js';
import { isKind, type PdfGroup, type PdfValue } from './pdf/value.js';

/** Why a field cannot be read. */
type UnreadField = 'fieldwork.form.wrong-type' | 'fieldwork.form.wrong-choice' | 'fieldwork.form.unreadable';

/** Words that stand in a field, or a code of an issue with what was found. */
export type FieldValue = { readonly text: string } | { readonly code: UnreadField; readonly found: string };

/** What a box of each kind is in a PDF. */
const TYPES: Readonly<Record<Box['kind'], 'Tx' | 'Btn' | 'Ch'>> = {
  number: 'Tx',
  text: 'Tx',
  date: 'Tx',
  signature: 'Tx',
  tick: 'Btn',
  choice: 'Btn',
};
const TYPE_WORDS: Readonly<Record<string, string>> = {
  Tx: 'a text',
  Btn: 'a button',
  Ch: 'a list',
  Sig: 'a signature',
};

/**
 * Reads one field.
 *
 * @param pdf - open PDF
 * @param field - the field
 * @param box - what it should be
 * @returns words, empty where nothing was filled in; or why not
 */
export function filledValue(pdf: OpenPdf, field: PdfField, box: Box): FieldValue {
  const { type } = field;
  if (box.kind === 'choice' && type === 'Ch') return listValue(pdf, field, box);
  if (type !== undefined && type !== TYPES[box.kind])
    return { code: 'fieldwork.form.wrong-type', found: TYPE_WORDS[type] ?? `of the type ${type}` };
  if (box.kind === 'choice') return buttonsValue(pdf, field, box);
  if (box.kind === 'tick') return tickValue(pdf, field);
  return textValue(pdf, field);
}

/**
 * The words of a value, whether it is a text, a name, a number or a stream of text.
 *
 * @param pdf - open PDF
 * @param value - the value
 * @returns words; undefined for what has none
 */
export function wordsOf(pdf: OpenPdf, value: PdfValue | undefined): string | undefined {
  if (isKind(value, 'text')) return pdfText(value.bytes);
  if (isKind(value, 'name')) return value.name;
  if (typeof value === 'number') return String(value);
  if (isKind(value, 'group') && value.stream) {
    const bytes = unpackStream(value, pdf.resolve, pdf.budget);
    return bytes && pdfText(bytes);
  }
  return undefined;
}

function textValue(pdf: OpenPdf, field: PdfField): FieldValue {
  const value = field.entry('V');
  const rich = field.entry('RV');
  if (value === undefined && rich === undefined) return { text: '' };
  const text = value === undefined ? wordsOfRichText(wordsOf(pdf, rich) ?? '') : wordsOf(pdf, value);
  if (text === undefined) return { code: 'fieldwork.form.unreadable', found: kindWord(value) };
  if (text.length > LIMITS.text) return { code: 'fieldwork.form.unreadable', found: `${text.length} signs` };
  return { text };
}

const kindWord = (value: PdfValue | undefined): string =>
  isKind(value, 'list') ? 'a list of values' : isKind(value, 'group') ? 'a group of values' : 'no text';

/** A choice told apart from others without regard to capitals and blanks. */
const bare = (words: string): string => words.trim().replace(/\s+/g, ' ').toLowerCase();

function choiceByWords(words: string, choices: readonly string[]): string | undefined {
  return choices.find((choice) => choice === words) ?? choices.find((choice) => bare(choice) === bare(words));
}

function listValue(pdf: OpenPdf, field: PdfField, { choices = [] }: Box): FieldValue {
  const value = field.entry('V');
  const chosen = isKind(value, 'list') ? value.items.map(pdf.resolve) : [value];
  const words = chosen.map((one) => (one === undefined ? '' : wordsOf(pdf, one))).filter((one) => one !== '');
  if (words.length === 0) return { text: '' };
  const [first] = words;
  if (words.length > 1 || first === undefined)
    return { code: 'fieldwork.form.unreadable', found: words.join(', ') };
  if (bare(first) === '') return { text: '' };
  const found = choiceByWords(first, choices);
  return found === undefined ? { code: 'fieldwork.form.wrong-choice', found: first } : { text: found };
}

/** Names of the states of a widget in which it shows something. */
function statesOf(pdf: OpenPdf, widget: PdfGroup): readonly string[] {
  const looks = pdf.resolve(widget.entries.get('AP'));
  const usual = isKind(looks, 'group') ? pdf.resolve(looks.entries.get('N')) : undefined;
  return isKind(usual, 'group') && !usual.stream
    ? [...usual.entries.keys()].filter((key) => key !== 'Off')
    : [];
}

/** The state a widget shows. */
function shownState(pdf: OpenPdf, widget: PdfGroup): string {
  const state = pdf.resolve(widget.entries.get('AS'));
  return isKind(state, 'name') && state.name !== 'Off' ? state.name : '';
}

/** Words that stand for no state, as foreign programs write them. */
const isOff = (words: string): boolean => words === '' || words === 'Off';

function tickValue(pdf: OpenPdf, field: PdfField): FieldValue {
  const value = field.entry('V');
  const stated = value === undefined ? '' : value === true ? 'true' : wordsOf(pdf, value);
  const shown = field.widgets.map((widget) => shownState(pdf, widget)).find((state) => state !== '') ?? '';
  if (stated === undefined) return { code: 'fieldwork.form.unreadable', found: kindWord(value) };
  const state = isOff(stated) ? shown : stated;
  if (isOff(state)) return { text: '' };
  const states = new Set([
    ...field.widgets.flatMap((widget) => statesOf(pdf, widget)),
    'Yes',
    'On',
    '1',
    'true',
  ]);
  return states.has(state) ? { text: 'yes' } : { code: 'fieldwork.form.unreadable', found: state };
}

function buttonsValue(pdf: OpenPdf, field: PdfField, box: Box): FieldValue {
  const { choices = [] } = box;
  const value = field.entry('V');
  const stated = value === undefined ? '' : wordsOf(pdf, value);
  if (stated === undefined) return { code: 'fieldwork.form.unreadable', found: kindWord(value) };
  const shown = [
    ...new Set(field.widgets.map((widget) => shownState(pdf, widget)).filter((one) => one !== '')),
  ];
  if (isOff(stated) && shown.length === 0) return { text: '' };
  // Two buttons pressed at once, or one that says otherwise than the field: nobody can tell which was meant.
  if (shown.length > 1 || (!isOff(stated) && shown.length === 1 && shown[0] !== stated))
    return {
      code: 'fieldwork.form.unreadable',
      found: [...new Set([stated, ...shown])].filter((one) => !isOff(one)).join(', '),
    };
  const state = isOff(stated) ? (shown[0] ?? '') : stated;
  const found = choiceOfState(pdf, field, choices, state);
  return found === undefined ? { code: 'fieldwork.form.wrong-choice', found: state } : { text: found };
}

/** The choice a state stands for: by the name we gave it, by the list of the field, by its words, by its place. */
function choiceOfState(
  pdf: OpenPdf,
  field: PdfField,
  choices: readonly string[],
  state: string,
): string | undefined {
  const own = choices.find((_, i) => choiceState(choices, i) === state);
  if (own !== undefined) return own;
  const options = field.entry('Opt');
  if (isKind(options, 'list') && /^\d{1,4}$/.test(state)) {
    const option = wordsOf(pdf, pdf.resolve(options.items[Number(state)]));
    const listed = option === undefined ? undefined : choiceByWords(option, choices);
    if (listed !== undefined) return listed;
  }
  const byWords = choiceByWords(state, choices);
  if (byWords !== undefined) return byWords;
  // A viewer that numbers the buttons keeps their order.
  const place = field.widgets.findIndex((widget) => statesOf(pdf, widget).includes(state));
  return /^\d{1,4}$/.test(state) && field.widgets.length === choices.length ? choices[place] : undefined;
}
