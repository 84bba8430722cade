/** Numbers as people write them on site: with or without the unit, with a point or a comma. */

import { doubtOf } from '../sheet/plausible.js';
import type { Box } from '../sheet/sheet.js';
import {
  type ParsedQuantity,
  parseQuantity,
  plainText,
  readNumber,
  type UnitSystem,
} from '../units/index.js';
import { isPeak, saysNought, saysWhatIsCounted, tradeUnit } from './trade-words.js';

/** What of a box its reading is understood by. */
type NumberBox = Pick<Box, 'dimension' | 'unit' | 'plausible'> & { readonly id?: string };

/** Codes of what is wrong with a number beside its quantity. */
const NUMBER_CODES = [
  'fieldwork.reading.comma',
  'fieldwork.reading.not-a-count',
  'fieldwork.reading.two-numbers',
  'fieldwork.reading.peak',
] as const;

/** One of them. */
export type NumberCode = (typeof NUMBER_CODES)[number];

/** Whether a code is one of those. */
export function isNumberCode(code: string): code is NumberCode {
  return NUMBER_CODES.some((known) => known === code);
}

/** A number in SI, or why it is none. */
export type UnderstoodNumber =
  | ParsedQuantity
  | {
      readonly ok: false;
      readonly code: NumberCode;
      readonly data?: undefined;
    };

/**
 * Reads a number written into a box.
 *
 * A number without a unit is in the unit printed beside the box. One comma before other than three digits is a
 * decimal comma, and so is one behind a nought. A single comma before three digits could part decimals or thousands, in either
 * system of units, and is not guessed; nor are two numbers behind a stroke, unless they are a fraction of an inch.
 *
 * @param text - as written
 * @param box - its id, dimension and unit
 * @param system - units of the sheet
 * @returns SI value, or a code with data
 */
export function understandNumber(text: string, box: NumberBox, system: UnitSystem): UnderstoodNumber {
  const refused = (code: NumberCode): UnderstoodNumber => ({ ok: false, code });
  if (saysNought(text, box.id ?? '')) return { ok: true, value: 0 };
  const pointed = withDecimalPoint(plainText(text));
  if (pointed === undefined) return thousandsOf(text, box, system) ?? refused('fieldwork.reading.comma');
  if (hasTwoNumbers(pointed, box)) return refused('fieldwork.reading.two-numbers');
  const bare = readNumber(pointed);
  const rest = bare.ok ? bare.rest.trim() : '';
  if (box.dimension === undefined) {
    if (bare.ok && (rest === '' || saysWhatIsCounted(rest))) return { ok: true, value: bare.value };
    return refused('fieldwork.reading.not-a-count');
  }
  if (box.dimension === 'velocity' && isPeak(rest)) return refused('fieldwork.reading.peak');
  if (bare.ok && rest === '') return parseQuantity(`${pointed} ${box.unit ?? ''}`, box.dimension);
  const trade = bare.ok ? tradeUnit(rest, box.dimension) : undefined;
  if (bare.ok && trade !== undefined) {
    const unit = parseQuantity(`${bare.value} ${trade.unit}`, box.dimension);
    return unit.ok ? { ok: true, value: unit.value * trade.times } : unit;
  }
  return parseQuantity(feetBehindDash(pointed, box, system), box.dimension);
}

/**
 * A comma before three digits where the sheet itself prints thousands so, and where only thousands are near what is expected:
 * `1,704` beside an expected 1,704 lb. Lengths are left out: a thousandth of an inch is as likely as a hundred feet.
 */
function thousandsOf(text: string, box: NumberBox, system: UnitSystem): UnderstoodNumber | undefined {
  const { dimension, plausible } = box;
  const likely = plausible?.likely;
  const single = /^([^,]*\d),(\d{3}(?!\d)[^,]*)$/u.exec(plainText(text));
  if (system !== 'us' || dimension === 'length' || likely === undefined || single === null) return undefined;
  const [, before = '', behind = ''] = single;
  const asThousands = understandNumber(`${before}${behind}`, box, system);
  const asDecimals = understandNumber(`${before}.${behind}`, box, system);
  const isLikely = (read: UnderstoodNumber) => read.ok && doubtOf(read.value, plausible) === undefined;
  return isLikely(asThousands) && asDecimals.ok && !isLikely(asDecimals) ? asThousands : undefined;
}

/** `9-10 1/2` and `9'10`: feet, and inches with no sign behind them. */
function feetBehindDash(text: string, { dimension, unit }: NumberBox, system: UnitSystem): string {
  if (dimension !== 'length' || system !== 'us' || unit !== 'in') return text;
  const dashed = /^(\d{1,2})-(\d{1,2} \d{1,2}\/\d{1,2})"?$/u.exec(text);
  if (dashed) return `${dashed[1]}'-${dashed[2]}"`;
  const open = /^(\d{1,2})' ?-? ?(\d{1,2}(?:\.\d+)?|\d{1,2} \d{1,2}\/\d{1,2})$/u.exec(text);
  return open ? `${open[1]}'-${open[2]}"` : text;
}

/** Parts into which an inch is divided on a tape or a rule. */
const DIVIDED: readonly string[] = ['2', '4', '8', '16', '32', '64'];

/** Two numbers with a stroke between them that are no fraction of an inch: `460/461`, `230/460`. */
function hasTwoNumbers(text: string, { dimension }: NumberBox): boolean {
  const isLength = dimension === 'length' || dimension === 'head';
  return [...text.matchAll(/(\d[\d.]*) ?\/ ?(\d[\d.]*)/gu)].some(
    ([, top = '', bottom = '']) =>
      !(isLength && /^\d+$/u.test(top) && DIVIDED.includes(bottom) && Number(top) < Number(bottom)),
  );
}

const GROUPED = /^[1-9]\d{0,2}(,\d{3})+$/u;

/** The text with its decimal comma turned into a point; nothing where a comma could mean either, or ends the number. */
function withDecimalPoint(text: string): string | undefined {
  let unsure = false;
  const pointed = text.replace(/\d[\d.,]*/gu, (number) => {
    const commas = number.split(',').length - 1;
    const points = number.split('.').length - 1;
    if (commas === 0) return number;
    const [whole = '', fraction = ''] = number.split(',');
    if (/[.,]$/u.test(number)) unsure = true;
    if (commas === 1 && points > 0 && /^\d{1,3}(\.\d{3})+$/u.test(whole)) {
      return `${whole.replaceAll('.', '')}.${fraction}`;
    }
    if (points > 0) return number;
    if (GROUPED.test(number)) {
      unsure ||= commas === 1;
      return number;
    }
    return commas === 1 && fraction !== '' ? `${whole}.${fraction}` : number;
  });
  return unsure ? undefined : pointed;
}
