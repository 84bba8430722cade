import type { Dimension } from './dimension.js';
import { type NumberFault, plainText, readNumber } from './read-number.js';
import { temperatureZero, unitFactor, unitNames } from './unit-table.js';

/** A quantity as read: its SI value, or why it cannot be read. */
export type ParsedQuantity =
  | { readonly ok: true; readonly value: number }
  | {
      readonly ok: false;
      readonly code: QuantityCode;
      readonly data: QuantityFault;
    };

/** What was found, and what may be written. */
export type QuantityFault = {
  readonly found: string;
  readonly dimension: string;
  /** Units that may be written. */
  readonly units: string;
  /** What stands where the unit should; empty where nothing does. */
  readonly unit: string;
  /** The fraction that is none; empty where there is none. */
  readonly fraction: string;
};

/** Why a quantity cannot be read. */
export type QuantityCode =
  | NumberFault['code']
  | 'quantity.no-unit'
  | 'quantity.unknown-unit'
  | 'quantity.broken-feet'
  | 'quantity.too-many-inches'
  | 'quantity.below-zero-kelvin';

/** Longest text looked at; anything longer is no quantity. */
const LONGEST_QUANTITY = 100;

/** Refuses a text with a code and what is to be said of it beside the text. */
type Refuse = (code: QuantityCode, data?: Partial<QuantityFault>) => ParsedQuantity;

/** How many units a message lists. */
const SHOWN_UNITS = 7;

/**
 * Reads a number with its unit at the border of the product: `12'-6 1/2"`, `1,240 lb`, `180 degF`, `5/8 in`.
 * A bare number is read only as a ratio, or where it is zero and zero is the same in every unit.
 *
 * @param text - as written [-]
 * @param dimension - what it must measure [-]
 * @returns value in the SI unit of the dimension, or a code with data [-]
 */
export function parseQuantity(text: string, dimension: Dimension): ParsedQuantity {
  const units = unitNames(dimension).slice(0, SHOWN_UNITS).join(', ');
  const refuse: Refuse = (code, data = {}) => ({
    ok: false,
    code,
    data: { found: text, dimension, units, unit: '', fraction: '', ...data },
  });
  if (text.length > LONGEST_QUANTITY)
    return refuse('quantity.not-a-number', { found: `${text.slice(0, LONGEST_QUANTITY)}…` });
  const plain = plainText(text);
  if (dimension === 'length' || dimension === 'head') {
    const feet = parseFeetAndInches(plain, refuse);
    if (feet) return feet;
  }
  const number = readNumber(plain);
  if (!number.ok) return refuse(number.code, number.data);
  const unit = number.rest.trim();
  if (unit === '') {
    if (dimension === 'ratio') return { ok: true, value: number.value };
    if (number.value === 0 && dimension !== 'temperature') return { ok: true, value: 0 };
    return refuse('quantity.no-unit');
  }
  const known = knownUnit(unit, dimension);
  if (known === undefined) return refuse('quantity.unknown-unit', { unit });
  const zero = dimension === 'temperature' ? (temperatureZero[known] ?? 0) : 0;
  const value = number.value * (unitFactor(known, dimension) ?? Number.NaN) + zero;
  if (!Number.isFinite(value)) return refuse('quantity.not-a-number');
  if (dimension === 'temperature' && value < 0) return refuse('quantity.below-zero-kelvin');
  return { ok: true, value };
}

const feetAndInches =
  /^([+-]?) ?([\d, .]+?) ?(?:ft|foot|feet|')(?: ?[- ] ?| ?)(\d.*?|\.\d.*?) ?(?:in|inch|inches|")$/u;

/** Reads feet followed by inches; undefined where the text is not of that form. */
function parseFeetAndInches(plain: string, refuse: Refuse): ParsedQuantity | undefined {
  const match = feetAndInches.exec(plain);
  if (!match) return undefined;
  const [, sign = '', feetText = '', inchesText = ''] = match;
  const feet = readNumber(feetText);
  const inches = readNumber(inchesText);
  if (!feet.ok || feet.rest !== '' || !Number.isInteger(feet.value)) return refuse('quantity.broken-feet');
  if (!inches.ok) return refuse(inches.code, inches.data);
  if (inches.rest !== '') return refuse('quantity.not-a-number');
  if (inches.value >= 12) return refuse('quantity.too-many-inches');
  const size = (feet.value * 12 + inches.value) * (unitFactor('in', 'length') ?? Number.NaN);
  return { ok: true, value: sign === '-' ? -size : size };
}

/**
 * The accepted spelling a written unit stands for.
 *
 * @param written - unit as written, after `plainText` [-]
 * @param dimension - what is measured [-]
 * @returns the spelling in the table, or undefined [-]
 */
export function knownUnit(written: string, dimension: Dimension): string | undefined {
  const names = unitNames(dimension);
  const text = normaliseUnit(written);
  if (names.includes(text)) return text;
  // Capital letters are forgiven where only one unit of the dimension can be meant.
  const alike = names.filter((name) => name.toLowerCase() === text.toLowerCase());
  return alike.length === 1 ? alike[0] : undefined;
}

function normaliseUnit(written: string): string {
  return written
    .trim()
    .replace(/\^/gu, '')
    .replace(/° ?|\bdeg(?:rees?)? ?(?=[FCfc]\b)/gu, 'deg')
    .replace(/^(F|C)$/u, 'deg$1')
    .replace(/\bdegrees?\b/giu, 'deg')
    .replace(/ ?\/ ?/gu, '/')
    .replace(/ ?[.*-] ?/gu, '.')
    .replace(/\blbs\b/gu, 'lb')
    .replace(/(?<=\w) (?=(?:ft|lb|lbf|in|m|kip)\b)/gu, (blank, offset: number, whole: string) =>
      /^(?:sq)$/u.test(whole.slice(0, offset)) ? blank : '.',
    );
}
