/** Numbers as people write them on site: with or without the unit, with a point or a comma. */

import type { Box } from '../sheet/sheet.js';
import {
  type ParsedQuantity,
  parseQuantity,
  plainText,
  readNumber,
  type UnitSystem,
} from '../units/index.js';

/** A number in SI, or why it is none. */
export type UnderstoodNumber =
  | ParsedQuantity
  | {
      readonly ok: false;
      readonly code: 'fieldwork.reading.comma' | 'fieldwork.reading.not-a-count';
      readonly data?: undefined;
    };

/**
 * Reads a number written into a box.
 *
 * A number without a unit is in the unit printed beside the box. One comma before other than three digits is a
 * decimal comma. One comma before three digits parts thousands on a sheet in US units, which prints them so; on one
 * in SI units it could be either, and is not guessed.
 *
 * @param text - as written
 * @param box - its dimension and unit
 * @param system - units of the sheet
 * @returns SI value, or a code with data
 */
export function understandNumber(
  text: string,
  box: Pick<Box, 'dimension' | 'unit'>,
  system: UnitSystem,
): UnderstoodNumber {
  const pointed = withDecimalPoint(text, system);
  if (pointed === undefined) return { ok: false, code: 'fieldwork.reading.comma' };
  const bare = readNumber(plainText(pointed));
  const isBare = bare.ok && bare.rest.trim() === '';
  if (box.dimension === undefined) {
    if (isBare) return { ok: true, value: bare.value };
    return { ok: false, code: 'fieldwork.reading.not-a-count' };
  }
  return parseQuantity(isBare ? `${pointed} ${box.unit ?? ''}` : pointed, box.dimension);
}

const GROUPED = /^[1-9]\d{0,2}(,\d{3})+$/u;

/** The text with its decimal comma turned into a point; nothing where a comma could mean either. */
function withDecimalPoint(text: string, system: UnitSystem): string | undefined {
  let unsure = false;
  const pointed = text.replace(/\d[\d.,]*/gu, (number) => {
    const commas = number.split(',').length - 1;
    const points = number.split('.').length - 1;
    if (commas === 0) return number;
    const [whole = '', fraction = ''] = number.split(',');
    if (commas === 1 && points > 0 && /^\d{1,3}(\.\d{3})+$/u.test(whole)) {
      return `${whole.replaceAll('.', '')}.${fraction}`;
    }
    if (points > 0) return number;
    if (GROUPED.test(number)) {
      unsure ||= commas === 1 && system === 'si';
      return number;
    }
    return commas === 1 && fraction !== '' ? `${whole}.${fraction}` : number;
  });
  return unsure ? undefined : pointed;
}
