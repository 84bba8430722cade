/** A limit that stands beside a box: a number with its source, never one of our own making. */
import { type Citation, sources } from '../../sources/index.js';
import { type Measured, type Printing, siteText } from './site-text.js';

/** What a reading must keep to. */
export interface FieldLimit {
  /** SI value. */
  readonly value: number;
  readonly measured: Measured;
  readonly citation: Citation;
  /** Words before the number: `within`, `at most`, `at least`. */
  readonly words: 'within' | 'at most' | 'at least';
}

/**
 * Whether a limit decides, or is only compared with.
 *
 * A limit of the file, the sheet or a publication that was read decides. One written from memory or a custom of the
 * trade is a comparison: who relies on it has to look it up first.
 *
 * @param citation - where it comes from
 * @returns true where it decides
 */
export function decides({ confidence }: Citation): boolean {
  return confidence !== 'memory' && confidence !== 'common practice';
}

/**
 * A limit as printed beside a box.
 *
 * @param limit - the limit
 * @param context - writer
 * @returns for example `at most 0.010 in`
 */
export function limitText(limit: FieldLimit, context: Printing): string {
  return `${limit.words} ${limitNumber(limit, context)}`;
}

/** The number of a limit alone, as `limitText` prints it. */
export function limitNumber({ value, measured }: FieldLimit, context: Printing): string {
  return siteText(value, measured, context) ?? '';
}

/**
 * Source of a limit in a short phrase with how sure it is.
 *
 * @param limit - the limit, or its citation
 * @returns for example `API RP 686 …, chapter 6, read`
 */
export function sourceText({ citation }: { readonly citation: Citation }): string {
  const { source, clause, confidence } = citation;
  if (source === 'input') return `${clause}, given in the file`;
  const told = [shortTitle(sources[source].title), clause].filter((part) => part !== '').join(', ');
  return `${told} (${confidence}${decides(citation) ? '' : ', a comparison'})`;
}

/** Name of a source in two or three words with how sure it is: `API RP 686, read`. */
export function sourceName({ source, clause, confidence }: Citation): string {
  if (source === 'input') return `${clause}, given in the file`;
  return `${shortTitle(sources[source].title)}, ${confidence}`;
}

/** A standard by its number alone; everything else by its title. */
function shortTitle(title: string): string {
  return /^(?:29 CFR \S+|[A-Z/]{3,}(?: [A-Z]+)? ?[A-Z-]*\d\S*)/.exec(title)?.[0] ?? title;
}
