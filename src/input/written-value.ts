/** What two files write in one place: the same, though in other units or other words. */
import { nominalSize } from '../catalog/index.js';
import { type Dimension, dimensions, parseQuantity } from '../units/index.js';
import { readText } from './read-text.js';

/** Share by which rounding to the other system of units may at most have moved a value [-]. */
const ROUNDED = 0.005;
/** Share by which two ways of writing one value may differ through arithmetic [-]. */
const SAME = 1e-9;

/**
 * What a sound file holds, as plain data.
 *
 * @param text - content of the file [-]
 * @returns maps, lists, texts and numbers; undefined where it cannot be read [-]
 */
export function readContent(text: string): unknown {
  return readText(text).content;
}

/**
 * Whether two values say the same. A value in another unit is the same where it is the other one rounded to the digits
 * that are written: 3.66 m is 12 ft, and 3.7 m is not: rounding moves a value by half a hundredth at most.
 *
 * @param before - value of one file [-]
 * @param after - value of the other [-]
 * @returns true where nothing was changed but the way of writing [-]
 */
export function sameWritten(before: unknown, after: unknown): boolean {
  const [one, other] = [wordsOf(before), wordsOf(after)];
  if (one === undefined || other === undefined) return false;
  if (one === other) return true;
  if (typeof before === 'number' && typeof after === 'number') return before === after;
  const [size, otherSize] = [sizeOf(one), sizeOf(other)];
  if (size !== undefined && size === otherSize) return true;
  const both = dimensions.filter(
    (dimension) => quantityOf(one, dimension) !== undefined && quantityOf(other, dimension) !== undefined,
  );
  // One text may be read as several things, a temperature and a difference of two: as one of them it is the same.
  return both.some((dimension) => sameQuantity(one, other, dimension));
}

/**
 * A length as written.
 *
 * @param written - value of a file [-]
 * @returns the length [m]; undefined where it is none [-]
 */
export function writtenLength(written: unknown): number | undefined {
  const words = wordsOf(written);
  return words === undefined ? undefined : quantityOf(words, 'length');
}

function wordsOf(value: unknown): string | undefined {
  if (typeof value === 'number' || typeof value === 'boolean') return String(value);
  return typeof value === 'string' ? value.trim().replace(/\s+/gu, ' ').toLowerCase() : undefined;
}

/** Only what says that it is a size: `6 in` is also a length. */
function sizeOf(words: string): string | undefined {
  return /^(nps|dn)\b|(in|inch|")$/u.test(words) ? nominalSize(words) : undefined;
}

function quantityOf(words: string, dimension: Dimension): number | undefined {
  const read = parseQuantity(words, dimension);
  return read.ok ? read.value : undefined;
}

function sameQuantity(one: string, other: string, dimension: Dimension): boolean {
  const [a, b] = [quantityOf(one, dimension) ?? Number.NaN, quantityOf(other, dimension) ?? Number.NaN];
  const apart = Math.abs(a - b);
  if (apart <= SAME * Math.max(Math.abs(a), Math.abs(b))) return true;
  // In units of one system every digit counts.
  if (isAmerican(one) === isAmerican(other)) return false;
  if (apart > ROUNDED * Math.max(Math.abs(a), Math.abs(b))) return false;
  const steps = [lastDigit(one, dimension), lastDigit(other, dimension)].filter((step) => step !== undefined);
  return steps.length > 0 && apart <= (Math.min(...steps) / 2) * (1 + SAME);
}

const isAmerican = (words: string): boolean =>
  /(ft|in|['"″′]|lb|oz|psi|gal|gpm|degf|°f|hp|ton|kip)/u.test(words);

/** What one unit of the last digit written is worth; undefined for fractions and feet with inches, which are exact. */
function lastDigit(words: string, dimension: Dimension): number | undefined {
  const numbers = words.match(/\d[\d,]*(\.\d+)?/gu) ?? [];
  const [number] = numbers;
  if (numbers.length !== 1 || number === undefined) return undefined;
  const decimals = number.split('.')[1]?.length ?? 0;
  const plain = Number(number.replaceAll(',', ''));
  const next = words.replace(number, String(plain + 10 ** -decimals));
  const [value, more] = [quantityOf(words, dimension), quantityOf(next, dimension)];
  return value === undefined || more === undefined ? undefined : Math.abs(more - value);
}
