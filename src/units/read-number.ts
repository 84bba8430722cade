/** How a number was understood, and what is left of the text behind it. */
export type ReadNumber =
  | { readonly ok: true; readonly value: number; readonly rest: string }
  | ({ readonly ok: false } & NumberFault);

/** What is wrong with a number; the text itself is known to whoever asked. */
export type NumberFault =
  | { readonly code: 'quantity.bad-fraction'; readonly data: { readonly fraction: string } }
  | {
      readonly code: 'quantity.comma' | 'quantity.not-a-number';
      readonly data: Readonly<Record<never, never>>;
    };

const vulgar: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
};

/** Raised minus and digits; the minus stands before nought. */
const RAISED = '⁻⁰¹²³⁴⁵⁶⁷⁸⁹';

/**
 * Brings typographic signs to plain ones: primes, fraction signs, dashes, dots, superscripts, degree signs, blanks.
 *
 * @param text - as written [-]
 * @returns plain text [-]
 */
export function plainText(text: string): string {
  return text
    .replace(/[\u00a0\u2000-\u200a\u202f\u205f\u3000\t\r\n]/gu, ' ')
    .replace(/''|[″”“ʺ‶]/gu, '"')
    .replace(/[′’‘ʹ]/gu, "'")
    .replace(/[‐‑‒–—−]/gu, '-')
    .replace(/⁄/gu, '/')
    .replace(/[½⅓⅔¼¾⅛⅜⅝⅞⅙⅚⅕⅖⅗⅘]/gu, (sign) => ` ${vulgar[sign] ?? ''}`)
    .replace(
      / ?× ?10([⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+)/gu,
      (_, power: string) =>
        `e${[...power]
          .map((sign) => RAISED.indexOf(sign) - 1)
          .join('')
          .replace('-1', '-')}`,
    )
    .replace(/[·⋅∙•×]/gu, '.')
    .replace(/²/gu, '2')
    .replace(/³/gu, '3')
    .replace(/⁴/gu, '4')
    .replace(/º/gu, '°')
    .replace(/ {2,}/gu, ' ')
    .trim();
}

const WHOLE = '\\d{1,3}(?:,\\d{3})+|\\d{1,3}(?: \\d{3})+(?!\\d)|\\d+';
const mixed = /^(\d+)[ -](\d+)\/(\d+)(?![\d/.])/u;
const fraction = /^(\d+)\/(\d+)(?![\d/.])/u;
const decimal = new RegExp(`^(?:(?:${WHOLE})(?:\\.\\d*)?|\\.\\d+)(?:[eE][+-]?\\d+)?(?![\\d,.])`, 'u');

/**
 * Reads a number at the start of a plain text: `1,240`, `1 240`, `.5`, `6e-6`, `5/8`, `6 1/2`, `2-1/2`.
 *
 * @param text - after `plainText` [-]
 * @returns the number and the text behind it, or what is wrong [-]
 */
export function readNumber(text: string): ReadNumber {
  const signed = /^([+-]?) ?(.*)$/u.exec(text);
  const sign = signed?.[1] === '-' ? -1 : 1;
  const body = signed?.[2] ?? '';
  const mixedMatch = mixed.exec(body);
  if (mixedMatch) {
    const [all, whole = '', top = '', bottom = ''] = mixedMatch;
    if (Number(bottom) === 0 || Number(top) >= Number(bottom))
      return { ok: false, code: 'quantity.bad-fraction', data: { fraction: `${top}/${bottom}` } };
    return {
      ok: true,
      value: sign * (Number(whole) + Number(top) / Number(bottom)),
      rest: body.slice(all.length),
    };
  }
  const fractionMatch = fraction.exec(body);
  if (fractionMatch) {
    const [all, top = '', bottom = ''] = fractionMatch;
    if (Number(bottom) === 0)
      return { ok: false, code: 'quantity.bad-fraction', data: { fraction: `${top}/${bottom}` } };
    return { ok: true, value: (sign * Number(top)) / Number(bottom), rest: body.slice(all.length) };
  }
  const decimalMatch = decimal.exec(body);
  if (!decimalMatch) {
    if (/^\d+,\d/u.test(body)) return { ok: false, code: 'quantity.comma', data: {} };
    return { ok: false, code: 'quantity.not-a-number', data: {} };
  }
  const value = sign * Number(decimalMatch[0].replace(/[, ]/gu, ''));
  if (!Number.isFinite(value)) return { ok: false, code: 'quantity.not-a-number', data: {} };
  return { ok: true, value, rest: body.slice(decimalMatch[0].length) };
}
