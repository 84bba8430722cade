import * as z from 'zod';
import { type Dimension, parseQuantity } from '../../units/index.js';
import { refuse } from './field.js';

/** Which values of a quantity make sense. */
export type Range = 'any' | 'positive' | 'not negative';

/** Starts like a number and goes on with something; the reader itself says what is wrong with the rest. */
const QUANTITY_PATTERN = '^\\s*[+\\-−]?\\s*[0-9.½⅓⅔¼¾⅛⅜⅝⅞].*$';

/**
 * A number with its unit, read to SI.
 *
 * @param dimension - what it measures [-]
 * @param range - which values make sense [-]
 * @returns schema that gives the value in the SI unit of the dimension [-]
 */
export function quantity(dimension: Dimension, range: Range = 'any') {
  const key = `${dimension} ${range}`;
  const made = quantities.get(key) ?? makeQuantity(dimension, range);
  quantities.set(key, made);
  return made;
}

/** Schemas made so far: one costs more to make than to use, and a file has some hundred fields of few kinds. */
const quantities = new Map<string, ReturnType<typeof makeQuantity>>();

function makeQuantity(dimension: Dimension, range: Range) {
  return written(dimension).transform((found, context) =>
    readQuantity(String(found), dimension, range, context),
  );
}

/**
 * A stiffness that may also be said in a word: `rigid` or `free`.
 *
 * @param dimension - stiffness or rotational stiffness [-]
 * @returns schema that gives N/m or N·m/rad; Infinity is rigid, 0 is free [-]
 */
export function stiffness(dimension: 'stiffness' | 'rotational stiffness') {
  return written(dimension, `^\\s*(rigid|free)\\s*$|${QUANTITY_PATTERN}`).transform((found, context) => {
    if (found === 'rigid') return Number.POSITIVE_INFINITY;
    if (found === 'free') return 0;
    return readQuantity(String(found), dimension, 'not negative', context);
  });
}

/** Text with a unit; a bare number only where it needs none: a ratio, or nothing at all. */
function written(dimension: Dimension, pattern: string = QUANTITY_PATTERN) {
  const number = dimension === 'ratio' ? z.number() : z.number().meta({ const: 0 });
  return z.union([z.string().meta({ pattern }), number]);
}

function readQuantity(
  found: string,
  dimension: Dimension,
  range: Range,
  context: z.core.$RefinementCtx,
): number {
  const read = parseQuantity(found, dimension);
  if (!read.ok) return refuse(context, read.code, { ...read.data, found });
  if (range === 'positive' && !(read.value > 0)) return refuse(context, 'input.not-positive', { found });
  if (range === 'not negative' && read.value < 0) return refuse(context, 'input.negative', { found });
  return read.value;
}

/** A share of a whole, from 0 to 1. */
export function share() {
  return quantity('ratio', 'not negative').transform((value, context) =>
    value <= 1 ? value : refuse(context, 'input.share-over-one', { found: String(value) }),
  );
}
