import type { Datum, IssueData, Sentence } from './sentence.js';

/** Longest list of words printed in one message. */
const MOST_WORDS = 40;

/**
 * One entry of the data as text.
 *
 * @param data - data of the issue [-]
 * @param key - entry [-]
 * @returns text; lists are joined by commas; empty where there is no such entry [-]
 */
export function say<Key extends string>(data: { readonly [Each in Key]?: Datum }, key: Key): string {
  const value = data[key];
  if (value === undefined) return '';
  if (typeof value === 'string' || typeof value === 'number') return String(value);
  return value.length > MOST_WORDS ? `${value.slice(0, MOST_WORDS).join(', ')} …` : value.join(', ');
}

/**
 * A sentence about a place of the input file: what the schema says is wanted there, its example, and the near miss
 * come from the data unless said otherwise.
 *
 * @param data - data of the issue [-]
 * @param message - what is wrong [-]
 * @param parts - what is wanted, or a hint, where the data do not say it [-]
 * @returns the sentence [-]
 */
export function tell(data: IssueData, message: string, parts: Partial<Sentence> = {}): Sentence {
  const wanted = parts.wanted ?? say(data, 'wanted');
  const example = parts.example ?? say(data, 'example');
  const near = say(data, 'nearest');
  const hint = parts.hint ?? (near === '' ? '' : `did you mean "${near}"?`);
  return {
    message,
    ...(wanted !== '' && { wanted }),
    ...(example !== '' && { example }),
    ...(hint !== '' && { hint }),
  };
}
