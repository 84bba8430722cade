import { refuse } from './field.js';
import { quantity, type Range } from './quantity.js';

/** Bounds of a ratio; they catch slips such as 300 for 300 %. */
interface Bounds {
  readonly most: number;
  /** Zero where left out. */
  readonly least?: number;
  /** Whether zero itself may stand; `positive` where left out. */
  readonly range?: Exclude<Range, 'any'>;
}

/**
 * A ratio between bounds, as a number or in percent: `3` or `300 %`.
 *
 * @param bounds - what makes sense [-]
 * @returns schema that gives the ratio [-]
 */
export function ratio({ most, least = 0, range = 'positive' }: Bounds) {
  return quantity('ratio', range).transform((value, context) => {
    if (value < least)
      return refuse(context, 'input.too-small', { found: percent(value), least: percent(least) });
    if (value > most)
      return refuse(context, 'input.too-large', { found: percent(value), most: percent(most) });
    return value;
  });
}

function percent(value: number): string {
  return `${value} (${Math.round(value * 1e4) / 100} %)`;
}
