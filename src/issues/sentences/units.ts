import type { Sentences } from './sentence.js';
import { say, tell } from './tell.js';

/** Quantities and expressions. */
export const unitsSentences = {
  'quantity.not-a-number': (data: { found: string; units: string }) =>
    tell(data, `"${say(data, 'found')}" does not start with a number`, {
      hint: `a number and a unit: ${say(data, 'units')}`,
    }),
  'quantity.no-unit': (data: { found: string; units: string }) =>
    tell(data, `"${say(data, 'found')}" has no unit`, { hint: `units known here: ${say(data, 'units')}` }),
  'quantity.unknown-unit': (data: { unit: string; dimension: string; units: string }) =>
    tell(data, `"${say(data, 'unit')}" is no unit of ${say(data, 'dimension')}`, {
      hint: `units known here: ${say(data, 'units')}`,
    }),
  'quantity.comma': (data: { found: string }) =>
    tell(data, `the comma in "${say(data, 'found')}" parts no thousands`, {
      hint: 'decimals stand behind a point: 1.5 m',
    }),
  'quantity.bad-fraction': (data: { fraction: string; found: string }) =>
    tell(data, `"${say(data, 'fraction')}" in "${say(data, 'found')}" is no proper fraction`),
  'quantity.broken-feet': (data: { found: string }) =>
    tell(data, `the feet of "${say(data, 'found')}" are no whole number`, {
      hint: 'parts of a foot are told in inches',
    }),
  'quantity.too-many-inches': (data: { found: string }) =>
    tell(data, `"${say(data, 'found')}" has twelve inches or more`, { hint: 'twelve inches are a foot' }),
  'quantity.below-zero-kelvin': (data: { found: string }) =>
    tell(data, `"${say(data, 'found')}" is colder than anything can be`),
  'expression.unreadable': (data: { text: string }) =>
    tell(data, `the expression "${say(data, 'text')}" cannot be read`),
  'expression.not-allowed': (data: { part: string; text: string }) =>
    tell(data, `"${say(data, 'part')}" is not allowed in the expression "${say(data, 'text')}"`),
  'expression.missing-symbol': (data: { text: string; symbol: string }) =>
    tell(data, `the expression "${say(data, 'text')}" has no number for ${say(data, 'symbol')}`),
  'expression.not-a-number': (data: { text: string }) =>
    tell(data, `the expression "${say(data, 'text')}" gives no number`),
} satisfies Sentences;
