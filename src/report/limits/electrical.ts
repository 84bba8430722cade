/** What supply and current of a three-phase motor keep to. */

import { citationOf } from '../../analysis/citation-of.js';
import type { Installation } from '../../input/installation.js';
import type { Citation } from '../../sources/index.js';
import type { FieldLimit } from './field-limit.js';

const UNBALANCE_PAGES = (clause: string): Citation => ({
  source: 'motor-unbalance-pages',
  clause,
  confidence: 'read',
});

/** Largest difference from the mean of three, over the mean [-]. */
export const VOLTAGE_UNBALANCE: FieldLimit = {
  value: 0.01,
  measured: 'share',
  words: 'at most',
  citation: UNBALANCE_PAGES('voltage unbalance of one per cent'),
};
export const CURRENT_UNBALANCE: FieldLimit = {
  value: 0.1,
  measured: 'share',
  words: 'at most',
  citation: UNBALANCE_PAGES('current unbalance to act at'),
};
/** How far the voltage may be from the rated one, over the rated one [-]. */
export const VOLTAGE_RANGE: FieldLimit = {
  value: 0.1,
  measured: 'share',
  words: 'within',
  citation: UNBALANCE_PAGES('voltage within ten per cent of rated'),
};

/**
 * Largest current: that of the rating plate, which the file gives.
 *
 * @param installation - motor
 * @returns limit [A]; nothing where the file does not give it
 */
export function currentLimit({ pump }: Installation): FieldLimit | undefined {
  const current = pump.motor.fullLoadCurrent;
  return current === undefined
    ? undefined
    : {
        value: current.value,
        measured: 'current',
        words: 'at most',
        citation: citationOf(current, { source: 'input', clause: 'pump.motor', confidence: 'read' }),
      };
}
