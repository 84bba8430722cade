/** Making boxes and rows of a field sheet, so that a part of it reads like the sheet itself. */

import { type FieldLimit, limitText, sourceText } from '../report/limits/field-limit.js';
import type { Citation } from '../sources/index.js';
import { type FieldContext, type Measured, siteText, siteUnit } from './field-context.js';
import { plausibleFor } from './plausible.js';
import { type Box, NO_LIMIT, type SheetRow } from './sheet.js';

/** Words of one box: its id, what stands above it, and the whole question. */
export interface BoxWords {
  readonly id: string;
  readonly label: string;
  readonly tip: string;
  /** First version of the sheet that has it, where that is not the first of all. */
  readonly since?: '0.2.0';
}

/** Makes a box for a number; `expected` is in SI. */
export function numberBox(
  words: BoxWords,
  measured: Measured,
  context: FieldContext,
  expected?: number,
): Box {
  const text = siteText(expected, measured, context);
  const plausible = plausibleFor(words.id, measured, expected);
  return {
    ...words,
    kind: 'number',
    ...siteUnit(measured, context),
    ...(plausible && { plausible }),
    ...(text !== undefined && { expected: text }),
  };
}

/** Makes a box for words. */
export function textBox(words: BoxWords, expected?: string, lines?: number): Box {
  return {
    ...words,
    kind: 'text',
    ...(expected !== undefined && { expected }),
    ...(lines !== undefined && { lines }),
  };
}

/** Answers to a question that has only these. */
export const YES_NO: readonly string[] = ['yes', 'no'];

/** Makes a box for one of a few answers. */
export function choiceBox(words: BoxWords, choices: readonly string[] = YES_NO, expected?: string): Box {
  return { ...words, kind: 'choice', choices, ...(expected !== undefined && { expected }) };
}

/** Makes a box for a day. */
export function dateBox(words: BoxWords): Box {
  return { ...words, kind: 'date' };
}

/** What stands beside the boxes of a row. */
export interface RowWords {
  readonly expected?: string | undefined;
  readonly limit?: string | undefined;
  readonly source?: string | undefined;
}

/** Makes a row; what is undefined is left away. */
export function sheetRow(label: string, boxes: readonly Box[], words: RowWords = {}): SheetRow {
  const { expected, limit, source } = words;
  return {
    label,
    boxes,
    ...(expected !== undefined && { expected }),
    ...(limit !== undefined && { limit }),
    ...(source !== undefined && { source }),
  };
}

/** A limit with its source, or the word that there is none. */
export function limitWords(limit: FieldLimit | undefined, context: FieldContext): RowWords {
  if (limit === undefined) return { limit: NO_LIMIT };
  return { limit: limitText(limit, context), source: sourceText(limit) };
}

/** Words for what is asked for by a source and has no number. */
export function askedBy(limit: string, citation: Citation): RowWords {
  return { limit, source: sourceText({ citation }) };
}

/**
 * The row in which a limit of the maker is written down on site, where the review has none that decides.
 *
 * @param id - first words of both ids; the second box ends in `-from`
 * @param what - what is limited
 * @param measured - what is read
 * @param context - writer
 * @returns a row of two boxes: the limit, and the page it stands on
 */
export function makerRow(id: string, what: string, measured: Measured, context: FieldContext): SheetRow {
  return sheetRow(`Limit of manufacturer or specification: ${what}`, [
    numberBox(
      { id, label: 'at most', tip: `Limit of the manufacturer or the specification: ${what}` },
      measured,
      context,
    ),
    textBox({
      id: `${id}-from`,
      label: 'document, page',
      tip: `Where that limit stands: document and page or clause`,
    }),
  ]);
}
